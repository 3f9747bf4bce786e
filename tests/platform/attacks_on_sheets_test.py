"""Attacks on sheets and signatures: rows 1, 2, 3 and 6 of the table of attacks, by number."""

import datetime
import sqlite3
import time
import unittest

import journal_bytes
from forge import Forge, own_feed, volume_of
from journal_bytes import ATTESTATION, Entry
from program import Program

DAY = 86400


class AttackOnSheets(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.program = Program().set_up()
        cls.addClassCleanup(cls.program.close)

    def refusal(self, report):
        """What a take-in says about the one entry that it refused."""
        findings = [finding for finding in report["files"][0]["findings"] if finding["verdict"] == "refused"]
        self.assertEqual(len(findings), 1, report)
        return findings[0]["why"]

    # 1: a mark, the head or the feedback edited after signing

    def test_01_an_edit_in_the_app_is_an_unsigned_version_beside_the_signed_sheet(self):
        program = self.program
        sheet = program.signed_sheet("ines", "--feedback", "Calm.", marks="YYYYNYYYYA")
        before, counted = program.show("ines", sheet), program.counted("ines")
        for change in (["--marks", "YYYYYYYYYA"], ["--room", "Room 9", "--site", "South Campus"]):
            program.run("sheet", "change", sheet, *change, vault="ines")
        program.run("sheet", "change", sheet, "--feedback", "Excellent.", vault="ines", expect=2)
        after = program.show("ines", sheet)
        self.assertEqual({name for name in after if after[name] != before[name]}, {"unsignedVersion", "history"})
        self.assertEqual(after["unsignedVersion"]["marks"], "YYYYYYYYYA")
        self.assertIn("Room 9", program.run("sheet", "show", sheet, vault="ines").text)
        self.assertEqual(program.counted("ines"), counted)
        program.give("ines", "anna")
        self.assertIn("The student changed the sheet after it was signed.", program.questions("anna", sheet))
        self.assertEqual(program.show("anna", sheet, "ines")["marks"], "YYYYNYYYYA")

    def test_01_a_raw_edit_of_the_database_is_named_and_bars_writing_until_the_history_is_back(self):
        program = self.program
        student = program.student("lena", "Lena Ortiz")
        sheet = program.signed_sheet(student)
        program.give(student, "anna")
        whole = program.show(student, sheet)
        with Forge(program, student, "rows") as forge:
            row, _ = forge.row_of(ATTESTATION)
        database = sqlite3.connect(program.vault(student))
        with self.assertRaisesRegex(sqlite3.IntegrityError, "never changed"):
            database.execute("UPDATE entry SET sealed = x'00' WHERE number = ?", (row["row"],))
        with self.assertRaisesRegex(sqlite3.IntegrityError, "never removed"):
            database.execute("DELETE FROM entry WHERE number = ?", (row["row"],))
        guard, = database.execute("SELECT sql FROM sqlite_schema WHERE name = 'entry_stays'").fetchone()
        database.execute("DROP TRIGGER entry_stays")
        sealed = bytearray(database.execute("SELECT sealed FROM entry WHERE number = ?", (row["row"],)).fetchone()[0])
        sealed[100] ^= 1
        database.execute("UPDATE entry SET sealed = ? WHERE number = ?", (bytes(sealed), row["row"]))
        database.commit()
        database.close()
        self.assertIn("tables are damaged", program.run("sheet", "list", vault=student, expect=2).complaint)
        database = sqlite3.connect(program.vault(student))
        database.execute(guard)
        database.commit()
        database.close()

        listed = program.run("sheet", "list", vault=student)
        self.assertIn(f"row {row['row']} (entry {row['seq']} of feed {row['feed']})", listed.complaint)
        refused = program.run("sheet", "change", sheet, "--room", "Room 1", vault=student, expect=2)
        self.assertIn("damaged", refused.complaint)
        self.assertFalse(program.check(program.vault(student), expect=1)["verified"])
        program.give("anna", student)
        self.assertEqual(program.show(student, sheet), whole)
        # What else was in the damaged part nobody can tell, so that the phone goes on in a new feed.
        program.run("sheet", "change", sheet, "--room", "Room 1", vault=student, expect=2)
        program.enroll_again("anna", student)
        program.give("anna", student)
        program.run("sheet", "change", sheet, "--room", "Room 1", vault=student)
        self.assertEqual(program.give(student, "anna")["new"], 1)

    def test_01_rows_sealed_again_with_the_own_key_are_named_or_found_by_check_and_refused_by_the_instructor(self):
        program = self.program
        student = program.student("milo", "Milo Brandis")
        sheet = program.signed_sheet(student, marks="YYYYNYYYYA")
        volume = volume_of(program, student)
        with Forge(program, student) as forge:
            feed = own_feed(volume, forge.who())
            seq, = feed.find(ATTESTATION, sheet)
            entry = bytearray(feed.entries[seq])
            marks = bytes(entry).index(bytes([4, 2]) + bytes(8) + bytes([5, 1]))  # technique: No
            entry[marks + 1] = 1
            bodies = [bytes(entry[:-64])] + [later[:-64] for later in feed.entries[seq + 1:]]
            signed = feed.signed_anew(forge.sign, seq, bodies)
        with Forge(program, student, "rows") as forge:
            row, plain = forge.row_of(ATTESTATION)
            self.assertEqual(plain, feed.entries[seq])
            forge.ask("replace", row=row["row"], plain=entry.hex())
        self.assertIn(f"follows entry {seq}", program.run("sheet", "list", vault=student).complaint)
        self.assertFalse(program.check(program.vault(student), expect=1)["verified"])
        program.give(student, "anna")
        self.assertEqual(program.show("anna", sheet, student)["standing"], "open")

        with Forge(program, student, "rows") as forge:
            for later in range(seq, len(feed.entries)):
                forge.ask("replace", row=row["row"] + later - seq, plain=signed.entries[later].hex())
        self.assertEqual(program.run("sheet", "list", vault=student).complaint, "")
        checked = program.check(program.vault(student), expect=1)
        self.assertIn(f"Entry {seq} of device", checked["faults"][0])
        self.assertIn("does not fit", self.refusal(program.give(student, "anna")))
        self.assertEqual(program.show("anna", sheet, student)["standing"], "open")

    def test_01_an_edit_in_the_parcel_is_refused_whether_the_student_signs_it_or_not(self):
        program = self.program
        student = program.student("nora", "Nora Feld")
        sheet = program.signed_sheet(student, "--feedback", "Slow with sutures.", marks="YYYYNYYYYA")
        program.give(student, "anna")
        before = program.show("anna", sheet, student)
        volume = volume_of(program, student)
        with Forge(program, student) as forge:
            feed = own_feed(volume, forge.who())
            seq, = feed.find(ATTESTATION, sheet)
            entry = feed.entries[seq]
            mark = bytes([4, 2]) + bytes(8) + bytes([5, 1])
            edits = [entry.replace(mark, bytes([4, 1]) + mark[2:]), entry.replace(b"Room 4", b"Room 5"),
                     entry.replace(b"Slow with", b"Fast with")]
            parcels = []
            for edited in edits:
                self.assertNotEqual(edited, entry)
                plain = feed.copy()
                plain.entries[seq] = edited
                signed = feed.signed_anew(forge.sign, seq, [edited[:-64]] + [e[:-64] for e in feed.entries[seq + 1:]])
                for history in (plain, signed):
                    forged = volume_of_runs(volume, history)
                    parcels.append(forge.seal(forged))
        for parcel in parcels:
            report = program.take("anna", parcel)
            self.assertIn("does not fit", self.refusal(report))
            self.assertFalse(report["saved"])
        self.assertEqual(program.show("anna", sheet, student), before)

    # 2: signing as a preceptor

    def test_02_without_a_card_there_is_no_attestation_that_counts(self):
        program = self.program
        student = program.student("olaf", "Olaf Rehn")
        sheet = program.open_sheet(student)
        without = program.run("sheet", "sign", sheet, "--marks", "YYYYYYYYYA", "--yes", vault=student, expect=2)
        self.assertIn("How is it signed?", without.complaint)
        self.assertEqual(program.show(student, sheet)["signers"], [])

        strokes = program.write(b"\1\2\3\4" * 20, "strokes")
        own, _ = program.card(student, "L. Brandt", "31415926")
        sheets = {"drawn": program.open_sheet(student), "paper": program.open_sheet(student)}
        signing = ["--marks", "YYYYYYYYYA", "--yes", "--preceptor", "L. Brandt"]
        program.run("sheet", "sign", sheets["drawn"], "--drawn", strokes, *signing, vault=student)
        program.run("sheet", "sign", sheets["paper"], "--paper-stub", "77", *signing, vault=student)
        sheets["card-new"] = program.open_sheet(student)
        program.sign(student, sheets["card-new"], "--preceptor", "L. Brandt", card=own, pin="31415926")
        program.give(student, "anna")
        for who in (student, "anna"):
            for strength, name in sheets.items():
                self.assertEqual(program.show(who, name, student)["strength"], strength)
            program.run("sheet", "log", sheets["drawn"], "--under", "general", vault=who, expect=0 if who == student else 2)
        self.assertEqual(program.counted(student), 0)
        self.assertIn("confirm it with the preceptor", " ".join(program.questions("anna", sheets["drawn"])))

    def test_02_a_signature_made_up_for_a_known_card_is_nobodys(self):
        program = self.program
        student = program.student("pia", "Pia Storm")
        sheet = program.signed_sheet(student)
        other = program.open_sheet(student)
        volume = volume_of(program, student)
        with Forge(program, student) as forge:
            feed = own_feed(volume, forge.who())
            seq, = feed.find(ATTESTATION, sheet)
            statement, _ = journal_bytes.statement_of(Entry(feed.entries[seq]).payload)
            signer = statement.rindex(b"\2", 0, statement.rindex(b"L. Brandt") - 28 - 32)
            genuine = statement[signer + 1:signer + 33]
            key, _ = forge.sign_with(b"\7" * 32, b"")
            opened, = feed.find(journal_bytes.OPENED, other)
            sheet_id = Entry(feed.entries[opened]).sheet()
            operation = Entry(feed.entries[opened]).payload[17:33]
            at = statement.index(Entry(feed.entries[seq]).sheet())
            made_up = statement[:at - 16] + operation + sheet_id + statement[at + 16:].replace(genuine, key)
            _, signature = forge.sign_with(b"\7" * 32, made_up)
            start = len(feed.entries)
            feed.add(forge.sign, ATTESTATION, journal_bytes.attestation(made_up, signature), seconds=int(time.time()))
            forge.keep(feed, start)
        self.assertEqual(program.give(student, "anna")["files"][0]["findings"], [])
        for who in (student, "anna"):
            shown = program.show(who, other, student)
            self.assertEqual((shown["standing"], shown["signers"]), ("open", []))
            self.assertEqual(shown["history"][-1]["weight"], "aside")
        self.assertEqual(program.check(program.export("anna", "--student", program.names[student]))["aside"], 1)

    def test_02_wrong_pins_are_recorded_and_slow_down_and_no_card_of_ones_own_helps(self):
        program = self.program
        student = program.student("rosa", "Rosa Lund")
        sheet, other = program.open_sheet(student), program.open_sheet(student)
        second, _ = program.card("anna", "M. Okoro", "16180339")
        program.give("anna", student)
        own, _ = program.card(student, "Somebody", "31415926")
        for pin in ("16180339", "27182819", "27182810", "00000001"):  # the first one is the other card's
            done = program.sign(student, sheet, pin=pin, expect=2)
            self.assertIn("not the PIN of this card", done.complaint)
        program.sign(student, other, "--preceptor", "Somebody", card=own, pin="31415926")
        self.assertIn("not the PIN", program.sign(student, sheet, pin="99990001", expect=2).complaint)
        self.assertIn("wait", program.sign(student, sheet, expect=2).complaint)
        self.assertIn("wait", program.sign(student, other, card=second, pin="16180339", expect=2).complaint)
        program.give(student, "anna")
        for who in (student, "anna"):
            shown = program.show(who, sheet, student)
            self.assertEqual((shown["standing"], shown["signers"]), ("open", []))
            self.assertEqual(len([line for line in shown["history"] if "PIN" in line["what"]]), 5)
        self.assertEqual(program.counted(student), 0)

    def test_02_a_wrong_pin_of_a_card_that_the_phone_does_not_know_yet_signs_nothing_that_counts(self):
        program = self.program
        card, _ = program.card("bruno", "S. Haddad", "16180339")
        sheet = program.open_sheet("jonas")
        program.sign("jonas", sheet, "--preceptor", "S. Haddad", card=card, pin="16180330")
        self.assertEqual(program.show("jonas", sheet)["strength"], "card-new")
        program.give("bruno", "anna", "mara")
        program.give("jonas", "anna", "bruno")
        for who in ("anna", "bruno"):
            shown = program.show(who, sheet, "jonas")
            self.assertEqual((shown["standing"], shown["strength"]), ("open", ""))

    # 3: an attestation copied elsewhere

    def test_03_an_attestation_does_not_verify_for_another_sheet_student_or_program(self):
        program = self.program
        student = program.student("sami", "Sami Wolk")
        sheet = program.signed_sheet(student)
        program.give(student, "anna")
        volume = volume_of(program, student)
        with Forge(program, student) as forge:
            feed = own_feed(volume, forge.who())
            seq, = feed.find(ATTESTATION, sheet)
            genuine = Entry(feed.entries[seq]).payload
            moved = genuine.replace(Entry(feed.entries[seq]).sheet(), b"\x5a" * 16)
            parcels = [forge.seal(volume_of_runs(volume, feed.copy().add(forge.sign, ATTESTATION, moved)))]
            again = forge.seal(volume_of_runs(volume, feed.copy().add(forge.sign, ATTESTATION, genuine)))
        thief = program.student("tilo", "Tilo Marsh")
        volume = volume_of(program, thief)
        with Forge(program, thief) as forge:
            mine = own_feed(volume, forge.who())
            parcels.append(forge.seal(volume_of_runs(volume, mine.add(forge.sign, ATTESTATION, genuine))))
        for parcel, reason in zip(parcels, ("does not fit", "another student")):
            report = program.take("bruno", program.send("anna", "bruno"), parcel)
            self.assertIn(reason, self.refusal({"files": report["files"][1:]}))
        # Word for word in the same feed it says nothing more about its own sheet.
        other = Program()
        self.addCleanup(other.close)
        other.begin()
        other.enroll("mara", "ines", "Ines Duarte", "student", "Spring class")
        volume = volume_of(other, "ines")
        with Forge(other, "ines") as forge:
            who = forge.who()
            foreign = own_feed(volume, who).add(forge.sign, ATTESTATION, genuine)
            parcel = forge.seal(volume_of_runs(volume, foreign))
        self.assertIn("another program", self.refusal(other.take("mara", parcel)))
        counted = program.counted("anna")
        program.take("anna", again)
        self.assertEqual(program.counted("anna"), counted)

    # 6: a sheet dated back

    def test_06_a_sheet_dated_back_between_receipts_is_a_question_with_the_bounds(self):
        program = self.program
        student = program.student("ulla", "Ulla Berg")
        program.signed_sheet(student)
        program.give(student, "anna")
        program.give("anna", student)
        long_ago = datetime.date.today() - datetime.timedelta(days=40)
        honest_clock = program.open_sheet(student, date=long_ago.isoformat())
        volume = volume_of(program, student)
        with Forge(program, student) as forge:
            feed = own_feed(volume, forge.who())
            cites = Entry(feed.entries[feed.find(journal_bytes.OPENED, honest_clock)[0]]).cites
            self.assertEqual(len(cites), 84)
            start = len(feed.entries)
            day = (long_ago - datetime.date(1970, 1, 1)).days
            feed.add(forge.sign, journal_bytes.OPENED, journal_bytes.sheet_opened(b"\x66" * 16, day),
                     seconds=int(time.time()) - 40 * DAY, cites=cites)
            forge.keep(feed, start)
        program.give(student, "anna")
        waiting = [s for s in program.json("queue", vault="anna")["students"] if s["student"] == "Ulla Berg"]
        times = waiting[0]["times"]
        self.assertEqual([t["sheet"] for t in times], [honest_clock] + ["66" * 4] * 3)
        self.assertEqual(sum("well before that receipt" in t["question"] for t in times), 2)
        self.assertTrue(any("set back" in t["question"] for t in times))
        for question in times:
            self.assertTrue("2" < question["after"] <= question["before"], question)
        text = program.run("queue", vault="anna").text
        self.assertIn("It came after a receipt of " + times[0]["after"], text)
        self.assertIn("It was received by " + times[0]["before"], text)
        self.assertEqual(program.show("anna", "66" * 4, student)["history"][0]["weight"], "counts")


def volume_of_runs(volume, feed):
    """The volume with this history of the student's instead, and without a stated head of it."""
    other = journal_bytes.Volume(volume.program, volume.certificates, volume.heads, volume.runs)
    return other.replace(feed).without_heads_of(feed)


if __name__ == "__main__":
    unittest.main()
