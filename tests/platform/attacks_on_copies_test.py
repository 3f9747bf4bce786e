"""Copies, backups, lost phones and wrong clocks: rows 14, 15, 16 and 17 of the table of attacks, by number."""

import os
import shutil
import time
import unittest

import journal_bytes
from forge import Forge, own_feed, volume_of
from journal_bytes import OPENED, RECEIPT, Volume
from program import CARD_PIN, PASSPHRASE, Program

YEAR = 365 * 86400


def put_back(program, who, backup):
    """The backup's bytes in the same file: the same inode, so that the install mark still fits."""
    with open(program.vault(who), "r+b") as file:
        file.write(backup)
        file.truncate()


class AttackWithCopies(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.program = Program().set_up()
        cls.addClassCleanup(cls.program.close)

    # 14: backups, copies, clones, two at once

    def test_14_a_copy_on_another_device_can_be_read_with_its_code_and_cannot_sign(self):
        program = self.program
        student = program.student("lena", "Lena Ortiz")
        sheet = program.signed_sheet(student)
        shutil.copy(program.vault(student), program.vault("copy"))
        program.names["copy"], program.codes["copy"] = program.names[student], program.codes[student]
        for home in (None, program.path("other-device")):
            if home:
                program.homes["copy"] = home
            self.assertIn("vault code", program.run("sheet", "list", vault="copy", expect=2).complaint)
        answer = program.json("vault", "secret", "--code", vault="copy", secrets=(program.codes["copy"], PASSPHRASE))
        self.assertFalse(answer["signs"])
        self.assertEqual(program.show("copy", sheet), program.show(student, sheet))
        for words in (["sheet", "open", "--procedure", "Open appendectomy", "--date", "2026-03-12"],
                      ["sheet", "withdraw", sheet, "--reason", "entered twice"]):
            self.assertIn("cannot sign", program.run(*words, vault="copy", expect=2).complaint)
        self.assertIn("cannot sign", program.sign("copy", sheet, expect=2).complaint)
        program.run("send", "--out", program.new_file("peelparcel"), vault="copy")  # reading goes on
        program.enroll_again("anna", student, vault="copy")
        program.give("anna", "copy")
        later = program.signed_sheet("copy")
        program.give("copy", "anna")
        for name in (sheet, later):
            self.assertEqual(program.show("anna", name, student)["standing"], "signed")
        # The phone that it was copied from still signs; both records go on side by side without a split.
        self.assertEqual(program.sign(student, program.open_sheet(student)).code, 0)
        self.assertEqual(program.give(student, "anna")["forks"], [])

    def test_14_a_code_that_opens_a_copy_beside_the_original_leaves_the_original_its_keys(self):
        program = self.program
        student = program.student("milo", "Milo Brandis")
        program.open_sheet(student)
        shutil.copy(program.vault(student), program.vault("beside"))
        program.json("vault", "secret", "--code", vault="beside", secrets=(program.codes[student], PASSPHRASE))
        program.open_sheet(student)
        self.assertEqual(len(program.sheets("beside")["students"][0]["sheets"]), 1)

    def test_14_a_restored_backup_or_a_clone_is_found_at_the_next_exchange(self):
        program = self.program
        student = program.student("nora", "Nora Feld")
        program.signed_sheet(student)
        program.give(student, "anna")
        backup = program.read(program.vault(student))
        lost = program.signed_sheet(student)
        program.give(student, "anna")
        put_back(program, student, backup)
        self.assertIn("no sheet", program.run("sheet", "show", lost, vault=student, expect=2).complaint)
        other = program.open_sheet(student)  # nothing on this phone can know yet
        report = program.give(student, "anna")
        self.assertEqual([fork["whose"] for fork in report["forks"]], ["Nora Feld"])
        told = program.give("anna", student)
        self.assertTrue(told["ownRecordSplit"])
        self.assertIn("often after a restore", program.run("take", program.send("anna", student), vault=student).text)
        for words in (["sheet", "change", other, "--room", "Room 2"], ["sheet", "withdraw", other, "--reason", "twice"]):
            self.assertIn("split", program.run(*words, vault=student, expect=2).complaint)
        self.assertIn("split", program.sign(student, other, expect=2).complaint)
        for name in (lost, other):
            for who in ("anna", student):
                self.assertEqual(program.show(who, name, student)["history"][0]["weight"], "aside")
        program.enroll_again("anna", student)
        program.give("anna", student)
        later = program.signed_sheet(student)
        self.assertEqual(program.give(student, "anna")["forks"], [])
        self.assertEqual(program.show("anna", later, student)["standing"], "signed")
        self.assertTrue(program.check(program.export("anna"))["verified"])

    def test_14_a_restored_phone_that_hears_first_stops_before_it_signs_anything_twice(self):
        program = self.program
        student = program.student("olaf", "Olaf Rehn")
        program.signed_sheet(student)
        backup = program.read(program.vault(student))
        lost = program.signed_sheet(student)
        program.give(student, "anna")
        put_back(program, student, backup)
        told = program.give("anna", student)
        self.assertEqual((told["ownRecordSplit"], told["forks"]), (True, []))
        self.assertEqual(program.show(student, lost)["standing"], "signed")
        self.assertIn("split", program.run("sheet", "change", lost, "--room", "Room 2", vault=student, expect=2).complaint)
        program.enroll_again("anna", student)
        program.give("anna", student)
        program.run("sheet", "change", lost, "--room", "Room 2", vault=student)
        report = program.give(student, "anna")
        self.assertEqual((report["new"], report["forks"]), (1, []))
        self.assertIn("The student changed the sheet after it was signed.", program.questions("anna", lost))

    def test_14_a_second_instance_on_one_vault_is_refused(self):
        program = self.program
        sheet = program.open_sheet("ines")
        first = program.start("sheet", "sign", sheet, "--card", program.brandt, "--marks", "YYYYYYYYYA", vault="ines",
                              keep_open=True)
        self.assertIn("You sign", first.stdout.readline().decode())
        for words in (["sheet", "list"], ["sheet", "change", sheet, "--room", "Room 1"]):
            self.assertIn("Another Peelpack has this vault open", program.run(*words, vault="ines", expect=None).complaint)
        os.write(program.secrets, f"yes\n{CARD_PIN}\n".encode())
        os.close(program.secrets)
        first.communicate()
        self.assertEqual(first.returncode, 0)
        self.assertEqual(program.show("ines", sheet)["standing"], "signed")

    # 15: an instructor's device from an old backup

    def test_15_a_restored_instructor_recovers_from_the_students_before_signing_any_receipt(self):
        program = self.program
        program.enroll("mara", "carla", "Carla Dietz", "instructor", "Spring class")
        program.give("mara", "anna", "carla")
        program.give("anna", "carla")
        student = program.student("pia", "Pia Storm")
        program.give("anna", "carla")
        backup = program.read(program.vault("carla"))
        program.give("anna", student)
        sheet = program.signed_sheet(student)
        program.give(student, "carla")
        program.run("initial", sheet, "--student", "Pia Storm", vault="carla")
        program.give("carla", student)
        whole = program.show(student, sheet)
        self.assertEqual((whole["standing"], program.sheets(student)["onlyHere"]), ("initialed", 0))
        program.signed_sheet(student)

        put_back(program, "carla", backup)
        report = program.give(student, "carla")
        self.assertEqual((report["ownRecordSplit"], report["receipts"], report["forks"]), (True, 0, []))
        self.assertEqual(program.show("carla", sheet, student), whole)
        refused = program.run("return", sheet, "--reason", "x", "--student", "Pia Storm", vault="carla", expect=2)
        self.assertIn("split", refused.complaint)
        self.assertEqual(program.give(student, "carla")["receipts"], 0)
        program.enroll_again("mara", "carla")
        program.give("mara", "anna", "carla")
        program.give("anna", student)
        program.open_sheet(student)
        report = program.give(student, "carla")
        self.assertEqual((report["receipts"], report["ownRecordSplit"]), (1, False))
        program.give("carla", student)
        self.assertEqual(program.sheets(student)["onlyHere"], 0)
        self.assertEqual(program.give("carla", "anna")["forks"], [])

    def test_15_a_new_device_of_an_instructor_signs_no_receipt_before_it_has_what_the_old_one_wrote(self):
        program = self.program
        student = program.student("rosa", "Rosa Lund")
        program.enroll("mara", "dora", "Dora Voss", "instructor", "Spring class")
        program.give("mara", "dora", "anna")
        program.give("anna", "dora", "mara")
        program.signed_sheet(student)
        program.give("anna", student)
        program.give("mara", "anna")
        program.give("anna", student)
        program.give(student, "dora")
        program.give("dora", student)
        program.enroll_again("mara", "dora", vault="dora2")
        program.give("mara", "anna")
        program.give("anna", student)
        program.give("anna", "dora2")
        volume = volume_of(program, student)
        with Forge(program, "dora") as forge:
            old = forge.who()["device"]
        stream = bytes.fromhex(program.sheets(student)["students"][0]["id"])
        self.assertTrue(volume.feed(old, stream).find(RECEIPT))
        with Forge(program, student) as forge:
            without = forge.seal(Volume(volume.program, volume.certificates, volume.heads,
                                        [run for run in volume.runs if (run[0], run[1]) != (old, stream)]))
        held = program.run("take", without, vault="dora2")
        self.assertIn("No receipt for Rosa Lund", held.text)
        program.open_sheet(student)
        report = program.give(student, "dora2")
        self.assertEqual(report["receipts"], 1)

    # 16: wrong clocks

    def test_16_a_clock_that_is_ten_years_off_or_steps_back_changes_nothing_but_a_question(self):
        program = self.program
        student, honest = program.student("sami", "Sami Wolk"), program.student("tilo", "Tilo Marsh")
        now = int(time.time())
        day = now // 86400
        offsets = {"right": [0, 1, 2], "wrong": [10 * YEAR, -10 * YEAR, 3600]}
        for who, claimed in ((honest, offsets["right"]), (student, offsets["wrong"])):
            program.signed_sheet(who)
            volume = volume_of(program, who)
            with Forge(program, who) as forge:
                feed = own_feed(volume, forge.who())
                start = len(feed.entries)
                for number, offset in enumerate(claimed):
                    feed.add(forge.sign, OPENED, journal_bytes.sheet_opened(bytes([number + 1]) * 16, day),
                             seconds=now + offset, zone=(-300, 60, 0)[number])
                forge.keep(feed, start)
            parcels = [program.send(who)]
            program.signed_sheet(who)
            parcels.append(program.send(who))
            program.take("anna", *parcels)
            for parcel in reversed(parcels):
                program.take("bruno", parcel)
            self.assertEqual([len(program.sheets(taker, who)["students"][0]["sheets"]) for taker in ("anna", "bruno")], [5, 5])
            self.assertEqual(program.counted(who), 2)
        outcome = [[(s["standing"], s["marks"]) for s in program.sheets("anna", who)["students"][0]["sheets"]]
                   for who in (student, honest)]
        self.assertEqual(sorted(outcome[0]), sorted(outcome[1]))
        asked = {s["student"]: s["times"] for s in program.json("queue", vault="bruno")["students"]}
        self.assertEqual(asked["Tilo Marsh"], [])
        questions = {q["question"] for q in asked["Sami Wolk"]}
        self.assertTrue(any("set back" in q for q in questions) and any("after the receipt" in q for q in questions))
        # An instructor's clock may be wrong as well: receipts are taken all the same.
        program.open_sheet(student)
        with Forge(program, "bruno") as forge:
            report = forge.ask("take", now=now - 10 * YEAR, files=[program.send(student)])
        self.assertEqual((report["new"], report["receipts"]), (1, 1))
        program.exchange("anna", "bruno", "mara")
        exports = [program.read(program.export(who)) for who in ("anna", "bruno", "mara")]
        self.assertEqual([one == exports[0] for one in exports], [True] * 3)
        self.assertTrue(program.check(program.write(exports[0], "export"))["verified"])
        program.give("bruno", student)
        self.assertEqual(program.sheets(student)["onlyHere"], 0)

    # 17: a phone lost before anything was sent

    def test_17_what_is_only_on_the_phone_was_always_in_sight(self):
        program = self.program
        student = program.student("ulla", "Ulla Berg")

        def in_sight():
            text = program.run("sheet", "list", vault=student).text
            count = program.sheets(student)["onlyHere"]
            self.assertIn("Everything is with your instructor." if count == 0 else f"{count} entr", text)
            self.assertEqual("only on this device" in text, count > 0)
            return count

        self.assertEqual(in_sight(), 0)
        sheet = program.open_sheet(student)
        self.assertEqual(in_sight(), 1)
        program.sign(student, sheet)
        self.assertEqual(in_sight(), 2)
        program.run("sheet", "log", sheet, "--under", "general", vault=student)
        parcel = program.send(student)
        self.assertEqual(in_sight(), 3)
        program.take("anna", parcel)
        self.assertEqual(in_sight(), 3)  # until the receipt is here
        program.give("anna", student)
        self.assertEqual(in_sight(), 0)
        lost = program.open_sheet(student)
        self.assertEqual(in_sight(), 1)
        # Lost: a new phone has all that was received, and not that one sheet.
        program.run("enroll", "end", "Ulla Berg", "--reason", "phone lost", vault="anna")
        program.enroll_again("anna", student, vault="ulla2")
        program.give("anna", "ulla2")
        listed = program.sheets("ulla2")
        self.assertEqual([s["sheet"] for s in listed["students"][0]["sheets"]], [sheet])
        self.assertEqual(listed["onlyHere"], 0)
        program.run("sheet", "show", lost, vault="ulla2", expect=2)


if __name__ == "__main__":
    unittest.main()
