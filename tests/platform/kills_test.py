"""Row 13 of the table of attacks: processes killed at random moments, and storage that is full. Afterwards everything is as
before or as after, nothing that was said to be saved is missing, and the vault opens without damage."""

import json
import os
import random
import subprocess
import time
import unittest

import journal_bytes
from forge import Forge, own_feed, volume_of
from journal_bytes import OPENED, Volume
from program import HANG, PASSPHRASE, Program

SEED = int(os.environ.get("PEELPACK_SEED", "13"))
OPENS, SIGNS, TAKES, CHANGES = 100, 70, 90, 40
OTHER = "another four odd words"


def size_of(path):
    """Bytes of a file that may go at any moment; -1 when it is not there."""
    try:
        return os.stat(path).st_size
    except FileNotFoundError:
        return -1


class Kills(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.program = Program().set_up()
        cls.addClassCleanup(cls.program.close)
        cls.chooser = random.Random(SEED)
        began = time.monotonic()
        cls.program.open_sheet("ines")
        cls.usual = time.monotonic() - began

    def killed(self, *words, vault, secrets=(PASSPHRASE,), usual=None):
        """Runs a command and kills it: half of the time at any moment, half of the time just after it wrote something.
        Answers what it had said and whether it had come to its end."""
        program, chooser = self.program, self.chooser
        process = program.start(*words, "--json", vault=vault, secrets=secrets)
        end = time.monotonic() + chooser.uniform(0, 1.1 * (usual or self.usual))
        writes, log, seen = chooser.randint(1, 5), program.vault(vault) + "-wal", -1
        by_write = chooser.random() < 0.5
        while process.poll() is None:
            if by_write:
                size = size_of(log)
                writes, seen = writes - (size != seen), size
                if writes < 0:
                    break
            elif time.monotonic() >= end:
                break
            time.sleep(0.0002)
        time.sleep(chooser.uniform(0, 0.003) if by_write else 0)
        process.kill()
        said, _ = process.communicate(timeout=HANG)
        return said, process.returncode == 0

    def state(self, who):
        """How many entries each feed has, opened with the vault code; damage fails the test."""
        with Forge(self.program, who) as forge:
            answer = forge.ask("who")
        self.assertEqual(answer["damage"], [])
        return {(feed["device"], feed["stream"]): feed["count"] for feed in answer["feeds"]}, answer["device"], answer["person"]

    def writes_one_entry(self, times, command, who, usual=None, secrets=(PASSPHRASE,)):
        """Kills a command that writes one entry to the student's own feed; answers what the finished ones said."""
        acknowledged, outcomes = [], {"before": 0, "after": 0, "finished": 0}
        counts, device, person = self.state(who)
        own = (device, person)
        for number in range(times):
            with self.subTest(seed=SEED, number=number):
                said, finished = self.killed(*command(), vault=who, secrets=secrets, usual=usual)
                before, (counts, _, _) = counts, self.state(who)
                added = counts.get(own, 0) - before.get(own, 0)
                self.assertIn(added, (0, 1))
                self.assertEqual({key: value for key, value in counts.items() if key != own},
                                 {key: value for key, value in before.items() if key != own})
                if said:
                    self.assertEqual(added, 1, "something that was said to be saved is missing")
                    acknowledged.append(json.loads(said))
                self.assertTrue(said or not finished)
                outcomes["finished" if finished else "after" if added else "before"] += 1
            if number % 4 == 3:  # tries that were killed count as wrong ones until a right one
                self.program.run("sheet", "list", vault=who)
        self.assertGreater(outcomes["before"], 0, outcomes)
        self.assertGreater(outcomes["after"] + outcomes["finished"], 0, outcomes)
        return acknowledged

    def test_13_sheet_open(self):
        def command():
            return ["sheet", "open", "--procedure", "Open appendectomy", "--date", "2026-03-12"]
        said = self.writes_one_entry(OPENS, command, "ines")
        listed = {sheet["sheet"] for sheet in self.program.sheets("ines")["students"][0]["sheets"]}
        self.assertLessEqual({sheet for answer in said for sheet in answer["sheets"]}, listed)
        self.assertTrue(self.program.check(self.program.export("ines"))["verified"])

    def test_13_sheet_sign(self):
        program = self.program
        sheet = program.open_sheet("jonas")
        began = time.monotonic()
        program.sign("jonas", sheet)
        usual = time.monotonic() - began

        def command():
            return ["sheet", "sign", sheet, "--card", program.brandt, "--marks", "YYYYYYYYYA", "--yes"]
        said = self.writes_one_entry(SIGNS, command, "jonas", usual, (PASSPHRASE, "27182818"))
        history = {line["entry"] for line in program.show("jonas", sheet)["history"]}
        self.assertLessEqual({signed["entry"] for answer in said for signed in answer["signed"]}, history)
        self.assertTrue(program.check(program.export("jonas"))["verified"])

    def test_13_take(self):
        program = self.program
        student = program.student("lena", "Lena Ortiz")
        volume = volume_of(program, student)
        with Forge(program, student) as forge:
            who = forge.who()
            feed = own_feed(volume, who)
            for number in range(TAKES):
                feed.add(forge.sign, OPENED, journal_bytes.sheet_opened(number.to_bytes(16, "big"), 20000))
        counts, device, _ = self.state("anna")
        theirs, receipts = (feed.device.hex(), feed.stream.hex()), (device, feed.stream.hex())
        outcomes = {0: 0, 1: 0}
        for number in range(TAKES):
            shown = feed.copy()
            shown.entries = feed.entries[:counts.get(theirs, 0) + 1]
            path = program.write(Volume(volume.program, (), ()).replace(shown).build(), "export")
            with self.subTest(seed=SEED, number=number):
                said, _ = self.killed("take", path, vault="anna")
                before, (counts, _, _) = counts, self.state("anna")
                added = counts.get(theirs, 0) - before.get(theirs, 0)
                self.assertIn(added, (0, 1))
                self.assertEqual(counts[receipts] - before[receipts], added, "an entry without its receipt, or the reverse")
                if said:
                    self.assertEqual((json.loads(said)["new"], added), (1, 1))
                outcomes[added] += 1
            if number % 4 == 3:
                program.run("sheet", "list", vault="anna")
        self.assertGreater(min(outcomes.values()), 0, outcomes)
        self.assertTrue(program.check(program.export("anna"))["verified"])

    def test_13_vault_secret(self):
        program = self.program
        student = program.student("milo", "Milo Brandis")
        sheet = program.open_sheet(student)
        began = time.monotonic()
        program.run("vault", "secret", vault=student, secrets=(PASSPHRASE, PASSPHRASE))
        usual = time.monotonic() - began
        secret, other = PASSPHRASE, OTHER
        changed = 0
        for number in range(CHANGES):
            with self.subTest(seed=SEED, number=number):
                said, _ = self.killed("vault", "secret", vault=student, secrets=(secret, other), usual=usual)
                opened = program.run("sheet", "list", vault=student, secrets=(secret,), expect=None)
                if opened.code != 0:
                    self.assertIn("not the passphrase", opened.complaint)
                    opened = program.run("sheet", "list", vault=student, secrets=(other,))
                    secret, other, changed = other, secret, changed + 1
                else:
                    self.assertFalse(said, "a change that was said to be made is not")
                self.assertIn(sheet, opened.text)
                self.assertEqual(opened.complaint, "")
                self.assertEqual(self.state(student)[0][self.own(student)], 1)
        self.assertIn(changed, range(1, CHANGES))
        program.run("sheet", "change", sheet, "--room", "Room 1", vault=student, secrets=(secret,))

    def own(self, who):
        _, device, person = self.state(who)
        return device, person

    def test_13_a_file_that_may_not_grow(self):
        """Every write from the first to the last fails once, and once more ends the process."""
        program = self.program
        student = program.student("nora", "Nora Feld")
        for ends_the_process in (False, True):
            outcomes = set()
            for size in (0, 1024, 4096, 6000, 8300, 12400, 16500, 24700, 33000, 41000, 66000, 10**6):
                before = self.state(student)[0]
                done = program.run("sheet", "open", "--procedure", "Open appendectomy", "--date", "2026-03-12", "--json",
                                   vault=student, expect=None, file_size=size, restore_signals=ends_the_process)
                added = self.state(student)[0].get(self.own(student), 0) - before.get(self.own(student), 0)
                self.assertEqual(added, 1 if done.code == 0 else added)
                self.assertIn(added, (0, 1))
                if done.code > 0:
                    self.assertEqual((done.code, added), (3, 0), done.complaint)
                    self.assertRegex(done.complaint, r"storage failed|no space left|cannot be (opened|written)")
                outcomes.add(done.code)
                program.run("sheet", "list", vault=student)
            self.assertIn(0, outcomes)
            self.assertGreater(len(outcomes), 1)
        self.assertTrue(program.check(program.export(student))["verified"])

    def test_13_a_disk_that_is_full(self):
        program = self.program
        disk = program.path("disk")
        os.mkdir(disk)
        mounted = subprocess.run(["mount", "-t", "tmpfs", "-o", "size=512k", "full", disk], capture_output=True, check=False)
        if mounted.returncode == 0:
            self.addCleanup(subprocess.run, ["umount", "-l", disk], check=False)
        vault = os.path.join(disk, "olaf.peelvault")
        program.enroll("anna", vault, "Olaf Rehn", "student", "Spring class")
        program.give("anna", vault)
        kept = program.open_sheet(vault)
        before = self.state(vault)[0]
        filler = os.path.join(disk, "filler")
        limit = None
        if mounted.returncode == 0:
            with open(filler, "wb", buffering=0) as full:
                try:
                    while full.write(b"\0" * 1024):
                        pass
                except OSError:
                    pass
        else:
            limit = 4096  # who may not mount has a file that may not grow
        done = program.run("sheet", "open", "--procedure", "Open appendectomy", "--date", "2026-03-12", vault=vault,
                           expect=3, file_size=limit, restore_signals=False)
        self.assertRegex(done.complaint, "no space left" if limit is None else "storage failed")
        if limit is None:
            os.remove(filler)
        self.assertEqual(self.state(vault)[0], before)
        later = program.open_sheet(vault)
        self.assertEqual({sheet["sheet"] for sheet in program.sheets(vault)["students"][0]["sheets"]}, {kept, later})


if __name__ == "__main__":
    unittest.main()
