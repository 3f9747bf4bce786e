"""A parcel by light through the commands: its codes as pictures are read by zbar and by a second reader written from the
format, byte for byte; and pictures of codes are taken in as the file would be, in any order and with some missing."""

import os
import random
import re
import shutil
import struct
import subprocess
import unittest
import zlib

from light_frames import Frame, digest, parcel_of
from program import Program


def seen_by_zbar(pictures):
    """The bytes of each picture's code, by another reader of QR codes than ours."""
    return [subprocess.run(["zbarimg", "--quiet", "--raw", "--oneshot", "-Sbinary", picture], capture_output=True,
                           check=True).stdout for picture in pictures]


def white_picture(side):
    """A PNG without anything in it."""
    def part(name, data):
        return struct.pack(">I", len(data)) + name + data + struct.pack(">I", zlib.crc32(name + data))
    lines = zlib.compress((b"\0" + b"\xff" * side) * side)
    return (b"\x89PNG\r\n\x1a\n" + part(b"IHDR", struct.pack(">IIBBBBB", side, side, 8, 0, 0, 0, 0)) + part(b"IDAT", lines) +
            part(b"IEND", b""))


class Light(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.program = Program().set_up()
        cls.addClassCleanup(cls.program.close)
        cls.program.signed_sheet("ines")
        cls.parcel = cls.program.new_file("peelparcel")
        cls.folder = cls.program.path("codes")
        cls.answer = cls.program.json("send", "--out", cls.parcel, "--codes", cls.folder, "--spare", "30", vault="ines")
        cls.pictures = [os.path.join(cls.folder, name) for name in sorted(os.listdir(cls.folder))]
        cls.plain = cls.answer["codes"]["plain"]

    def chosen(self, pictures):
        """A folder of its own with these pictures, in this order."""
        folder = self.program.new_file("folder")
        os.mkdir(folder)
        for number, picture in enumerate(pictures):
            shutil.copy(picture, os.path.join(folder, f"{number:05}.png"))
        return folder

    def test_pictures_are_the_parcel_to_another_reader(self):
        parcel = self.program.read(self.parcel)
        self.assertEqual(self.answer["codes"], {"folder": self.folder, "codes": self.plain + 30, "plain": self.plain})
        self.assertEqual(self.plain, -(-len(parcel) // 299))
        self.assertEqual(len(self.pictures), self.plain + 30)
        codes = seen_by_zbar(self.pictures)
        self.assertEqual([Frame(code).number for code in codes], list(range(self.plain + 30)))
        self.assertEqual(parcel_of(codes), (parcel, self.plain))
        dice = random.Random(7)
        for _ in range(20):
            dice.shuffle(codes)
            read, needed = parcel_of(codes)
            self.assertEqual(read, parcel)
            self.assertLess(needed, self.plain + 15)
        self.assertEqual(parcel_of(codes[:self.plain - 1])[0], None)

    def test_the_frames_of_the_worked_example(self):
        """The format's own example, without our program: a parcel that is a file, two of its frames, a spare's pieces."""
        here = os.path.dirname(os.path.abspath(__file__))
        with open(os.path.join(here, "../../sync/FORMAT.md"), encoding="utf-8") as file:
            text = file.read()
        parcel = self.program.read(os.path.join(here, "../../fixtures/journal/example-v1.parcel"))
        shown = re.findall(r"^frame (\d+) of that parcel by light, in (\d+) pieces.*\n((?:    [0-9a-f]+\n)+)", text, re.MULTILINE)
        self.assertEqual(len(shown), 2)
        frames = [Frame(bytes.fromhex("".join(digits.split()))) for _, _, digits in shown]
        size = -(-len(parcel) // int(shown[0][1]))
        pieces = [parcel[at:at + size].ljust(size, b"\0") for at in range(0, len(parcel), size)]
        for frame, (number, count, _) in zip(frames, shown):
            self.assertEqual((frame.number, frame.count, frame.length), (int(number), int(count), len(parcel)))
            self.assertEqual(frame.parcel, digest(16, b"peelpack.light.1", parcel))
            chosen = [i for i in range(frame.count) if frame.pieces() >> i & 1]
            whole = 0
            for i in chosen:
                whole ^= int.from_bytes(pieces[i], "big")
            self.assertEqual(frame.piece, whole.to_bytes(size, "big"))
        self.assertEqual(re.search(r"^pieces in it\n    ([\d ]+)$", text, re.MULTILINE).group(1).split(), [str(i) for i in chosen])

    def test_pictures_in_any_order_are_taken_in_as_the_file_is(self):
        pictures = self.pictures[3:]  # the first three were missed
        random.Random(3).shuffle(pictures)
        taken = self.program.take("anna", self.chosen(pictures))
        self.assertGreater(taken["new"], 0)
        self.assertEqual(taken["codes"], {"unfinished": [], "without": [], "startedAnew": 0})
        self.assertEqual(self.program.take("anna", self.parcel)["new"], 0)
        # The receipts go back the same way.
        folder = self.program.path("receipts")
        self.program.run("send", "--to", "Ines Duarte", "--codes", folder, vault="anna")
        back = self.program.take("ines", folder)
        self.assertGreater(back["new"], 0)
        self.assertEqual(self.program.sheets("ines")["onlyHere"], 0)

    def test_what_is_missing_is_said_and_nothing_is_taken_in(self):
        before = self.program.export("bruno")
        few = self.chosen(self.pictures[:4] + self.pictures[:2])
        taken = self.program.take("bruno", few, expect=2)
        self.assertEqual((taken["new"], taken["saved"], taken["files"]), (0, False, []))
        self.assertEqual(taken["codes"]["unfinished"], [{"have": 4, "of": self.plain}])
        said = self.program.run("take", few, vault="bruno", expect=2).text
        self.assertIn(f"4 of {self.plain}; {self.plain - 4} more are missing", said)
        self.assertEqual(self.program.read(self.program.export("bruno")), self.program.read(before))

    def test_other_pictures_are_passed_over(self):
        blank = os.path.join(self.chosen([]), "blank.png")
        with open(blank, "wb") as file:
            file.write(white_picture(40))
        torn = os.path.join(os.path.dirname(blank), "torn.png")
        with open(torn, "wb") as file:
            file.write(self.program.read(self.pictures[0])[:200])
        taken = self.program.take("mara", self.folder, blank, torn, expect=2)
        self.assertEqual(taken["codes"]["without"], [blank, torn])
        self.assertGreater(taken["new"], 0)

    def test_two_parcels_in_one_folder(self):
        self.program.signed_sheet("jonas")
        other = self.program.path("other-codes")
        self.program.run("send", "--codes", other, vault="jonas")
        mixed = self.pictures + [os.path.join(other, name) for name in os.listdir(other)]
        random.Random(5).shuffle(mixed)
        taken = self.program.take("bruno", self.chosen(mixed))
        self.assertEqual(len(taken["files"]), 2)
        self.assertTrue(all(file["used"] for file in taken["files"]))

    def test_neither_overwrites_nor_guesses(self):
        self.program.run("send", vault="ines", expect=2)
        self.program.run("send", "--codes", self.folder, vault="ines", expect=3)  # there are codes already
        self.program.run("send", "--codes", self.program.path("x"), "--spare", "many", vault="ines", expect=2)


if __name__ == "__main__":
    unittest.main()
