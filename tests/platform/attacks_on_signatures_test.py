"""Attacks by a modified app on the student's own phone: row 20 of the table of attacks. It cannot be prevented there; what is
tested is what somebody else finds out."""

import unittest

from program import CARD_PIN, PASSPHRASE, Program


class AttackOnSignatures(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.program = Program().set_up()
        cls.addClassCleanup(cls.program.close)

    def test_20_an_own_phone_signature_does_not_depend_on_the_students_phone(self):
        program = self.program
        key = program.json("preceptor", "phone", vault="brandt")["key"]
        program.run("preceptor", "vouch", "--name", "L. Brandt", "--key", key, vault="anna")
        program.give("anna", "ines")
        sheet, other = program.open_sheet("ines"), program.open_sheet("ines")
        request, reply = program.new_file("code"), program.new_file("code")
        program.run("sheet", "offer", sheet, "--out", request, vault="ines")
        program.run("preceptor", "sign", request, "--marks", "YYYYNYYYYA", "--preceptor", "L. Brandt", "--out", reply,
                    "--yes", vault="brandt")
        listed = program.json("preceptor", "phone", vault="brandt")
        self.assertEqual((listed["key"], [line["sheet"] for line in listed["signed"]]), (key, [sheet]))
        program.run("preceptor", "sign", request, "--marks", "YYYYYYYYYY", "--preceptor", "I. Duarte", "--out",
                    program.new_file("code"), "--yes", vault="ines", expect=2)
        signed = program.read(reply)
        mark = signed.index(bytes([4, 2]) + bytes(8) + bytes([5, 1]))
        better = program.write(signed[:mark + 1] + b"\1" + signed[mark + 2:], "code")
        program.run("sheet", "accept", sheet, better, vault="ines", expect=2)
        program.run("sheet", "accept", other, reply, vault="ines", expect=2)
        self.assertEqual(program.show("ines", sheet)["signers"], [])
        program.run("sheet", "accept", sheet, reply, vault="ines")
        program.give("ines", "anna")
        shown = program.show("anna", sheet, "ines")
        self.assertEqual((shown["strength"], shown["marks"]), ("own-phone", "YYYYNYYYYA"))

    def test_20_what_a_card_signed_is_listed_and_the_preceptor_can_say_that_it_is_not_theirs(self):
        program = self.program
        student = program.student("vera", "Vera Quist")
        mine, stolen = program.signed_sheet(student), program.signed_sheet(student)
        program.give(student, "anna")
        program.run("initial", stolen, mine, "--student", program.names[student], vault="anna")
        listed = program.json("preceptor", "statement", "L. Brandt", vault="anna")["signed"]
        theirs = {program.show("anna", name, student)["history"][1]["entry"]: name for name in (mine, stolen)}
        self.assertLessEqual(set(theirs), {line["entry"] for line in listed})
        entry = next(e for e, name in theirs.items() if name == stolen)
        kept = program.run("preceptor", "statement", "L. Brandt", "--not-mine", entry, "--keep", vault="anna")
        self.assertIn("NOT MINE", kept.text)
        program.give("anna", "bruno")
        for who in ("anna", "bruno"):
            self.assertIn("not theirs", " ".join(program.questions(who, stolen) or []))
            self.assertIsNone(program.questions(who, mine))
        again = program.json("preceptor", "statement", "L. Brandt", vault="bruno")["signed"]
        self.assertEqual([line["entry"] for line in again if line["notMine"]], [entry])
        program.run("void", stolen, "--student", program.names[student], "--reason", "the preceptor did not sign this",
                    vault="bruno")
        self.assertIsNone(program.questions("bruno", stolen))

    def sheet_at(self, student, room, start, end, site="North Campus", date="2026-03-02"):
        return self.program.json("sheet", "open", "--procedure", "Open appendectomy", "--date", date, "--site", site, "--room",
                                 room, "--start", start, "--end", end, vault=student)["sheets"][0]

    def sign_all(self, student, sheets, card):
        """Signs the sheets of one sitting with a card that the phone has heard of."""
        self.program.give("anna", student)
        self.program.run("sheet", "sign", *sheets, "--card", card, "--marks", "YYYYYYYYYA", "--yes", vault=student,
                         secrets=(PASSPHRASE, CARD_PIN))

    def asked(self, who, sheets, *words):
        """What is asked about the preceptor of these sheets, by kind; the same in the queue unless other limits are given."""
        asked = self.program.json("questions", self.program.vault(who), *words)["signers"]
        if not words:
            self.assertEqual(self.program.json("queue", vault=who)["signers"], asked)
        found = {}
        for question in asked:
            named = sorted(sheet["sheet"] for sheet in question["sheets"])
            if set(named) & set(sheets):
                found[question["kind"]] = named
        return found

    def test_20_one_card_in_two_rooms_at_once_is_a_question_until_both_are_confirmed(self):
        program = self.program
        card, _ = program.card("anna", "T. Ravel")
        first, second = program.student("olga", "Olga Brem"), program.student("piet", "Piet Sand")
        one, other, later = (self.sheet_at(first, "Room 4", "08:00", "10:00"), self.sheet_at(second, "Room 5", "09:30", "11:00"),
                             self.sheet_at(second, "Room 5", "11:00", "12:00"))
        beside = self.sheet_at(second, "Room 4", "08:00", "10:00")  # two students in one room
        for student, sheets in ((first, [one]), (second, [other, later, beside])):
            program.give("anna", student)
            for sheet in sheets:
                program.sign(student, sheet, card=card)
        program.give(first, "anna", "bruno")
        self.assertEqual(self.asked("anna", [one, other, later, beside]), {})
        program.give(second, "anna", "bruno")
        for who in ("anna", "bruno"):
            self.assertEqual(self.asked(who, [one, later]), {"overlap": sorted([one, other, beside])})
            question, = [q for q in program.json("queue", vault=who)["signers"] if q["preceptor"] == "T. Ravel"]
            self.assertTrue(question["question"].endswith("?"))
            self.assertIn({"student": "Olga Brem", "sheet": one, "date": "2026-03-02", "site": "North Campus",
                           "room": "Room 4"}, question["sheets"])
            text = program.run("queue", "--student", "Olga Brem", vault=who).text
            self.assertIn("Signed by T. Ravel", text)
            self.assertIn(f"{other}  2026-03-02  Piet Sand, North Campus, Room 5", text)
            self.assertNotIn("T. Ravel", program.run("queue", "--student", "Jonas Vale", vault=who).text)
        # It takes nothing away by itself, and nobody but staff is asked.
        self.assertEqual(program.show("anna", one, first)["standing"], "signed")
        self.assertEqual(self.asked(first, [one, other]), {})
        program.run("initial", one, "--student", "Olga Brem", "--confirmed", "--reason", "two were there", vault="anna")
        self.assertEqual(self.asked("anna", [one]), {"overlap": sorted([one, other, beside])})
        program.run("initial", other, beside, "--student", "Piet Sand", "--confirmed", "--reason", "both were there, says the board",
                    vault="anna")
        self.assertEqual(self.asked("anna", [one, other]), {})

    def test_20_a_room_that_an_instructor_put_right_is_no_question_any_more(self):
        program = self.program
        card, _ = program.card("anna", "M. Solberg")
        student = program.student("runa", "Runa Vik")
        sheets = [self.sheet_at(student, "Room 4", "08:00", "10:00"), self.sheet_at(student, "Room 5", "09:00", "09:30")]
        self.sign_all(student, sheets, card)
        program.give(student, "anna")
        self.assertEqual(self.asked("anna", sheets), {"overlap": sorted(sheets)})
        program.run("amend", sheets[1], "--room", "Room 4", "--reason", "the board says room 4", vault="anna")
        self.assertEqual(self.asked("anna", sheets), {})

    def test_20_a_card_that_signs_too_much_or_for_two_sites_within_seconds_is_a_question(self):
        program = self.program
        card, _ = program.card("anna", "K. Mori")
        student = program.student("sven", "Sven Hald")
        sheets = [self.sheet_at(student, "Room 1", f"{hour:02}:00", f"{hour:02}:40", site) for hour, site in
                  ((7, "North Campus"), (9, "North Campus"), (12, "South Campus"))]
        self.sign_all(student, sheets, card)
        program.give(student, "anna")
        self.assertEqual(self.asked("anna", sheets), {"signed-together": sorted(sheets)})
        self.assertEqual(self.asked("anna", sheets, "--day-limit", "3"), {"signed-together": sorted(sheets)})
        self.assertEqual(self.asked("anna", sheets, "--day-limit", "2"),
                         {"signed-together": sorted(sheets), "many-in-a-day": sorted(sheets)})
        text = program.run("questions", program.vault("anna"), "--day-limit", "2").text
        self.assertIn("These 3 sheets are of one day, and more than 2 are unusual", text)
        for words in (["--day-limit", "0"], ["--seconds", "soon"]):
            self.assertIn("whole number", program.run("questions", program.vault("anna"), *words, expect=2).complaint)
        program.run("void", sheets[2], "--reason", "not this student's case", vault="anna")
        self.assertEqual(self.asked("anna", sheets), {})

    def drawn(self, *words):
        """A sample as pairs of preceptor and sheet, with the seed."""
        sample = self.program.json("sample", *words, vault="anna")
        pairs = [(group["preceptor"], sheet["sheet"]) for group in sample["preceptors"] for sheet in group["sheets"]]
        self.assertEqual(len({sheet for _, sheet in pairs}), sample["sheets"])
        self.assertEqual(sorted(pairs, key=lambda pair: pair[0]), pairs)  # a preceptor is asked once about all
        return pairs, sample

    def test_20_a_sample_is_drawn_to_be_confirmed_with_preceptors_and_can_be_drawn_again(self):
        program = self.program
        card, _ = program.card("anna", "A. Quill")
        other, _ = program.card("anna", "B. Quill")
        student = program.student("tove", "Tove Lund")
        sheets = [self.sheet_at(student, "Room 20", f"{hour:02}:00", f"{hour:02}:40") for hour in range(8, 16)]
        self.sign_all(student, sheets[:4], card)
        self.sign_all(student, sheets[4:], other)
        drawn = self.sheet_at(student, "Room 1", "17:00", "17:40")  # is confirmed one by one anyway
        program.run("sheet", "sign", drawn, "--drawn", program.write(b"\1\2\3\4" * 20, "strokes"), "--marks", "YYYYYYYYYA", "--yes",
                    "--preceptor", "A. Quill", vault=student)
        program.give(student, "anna")
        ours = ["--student", "Tove Lund"]
        pairs, sample = self.drawn("--count", "3", "--seed", "7", *ours)
        self.assertEqual((sample["seed"], sample["of"], sample["sheets"]), (7, 8, 3))
        self.assertEqual(self.drawn("--count", "3", "--seed", "7", *ours), (pairs, sample))
        draws = {tuple(self.drawn("--count", "3", "--seed", str(seed), *ours)[0]) for seed in range(8)}
        self.assertGreater(len(draws), 1)
        pairs, sample = self.drawn("--count", "3", *ours)
        self.assertEqual(self.drawn("--count", "3", "--seed", str(sample["seed"]), *ours), (pairs, sample))
        self.assertIn(f"drawn with --seed {sample['seed']}.",
                      program.run("sample", "--count", "3", "--seed", str(sample["seed"]), *ours, vault="anna").text)
        everything, _ = self.drawn("--count", "100", *ours)
        self.assertEqual(dict((sheet, name) for name, sheet in everything),
                         {sheet: "A. Quill" if sheet in sheets[:4] else "B. Quill" for sheet in sheets})
        self.assertEqual(self.drawn("--from", "2026-03-03", *ours)[0], [])
        self.assertEqual(len(self.drawn("--to", "2026-03-02", *ours)[0]), 8)

        # What was confirmed, and what the preceptor has said is not theirs, is not drawn again.
        program.run("initial", sheets[0], *ours, "--confirmed", vault="anna")
        program.run("initial", sheets[1], *ours, vault="anna")
        entry = next(sheet["entry"] for sheet in sample_sheets(program.json("sample", "--count", "100", *ours, vault="anna"))
                     if sheet["sheet"] == sheets[7])
        program.run("preceptor", "statement", "B. Quill", "--not-mine", entry, "--keep", vault="anna")
        left, sample = self.drawn("--count", "100", *ours)
        self.assertEqual(sorted(sheet for _, sheet in left), sorted(sheets[1:7]))
        self.assertEqual(sample["of"], 6)
        self.assertIn("Only an instructor", program.run("sample", vault=student, expect=2).complaint)
        program.run("sample", "--count", "0", vault="anna", expect=2)


def sample_sheets(sample):
    return [sheet for group in sample["preceptors"] for sheet in group["sheets"]]


if __name__ == "__main__":
    unittest.main()
