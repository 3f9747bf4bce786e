"""Papers as PDF, read back by other programs: text and pages with poppler, the code on a sheet with zbar."""

import os
import re
import subprocess
import unittest

from program import PASSPHRASE, PROGRAM, Program


def text_of(path):
    return subprocess.run(["pdftotext", "-layout", path, "-"], capture_output=True, check=True).stdout.decode()


def pages_of(path):
    found = subprocess.run(["pdfinfo", path], capture_output=True, check=True).stdout.decode()
    return int(re.search(r"Pages:\s+(\d+)", found).group(1))


class Print(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.program = Program().set_up()
        cls.addClassCleanup(cls.program.close)
        program = cls.program
        cls.sheet = program.open_sheet("ines", "Laparoscopic cholecystectomy – “≥ 3 ports”")
        program.run("sheet", "log", cls.sheet, "--under", "general", vault="ines")
        program.sign("ines", cls.sheet, marks="YYAYYYYYYA")
        cls.other = program.open_sheet("jonas", "Total knee replacement")
        program.sign("jonas", cls.other, marks="YYYYYYYYYA")
        program.enroll("anna", "second", "Ines Duarte", "student", "Spring class")  # another student of the same name
        cls.third = program.open_sheet("second", "Laparoscopic appendectomy")
        program.sign("second", cls.third, "--preceptor", "L. Brandt", "--credential", "CST")
        for student in ("ines", "jonas", "second"):
            program.give(student, "anna")
        program.run("initial", cls.sheet, vault="anna")

    def printed(self, *words, vault="anna", **options):
        out = self.program.new_file("pdf")
        answer = self.program.json("print", *words, "--out", out, vault=vault, **options)
        self.assertEqual(answer, {"file": out, "pages": pages_of(out)})
        return out

    def test_log_has_every_case_and_every_page_says_whose_it_is(self):
        out = self.printed("log")
        text = text_of(out)
        for said in ("Case log: Jonas Vale", "Total knee replacement", "Orthopedics", "L. Brandt (card)", "General",
                     "cholecystectomy – “≥ 3", "ports”", self.sheet, self.other, self.third):
            self.assertIn(said, text)
        pages = text.split("\f")[:-1]
        self.assertEqual(len(pages), pages_of(out))
        for number, page in enumerate(pages, 1):
            self.assertIn(f"Page {number} of {len(pages)}", page)
            self.assertIn("program " + self.program.id[:16], page.replace("Program", "program"))
            self.assertRegex(page, r"20\d\d-\d\d-\d\d")

    def test_two_students_of_one_name_are_counted_apart(self):
        text = text_of(self.printed("board"))
        names = re.findall(r"Ines Duarte \([0-9a-f]{8}\)", re.sub(r"\s+", " ", text))
        self.assertEqual(len(set(names)), 2)
        students = self.program.json("tally", self.program.vault("anna"))["students"]
        self.assertEqual(len({student["student"] for student in students}), 3)
        self.assertTrue(all(student["sheets"] for student in students))

    def test_rows_are_counted_as_the_vault_is(self):
        out = self.program.new_file("csv")
        self.assertEqual(self.program.json("rows", "--out", out, vault="anna")["file"], out)
        for level in ("recorded", "attested", "initialed"):
            vault = self.program.json("tally", self.program.vault("anna"), "--level", level)["students"]
            for student in vault:  # a file has no rules that name a set
                self.assertEqual((student.pop("set"), student.pop("setFrom"), student.pop("otherSets")), ("spread10", None, []))
            file = self.program.json("tally", out, "--level", level, "--set", "spread10", secrets=())["students"]
            self.assertEqual(file, vault, level)

    def test_fonts_are_embedded(self):
        listed = subprocess.run(["pdffonts", self.printed("report")], capture_output=True, check=True).stdout.decode()
        fonts = [line.split() for line in listed.splitlines()[2:]]
        self.assertTrue(fonts)
        for font in fonts:
            self.assertIn("Inter", font[0])
            self.assertEqual(font[-5], "yes", listed)

    def test_the_code_on_a_sheet_is_that_of_its_newest_entry(self):
        out = self.printed("sheet", self.sheet, "--paper", "a4")
        shown = self.program.json("sheet", "show", self.sheet, vault="anna")
        picture = out[:-4]
        subprocess.run(["pdftoppm", "-r", "150", "-png", "-singlefile", out, picture], check=True)
        read = subprocess.run(["zbarimg", "--quiet", "--raw", picture + ".png"], capture_output=True, check=True)
        words = read.stdout.decode().split()
        self.assertEqual(words[0], "sheet")
        self.assertTrue(words[1].startswith(self.sheet))
        self.assertEqual(words[2:], ["entry", shown["history"][-1]["entry"]])
        self.assertIn("595", subprocess.run(["pdfinfo", out], capture_output=True).stdout.decode())  # A4 in points

    def test_report_counts_what_was_changed(self):
        amended = self.program.open_sheet("jonas", "Bunion correction")
        self.program.run("sheet", "log", amended, "--under", "orthopedics", vault="jonas")
        self.program.sign("jonas", amended, marks="YYYYYYYYYA")
        self.program.give("jonas", "anna")
        before = text_of(self.printed("report"))
        for student in ("ines", "jonas"):  # each marked as first scrub, in one room on one day
            sheet = self.program.open_sheet(student, surgeon="Dr Falk")
            self.program.sign(student, sheet)
            self.program.run("sheet", "log", sheet, "--under", "general", vault=student)
            self.program.give(student, "anna")
        self.program.run("amend", amended, "--mark", "pass=N", "--reason", "Told by the preceptor.", vault="anna")
        self.program.run("void", self.other, "--reason", "Entered twice.", vault="anna")
        after = text_of(self.printed("report"))

        def count(text, what):
            return int(re.search(re.escape(what) + r"[^\n]*?(\d+)\s*$", text, re.MULTILINE).group(1))

        for what in ("changed by an instructor after signing", "taken out of the count by an instructor",
                     "two students count as first scrub"):
            self.assertEqual(count(after, what), count(before, what) + 1, what)

    def test_stubs_need_no_vault_and_hold_the_ten_skills(self):
        out = self.program.new_file("pdf")
        done = subprocess.run([PROGRAM, "print", "stubs", "--count", "3", "--first", "41", "--out", out], capture_output=True,
                              env=self.program.environment)
        self.assertEqual((done.returncode, done.stderr), (0, b""))
        text = text_of(out)
        self.assertEqual(text.count("Kept sterile technique"), 3)
        self.assertEqual(pages_of(out), 3)
        self.assertEqual(re.findall(r"Pocket stub (\d+)", text), ["41", "42", "43"])
        self.assertIn("No name, number or birth date of a patient", re.sub(r"\s+", " ", text))

    def test_cards_and_invitations_are_read_off_paper_to_the_byte(self):
        program = self.program
        invitation = program.new_file("invitation")
        program.run("enroll", "invite", "--name", "Nora Lind", "--role", "student", "--for", "Spring class", "--out", invitation,
                    vault="anna")
        for what, file in (("cards", program.brandt), ("invitations", invitation)):
            out = program.new_file("pdf")
            words = [PROGRAM, "print", what, file, "--name", "Invented Name", "--out", out]
            done = subprocess.run(words, capture_output=True, env=program.environment)
            self.assertEqual((done.returncode, done.stderr), (0, b""))
            self.assertEqual(os.stat(out).st_mode & 0o077, 0)
            self.assertIn("Invented Name", text_of(out))
            subprocess.run(["pdftoppm", "-r", "200", "-png", "-singlefile", out, out[:-4]], check=True)
            read = subprocess.run(["zbarimg", "--quiet", "--raw", "--oneshot", "-Sbinary", out[:-4] + ".png"], capture_output=True, check=True)
            self.assertEqual(read.stdout, program.read(file))
            self.assertNotEqual(subprocess.run([*words[:3], self.program.write(b"other", "card"), *words[4:-1], program.new_file("pdf")],
                                               capture_output=True).returncode, 0)

    def test_a_class_list_becomes_invitations_that_are_printed_with_names(self):
        program = self.program
        folder = program.path("invitations")
        os.mkdir(folder)
        rows = "class,name,note\r\nSpring class,Åsa Ek,\r\nSpring class,\"O'Hara, Jo\",second year\r\n"
        made = program.json("enroll", "class", program.write(rows.encode(), "csv"), "--into", folder, vault="anna")["invitations"]
        self.assertEqual([(one["name"], one["class"]) for one in made], [("Åsa Ek", "Spring class"), ("O'Hara, Jo", "Spring class")])
        files = [one["invitation"] for one in made]
        self.assertEqual(sorted(os.listdir(folder)), sorted(os.path.basename(file) for file in files))
        out = program.new_file("pdf")
        subprocess.run([PROGRAM, "print", "invitations", *files, "--out", out], capture_output=True, env=program.environment, check=True)
        text = text_of(out)
        self.assertIn("Invitation: Åsa Ek", text)
        self.assertIn("Invitation: O'Hara, Jo", text)
        program.codes.pop("asa", None)
        program.names["asa"] = "Åsa Ek"
        program.join("anna", "asa", files[0])
        self.assertIn("Åsa Ek", [person["name"] for person in program.json("program", "show", vault="anna")["people"]])
        for wrong, said in (("name\r\nx\r\n", "name and class"), ("name,class\r\n,Spring\r\n", "line 2"),
                            ("name,class\r\nA,S\r\nA,S\r\n", "twice"), ("name,class\r\n", "nobody"), ("", "nobody")):
            refused = program.run("enroll", "class", program.write(wrong.encode(), "csv"), "--into", folder, vault="anna", expect=2)
            self.assertIn(said, refused.complaint)
        self.assertEqual(len(os.listdir(folder)), 2)

    def test_what_cannot_be_printed_says_why_and_leaves_nothing(self):
        out = self.program.new_file("pdf")
        missing = self.program.run("print", "sheet", "00000000", "--out", out, vault="anna", expect=None)
        self.assertNotEqual(missing.code, 0)
        self.assertFalse(os.path.exists(out))
        self.assertEqual(self.program.run("print", "log", vault="anna", expect=2).text, "")
        self.program.run("print", "log", "--paper", "a3", "--out", out, vault="anna", expect=2)
        student = self.program.run("print", "report", "--out", out, vault="ines", expect=2)
        self.assertIn("instructor", student.complaint)
        self.printed("log", vault="ines")
        there = self.program.write(b"a file", "pdf")
        self.program.run("print", "log", "--out", there, vault="anna", expect=3)
        self.assertEqual(self.program.read(there), b"a file")


if __name__ == "__main__":
    unittest.main()
