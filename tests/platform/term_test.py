"""A whole small program in one go, through the commands on real vaults: set up, three students, forty sheets, parcels taken in in
different orders, every decision of an instructor, receipts back, a completion, and its verification by outsiders."""

import itertools
import json
import os
import subprocess
import unittest

from program import PASSPHRASE, Program, small_set

HERE = os.path.dirname(os.path.abspath(__file__))
STUDENTS = {"ines": ("Ines Duarte", 14), "jonas": ("Jonas Vale", 13), "lena": ("Lena Orlov", 13)}
SECOND_SCRUB = "YYNYYYYYYA"
FIRST_SCRUB = "YYYYYYYYYA"
OBSERVED = "NNNNNNNNNN"
SMALL_SET = small_set("small-term", 6, 4)


class Term(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.program = program = Program()
        cls.addClassCleanup(program.close)
        cls.set_file = program.write(json.dumps(SMALL_SET).encode(), "json")
        program.begin(requirement_set=cls.set_file)
        for who, name in (("anna", "Anna Weiss"), ("bruno", "Bruno Katz")):
            program.enroll("mara", who, name, "instructor", "Spring class")
        program.give("mara", "anna", "bruno")
        program.brandt, _ = program.card("anna", "L. Brandt")
        cls.sheets = {}
        for who, (name, count) in STUDENTS.items():
            program.enroll("anna", who, name, "student", "Spring class")
            program.give("anna", who)
            cls.sheets[who] = cls.opened(who, name, count)

    @classmethod
    def opened(cls, who, name, count):
        """Sheets of a term from one file; each is signed in one of three sittings."""
        lines = ["sheet,date,student,procedure,categories,site,verify,setup,counts,pass,technique,sponge,suction,cut,retract,camera"]
        lines += [f"s{i:02},2026-{1 + i // 7:02}-{1 + 3 * (i % 7):02},{name},Laparoscopic cholecystectomy,general,North Campus"
                  + 10 * "," for i in range(count)]
        file = cls.program.write("\r\n".join(lines).encode() + b"\r\n", "csv")
        sheets = cls.program.json("sheet", "open", "--csv", file, vault=who)["sheets"]
        for marks, sitting in ((FIRST_SCRUB, sheets[:7]), (SECOND_SCRUB, sheets[7:-1]), (OBSERVED, sheets[-1:])):
            cls.program.run("sheet", "sign", *sitting, "--card", cls.program.brandt, "--marks", marks, "--yes", vault=who,
                            secrets=(PASSPHRASE, "27182818"))
        return sheets

    def state(self, who, sheet, student):
        return self.program.show(who, sheet, student)["standing"]

    def tallied(self, who, level):
        students = self.program.json("tally", self.program.vault(who), "--level", level, "--set", self.set_file)["students"]
        return {student["student"]: student["best"]["counted"] for student in students}

    def test_a_term(self):
        program = self.program
        staff = ("mara", "anna", "bruno")
        self.assertEqual(sum(len(sheets) for sheets in self.sheets.values()), 40)

        # Parcels in three orders; once all have met, everybody holds the same, to the byte.
        parcels = [program.send(who) for who in STUDENTS]
        for taker, order in zip(staff, itertools.permutations(parcels)):
            for parcel in order:
                self.assertGreater(program.take(taker, parcel)["saved"], 0)
            self.assertEqual(program.take(taker, *parcels)["saved"], 0)  # nothing is new the second time
        program.exchange(*staff)
        exports = [program.read(program.export(who)) for who in staff]
        self.assertEqual(exports[0], exports[1])
        self.assertEqual(exports[0], exports[2])
        self.assertEqual({who: self.tallied(who, "attested") for who in staff},
                         {who: {name: 10 for name, _ in STUDENTS.values()} for who in staff})

        # Every decision; without a reason none but the initial.
        ines, jonas, lena = (self.sheets[who] for who in STUDENTS)
        program.run("sheet", "review", jonas[7], "--mark", "counts=Y", "--reason", "I counted with the circulator.", vault="jonas")
        program.give("jonas", "anna")
        decisions = [("return", jonas[0], []), ("amend", jonas[1], ["--mark", "pass=N"]), ("refile", jonas[2], ["--under", "eye"]),
                     ("void", jonas[3], []), ("accept", jonas[7], ["--skill", "counts"])]
        for command, sheet, words in decisions:
            program.run(command, sheet, *words, "--student", "Jonas Vale", vault="anna", expect=2)
        for command, sheet, words in decisions:
            program.run(command, sheet, *words, "--student", "Jonas Vale", "--reason", f"Checked: {command}.", vault="anna")
        program.run("initial", *ines, "--student", "Ines Duarte", vault="anna")
        self.assertEqual({sheet: self.state("anna", sheet, "jonas") for sheet in jonas[:4]},
                         dict(zip(jonas, ("returned", "amended", "amended", "void"))))

        # Two instructors apart on one sheet: both acts are kept, and one is in force, the same for all.
        program.run("initial", lena[0], "--student", "Lena Orlov", vault="anna")
        program.run("void", lena[0], "--student", "Lena Orlov", "--reason", "Entered twice.", vault="bruno")
        program.exchange(*staff)
        for who in staff:
            shown = program.show(who, lena[0], "lena")
            self.assertEqual(shown["standing"], "void")
            self.assertEqual(sum("eside" in json.dumps(line) for line in shown["history"]), 1, shown["history"])
        exports = [program.read(program.export(who)) for who in staff]
        self.assertEqual(exports[0], exports[1])
        self.assertEqual(exports[0], exports[2])

        # Receipts and decisions go back, and the students see them.
        for who in STUDENTS:
            program.give("anna", who)
            self.assertEqual({sheet: self.state(who, sheet, who) for sheet in self.sheets[who]},
                             {sheet: self.state("anna", sheet, who) for sheet in self.sheets[who]})
        self.assertEqual(self.state("ines", ines[0], "ines"), "initialed")

        # One student is complete as initialed; the others are not, and no record of them is made.
        self.assertEqual(self.tallied("mara", "initialed"), {"Ines Duarte": 10, "Jonas Vale": 0, "Lena Orlov": 0})
        files = program.new_file("record.json"), program.new_file("proofs.json")
        make = ["record", "make", "--out", files[0], "--proofs", files[1], "--set", self.set_file]
        for short in ("Jonas Vale", "Lena Orlov"):
            program.run(*make, short, vault="mara", secrets=(PASSPHRASE, program.program_code), expect=1)
        program.run(*make, "Ines Duarte", vault="mara", secrets=(PASSPHRASE, program.program_code))
        journal = program.export("mara")
        self.assertTrue(program.check(*files, journal)["verified"])
        other = subprocess.run(["/usr/bin/python3", os.path.join(HERE, "verify_record.py"), program.id, *files], capture_output=True,
                               text=True, check=False)
        self.assertEqual(other.returncode, 0, other.stdout + other.stderr)
        verifier = os.path.join(HERE, "..", "sync", "verify_export.py")
        other = subprocess.run(["/usr/bin/python3", verifier, program.id, journal], capture_output=True, text=True, check=False)
        self.assertEqual(other.returncode, 0, other.stdout + other.stderr)


if __name__ == "__main__":
    unittest.main()
