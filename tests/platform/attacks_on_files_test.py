"""Attacks on what is carried, and hostile files: rows 11 and 12 of the table of attacks, by number."""

import os
import random
import sqlite3
import struct
import time
import unittest

import journal_bytes
from forge import Forge, own_feed, volume_of
from journal_bytes import OPENED, Volume, with_digest
from program import WITH_SANITIZER, Program

PARCEL_TAG = b"peelpack parcel 1\n"
CHUNK = 65536 + 17
MEMORY = 1 << 30
MOST_ENTRIES = 100_000


class AttackOnFiles(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.program = Program().set_up()
        cls.addClassCleanup(cls.program.close)

    def folder_of(self, pieces):
        program = self.program
        folder = program.new_file("folder")
        os.mkdir(folder)
        for number, piece in enumerate(pieces):
            with open(os.path.join(folder, f"{number:06}"), "wb") as out:
                out.write(piece)
        return folder

    def nothing_is_used(self, taker, pieces):
        """Offers everything at once: nothing is used, nothing is written, and each file is named with a reason."""
        program = self.program
        before = program.read(program.export(taker))
        report = program.take(taker, self.folder_of(pieces), expect=2)
        used = [file["file"] for file in report["files"] if file["used"]]
        self.assertEqual((used, report["new"], report["saved"]), ([], 0, False))
        self.assertEqual(len(report["files"]), len(pieces))
        self.assertTrue(all(file["whyNot"].endswith(".") for file in report["files"]))
        self.assertEqual(program.read(program.export(taker)), before)

    # 11: truncated, flipped, re-ordered, replayed, spliced, opened by another device

    def test_11_truncated_and_flipped_files_are_noticed_at_every_byte(self):
        program = self.program
        program.signed_sheet("ines")
        parcel, export = (program.read(path) for path in (program.send("ines"), program.export("ines")))
        chooser = random.Random(11)
        for whole in (parcel, export):
            pieces = [whole[:at] + bytes([whole[at] ^ 1 << chooser.randrange(8)]) + whole[at + 1:]
                      for at in range(len(whole))]
            pieces += [whole[:length] for length in range(0, len(whole), 31)] + [whole + b"\0"]
            self.nothing_is_used("anna", pieces)

    def test_11_a_replay_is_harmless_and_another_device_cannot_open_it(self):
        program = self.program
        sheet = program.signed_sheet("ines")
        parcel = program.send("ines")
        self.assertTrue(program.take("anna", parcel)["saved"])
        after = program.read(program.export("anna"))
        again = program.take("anna", parcel, parcel)
        self.assertEqual((again["new"], again["receipts"], again["saved"]), (0, 0, False))
        self.assertEqual(program.read(program.export("anna")), after)
        refused = program.take("jonas", parcel, expect=2)["files"][0]
        self.assertEqual((refused["used"], refused["new"]), (False, 0))
        self.assertIn("not for this device", refused["whyNot"])
        self.assertIn("no sheet", program.run("sheet", "show", sheet, vault="jonas", expect=2).complaint)
        self.assertTrue(program.check(parcel, vault="anna")["verified"])
        program.run("check", parcel, "--program", program.id, vault="jonas", expect=2)

    def test_11_chunks_and_headers_of_two_parcels_do_not_mix(self):
        program = self.program
        volume = volume_of(program, "jonas")
        day = int(time.time()) // 86400
        with Forge(program, "jonas") as forge:
            feed = own_feed(volume, forge.who())
            for number in range(600):
                feed.add(forge.sign, OPENED, journal_bytes.sheet_opened(number.to_bytes(16, "big"), day, "P" * 200))
                if number == 400:
                    short = program.read(forge.seal(volume.replace(feed)))
            long = program.read(forge.seal(volume.replace(feed)))
        (one, one_chunks), (two, two_chunks) = apart(short), apart(long)
        self.assertGreaterEqual(min(len(one_chunks), len(two_chunks)), 2)
        pieces = [one + b"".join(two_chunks), two + b"".join(one_chunks), one + b"".join(reversed(one_chunks)),
                  two + two_chunks[0] + b"".join(one_chunks[1:]), one + one_chunks[0] + one_chunks[0] + one_chunks[-1],
                  one + b"".join(one_chunks[:-1]), one + one_chunks[-1], one + b"".join(one_chunks + one_chunks[-1:])]
        self.nothing_is_used("anna", pieces)
        self.assertEqual(program.take("anna", program.write(short, "peelparcel"))["new"], 401)
        self.assertEqual(program.take("anna", program.write(long, "peelparcel"))["new"], 199)

    def test_11_runs_and_entries_in_another_order(self):
        program = self.program
        program.signed_sheet("ines")
        volume = volume_of(program, "ines")
        with Forge(program, "ines") as forge:
            feed = own_feed(volume, forge.who())
            count = len(feed.entries)
            swapped = feed.copy()
            swapped.entries[count - 2:] = reversed(feed.entries[count - 2:])
            reordered = forge.seal(Volume(volume.program, (), (), [[feed.device, feed.stream, 0, swapped.entries]]))
            late = forge.seal(Volume(volume.program, (), (), [[feed.device, feed.stream, count - 1, feed.entries[-1:]]]))
            backwards = forge.seal(Volume(volume.program, volume.certificates, volume.heads, reversed(volume.runs)))
        report = program.take("bruno", reordered)
        finding, = report["files"][0]["findings"]
        self.assertEqual((finding["verdict"], finding["entry"]), ("refused", count - 2))
        self.assertTrue(program.take("bruno", late)["files"][0]["waits"])  # the entry before it is not there yet
        program.take("bruno", backwards)
        program.give("ines", "anna")
        ours = [volume_of(program, who, "--student", "Ines Duarte").feed(feed.device, feed.stream) for who in ("anna", "bruno")]
        self.assertEqual([one.entries for one in ours], [feed.entries, feed.entries])

    # 12: files made to cost memory or time

    def test_12_hostile_files_cost_neither_memory_nor_time_and_are_named(self):
        program = self.program
        identity = bytes.fromhex(program.id)
        front = journal_bytes.NOTICE + identity + struct.pack("<HH", 1, 1)
        feed = b"\x09" * 32 + b"\x01" * 16
        tiny = struct.pack("<I", 82) + b"\1" + bytes(81)
        flood = struct.pack("<I", 100_000) + tiny * 100_000
        pieces = {
            "twelve bytes": struct.pack("<QI", 1 << 32, 0),
            "certificates": with_digest(front + struct.pack("<H", 65535)),
            "one certificate of 64 KiB": with_digest(front + struct.pack("<HH", 1, 65535)),
            "heads": with_digest(front + struct.pack("<HH", 0, 65535)),
            "runs": with_digest(front + struct.pack("<HHH", 0, 0, 65535)),
            "entries": with_digest(front + struct.pack("<HHH", 0, 0, 1) + feed + struct.pack("<II", 0, 0xFFFFFFFF)),
            "an entry of 4 GiB": with_digest(front + struct.pack("<HHH", 0, 0, 1) + feed +
                                             struct.pack("<IIII", 0, 1, 0xFFFFFFFF, 0) + bytes(100)),
            "ten million entries claimed": with_digest(front + struct.pack("<HHH", 0, 0, 1) + feed +
                                                       struct.pack("<II", 0, 10_000_000) + tiny * 1000),
            "millions of entries": with_digest(front + struct.pack("<HHH", 0, 0, 1) + feed +
                                               struct.pack("<II", 0, 700_000) + tiny * 700_000),
            "a parcel of 255 slots": PARCEL_TAG + b"\x09" * 32 + b"\xff" + bytes(255 * 48),
            "a parcel without an end": PARCEL_TAG + b"\x09" * 32 + b"\x01" + bytes(60 * 1024 * 1024),
        }
        for name, piece in pieces.items():
            with self.subTest(name):
                path = program.write(piece, "hostile")
                report = program.take("anna", path, expect=2, memory=MEMORY)
                self.assertFalse(report["files"][0]["used"])
                self.assertTrue(report["files"][0]["whyNot"])
                if not piece.startswith(PARCEL_TAG):
                    checked = program.check(path, expect=1, memory=MEMORY)
                    self.assertEqual((checked["entries"], len(checked["faults"])), (0, 1))
        full = with_digest(front + struct.pack("<HHH", 0, 0, 1) + feed + struct.pack("<I", 0) + flood)
        report = program.take("anna", program.write(full, "hostile"), memory=MEMORY)
        self.assertEqual((report["new"], report["saved"], len(report["files"][0]["findings"])), (0, False, 1))

    def test_12_as_many_valid_tiny_entries_as_a_parcel_holds_are_taken_in_within_bounded_memory(self):
        program = self.program
        student = program.student("flora", "Flora Lind")
        withdrawn = [b"\1" + bytes([number]) * 16 + journal_bytes.text("x") for number in range(200)]
        volume = program.new_file("volume")
        with Forge(program, student) as forge:
            forge.ask("flood", out=volume, count=MOST_ENTRIES, entries=[
                {"kind": journal_bytes.WITHDRAWN, "payload": payload.hex()} for payload in withdrawn] +
                [{"kind": 40_000, "payload": ""}] * len(withdrawn))  # of a newer version, and empty
            parcel = forge.seal(program.read(volume))
        commands = [["take", parcel], ["take", parcel], ["sheet", "list", "--student", "Flora Lind"], ["queue"]]
        answers, peaks = zip(*(program.peak_of(*words, vault="anna") for words in commands))
        self.assertEqual([report["new"] for report in answers[:2]], [MOST_ENTRIES, 0])
        self.assertEqual(len(answers[2]["students"][0]["sheets"]), len(withdrawn))
        self.assertLess(max(peaks), MEMORY if WITH_SANITIZER else MEMORY // 4, peaks)

    def test_12_lists_that_claim_more_than_there_is_in_an_entry_that_is_signed(self):
        program = self.program
        volume = volume_of(program, "jonas")
        front = b"\1" + b"\x5b" * 16 + bytes(16)
        claims = [struct.pack("<Q", count) for count in (1 << 32, 1 << 62, (1 << 64) - 1)]
        with Forge(program, "jonas") as forge:
            feed = own_feed(volume, forge.who())
            parcels = [forge.seal(volume.replace(feed.copy().add(forge.sign, kind, payload)).without_heads_of(feed))
                       for claim in claims
                       for kind, payload in ((OPENED, front + claim), (OPENED, front + struct.pack("<Q", 1) + claim),
                                             (journal_bytes.ATTESTATION, b"\1" + claim + bytes(64)),
                                             (journal_bytes.LOGGED, b"\1" + b"\x5b" * 16 + claim))]
            nested = feed.copy().add(forge.sign, 40_000, b"\1" * 60_000)  # of a newer version, however deep it may be
            parcels.append(forge.seal(volume.replace(nested).without_heads_of(feed)))
        for number, parcel in enumerate(parcels):
            with self.subTest(number):
                report = program.take("bruno", parcel, memory=MEMORY)
                if parcel is not parcels[-1]:
                    self.assertEqual([f["verdict"] for f in report["files"][0]["findings"]], ["refused"])
                    self.assertEqual([f["entry"] for f in report["files"][0]["findings"]], [len(feed.entries)])
                else:
                    self.assertEqual(report["files"][0]["findings"], [])

    def test_12_hostile_codes_and_vaults_and_files_that_are_too_large(self):
        program = self.program
        twelve = program.write(struct.pack("<QI", 1 << 32, 0), "hostile")
        huge = program.write(b"", "hostile")
        os.truncate(huge, 900 * 1024 * 1024)
        sheet = program.open_sheet("ines")
        commands = [["enroll", "join", None, "--name", "X", "--out", program.new_file("reply"), "--vault", program.vault("x")],
                    ["enroll", "grant", None, "--digits", "000000", "--vault", program.vault("anna")],
                    ["sheet", "sign", sheet, "--card", None, "--marks", "YYYYYYYYYA", "--yes", "--vault", program.vault("ines")],
                    ["sheet", "accept", sheet, None, "--vault", program.vault("ines")],
                    ["preceptor", "sign", None, "--out", program.new_file("code"), "--vault", program.vault("brandt")],
                    ["take", None, "--vault", program.vault("anna")],
                    ["check", None, "--program", program.id],
                    ["sheet", "list", "--vault", None]]
        for command in commands:
            for path in (twelve, huge):
                with self.subTest(command[0], file=path):
                    done = program.run(*[word or path for word in command], expect=None, memory=MEMORY)
                    self.assertIn(done.code, (1, 2, 3))
                    self.assertRegex(done.text + done.complaint, r"[a-z]\.\n")
        self.assertFalse(os.path.exists(program.vault("x")))
        # What a password may cost is fixed by the format: no file of ours has a place where it could be asked for more.
        database = sqlite3.connect(program.vault("ines"))
        columns = [row[1] for row in database.execute("PRAGMA table_info(slot)")]
        database.close()
        self.assertEqual(columns, ["kind", "salt", "mark_check", "commitment", "sealed", "checksum"])


def apart(parcel):
    """Header and chunks of a parcel."""
    slots = parcel[len(PARCEL_TAG) + 32]
    end = len(PARCEL_TAG) + 32 + 1 + slots * 48 + 32 + 24 + 32
    rest = parcel[end:]
    return parcel[:end], [rest[at:at + CHUNK] for at in range(0, len(rest), CHUNK)]


if __name__ == "__main__":
    unittest.main()
