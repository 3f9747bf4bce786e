"""A program's rules besides its policy, through the commands on real vaults: a set that changes for one class, clinical days in and
out of calendars, sites, who may sign, preceptors' standing, and the questions that follow."""

import datetime
import json
import os
import subprocess
import unittest

from program import PASSPHRASE, Program, small_set

HERE = os.path.dirname(os.path.abspath(__file__))
SECOND_SCRUB = "YYNYYYYYYA"
TODAY = datetime.datetime.now(datetime.timezone.utc).date()


def day(later):
    return (TODAY + datetime.timedelta(days=later)).isoformat()


class Rules(unittest.TestCase):
    def make(self, **options):
        program = Program()
        self.addCleanup(program.close)
        program.begin(**options)
        program.enroll("mara", "anna", "Anna Weiss", "instructor", "Spring class")
        program.enroll("mara", "cora", "Cora Lind", "coordinator", "Spring class")
        program.give("mara", "anna")
        program.take("cora", program.send("mara", "cora"))
        program.brandt, _ = program.card("anna", "L. Brandt")
        program.enroll("anna", "ines", "Ines Duarte", "student", "Spring class")
        program.enroll("anna", "jonas", "Jonas Vale", "student", "Fall class")
        program.exchange("mara", "anna")
        program.give("anna", "ines")
        program.give("anna", "jonas")
        return program

    def tally(self, program, who, *words):
        data = program.json("tally", program.vault(who), *words)
        return data, {student["student"]: student for student in data["students"]}

    def test_a_set_changes_in_mid_course_for_one_class(self):
        program = self.make(requirement_set="cap15")
        for student in ("ines", "jonas"):
            for marks in ("YYYYYYYYYA", SECOND_SCRUB):
                program.signed_sheet(student, marks=marks)
            program.give(student, "mara")
        before, students = self.tally(program, "mara")
        self.assertEqual(before["set"], "cap15")
        for student in students.values():
            self.assertEqual((student["set"], student["setFrom"], student["otherSets"]), ("cap15", None, []))
        plain = {name: self.tally(program, "mara", "--set", name)[1] for name in ("cap15", "spread10", "cap15-four")}
        self.assertNotIn("otherSets", plain["cap15"]["Ines Duarte"])

        change = ["program", "requirements", "--set", "spread10", "--class", "Spring class", "--reason", "The new list."]
        program.run(*change, "--from", day(-10), vault="anna", expect=2)  # an instructor may not
        program.run(*change, vault="mara", expect=2)  # from when?
        program.run(*change[:-2], "--from", day(-10), vault="mara", expect=2)  # why?
        program.run("program", "requirements", "--set", "spread10", "--from", day(-10), "--reason", "x", vault="mara", expect=2)
        program.run(*change, "--from", day(-10), vault="mara")
        program.run("program", "requirements", "--set", "cap15-four", "--every-class", "--from", day(30), "--reason",
                    "From the summer on.", vault="mara")

        after, students = self.tally(program, "mara")
        self.assertEqual(after["set"], "cap15")  # they differ: that of the program
        ines, jonas = students["Ines Duarte"], students["Jonas Vale"]
        self.assertEqual((ines["set"], ines["setFrom"]), ("spread10", day(-10)))
        self.assertEqual((jonas["set"], jonas["setFrom"]), ("cap15", None))
        self.assertEqual([(one["set"], one["coming"], one["change"]) for one in ines["otherSets"]],
                         [("cap15", False, day(-10)), ("cap15-four", True, day(30))])
        self.assertEqual([(one["set"], one["coming"], one["change"]) for one in jonas["otherSets"]],
                         [("cap15-four", True, day(30))])
        # Each as if it had been asked for by name.
        for name, student in students.items():
            for counted in [student, *student["otherSets"]]:
                for part in ("best", "asLogged", "next"):
                    self.assertEqual(counted[part], plain[counted["set"]][name][part])
        only, _ = self.tally(program, "mara", "--student", "Ines Duarte")
        self.assertEqual(only["set"], "spread10")

        text = program.run("tally", program.vault("mara")).text
        for part in (f"Set in force: spread10, since {day(-10)} (Spring class: The new list.).", "Set in force: cap15.",
                     f"Under cap15, in force before {day(-10)}: ", f"Under cap15-four, from {day(30)} on (every class: From the summer on.): "):
            self.assertIn(part, text)
        brief = program.run("tally", program.vault("mara"), "--brief").text
        self.assertIn(f"  under cap15, in force before {day(-10)}: ", brief)

        # The student sees the same once a parcel came; board and report are printed under both.
        program.exchange("mara", "anna")
        program.give("mara", "ines")
        _, own = self.tally(program, "ines")
        self.assertEqual((own["Ines Duarte"]["set"], own["Ines Duarte"]["best"]), ("spread10", ines["best"]))
        for what in ("board", "report", "log"):
            out = program.new_file("pdf")
            program.run("print", what, "--out", out, vault="mara")
            self.assertTrue(program.read(out).startswith(b"%PDF"))
        roles = {sheet["sheet"]: sheet["role"] for sheet in program.json("role", program.vault("mara"))["sheets"]}
        self.assertEqual(sorted(roles.values()), ["first", "first", "second", "second"])

        # A second verifier agrees about who may write what.
        finished = subprocess.run(["/usr/bin/python3", os.path.join(HERE, "..", "sync", "verify_export.py"), program.id,
                                   program.export("mara")], capture_output=True, text=True, check=False)
        self.assertEqual(finished.returncode, 0, finished.stdout + finished.stderr)

    def test_a_completion_is_decided_under_the_set_of_the_class(self):
        program = Program()
        self.addCleanup(program.close)
        sets = {name: program.write(json.dumps(small_set(name, first, 1)).encode(), "json")
                for name, first in (("longer", 2), ("shorter", 1))}
        program.begin(requirement_set=sets["longer"])
        program.brandt, _ = program.card("mara", "L. Brandt")
        for who, name, of_class in (("ines", "Ines Duarte", "Spring class"), ("jonas", "Jonas Vale", "Fall class")):
            program.enroll("mara", who, name, "student", of_class)
            program.give("mara", who)
            sheets = [program.signed_sheet(who, marks=marks) for marks in ("YYYYYYYYYA", SECOND_SCRUB)]
            program.give(who, "mara")
            program.run("initial", *sheets, "--student", name, vault="mara")
        program.run("program", "requirements", "--set", sets["shorter"], "--class", "Spring class", "--from", day(0), "--reason",
                    "Two rooms were closed.", vault="mara")
        done = ["complete", "--set"]
        program.run(*done, sets["longer"], "Ines Duarte", vault="mara", expect=2)  # not the one in force for her
        answer = program.json(*done, sets["shorter"], "Ines Duarte", vault="mara")
        self.assertEqual(answer, {"complete": True, "requirementSet": "shorter"})
        program.run(*done, sets["shorter"], "Jonas Vale", vault="mara", expect=2)
        answer = program.json(*done, sets["longer"], "Jonas Vale", vault="mara", expect=1)
        self.assertEqual((answer["required"], answer["counted"]), (3, 2))
        exception = program.new_file("record.json"), program.new_file("proofs.json")
        program.run("record", "make", "Jonas Vale", "--set", sets["longer"], "--exception", "One room was closed.", "--out",
                    exception[0], "--proofs", exception[1], vault="mara", secrets=(PASSPHRASE, program.program_code))
        self.assertTrue(program.check(*exception, program.export("mara"))["verified"])
        self.assertIn("longer", program.read(exception[0]).decode())

    def test_a_set_that_does_not_ship_counts_where_its_file_is(self):
        program = Program()
        self.addCleanup(program.close)
        files = {first: program.write(json.dumps(small_set("small", first, 1)).encode(), "json") for first in (2, 3)}
        program.begin(requirement_set=files[2])
        program.enroll("mara", "ines", "Ines Duarte", "student", "Spring class")
        program.give("mara", "ines")
        program.open_sheet("ines")
        tally = ("tally", program.vault("ines"))
        self.assertEqual(program.json("tally", program.vault("mara"))["set"], "small")  # the director's vault keeps it
        with open(program.path("small"), "wb") as out:  # a file of that name in the folder is nothing to go by
            out.write(program.read(files[2]))
        self.assertIn("its file is not at hand", program.run(*tally, expect=2).complaint)
        self.assertEqual(program.json(*tally, "--set", files[2])["set"], "small")
        done = program.run("program", "set", files[3], vault="ines", expect=2)
        self.assertIn("to the byte", done.complaint)
        spaced = program.write(program.read(files[2]) + b"\n", "json")
        program.run("program", "set", spaced, vault="ines", expect=2)
        program.run("program", "set", program.write(b"{}", "json"), vault="ines", expect=2)
        program.run("program", "set", program.path("not-there.json"), vault="ines", expect=3)
        self.assertIn("its file is not at hand", program.run(*tally, expect=2).complaint)
        answer = program.json("program", "set", files[2], vault="ines")
        self.assertEqual(answer, {"requirementSet": "small", "title": "An invented small set"})
        self.assertEqual(program.json(*tally)["set"], "small")

        # Two sets of one id are two: each class is counted under its own.
        program.enroll("mara", "jonas", "Jonas Vale", "student", "Fall class")
        program.give("mara", "jonas")
        program.open_sheet("jonas")
        for student in ("ines", "jonas"):
            program.give(student, "mara")
        program.run("program", "requirements", "--set", files[3], "--class", "Fall class", "--from", day(0), "--reason",
                    "Mended.", vault="mara")
        _, students = self.tally(program, "mara")
        required = {name: sum(target["required"] for target in student["best"]["targets"]) for name, student in students.items()}
        self.assertEqual(required, {"Ines Duarte": 3, "Jonas Vale": 4})

        # A set of a shipped one's id is not taken for it.
        other = program.write(json.dumps(small_set("cap15", 2, 1)).encode(), "json")
        program.run("program", "rules", "--set", other, vault="mara")
        program.give("mara", "ines")
        self.assertIn("its file is not at hand", program.run(*tally, expect=2).complaint)
        program.run("program", "set", other, vault="ines")
        best = program.json(*tally)["students"][0]["best"]
        self.assertEqual(best["required"], 3)

    def days(self, program, who, *words):
        return program.json("program", "days", *words, vault=who)["clinicalDays"]

    def test_clinical_days_go_in_and_out(self):
        program = self.make()
        table = "date,site,start,end\r\n2026-03-12,North Campus,07:00,15:30\r\n2026-03-11,South Annex,22:00,06:00\r\n" \
                "2026-03-12,North Campus,07:00,15:30\r\n2026-03-13,North Campus,,\r\n"
        file = program.write(table.encode(), "csv")
        spring = ["--class", "Spring class"]
        program.run("program", "days", "--in", file, vault="cora", expect=2)  # of which class?
        program.run("program", "days", *spring, "--in", file, vault="ines", expect=2)
        entered = self.days(program, "cora", *spring, "--in", file)
        self.assertEqual(entered, [{"date": "2026-03-11", "site": "South Annex", "start": "22:00", "end": "06:00"},
                                   {"date": "2026-03-12", "site": "North Campus", "start": "07:00", "end": "15:30"},
                                   {"date": "2026-03-13", "site": "North Campus", "start": "", "end": ""}])
        out = program.new_file("ics")
        program.run("program", "days", *spring, "--out", out, vault="cora")
        self.assertEqual(program.read(out).count(b"BEGIN:VEVENT"), 3)
        reach = ["--from", "2026-01-01", "--to", "2026-12-31"]
        self.assertEqual(self.days(program, "cora", "--class", "Fall class", "--in", out, *reach), entered)
        self.assertEqual(self.days(program, "cora", *spring), entered)

        # A class without students is remarked upon, by a vault that holds students.
        program.take("anna", program.send("cora", "anna"))
        remarks = {(who, name): program.run("program", "days", "--class", name, "--in", file, vault=who).complaint
                   for who in ("anna", "cora") for name in ("Spring class", "Sprung class")}
        self.assertIn("is in the class \"Sprung class\"", remarks.pop(("anna", "Sprung class")))
        self.assertEqual(set(remarks.values()), {""})

        # RFC 5545: three Mondays without the second, at a place that the calendar does not name.
        weekly = "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Invented//EN\r\nBEGIN:VEVENT\r\nUID:one\r\nDTSTART:20260302T070000\r\n" \
                 "DTEND:20260302T150000\r\nRRULE:FREQ=WEEKLY;COUNT=3\r\nEXDATE:20260309T070000\r\nEND:VEVENT\r\nEND:VCALENDAR\r\n"
        calendar = program.write(weekly.encode(), "ics")
        program.run("program", "days", "--every-class", "--in", calendar, *reach, vault="cora", expect=2)
        found = self.days(program, "cora", "--every-class", "--in", calendar, *reach, "--site", "North Campus")
        self.assertEqual([one["date"] for one in found], ["2026-03-02", "2026-03-16"])
        for wrong in ("2026-03-32,North,,", "2026-03-12,,07:00,", "2026-03-12,North,7:00,", "2026-03-12,North,,15:00"):
            bad = program.write(("date,site,start,end\r\n" + wrong + "\r\n").encode(), "csv")
            done = program.run("program", "days", *spring, "--in", bad, vault="cora", expect=2)
            self.assertIn("line 2", done.complaint)
        self.assertEqual(self.days(program, "cora", *spring), entered)  # nothing half-taken

        # A student's own calendar has the class's and everybody's.
        parcel = program.send("cora")
        program.take("anna", parcel)
        program.give("anna", "ines")
        own = self.days(program, "ines")
        self.assertEqual([one["date"] for one in own], ["2026-03-02", "2026-03-11", "2026-03-12", "2026-03-13", "2026-03-16"])
        self.assertEqual(self.days(program, "cora", *spring, "--none"), [])

    def test_what_does_not_fit_the_rules_becomes_a_question_and_is_signed_all_the_same(self):
        program = self.make()
        program.run("program", "signers", "--allow", "RN=first", "--allow", "CST=second,observed", vault="cora", expect=2)
        program.run("program", "signers", "--allow", "RN=first", "--allow", "CST=second,observed", vault="mara")
        program.run("program", "signers", "--allow", "CST=third", vault="mara", expect=2)
        table = program.write(f"date,site\r\n{day(-1)},North Campus\r\n{day(0)},South Annex\r\n".encode(), "csv")
        program.run("program", "days", "--class", "Spring class", "--in", table, vault="mara")
        program.run("preceptor", "standing", "L. Brandt", "--oriented", day(1), vault="mara")
        program.exchange("mara", "anna")
        program.give("mara", "ines")

        sheet = program.signed_sheet("ines")  # first scrub at North Campus today, by a CST
        program.give("ines", "anna")
        asked = program.questions("anna", sheet)
        for part in ('"CST", which the program does not list for first scrub', f"had not oriented L. Brandt; it did on {day(1)}",
                     f"On {day(0)} the class was at South Annex, the case at North Campus."):
            self.assertTrue(any(part in question for question in asked), (part, asked))
        self.assertEqual(len(asked), 3)
        listed = program.json("questions", program.vault("anna"))["students"][0]["sheets"][0]
        self.assertEqual(listed["questions"], asked)

        # Each goes with its rule.
        program.run("preceptor", "standing", "L. Brandt", "--not-active", "--oriented", day(0), vault="anna")
        program.run("program", "days", "--class", "Spring class", "--none", vault="anna")
        self.assertEqual([question for question in program.questions("anna", sheet) if "CST" not in question],
                         ["L. Brandt is not active as a preceptor of the program."])
        program.run("preceptor", "standing", "L. Brandt", "--active", vault="anna")
        program.give("anna", "mara")
        program.run("program", "signers", "--anybody", vault="mara")
        program.give("mara", "anna")
        self.assertEqual(program.questions("anna", sheet), [])
        shown = program.json("preceptor", "standing", "L. Brandt", vault="anna")["standing"]
        self.assertEqual(shown, {"oriented": day(0), "active": True})

        # On a day that is none of the class; once it is initialed, it is answered.
        table = program.write(f"date,site\r\n{day(-1)},North Campus\r\n".encode(), "csv")
        program.run("program", "days", "--class", "Spring class", "--in", table, vault="anna")
        self.assertEqual(program.questions("anna", sheet), [f"{day(0)} is no clinical day of the class."])
        program.run("initial", sheet, vault="anna")
        self.assertEqual(program.json("questions", program.vault("anna"))["students"], [])

    def test_everything_is_shown(self):
        program = self.make()
        program.run("program", "sites", "--site", "South Annex", "--phones", "none", "--note", "Ask at the desk.", vault="cora")
        program.run("program", "sites", "--site", "North Campus", "--phones", "lounge", vault="cora")
        program.run("program", "sites", "--site", "South Annex", "--phones", "anywhere", vault="cora", expect=2)
        program.run("program", "sites", "--remove", "West Wing", vault="cora", expect=2)
        program.run("program", "sites", "--site", "West Wing", vault="ines", expect=2)
        sites = [{"name": "North Campus", "phones": "lounge", "note": ""},
                 {"name": "South Annex", "phones": "none", "note": "Ask at the desk."}]
        self.assertEqual(program.json("program", "sites", vault="cora")["sites"], sites)
        parcel = program.send("cora")
        program.take("mara", parcel)
        program.run("program", "signers", "--allow", "CST=first,observed", vault="mara")
        program.run("program", "requirements", "--set", "cap15", "--class", "Fall class", "--from", day(3), "--reason", "Late start.",
                    vault="mara")
        program.run("preceptor", "standing", "L. Brandt", "--not-oriented", vault="mara")
        program.give("mara", "jonas")
        for who in ("mara", "jonas"):
            shown = program.json("program", "show", vault=who)
            self.assertEqual(shown["sites"], sites)
            self.assertEqual(shown["signers"], [{"credential": "CST", "roles": ["first", "observed"]}])
            self.assertEqual(shown["requirementChanges"],
                             [{"class": "Fall class", "from": day(3), "set": "cap15", "reason": "Late start."}])
            self.assertEqual(shown["preceptors"][0]["standing"], {"oriented": None, "active": True})
            self.assertEqual({one["class"]: one["requirementSet"] for one in shown["classes"]}["Fall class"], "spread10")
            text = program.run("program", "show", vault=who).text
            for part in ("North Campus  phones in the lounge only", "South Annex  no phones; print stubs  (Ask at the desk.)",
                         "CST  first and observed", f"from {day(3)}  cap15  for Fall class: Late start.", "not oriented, active"):
                self.assertIn(part, text)
        table = program.write(b"name,phones,note\r\nEast Wing,core,\r\n", "csv")
        program.run("program", "sites", "--in", table, vault="mara")
        self.assertEqual(program.json("program", "sites", vault="mara")["sites"], [{"name": "East Wing", "phones": "core", "note": ""}])
        program.run("program", "sites", "--remove", "East Wing", vault="mara")
        self.assertEqual(program.json("program", "sites", vault="mara")["sites"], [])


if __name__ == "__main__":
    unittest.main()
