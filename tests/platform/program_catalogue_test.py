"""A program's own procedures over the shipped catalogue, through the commands on real vaults."""

import json
import subprocess
import unittest

from program import PROGRAM, Program

HEADER = "id\tname\tsynonyms\tshorthand\tcategories\tflags\tsources\n"
OWN = "Harbor valley joint washing"  # invented: nothing in the catalogue is called so


def table(*rows):
    return (HEADER + "".join("\t".join(row) + "\n" for row in rows)).encode()


def row(name, *, own="own-washing", synonyms="", categories="orthopedics"):
    return (own, name, synonyms, "", categories, "", "")


def found(*words):
    return json.loads(subprocess.run([PROGRAM, "find", *words, "--json"], check=True, capture_output=True).stdout)


class OwnProcedures(unittest.TestCase):
    def setUp(self):
        self.program = Program()
        self.addCleanup(self.program.close)
        self.program.set_up()

    def put(self, data, who="mara", expect=0):
        file = self.program.write(data, "tsv")
        return self.program.run("program", "catalogue", "--in", file, "--json", vault=who, expect=expect)

    def listed(self, who):
        return [(one["id"], one["name"], one["categories"], one["before"] and one["before"]["categories"])
                for one in self.program.json("program", "catalogue", vault=who)["procedures"]]

    def test_a_sheet_of_an_own_procedure_counts_once_the_table_has_come_in(self):
        program = self.program
        sheet = program.open_sheet("ines", procedure=OWN)
        program.sign("ines", sheet)
        self.assertEqual(program.counted("ines"), 0)
        self.assertIn("not in the catalogue", program.run("tally", program.vault("ines")).complaint)
        program.give("ines", "anna")

        self.put(table(row(OWN)))
        self.assertEqual(self.listed("mara"), [("own-washing", OWN, ["orthopedics"], None)])
        self.assertEqual(self.listed("anna"), [])
        program.exchange("mara", "anna", "bruno")
        program.give("anna", "ines")
        self.assertEqual(self.listed("ines"), [("own-washing", OWN, ["orthopedics"], None)])
        for who in ("ines", "anna"):
            done = program.run("tally", program.vault(who), "--level", "attested")
            self.assertNotIn("not in the catalogue", done.complaint)
            self.assertEqual(program.counted(who), 1)
        self.assertIn("orthopedics", program.json("rows", vault="ines")["csv"])

        # What came in is the director's file to the byte, and lies over the catalogue of a search as well.
        out = program.new_file("tsv")
        program.run("program", "catalogue", "--out", out, vault="ines")
        self.assertEqual(program.read(out), table(row(OWN)))
        self.assertEqual(found(OWN, "--catalogue", out)[0]["id"], "own-washing")
        program.run("program", "catalogue", "--out", out, vault="ines", expect=3)  # a file that is there stays

        program.run("program", "catalogue", "--none", vault="mara")
        program.exchange("mara", "anna")
        self.assertEqual(program.counted("anna"), 0)
        self.assertIn("as it is shipped", program.run("program", "catalogue", vault="anna").text)
        self.assertEqual(program.counted("ines"), 1)  # until it hears of it

    def test_a_shipped_procedure_is_filed_otherwise_and_a_later_table_replaces_the_whole(self):
        program = self.program
        shipped = found("carpal tunnel release")[0]
        before = shipped["categories"]
        moved = table((shipped["id"], "", "", "", "plastic-reconstructive", "", ""))
        self.put(moved)
        self.assertEqual(self.listed("mara"), [(shipped["id"], shipped["name"], ["plastic-reconstructive"], before)])
        self.put(table(row(OWN)))
        self.assertEqual([one[0] for one in self.listed("mara")], ["own-washing"])

    def test_what_is_refused_leaves_the_table_that_is_in_force(self):
        program = self.program
        good = table(row(OWN))
        for who in ("anna", "ines"):
            self.assertIn("Only the director", self.put(good, who, expect=2).complaint)
        self.put(good)
        self.assertIn("in force already", self.put(good, expect=2).complaint)
        for bad, why in ((table(row(OWN, categories="foot")), "Line 2, column categories"),
                         (table(row("Appendectomy, open", synonyms="Laparoscopic cholecystectomy")), "is called so too"),
                         (b"id\tname\nown-one\tOwn\n", "the column synonyms is missing"),
                         (b"\xff\xfe", "UTF-8"), (b"", "is empty"),
                         (table(*(row(f"Own {i}", own=f"own-{i}") for i in range(2000))), "48 KiB")):
            done = self.put(bad, expect=2)
            self.assertIn(why, done.complaint)
        self.assertEqual(self.listed("mara"), [("own-washing", OWN, ["orthopedics"], None)])
        program.run("program", "catalogue", "--in", program.write(good, "tsv"), "--none", vault="mara", expect=2)
        program.run("program", "catalogue", "--in", program.new_file("tsv"), vault="mara", expect=3)
        program.run("program", "catalogue", "--none", vault="mara")
        self.assertIn("nothing to take away", program.run("program", "catalogue", "--none", vault="mara", expect=2).complaint)
        program.run("program", "catalogue", "--out", program.new_file("tsv"), vault="mara", expect=2)


if __name__ == "__main__":
    unittest.main()
