"""What the queue of an instructor and `questions` say about the marks of a sheet, on real vaults."""

import unittest

from program import Program

NO_COUNTS = "YYAYYYYYYA"
NO_SETUP = "YAYYYYYYYA"


class Queue(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.program = Program().set_up()
        cls.addClassCleanup(cls.program.close)

    def test_counts_are_asked_about_only_where_the_catalogue_does_not_know_that_they_are_often_not_needed(self):
        program = self.program
        sheets = {}
        for name, procedure, marks in (("often", "Anoscopy", NO_COUNTS), ("usual", "Laparoscopic cholecystectomy", NO_COUNTS),
                                       ("setup", "Anoscopy", NO_SETUP), ("plain", "Anoscopy", "YYYYYYYYYA")):
            sheets[name] = program.open_sheet("ines", procedure)
            program.sign("ines", sheets[name], marks=marks)
        program.give("ines", "anna")
        asked = {name: program.questions("anna", sheet) for name, sheet in sheets.items()}
        self.assertEqual({name: len(questions) for name, questions in asked.items()},
                         {"often": 0, "usual": 1, "setup": 1, "plain": 0})
        data = program.json("questions", program.vault("anna"))
        listed = {sheet["sheet"]: sheet["questions"] for student in data["students"] for sheet in student["sheets"]}
        self.assertEqual(listed, {sheets["usual"]: asked["usual"], sheets["setup"]: asked["setup"]})


if __name__ == "__main__":
    unittest.main()
