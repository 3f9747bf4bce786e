"""The command line as a user meets it: exit codes, JSON, messages, bad input. Runs the program that was built."""

import json
import os
import resource
import subprocess
import sys
import tempfile
import unittest

PROGRAM = sys.argv.pop(1)
MARKS = "verify,setup,counts,pass,technique,sponge,suction,cut,retract,camera"
HEADER = "sheet,date,student,procedure,categories," + MARKS + ",canceled,attested,initialed\n"
YES = ",".join("Y" * 10)


def run(*words, stdin=None, memory=None, stdout=subprocess.PIPE):
    limit = (lambda: resource.setrlimit(resource.RLIMIT_AS, (memory, memory))) if memory else None
    return subprocess.run([PROGRAM, *words], input=stdin, stdout=stdout, stderr=subprocess.PIPE, preexec_fn=limit,
                          timeout=300, check=False)


class CommandLine(unittest.TestCase):
    def setUp(self):
        self.folder = tempfile.TemporaryDirectory()
        self.addCleanup(self.folder.cleanup)

    def file(self, text, name="sheets.csv"):
        path = os.path.join(self.folder.name, name)
        with open(path, "wb") as out:
            out.write(text if isinstance(text, bytes) else text.encode())
        return path

    def rows(self, count, category="eye"):
        return "".join(f"s{i:04},2026-03-12,Ines,Thing,{category},{YES},,card,2026-03-14\n" for i in range(count))

    def tally(self, text, *options, code=0):
        done = run("tally", self.file(text), "--json", *options)
        self.assertEqual(done.returncode, code, done.stderr)
        return json.loads(done.stdout)

    def test_tally_json_has_the_shape_of_the_design(self):
        data = self.tally(HEADER + self.rows(3) + f"s9,2026-03-13,Ines,Scope,diagnostic-endoscopy,{YES},,,\n", "--set", "cap15")
        self.assertEqual(list(data)[:3], ["set", "level", "refused"])
        self.assertEqual((data["set"], data["level"], data["refused"]), ("cap15", "recorded", []))
        student = data["students"][0]
        self.assertEqual((student["student"], student["sheets"]), ("Ines", 4))
        best = student["best"]
        self.assertEqual((best["required"], best["counted"], best["firstScrub"]), (120, 4, 3))
        self.assertEqual([t["id"] for t in best["targets"]],
                         ["first-general", "first-specialty", "second-general", "second-specialty"])
        self.assertEqual(best["targets"][1]["byCategory"], {"eye": 3})
        self.assertEqual(best["cases"][0], {"sheet": "s0000", "row": 1, "procedure": "Thing", "role": "first",
                                            "category": "eye", "target": "first-specialty"})
        self.assertEqual(best["cases"][3]["role"], "second")
        self.assertEqual(student["asLogged"]["counted"], 4)
        self.assertEqual(student["next"][0], {"category": student["next"][0]["category"], "role": "first", "needed": 1})
        self.assertEqual(len(student["next"]), 12 + 14)

    def test_questions_about_marks_and_about_a_preceptors_signatures(self):
        header = "sheet,date,student,procedure,categories," + MARKS + ",site,room,start,end,preceptor,attested\n"
        def row(sheet, student, room, times, preceptor="L. Brandt", marks=YES, attested="card"):
            return f"{sheet},2026-03-12,{student},Thing,eye,{marks},North,{room},{times},{preceptor},{attested}\n"
        text = (header + row("a1", "Ines", "4", "08:00,10:00") + row("b1", "Jonas", "5", "09:00,11:00", "l.  brandt") +
                row("b2", "Jonas", "6", "09:00,11:00", "M. Okoro") + row("b3", "Jonas", "7", "09:00,11:00", attested="drawn") +
                row("b4", "Jonas", "8", "12:00,13:00", marks=YES.replace("Y", "NA", 1)))
        path = self.file(text)
        done = run("questions", path, "--json")
        self.assertEqual(done.returncode, 0, done.stderr)
        data = json.loads(done.stdout)
        self.assertEqual(list(data), ["students", "signers", "refused", "warnings"])
        student, = data["students"]
        self.assertEqual((student["student"], student["times"], [s["sheet"] for s in student["sheets"]]), ("Jonas", [], ["b4"]))
        self.assertEqual(len(student["sheets"][0]["questions"]), 1)
        asked, = data["signers"]
        self.assertEqual((asked["kind"], asked["preceptor"]), ("overlap", "L. Brandt"))
        self.assertEqual([(s["student"], s["sheet"]) for s in asked["sheets"]], [("Ines", "a1"), ("Jonas", "b1")])
        text = run("questions", path).stdout.decode()
        self.assertIn("Signed by L. Brandt\n      to check: These 2 sheets overlap in time", text)
        self.assertTrue(text.endswith("2 questions.\n"), text)
        data = json.loads(run("questions", path, "--day-limit", "2", "--json").stdout)
        self.assertEqual([question["kind"] for question in data["signers"]], ["overlap", "many-in-a-day"])
        done = run("questions", self.file(header + row("a1", "Ines", "4", "08:00,10:00")))
        self.assertEqual((done.returncode, done.stdout), (0, b"Nothing to check.\n"))
        # A sheet that is refused is not asked about.
        twice = row("b1", "Jonas", "5", "09:00,11:00") + row("b1", "Jonas", "5", "09:00,11:00", marks=YES.replace("Y", "N", 1))
        done = run("questions", self.file(header + row("a1", "Ines", "4", "08:00,10:00") + twice), "--json")
        self.assertEqual((done.returncode, json.loads(done.stdout)["signers"]), (2, []))
        self.assertEqual(run("questions", path, "--student", "Ines").returncode, 2)
        self.assertEqual(run("questions", path, "--day-limit", "none").returncode, 2)

    def test_order_of_rows_never_matters(self):
        run("demo", os.path.join(self.folder.name, "demo"), "--csv")
        with open(os.path.join(self.folder.name, "demo", "spring-class.csv"), encoding="utf-8", newline="") as demo:
            header, *lines = demo.read().splitlines(keepends=True)
        sheets = {}
        for line in lines:
            fields = line.split(",")
            sheets.setdefault((fields[0], fields[2]), []).append(line)
        turned = "".join("".join(rows) for rows in reversed(list(sheets.values())))
        one = run("tally", self.file(header + "".join(lines)), "--json").stdout
        self.assertGreater(len(one), 100000)
        self.assertEqual(one, run("tally", self.file(header + turned), "--json").stdout)

    def test_exit_codes(self):
        path = self.file(HEADER + self.rows(2))
        self.assertEqual(run("tally", path).returncode, 0)
        self.assertEqual(run("tally", path, "--require-complete").returncode, 1)
        self.assertEqual(run("find", "zzqqxxyy").returncode, 1)
        self.assertEqual(run("tally").returncode, 2)
        self.assertEqual(run("tally", path, "--sett", "x").returncode, 2)
        self.assertEqual(run("tally", path, "--set", "nosuch").returncode, 2)
        self.assertEqual(run("tally", path, "--level", "high").returncode, 2)
        self.assertEqual(run("nosuch").returncode, 2)
        self.assertEqual(run().returncode, 2)
        self.assertEqual(run("tally", "/nonexistent/file.csv").returncode, 3)
        self.assertEqual(run("tally", self.folder.name).returncode, 3)
        with open("/dev/full", "wb") as full:
            self.assertEqual(run("tally", path, stdout=full).returncode, 3)
            self.assertEqual(run("--help", stdout=full).returncode, 3)
            self.assertEqual(run("tally", "--help", stdout=full).returncode, 3)

    def test_complete_history_is_complete(self):
        text = HEADER
        number = 0
        for category, marks, count in [("general", YES, 30), ("eye", YES, 40), ("orthopedics", YES, 20),
                                       ("neurosurgery", YES, 20), ("genitourinary", YES, 20)]:
            for _ in range(count):
                text += f"s{number:04},2026-03-12,Ines,Thing,{category},{marks},,card,2026-03-14\n"
                number += 1
        path = self.file(text)
        self.assertEqual(run("tally", path, "--set", "spread10", "--require-complete", "--level", "initialed").returncode, 0)
        data = json.loads(run("tally", path, "--set", "spread10", "--json").stdout)
        self.assertEqual(data["students"][0]["best"]["counted"], 120)

    def test_worked_values_of_the_counting_rules(self):
        folder = os.path.join(os.path.dirname(__file__), "..", "..", "fixtures", "tallies")
        with open(os.path.join(folder, "expected.tsv"), encoding="utf-8") as table:
            lines = table.read().splitlines()[1:]
        self.assertGreaterEqual(len(lines), 15)
        for line in lines:
            name, requirements, counted, first_scrub, as_logged = line.split("\t")
            with self.subTest(line):
                done = run("tally", os.path.join(folder, name + ".csv"), "--set", requirements, "--json")
                self.assertEqual(done.returncode, 0, done.stderr)
                student = json.loads(done.stdout)["students"][0]
                self.assertEqual((student["best"]["counted"], student["best"]["firstScrub"], student["asLogged"]["counted"]),
                                 (int(counted), int(first_scrub), int(as_logged)))

    def test_refused_rows_are_named_and_the_rest_counts(self):
        text = HEADER + self.rows(2) + f"s8,2026-02-30,Ines,Thing,eye,{YES},,,\n" + f"s9,2026-03-12,Ines,Thing,foot,{YES},,,\n"
        data = self.tally(text, code=2)
        self.assertEqual([(r["line"], r["column"]) for r in data["refused"]], [(4, "date"), (5, "categories")])
        self.assertTrue(all(r["reason"] and r["mend"] for r in data["refused"]))
        self.assertEqual(data["students"][0]["best"]["counted"], 2)
        strict = run("tally", self.file(text), "--strict")
        self.assertEqual((strict.returncode, strict.stdout), (2, b""))

    def test_same_sheet_with_other_marks_is_refused_whole(self):
        text = HEADER + f"s1,2026-03-12,Ines,A,eye,{YES},,,\n" + f"s1,2026-03-12,Ines,B,eye,N{YES[1:]},,,\n" + self.rows(1)
        data = self.tally(text, code=2)
        self.assertEqual((data["refused"][0]["line"], data["refused"][0]["column"]), (3, "verify"))
        self.assertEqual(data["students"][0]["sheets"], 1)

    def test_bad_files_are_refused_with_a_sentence(self):
        for name, text in {
            "empty": b"",
            "semicolons": (HEADER + self.rows(1)).replace(",", ";"),
            "tabs": (HEADER + self.rows(1)).replace(",", "\t"),
            "utf16": (HEADER + self.rows(1)).encode("utf-16"),
            "latin1": (HEADER + self.rows(1).replace("Thing", "Oreille cass\u00e9e")).encode("latin-1"),
            "nul": HEADER + self.rows(1).replace("Thing", "Th\0ng"),
            "open quote": HEADER + 's1,2026-03-12,"Ines\n' + self.rows(3),
            "a megabyte in one field": HEADER + self.rows(1).replace("Thing", "T" * 1_000_000),
            "no header": self.rows(3),
            "not a table": os.urandom(4096),
        }.items():
            with self.subTest(name):
                done = run("tally", self.file(text))
                self.assertEqual(done.returncode, 2, done.stderr)
                self.assertEqual(done.stdout, b"")
                self.assertIn(b"Line", done.stderr)
                self.assertLess(len(done.stderr), 600)

    def test_header_only_has_no_students(self):
        self.assertEqual(self.tally(HEADER)["students"], [])

    def test_two_hundred_megabytes_of_anything_stay_bounded(self):
        path = os.path.join(self.folder.name, "large.csv")
        with open(path, "wb") as out:
            out.write(HEADER.encode())
            for _ in range(200):
                out.write(b"x,y,z\n" * (1024 * 1024 // 6))
        done = run("tally", path, memory=None if "asan" in os.environ.get("PEELPACK_KIND", "") else 1 << 30)
        self.assertEqual(done.returncode, 2, done.stderr[-300:])
        self.assertIn(b"more than 100000 rows", done.stderr)

    def test_patient_identifiers_are_warned_of_and_nothing_changes(self):
        text = HEADER + self.rows(1).replace("Thing", "Hernia pt John MRN 445566")
        data = self.tally(text)
        self.assertEqual({w["column"] for w in data["warnings"]}, {"procedure"})
        self.assertEqual(data["students"][0]["best"]["cases"][0]["procedure"], "Hernia pt John MRN 445566")

    def test_find_json(self):
        done = run("find", "lap", "chole", "--json")
        first = json.loads(done.stdout)[0]
        self.assertEqual(sorted(first), ["categories", "id", "matched", "name"])
        self.assertEqual(first["name"], "Laparoscopic cholecystectomy")

    def test_role_says_why(self):
        done = run("role", self.file(HEADER + f"s1,2026-03-12,Ines,A,eye,N{YES[1:]},,,\n"), "--json")
        sheet = json.loads(done.stdout)["sheets"][0]
        self.assertEqual(sheet["role"], "second")
        self.assertIn("supplies", sheet["why"])

    def test_a_hand_written_set_is_explained(self):
        path = self.file('{"id": "x", "title": "t", "notApplicable": ["camera"], "targets": [{"id": "a", "roles": ["third"],'
                         ' "categories": ["foot"], "required": 0}]}', "set.json")
        done = run("tally", self.file(HEADER), "--set", path)
        self.assertEqual(done.returncode, 2)
        for part in (b"notApplicable", b"targets[0].roles", b"targets[0].categories"):
            self.assertIn(part, done.stderr)

    def test_demo_is_the_same_every_time_and_spares_other_files(self):
        one = os.path.join(self.folder.name, "one")
        self.assertEqual(run("demo", one, "--csv").returncode, 0)
        self.assertEqual(run("demo", one, "--csv").returncode, 0)
        two = os.path.join(self.folder.name, "two")
        run("demo", two, "--csv")
        for name in os.listdir(one):
            with open(os.path.join(one, name), "rb") as a, open(os.path.join(two, name), "rb") as b:
                self.assertEqual(a.read(), b.read())
        self.file("mine", "notes.txt")
        self.assertEqual(run("demo", self.folder.name, "--csv").returncode, 2)
        for csv in ("spring-class.csv", "fall-class.csv"):
            done = run("tally", os.path.join(one, csv), "--strict")
            self.assertEqual((done.returncode, done.stderr), (0, b""))

    def test_demo_json_names_what_was_made(self):
        folder = os.path.join(self.folder.name, "demo")
        done = run("demo", folder, "--csv", "--json")
        self.assertEqual(done.returncode, 0, done.stderr)
        made = json.loads(done.stdout)
        self.assertEqual(made["folder"], folder)
        self.assertEqual(sorted(made["files"]), sorted(os.listdir(folder)))

    def test_a_demo_file_changed_by_hand_is_not_overwritten(self):
        folder = os.path.join(self.folder.name, "demo")
        run("demo", folder, "--csv")
        path = os.path.join(folder, "own-set.json")
        with open(path, "a", encoding="utf-8") as mine:
            mine.write(" ")
        with open(path, "rb") as before:
            text = before.read()
        done = run("demo", folder, "--csv")
        self.assertEqual(done.returncode, 2)
        self.assertIn(b"own-set.json", done.stderr)
        with open(path, "rb") as after:
            self.assertEqual(text, after.read())

    def test_control_characters_never_reach_the_terminal(self):
        path = self.file(HEADER + self.rows(1).replace("Thing", "Th\x1b]0;x\x07ing") + self.rows(1).replace("eye", "e\x1bye"))
        for command in (("role", path), ("tally", path), ("find", "b\x1b[31m")):
            done = run(*command)
            self.assertNotIn(b"\x1b", done.stdout + done.stderr)
            self.assertNotIn(b"\x07", done.stdout + done.stderr)

    def test_nobody_is_not_everybody(self):
        self.assertEqual(run("tally", self.file(HEADER)).returncode, 0)
        self.assertEqual(run("tally", self.file(HEADER), "--require-complete").returncode, 1)

    def test_a_column_misspelled_is_not_passed_over(self):
        for wrong in ("cancelled", "Canceled"):
            done = run("tally", self.file(HEADER.replace("canceled", wrong) + self.rows(1)))
            self.assertEqual(done.returncode, 2)
            self.assertIn(b"almost the column canceled", done.stderr)

    def test_ambiguous_shorthand_names_all_that_it_means(self):
        text = HEADER + f"s1,2026-03-12,Ines,TAH,,{YES},,,\n"
        mend = self.tally(text, code=2)["refused"][0]["mend"]
        self.assertIn("Total abdominal hysterectomy", mend)
        self.assertIn("Total artificial heart", mend)

    def test_help_everywhere_with_an_example(self):
        self.assertEqual(run("--help").returncode, 0)
        for command in ("role", "tally", "find", "demo"):
            done = run(command, "--help")
            self.assertEqual(done.returncode, 0)
            self.assertIn(b"Example:", done.stdout)
            self.assertIn(b"--json", done.stdout)


if __name__ == "__main__":
    unittest.main()
