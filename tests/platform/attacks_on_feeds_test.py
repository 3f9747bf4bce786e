"""Attacks on whole records: rows 4, 5, 7 and 8 of the table of attacks, by number."""

import time
import unittest

import journal_bytes
from forge import Forge, own_feed, volume_of
from journal_bytes import GRANT, OPENED, Entry, Volume
from program import Program

DAY = 86400


class AttackOnFeeds(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.program = Program().set_up()
        cls.addClassCleanup(cls.program.close)

    def not_counted(self, standing):
        """How many entries are "aside" or "refused" in everything that Anna has."""
        return self.program.check(self.program.export("anna"))[standing]

    # 4: a sheet or the end of a record left out

    def test_04_an_end_cut_off_after_a_receipt_is_proven_by_take_and_by_check(self):
        program = self.program
        student = program.student("lena", "Lena Ortiz")
        program.signed_sheet(student)
        unwelcome = program.signed_sheet(student, marks="NNNNNNNNNA")
        program.give(student, "anna")
        program.give("anna", "bruno")
        volume = volume_of(program, student)
        with Forge(program, student) as forge:
            feed = own_feed(volume, forge.who())
            feed.entries = feed.entries[:3]
            parcel = forge.seal(volume.replace(feed))
        for who in ("anna", "bruno"):
            older, = program.take(who, parcel)["older"]
            self.assertEqual((older["whose"], older["received"], older["shown"], older["rewritten"]),
                             ("Lena Ortiz", 6, 3, False))
            self.assertEqual(program.show(who, unwelcome, student)["standing"], "signed")
        self.assertIn("its end was cut off", program.run("take", parcel, vault="anna").text)
        whole = volume_of(program, "anna")
        for shown in (whole.replace(feed), whole.without_heads_of(feed)):
            checked = program.check(program.write(shown.build(), "export"), expect=1)
            self.assertTrue(any("cut off" in fault for fault in checked["faults"]), checked)
        self.assertEqual(program.give(student, "bruno")["older"], [])  # Anna's own record has gone on since, and that is no cut
        # An older export beside a newer one is no cut: everything is there.
        older = program.export(student)
        program.signed_sheet(student)
        program.give(student, "anna")
        program.check(older, program.export("anna"))

    def test_04_a_sheet_left_out_of_the_middle_does_not_fit_or_is_another_history(self):
        program = self.program
        student = program.student("milo", "Milo Brandis")
        unwelcome = program.signed_sheet(student, marks="NNNNNNNNNA")
        program.signed_sheet(student)
        program.give(student, "anna")
        volume = volume_of(program, student)
        with Forge(program, student) as forge:
            feed = own_feed(volume, forge.who())
            left = [entry for entry in feed.entries if not Entry(entry).sheet().hex().startswith(unwelcome)]
            plain = feed.copy()
            plain.entries = left
            spliced = forge.seal(Volume(volume.program, volume.certificates, [], [[feed.device, feed.stream, 0, left]]))
            signed = feed.signed_anew(forge.sign, 0, [entry[:-64] for entry in left + left])
            other = forge.seal(Volume(volume.program, volume.certificates).replace(signed))
        report = program.take("anna", spliced)
        self.assertEqual([(f["verdict"], f["entry"]) for f in report["files"][0]["findings"]], [("refused", 0)])
        self.assertFalse(report["saved"])
        shown = volume_of(program, "anna").replace(signed)
        checked = program.check(program.write(shown.build(), "export"), expect=1)
        self.assertTrue(any("another stands at its place" in fault for fault in checked["faults"]), checked)
        report = program.take("anna", other)
        self.assertEqual([(f["whose"], f["entry"]) for f in report["forks"]], [("Milo Brandis", 0)])
        self.assertTrue(program.show("anna", unwelcome, student)["history"])

    # 5: two histories on purpose

    def test_05_two_histories_give_evidence_of_at_most_300_bytes_and_both_are_kept(self):
        program = self.program
        student = program.student("nora", "Nora Feld")
        sheet = program.signed_sheet(student)
        program.give(student, "anna")
        program.give("anna", "bruno")
        volume = volume_of(program, student)
        with Forge(program, student) as forge:
            feed = own_feed(volume, forge.who())
            start, day = len(feed.entries), int(time.time()) // DAY
            histories = [feed.copy().add(forge.sign, OPENED, journal_bytes.sheet_opened(bytes([number]) * 16, day),
                                         seconds=int(time.time())) for number in (0xA1, 0xB2)]
            parcels = [forge.seal(volume.replace(history)) for history in histories]
            forge.keep(histories[0], start)
        self.assertEqual(program.take("anna", parcels[0])["forks"], [])
        self.assertEqual(program.take("bruno", parcels[1])["forks"], [])
        evidence = set()
        for sender, taker in (("anna", "bruno"), ("bruno", "anna"), ("anna", "bruno")):
            for fork in program.give(sender, taker)["forks"]:
                self.assertEqual((fork["whose"], fork["entry"]), ("Nora Feld", start))
                evidence.add(fork["evidence"])
        self.assertEqual(len(evidence), 1)
        self.assertLessEqual(len(evidence.copy().pop()) // 2, 300)
        both = [[run for run in volume_of(program, who).runs if run[0] == feed.device] for who in ("anna", "bruno")]
        self.assertEqual(both[0], both[1])
        export = program.export("anna")
        checked = program.check(export)
        self.assertIn(evidence.pop(), [fork["evidence"] for fork in checked["forks"]])
        for history, number in zip(histories, ("a1", "b2")):
            self.assertIn(history.entries[start], program.read(export))
            self.assertEqual(program.show("anna", number * 4, student)["history"][0]["weight"], "aside")
        self.assertEqual(program.show("anna", sheet, student)["standing"], "signed")
        # One version is admitted with a reason; the student stops and goes on in a new feed.
        entry = program.show("anna", "b2" * 4, student)["history"][0]["entry"]
        program.run("admit", entry, vault="anna", expect=2)
        program.run("admit", entry, "--reason", "compared with the student", vault="anna")
        self.assertEqual(program.show("anna", "b2" * 4, student)["history"][0]["weight"], "counts")
        self.assertTrue(program.give("anna", student)["ownRecordSplit"])
        self.assertIn("split", program.run("sheet", "change", sheet, "--room", "Room 2", vault=student, expect=2).complaint)
        program.enroll_again("anna", student)
        program.give("anna", student)
        later = program.signed_sheet(student)
        self.assertEqual(program.give(student, "anna")["new"], 3)
        self.assertEqual(program.show("anna", later, student)["standing"], "signed")

    # 7: somebody else's words, a role for oneself, another program's grant

    def test_07_entries_of_another_student_signed_again_as_ones_own(self):
        program = self.program
        victim, thief = program.student("olaf", "Olaf Rehn"), program.student("pia", "Pia Storm")
        sheet = program.signed_sheet(victim)
        program.give(victim, "anna")
        whole = program.show("anna", sheet, victim)
        volume = volume_of(program, victim)
        with Forge(program, victim) as forge:
            theirs = own_feed(volume, forge.who())
        with Forge(program, thief) as forge:
            who = forge.who()
            stolen = journal_bytes.Feed(volume.program, who["device"], theirs.stream)
            renamed = forge.seal(Volume(volume.program, (), (), [[who["device"], theirs.stream, 0, theirs.entries]]))
            for entry in map(Entry, theirs.entries):
                stolen.add(forge.sign, entry.kind, entry.payload)
            signed = forge.seal(Volume(volume.program).replace(stolen))
            mine = journal_bytes.Feed(volume.program, who["device"], who["person"])
            for entry in map(Entry, theirs.entries):
                mine.add(forge.sign, entry.kind, entry.payload)
            in_own = forge.seal(Volume(volume.program).replace(mine).without_heads_of(mine))
        self.assertEqual(program.take("anna", renamed)["new"], 0)
        refused = self.not_counted("refused")
        program.take("anna", signed)
        self.assertEqual(self.not_counted("refused") - refused, 3)
        after = program.show("anna", sheet, victim)
        self.assertEqual({name for name in after if after[name] != whole[name]}, {"history"})
        self.assertEqual([line["weight"] for line in after["history"]].count("refused"), 3)
        finding, = program.take("anna", in_own)["files"][0]["findings"]
        self.assertEqual((finding["verdict"], finding["entry"]), ("refused", 1))
        self.assertEqual(program.show("anna", sheet, thief)["standing"], "open")

    def test_07_a_student_grants_themself_a_role(self):
        program = self.program
        student = program.student("rosa", "Rosa Lund")
        people = program.json("program", "show", vault="anna")["people"]
        sheet = program.signed_sheet(student)
        volume = volume_of(program, student)
        with Forge(program, student) as forge:
            who = forge.who()
            grant = journal_bytes.grant(who["person"], 1, who["device"], b"\x09" + bytes(31), "Rosa Lund")
            feed = journal_bytes.Feed(volume.program, who["device"], who["programStream"])
            feed.add(forge.sign, GRANT, grant)
            acts = own_feed(volume, who)
            about = acts.link(len(acts.entries))[0]
            sheet_id = Entry(acts.entries[0]).sheet()
            start = len(acts.entries)
            acts.add(forge.sign, journal_bytes.INITIAL, journal_bytes.act(sheet_id, bytes(32), about, "") + b"\1")
            acts.add(forge.sign, journal_bytes.AMEND, journal_bytes.amendment(sheet_id, about, "I did it.", mark=1))
            forge.keep(feed, 0)
            forge.keep(acts, start)
        refused = self.not_counted("refused")
        report = program.give(student, "anna")
        self.assertEqual(report["files"][0]["findings"], [])
        self.assertEqual(self.not_counted("refused") - refused, 3)
        self.assertEqual(program.json("program", "show", vault="anna")["people"], people)
        for who in ("anna", student):
            shown = program.show(who, sheet, student)
            self.assertEqual((shown["standing"], shown["marks"], shown["original"]), ("signed", "YYYYYYYYYA", None))
            self.assertEqual([line["weight"] for line in shown["history"][3:]], ["refused", "refused"])
        self.assertEqual(program.counted(student, "initialed"), 0)
        # Nor does a certificate help that somebody else's key has signed.
        with Forge(program, student) as forge:
            certificate = bytearray(volume.certificates[0])
            certificate[-64:] = forge.sign(b"peelpack cert 1\n" + volume.program + bytes(certificate[:-64]))
            parcel = forge.seal(Volume(volume.program, [bytes(certificate)]))
        self.assertFalse(program.take("anna", parcel, expect=2)["files"][0]["used"])

    def test_07_a_grant_replayed_from_another_program(self):
        program = self.program
        other = Program()
        self.addCleanup(other.close)
        other.begin("mara", "Somebody Else")
        other.enroll("mara", "ines", "Ines Duarte", "student", "Spring class")
        volume = volume_of(other, "mara")
        self.assertIn("another program", program.take("anna", other.write(volume.build(), "export"), expect=2)["files"][0]["whyNot"])
        people = program.json("program", "show", vault="anna")["people"]
        volume.program = bytes.fromhex(program.id)
        self.assertFalse(program.take("anna", program.write(volume.build(), "export"), expect=2)["files"][0]["used"])
        alone = Volume(volume.program, (), (), volume.runs)
        report = program.take("anna", program.write(alone.build(), "export"))
        self.assertEqual({f["verdict"] for f in report["files"][0]["findings"]}, {"refused"})
        self.assertEqual((report["new"], report["saved"]), (0, False))
        self.assertEqual(program.json("program", "show", vault="anna")["people"], people)

    # 8: a device or card that was ended

    def test_08_what_an_ended_phone_writes_on_or_predates_is_aside(self):
        program = self.program
        student = program.student("sami", "Sami Wolk")
        before = program.signed_sheet(student)
        program.give(student, "anna")
        program.run("enroll", "end", program.names[student], vault="anna", expect=2)
        ended = program.json("enroll", "end", program.names[student], "--reason", "phone lost", vault="anna")["ended"]
        self.assertEqual([one["accepted"] for one in ended], [3])
        after = program.signed_sheet(student)
        volume = volume_of(program, student)
        with Forge(program, student) as forge:
            feed = own_feed(volume, forge.who())
            start, then = len(feed.entries), int(time.time()) - 30 * DAY
            feed.add(forge.sign, OPENED, journal_bytes.sheet_opened(b"\x77" * 16, then // DAY), seconds=then)
            forge.keep(feed, start)
        aside = self.not_counted("aside")
        program.give(student, "anna")
        self.assertEqual(self.not_counted("aside") - aside, 4)
        self.assertEqual([line["weight"] for line in program.show("anna", before, student)["history"]], ["counts"] * 3)
        for name in (after, "77" * 4):
            for line in program.show("anna", name, student)["history"]:
                self.assertEqual(line["weight"], "aside")
        self.assertEqual((program.show("anna", after, student)["signers"], program.questions("anna", after)), ([], None))
        # The new phone goes on where the old one was, and what was lost is entered again.
        program.enroll_again("anna", student, vault="sami2")
        program.give("anna", "sami2")
        self.assertEqual(program.show("sami2", before)["standing"], "signed")
        later = program.signed_sheet("sami2")
        program.give("sami2", "anna")
        self.assertEqual(program.show("anna", later, student)["standing"], "signed")

    def test_08_what_an_ended_card_signs_is_aside(self):
        program = self.program
        student = program.student("tilo", "Tilo Marsh")
        card, _ = program.card("anna", "M. Okoro", "16180339")
        program.give("anna", student)
        before = program.signed_sheet(student, card=card, pin="16180339")
        program.give(student, "anna")
        program.run("preceptor", "end", "M. Okoro", vault="anna", expect=2)
        program.run("preceptor", "end", "M. Okoro", "--reason", "card lost", vault="anna")
        after = program.signed_sheet(student, card=card, pin="16180339")  # the phone has not heard of it
        program.give(student, "anna")
        self.assertEqual(program.show("anna", before, student)["standing"], "signed")
        shown = program.show("anna", after, student)
        self.assertEqual((shown["standing"], shown["signers"]), ("open", []))
        self.assertIn("aside", [line["weight"] for line in shown["history"]])
        program.give("anna", student)
        self.assertIn("revoked", program.sign(student, after, card=card, pin="16180339", expect=2).complaint)


if __name__ == "__main__":
    unittest.main()
