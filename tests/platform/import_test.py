"""An earlier paper log, imported into a class's journal: through the commands on real vaults. What is refused, what happens the
second time, that a sheet counts only once it is initialed, and what both verifiers say of it."""

import csv
import io
import json
import os
import re
import subprocess
import unittest

from program import PASSPHRASE, Program, Unexpected, small_set

HERE = os.path.dirname(os.path.abspath(__file__))
SOURCE = "paper log of spring, page "
WORDS = "imported, not attested"
COLUMNS = ("sheet date student procedure categories verify setup counts pass technique sponge suction cut retract camera operation "
           "one_pathology surgeon site room start end preceptor credential feedback canceled attested initialed imported role").split()
LAP = "Laparoscopic cholecystectomy"


class Import(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.program = program = Program()
        cls.addClassCleanup(program.close)
        cls.set_file = program.write(json.dumps(small_set("small", 20, 10)).encode(), "json")
        program.begin(requirement_set=cls.set_file)
        program.enroll("mara", "anna", "Anna Weiss", "instructor", "Spring class")
        program.give("mara", "anna")
        for who, name in (("ines", "Ines Duarte"), ("jonas", "Jonas Vale")):
            program.enroll("anna", who, name, "student", "Spring class")
            program.give("anna", who)
        cls.day = 0

    def setUp(self):
        Import.day += 1  # each test has its own day, and says from where
        self.date = f"2026-02-{self.day:02}"
        self.source = f"{SOURCE}{self.day}"

    def row(self, sheet, student, procedure=LAP, **cells):
        return {"sheet": sheet, "date": self.date, "student": student, "procedure": procedure, "imported": "Y", "role": "first", **cells}

    def file(self, *rows):
        text = io.StringIO()
        writer = csv.DictWriter(text, COLUMNS)
        writer.writeheader()
        writer.writerows(rows)
        return self.program.write(text.getvalue().encode(), "csv")

    def imports(self, file, *words, who="anna", source=None, expect=0):
        return self.program.run("import", self.program.vault(who), file, "--source", source or self.source, "--json", *words, expect=expect)

    def one(self, student="Ines Duarte", **cells):
        """The short id of one sheet that was imported just now."""
        return self.imports(self.file(self.row("p1", student, **cells))).json["imported"][0]["sheet"]

    def case(self, sheet, level):
        """What the tally says of a sheet: whether it counts, else why not. The set is none of the shipped ones."""
        students = self.program.json("tally", self.program.vault("anna"), "--level", level, "--set", self.set_file)["students"]
        cases = {case["sheet"]: case for student in students for case in student["best"]["cases"]}
        return True if cases[sheet]["target"] else cases[sheet]["why"]

    def test_a_class_is_imported_and_what_does_not_fit_is_named_by_line_column_and_mend(self):
        file = self.file(
            self.row("p1", "  ines DUARTE", preceptor="L. Brandt", credential="CST", site="North Campus", start="07:30"),
            self.row("p1", "  ines DUARTE", "Laparoscopic appendectomy", preceptor="L. Brandt", credential="CST", site="North Campus"),
            self.row("p2", "Jonas Vale", role="second"),
            self.row("p3", "Nobody Known"),
            self.row("p4", "Jonas Vale", imported="", role="", **{c: "Y" for c in COLUMNS[5:15]}),
            self.row("p5", "Jonas Vale", attested="card"),
            self.row("p6", "Jonas Vale", initialed="2026-02-09"),
            self.row("p7", "Jonas Vale", verify="Y"),
            self.row("p8", "Jonas Vale", role=""),
            self.row("p9", "Jonas Vale", "Quite unheard of"),
            self.row("p9", "Jonas Vale", "Laparoscopic appendectomy"),
            self.row("p10", "Jonas Vale", site="MRN 445566"),
            self.row("p11", "Jonas Vale", feedback="Calm."))
        answer = self.imports(file, expect=2).json
        self.assertEqual([(one["student"], one["line"], one["procedures"]) for one in answer["imported"]],
                         [("Ines Duarte", 2, [LAP, "Laparoscopic appendectomy"]), ("Jonas Vale", 4, [LAP])])
        refused = [(one["line"], one["column"]) for one in answer["refused"]]
        self.assertEqual(refused, [(5, "student"), (6, "imported"), (7, "attested"), (8, "initialed"), (9, "imported"), (10, "role"),
                                   (11, "procedure"), (13, "site"), (14, "feedback")])
        for one in answer["refused"]:
            self.assertTrue(one["reason"] and one["mend"], one)
        self.assertIn('all of sheet "p9" is refused', answer["refused"][6]["reason"])
        plain = self.program.run("import", self.program.vault("anna"), file, "--source", "another", expect=2)
        self.assertIn(f"{file}, line 5, column student: refused: no student of this name is enrolled; ", plain.complaint)
        self.assertIn("9 refusals of 13 rows; the rest is imported.", plain.complaint)
        self.assertIn("Ines Duarte: 1 sheet imported.", plain.text)
        shown = self.program.show("anna", answer["imported"][0]["sheet"], "ines")
        self.assertEqual((shown["standing"], shown["strength"], shown["role"], shown["marks"]), ("imported", "", "first", "-" * 10))
        self.assertEqual(shown["imported"], {"source": self.source, "by": "Anna Weiss", "preceptor": "L. Brandt", "credential": "CST"})
        self.assertEqual(shown["categories"], ["general", "general"])
        self.assertEqual(shown["signers"], [])

    def test_a_file_without_marks_needs_no_column_of_them_and_says_what_it_needs(self):
        def bare(columns, *rows):
            return self.program.write("\n".join([",".join(columns), *rows, ""]).encode(), "csv")
        keys = ("sheet", "date", "student", "procedure")
        short = bare((*keys, "role"), f"p1,{self.date},Ines Duarte,{LAP},second", f"p2,{self.date},Ines Duarte,{LAP},")
        answer = self.imports(short, expect=2).json
        self.assertEqual([one["line"] for one in answer["imported"]], [2])
        self.assertEqual([(one["line"], one["column"]) for one in answer["refused"]], [(3, "role")])
        self.assertEqual(self.program.show("anna", answer["imported"][0]["sheet"], "ines")["role"], "second")
        marked = bare((*keys, "imported", "role"), f"p3,{self.date},Jonas Vale,{LAP},Y,first", f"p4,{self.date},Jonas Vale,{LAP},,")
        answer = self.imports(marked, expect=2).json
        self.assertEqual(([one["line"] for one in answer["imported"]], [one["line"] for one in answer["refused"]]), ([2], [3]))
        said = self.imports(bare(keys, f"p5,{self.date},Ines Duarte,{LAP}"), expect=2).complaint
        self.assertIn("the header row lacks the column role; a paper log needs no marks: write first, second or observed on every row "
                      "under role.", said)
        said = self.imports(bare((*keys, "role", "verify"), f"p6,{self.date},Ines Duarte,{LAP},first,"), expect=2).complaint
        self.assertIn("the header row lacks the columns setup, counts,", said)
        said = self.program.run("tally", short, expect=2).complaint  # a file that is only counted says it on every row
        self.assertIn("the header row lacks the column imported; a paper log needs no marks: write Y on every row under imported", said)

    def test_it_is_said_when_nothing_was_imported(self):
        nobody = self.file(self.row("p1", "Nobody Known"), self.row("p2", "Ines Duarte", site="MRN 445566"))
        words = ("import", self.program.vault("anna"), nobody, "--source", self.source)
        done = self.program.run(*words, expect=2)
        self.assertIn("2 refusals of 2 rows; nothing was imported.", done.complaint)
        self.assertIn("say so with --checked", done.complaint)
        self.assertEqual(done.text.strip(), "Nothing was imported.")
        self.assertEqual(len(self.imports(nobody, "--checked", expect=2).json["imported"]), 1)
        done = self.program.run(*words, "--checked", expect=2)
        self.assertIn("1 refusal of 2 rows; the rest was here already, and nothing was imported.", done.complaint)

    def test_nothing_comes_in_without_a_source_nor_by_a_student_nor_from_a_broken_file(self):
        before = self.program.sheets("anna")
        good = self.file(self.row("p1", "Ines Duarte"))
        self.assertIn("--source", self.program.run("import", self.program.vault("anna"), good, expect=2).complaint)
        self.imports(good, source="x" * 401, expect=2)
        self.assertIn("record number", self.imports(good, source="of MRN 445566", expect=2).complaint)
        self.assertIn("Only an instructor", self.imports(good, who="ines", expect=2).complaint)
        self.imports(self.program.write(b"", "csv"), expect=2)
        self.imports(self.program.path("not-there.csv"), expect=3)
        self.assertEqual(self.program.sheets("anna"), before)

    def test_one_student_alone_and_two_of_one_name(self):
        both = self.file(self.row("p1", "Ines Duarte"), self.row("p2", "Jonas Vale"))
        answer = self.imports(both, "--student", "jonas vale", expect=2).json
        self.assertEqual([one["student"] for one in answer["imported"]], ["Jonas Vale"])
        self.assertEqual([(one["line"], one["column"]) for one in answer["refused"]], [(2, "student")])
        for who in ("kim", "other"):
            self.program.enroll("anna", who, "Kim Ross", "student", "Spring class")
        answer = self.imports(self.file(self.row("p1", "Kim Ross")), expect=2).json
        self.assertEqual(answer["imported"], [])
        self.assertIn("more than one", answer["refused"][0]["reason"])
        ids = [student["id"] for student in self.program.sheets("anna")["students"] if student["student"] == "Kim Ross"]
        answer = self.imports(self.file(self.row("p1", "Kim Ross")), "--student", ids[0]).json
        self.assertEqual(len(answer["imported"]), 1)
        self.imports(both, "--student", "Nobody Known", expect=2)

    def test_the_same_file_again_adds_nothing_and_says_so(self):
        file = self.file(self.row("p1", "Ines Duarte"), self.row("p2", "Ines Duarte"), self.row("p3", "Jonas Vale"))  # the first two alike
        first = self.imports(file).json
        self.assertEqual(len(first["imported"]), 3)
        before = self.program.sheets("anna")
        again = self.imports(file)
        self.assertEqual(again.json["imported"], [])
        self.assertEqual([one["line"] for one in again.json["alreadyHere"]], [2, 3, 4])
        self.assertEqual(self.program.sheets("anna"), before)
        sheet = first["imported"][2]["sheet"]
        self.program.run("amend", sheet, "--procedure", "Laparoscopic appendectomy", "--reason", "Read wrongly.", vault="anna")
        self.assertEqual(self.imports(file).json["imported"], [])  # as it was imported
        more = self.file(self.row("p1", "Ines Duarte"), self.row("p2", "Ines Duarte"), self.row("p4", "Ines Duarte"))
        self.assertEqual([one["line"] for one in self.imports(more).json["imported"]], [4])
        self.assertEqual(len(self.imports(file, source="page 4").json["imported"]), 3)

    def test_it_counts_once_it_is_initialed_and_its_row_says_what_it_is(self):
        sheet = self.one(preceptor="L. Brandt")
        for level in ("recorded", "attested", "initialed"):
            self.assertEqual(self.case(sheet, level), "Imported, not attested: it counts once an instructor has initialed it.")
        self.program.run("initial", sheet, vault="anna")
        self.assertEqual([self.case(sheet, level) for level in ("recorded", "attested", "initialed")],
                         [True, "No preceptor has signed this sheet yet.", True])
        rows = {row["sheet"]: row for row in csv.DictReader(io.StringIO(self.program.json("rows", vault="anna")["csv"]))}
        row = rows[sheet]
        self.assertEqual((row["imported"], row["role"], row["attested"], row["preceptor"]), ("Y", "first", "", "L. Brandt"))
        self.assertRegex(row["initialed"], r"20\d\d-\d\d-\d\d")

    def test_the_queue_shows_it_with_its_source_and_asks_about_a_case_that_is_there_twice(self):
        sheet = self.one()
        self.assertEqual(self.program.questions("anna", sheet), [])
        text = self.program.run("queue", vault="anna").text
        self.assertIn(WORDS, text)
        self.assertIn("from: " + self.source, text)
        own = self.program.open_sheet("ines", LAP.upper(), date=self.date)
        self.program.give("ines", "anna")
        asked = self.program.questions("anna", sheet)
        self.assertEqual(asked, [f"It may be entered twice: {own} has the same date and procedure."])
        listed = self.program.json("questions", self.program.vault("anna"), "--student", "Ines Duarte")["students"][0]["sheets"]
        self.assertLessEqual({sheet, own}, {one["sheet"] for one in listed})

    def test_marks_are_never_changed_and_the_student_can_only_withdraw(self):
        program, sheet = self.program, self.one()
        done = program.run("amend", sheet, "--mark", "pass=Y", "--reason", "Seen.", vault="anna", expect=2)
        self.assertIn("has no marks to change", done.complaint)
        for words in (("return",), ("void",), ("refile", "--under", "general"), ("amend", "--room", "Room 4")):
            self.assertIn("needs a reason", program.run(words[0], sheet, *words[1:], vault="anna", expect=2).complaint)
        program.run("amend", sheet, "--room", "Room 4", "--reason", "The board.", vault="anna")
        program.run("refile", sheet, "--under", "genitourinary", "--reason", "The log says so.", vault="anna")
        program.give("anna", "ines")
        shown = program.show("ines", sheet)
        self.assertEqual((shown["standing"], shown["room"], shown["categories"]), ("amended", "Room 4", ["genitourinary"]))
        for words in (("log", "--under", "general"), ("change", "--room", "Room 5"), ("decline", "--reason", "Away."),
                      ("review", "--mark", "pass=Y", "--reason", "I passed.")):
            done = program.run("sheet", words[0], sheet, *words[1:], vault="ines", expect=2)
            self.assertIn("you can only withdraw it", done.complaint)
        program.brandt, _ = program.card("anna", "L. Brandt")
        program.give("anna", "ines")
        self.assertNotEqual(program.sign("ines", sheet, expect=None).code, 0)
        program.run("sheet", "withdraw", sheet, "--reason", "Not mine.", vault="ines")
        program.give("ines", "anna")
        self.assertEqual(program.show("anna", sheet, "ines")["standing"], "withdrawn")
        self.assertIn("took the sheet back", program.run("initial", sheet, vault="anna", expect=2).complaint)

    def test_an_export_with_imports_verifies_with_the_second_verifier_too(self):
        self.program.run("initial", self.one(), vault="anna")
        export = self.program.export("anna")
        self.assertTrue(self.program.check(export)["verified"])
        verifier = os.path.join(HERE, "..", "sync", "verify_export.py")
        other = subprocess.run(["/usr/bin/python3", verifier, self.program.id, export], capture_output=True, text=True, check=False)
        self.assertEqual(other.returncode, 0, other.stdout + other.stderr)
        self.assertIn("0 aside, 0 refused", other.stdout)

    def test_a_completion_says_which_sheets_nobody_attested(self):
        program = self.program
        file = self.file(self.row("p1", "Ines Duarte", preceptor="L. Brandt", credential="CST"), self.row("p2", "Ines Duarte", role="second"),
                         self.row("p3", "Ines Duarte", date="2026-03-04"), self.row("p4", "Ines Duarte", role="observed"))
        sheets = [one["sheet"] for one in self.imports(file).json["imported"]]
        program.open_sheet("ines")  # so that something of hers is here
        program.give("ines", "anna")
        program.run("initial", *sheets, "--student", "Ines Duarte", vault="anna")
        program.give("anna", "mara")
        record, proofs = program.new_file("record.json"), program.new_file("proofs.json")
        program.run("record", "make", "Ines Duarte", "--out", record, "--proofs", proofs, "--set", self.set_file, "--exception",
                    "An earlier log.", vault="mara", secrets=(PASSPHRASE, program.program_code))
        leaves = [one["sheet"] for one in json.loads(program.read(proofs))["sheets"]]
        leaves = [leaf for leaf in leaves if leaf["imported"]["source"] == self.source]
        self.assertEqual(len(leaves), 3)  # the observation counts nowhere
        for leaf in leaves:
            self.assertEqual((leaf["signed"], leaf["imported"]["attested"], leaf["imported"]["source"]), ([], False, self.source))
        self.assertIn({"attested": False, "source": self.source, "preceptor": "L. Brandt", "credential": "CST"},
                      [leaf["imported"] for leaf in leaves])
        text = program.run("check", proofs, "--program", program.id).text
        self.assertEqual(len(re.findall("Imported, not attested, from " + self.source + ";", text)), 3)
        verifier = ["/usr/bin/python3", os.path.join(HERE, "verify_record.py"), program.id]
        other = subprocess.run([*verifier, record, proofs], capture_output=True, text=True, check=False)
        self.assertEqual(other.returncode, 0, other.stdout + other.stderr)
        changed = json.loads(program.read(proofs))  # the word that nobody attested it cannot be taken out
        del changed["sheets"][0]["sheet"]["imported"]
        bare = program.write(json.dumps(changed).encode(), "json")
        self.assertEqual(subprocess.run([*verifier, bare], capture_output=True, check=False).returncode, 1)
        with self.assertRaises(Unexpected):
            program.run("check", bare, "--program", program.id)

    def test_papers_say_that_it_was_imported(self):
        program = Program()  # papers are under a set that ships
        self.addCleanup(program.close)
        program.begin()
        program.enroll("mara", "ines", "Ines Duarte", "student", "Spring class")
        file = self.file(self.row("p1", "Ines Duarte", preceptor="L. Brandt"))
        sheet = program.json("import", program.vault("mara"), file, "--source", SOURCE + "9")["imported"][0]["sheet"]
        program.run("initial", sheet, vault="mara")
        text = {}
        for what, words in (("sheet", (sheet,)), ("log", ()), ("report", ())):
            out = program.new_file("pdf")
            program.run("print", what, *words, "--out", out, vault="mara")
            text[what] = subprocess.run(["pdftotext", "-layout", out, "-"], capture_output=True, check=True).stdout.decode()
        self.assertIn(f"Imported, not attested, from {SOURCE}9 by Mara Stone; preceptor as written there: L. Brandt.",
                      " ".join(text["sheet"].split()))
        self.assertNotIn("Ten marks", text["sheet"])
        self.assertRegex(text["log"], r"imported, not\b[^\n]*\n[^\n]*\battested")
        self.assertRegex(text["report"], r"Sheets imported from a paper log, not attested\s+1\b")
        self.assertRegex(text["report"], r"Imported sheets that an instructor initialed\s+1\b")


if __name__ == "__main__":
    unittest.main()
