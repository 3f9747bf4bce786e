"""From initialed sheets to a completion record that an outsider verifies: through the commands, on real vaults, and with a second
verifier (verify_record.py) that knows only the standards and platform/evidence/RECORD.md."""

import copy
import json
import os
import subprocess
import sys
import unittest

from program import PASSPHRASE, PROGRAM, Program, small_set

HERE = os.path.dirname(os.path.abspath(__file__))
REASON = "The site closed its rooms for a month."
SMALL_SET = small_set("small", 2, 1)


def flat(value, place=()):
    """Every text, number and truth value of a document, with the way to it."""
    if isinstance(value, (dict, list)):
        for name, part in value.items() if isinstance(value, dict) else enumerate(value):
            yield from flat(part, place + (name,))
    else:
        yield place, value


def changed(document, place, value):
    other = copy.deepcopy(document)
    part = other
    for name in place[:-1]:
        part = part[name]
    part[place[-1]] = value
    return other


class Completion(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.program = program = Program()
        cls.addClassCleanup(program.close)
        cls.set_file = program.write(json.dumps(SMALL_SET).encode(), "json")
        program.begin(requirement_set=cls.set_file)
        program.enroll("mara", "anna", "Anna Weiss", "instructor", "Spring class")
        program.give("mara", "anna")
        program.brandt, _ = program.card("anna", "L. Brandt")
        for who, name, sheets in (("ines", "Ines Duarte", 4), ("jonas", "Jonas Vale", 2)):
            program.enroll("anna", who, name, "student", "Spring class")
            program.give("anna", who)
            made = [program.signed_sheet(who) for _ in range(sheets)]
            program.give(who, "anna")
            program.give("anna", "mara")
            if who == "ines":
                cls.before_initials = cls.make("ines", expect=1)
            program.run("initial", *made, "--student", name, vault="anna")
            program.give("anna", "mara")

    @classmethod
    def make(cls, who, *words, director="mara", code=None, expect=0):
        """The answer of `record make`, with the files that it wrote."""
        program = cls.program
        files = program.new_file("record.json"), program.new_file("proofs.json")
        answer = program.run("record", "make", program.names[who], "--out", files[0], "--proofs", files[1], "--set", cls.set_file,
                             "--json", *words, vault=director, secrets=(PASSPHRASE, code or program.program_code), expect=expect)
        written = [os.path.exists(file) for file in files]
        assert written == [answer.code == 0] * 2, written
        answer.record, answer.proofs = files
        return answer

    def write(self, document):
        return self.program.write(json.dumps(document).encode(), "json")

    def load(self, file):
        return json.loads(self.program.read(file))

    def prove(self, proofs, sheet, expect=0):
        out = self.program.new_file("sheet.json")
        done = subprocess.run([PROGRAM, "record", "prove", proofs, sheet, "--out", out], capture_output=True, text=True, check=False)
        self.assertEqual(done.returncode, expect, done.stdout + done.stderr)
        self.assertEqual(os.path.exists(out), expect == 0)
        return out

    def second_opinion(self, *files, program=None):
        words = ["/usr/bin/python3", os.path.join(HERE, "verify_record.py"), program or self.program.id, *files]
        return subprocess.run(words, capture_output=True, text=True, check=False)

    def assert_refused(self, document, what):
        """By both verifiers."""
        file = self.write(document)
        done = self.program.run("check", file, "--program", self.program.id, expect=None)
        other = self.second_opinion(file)
        self.assertIn(done.code, (1, 2), what)
        self.assertEqual(other.returncode, 1, what)

    def test_a_record_is_made_once_all_is_initialed_and_both_verifiers_agree(self):
        self.assertEqual(self.before_initials.json, {"complete": False, "required": 3, "counted": 0})
        made = self.make("ines")
        record = self.load(made.record)
        self.assertEqual(record["credentialSubject"]["name"], "Ines Duarte")
        self.assertEqual((record["credentialSubject"]["required"], record["credentialSubject"]["counted"]), (3, 3))
        self.assertEqual(record["credentialSubject"]["sheets"]["count"], 3)  # of four: the fourth has no seat
        self.assertNotIn("exception", record["credentialSubject"])
        report = self.program.check(made.record, made.proofs)
        self.assertTrue(report["verified"])
        self.assertEqual(len(report["records"][1]["proven"]), 3)
        text = self.program.run("check", made.record, "--program", self.program.id).text
        self.assertIn("Ines Duarte has met the requirement set small", text)
        self.assertIn("first-general: 2 of 2", text)
        other = self.second_opinion(made.record, made.proofs)
        self.assertEqual(other.returncode, 0, other.stdout + other.stderr)
        self.assertIn(made.json["digest"], other.stdout)

    def test_one_sheet_is_proven_without_the_others(self):
        made = self.make("ines")
        sheets = [entry["sheet"]["sheet"] for entry in self.load(made.proofs)["sheets"]]
        file = self.prove(made.proofs, sheets[1][:8])
        shown = self.program.read(file).decode()
        self.assertIn(sheets[1], shown)
        for hidden in (sheets[0], sheets[2]):
            self.assertNotIn(hidden, shown)
        report = self.program.check(file)
        self.assertEqual(report["records"][0]["proven"], [sheets[1]])
        other = self.second_opinion(file)
        self.assertEqual((other.returncode, other.stdout.split()[-1]), (0, sheets[1]))
        text = self.program.run("check", file, "--program", self.program.id).text
        self.assertIn("Laparoscopic cholecystectomy: first scrub, counts under general", text)
        self.assertIn("Signed by L. Brandt, CST (card); initialed by Anna Weiss", text)
        self.prove(made.proofs, "ffffffff", expect=2)
        self.prove(made.proofs, sheets[0][:3], expect=2)
        self.prove(made.record, sheets[0][:8], expect=2)

    def test_every_change_to_a_record_or_a_proof_is_noticed_by_both_verifiers(self):
        made = self.make("jonas", "--exception", REASON)
        record = self.load(made.record)
        sheet = self.load(self.prove(made.proofs, self.load(made.proofs)["sheets"][0]["sheet"]["sheet"][:8]))
        tried = 0
        for document, start in ((record, ()), (sheet, ("sheets",))):
            for place, value in flat(document):
                if place[:len(start)] == start and value != "SheetProofs":
                    other = value + 1 if isinstance(value, int) else value[:-1] + ("1" if value[-1:] != "1" else "2")
                    self.assert_refused(changed(document, place, other), place)
                    tried += 1
        self.assertGreater(tried, 50)
        for name in ("proof", "journal", "credentialSubject", "issuer"):
            self.assert_refused({key: value for key, value in record.items() if key != name}, name)
        self.assert_refused(dict(record, validUntil="2099-01-01T00:00:00Z"), "a member more")
        twice = self.program.write(self.program.read(made.record).replace(b'"name"', b'"name": "Somebody Else", "name"', 1), "json")
        self.assertEqual(self.program.run("check", twice, "--program", self.program.id, expect=2).code, 2)
        self.assertEqual(self.second_opinion(twice).returncode, 1)
        stranger = Program()
        self.addCleanup(stranger.close)
        stranger.begin()
        self.program.run("check", made.record, "--program", stranger.id, expect=1)
        self.assertEqual(self.second_opinion(made.record, program=stranger.id).returncode, 1)

    def test_an_exception_has_its_reason_in_record_and_journal_or_is_not_made(self):
        short = self.make("jonas", expect=1)
        self.assertEqual(short.json, {"complete": False, "required": 3, "counted": 2})
        for words in (("--exception", ""), ("--exception", "  "), ("--exception",)):
            self.make("jonas", *words, expect=2)
        self.make("ines", "--exception", REASON, expect=2)  # nothing is short
        before = self.completions("jonas")
        made = self.make("jonas", "--exception", REASON)
        self.assertEqual(self.load(made.record)["credentialSubject"]["exception"], {"reason": REASON})
        text = self.program.run("check", made.record, "--program", self.program.id).text
        self.assertIn("Jonas Vale is complete by exception under the requirement set small", text)
        self.assertIn("1 case is short. The director's reason: " + REASON, text)
        self.assertNotIn("has met", text)
        said = [one for one in self.completions("jonas") if one not in before] or before
        self.assertEqual([one["exception"] for one in said], ["2 of 3; " + REASON])
        self.program.run("complete", "Jonas Vale", "--set", self.set_file, vault="mara", expect=1)

    def completions(self, who):
        return self.program.check(self.export(who))["completions"]

    def export(self, who):
        return self.program.export("mara", "--student", self.program.names[who])

    def test_the_journal_holds_the_decision_that_a_record_cites(self):
        made = self.make("ines")
        self.make("jonas", "--exception", REASON)
        export = self.export("ines")
        report = self.program.check(export, made.record, made.proofs)
        self.assertEqual([record["inJournal"] for record in report["records"]], [True, True])
        self.assertEqual([one["requirementSet"] for one in report["completions"]], ["small"])
        self.assertEqual(len(report["records"][1]["proven"]), 3)
        report = self.program.check(self.export("jonas"), made.record, expect=1)
        self.assertEqual(report["records"][0]["inJournal"], False)
        text = self.program.run("check", self.export("jonas"), made.proofs, "--program", self.program.id, expect=1).text
        self.assertEqual(text.count("The journal given here does not hold these signatures."), 3)
        verifier = os.path.join(HERE, "..", "sync", "verify_export.py")
        for file in (export, self.export("jonas")):
            done = subprocess.run(["/usr/bin/python3", verifier, self.program.id, file], capture_output=True, text=True, check=False)
            self.assertEqual(done.returncode, 0, done.stdout)

    def test_a_later_record_supersedes_the_one_before_and_check_says_so(self):
        first = self.make("ines")
        second = self.make("ines")
        self.assertEqual(second.json["supersedes"], {"record": first.json["record"], "digest": first.json["digest"]})
        self.assertEqual(len(self.completions("ines")), 1)  # the same decision, written once
        report = self.program.check(first.record, second.record)
        self.assertEqual(report["records"][0]["supersededBy"], second.json["record"])
        self.assertEqual(report["records"][1]["supersedes"], first.json["record"])
        text = self.program.run("check", first.record, second.record, "--program", self.program.id).text
        self.assertIn(f"It is superseded by {second.record}: that one stands, and this no longer does.", text)
        self.assertIn(f"That is {first.record}, which no longer stands.", text)
        self.make("ines", "--supersedes", first.record, expect=2)  # not the last

        export = self.program.export("mara")
        self.program.names["nora"] = "Nora Stone"
        self.program.run("program", "takeover", "--name", "Nora Stone", vault="nora", secrets=(self.program.program_code, PASSPHRASE))
        self.program.take("nora", export)
        self.make("ines", "--supersedes", self.make("jonas", "--exception", REASON).record, director="nora", expect=2)
        third = self.make("ines", "--supersedes", second.record, director="nora")
        self.assertEqual(third.json["supersedes"]["digest"], second.json["digest"])
        self.assertEqual(self.second_opinion(first.record, second.record, third.record).returncode, 0)

    def test_of_two_directors_with_one_number_only_the_one_that_holds_decides(self):
        program, export = self.program, self.program.export("mara")
        for who in ("nina", "olga"):
            program.run("program", "takeover", "--name", who.title(), "--epoch", "7", vault=who,
                        secrets=(program.program_code, PASSPHRASE))
            program.take(who, export)
        for who, other in (("nina", "olga"), ("olga", "nina")):
            program.take(who, program.export(other))
        program.names.update(nina="Nina", olga="Olga")
        codes = []
        for who in ("nina", "olga"):
            answer = self.make("ines", director=who, expect=None)
            codes.append(answer.code)
            if answer.code:
                self.assertIn("do not count any more", answer.complaint)
                answer = program.run("complete", "Ines Duarte", "--set", self.set_file, vault=who, expect=2)
        self.assertEqual(sorted(codes), [0, 2])

    def test_only_the_director_with_the_program_code_makes_records(self):
        before = self.completions("ines")
        self.make("ines", director="anna", expect=2)
        self.make("ines", code="AAAAA-AAAAA-AAAAA-AAAAA-AAAAA-AAAAA-AAAAA", expect=2)
        stranger = Program()
        self.addCleanup(stranger.close)
        stranger.begin()
        done = self.make("ines", code=stranger.program_code, expect=2)
        self.assertIn("not the code of this program", done.complaint)
        self.assertEqual(self.completions("ines"), before)
        files = self.make("ines")
        taken = self.program.run("record", "make", "Ines Duarte", "--out", files.record, "--proofs", files.proofs + "2", vault="mara",
                                 expect=3)
        self.assertIn("already", taken.complaint)

    def test_a_record_is_printed_only_when_it_verifies(self):
        made = self.make("ines")

        def printed(record):
            out = self.program.new_file("pdf")
            done = subprocess.run([PROGRAM, "print", "record", record, "--program", self.program.id, "--out", out], capture_output=True,
                                  text=True, check=False)
            self.assertEqual(os.path.exists(out), done.returncode == 0, done.stderr)
            return out, done
        out, done = printed(made.record)
        self.assertEqual((done.returncode, done.stderr), (0, ""))
        text = subprocess.run(["pdftotext", "-layout", out, "-"], capture_output=True, text=True, check=True).stdout
        flat_text = "".join(text.split())
        for said in ("Completion record: Ines Duarte", "3 of 3 cases counted", self.load(made.record)["id"], made.json["digest"],
                     self.program.id, "Page 1 of 1", "first-general"):
            self.assertIn("".join(said.split()), flat_text)
        other = self.load(made.record)
        other["credentialSubject"]["name"] = "Ines Durate"
        self.assertNotEqual(printed(self.write(other))[1].returncode, 0)

    def test_other_files_are_bad_input(self):
        for data in (b"{}", b"[]", b'{"type": "Other"}', b"{", b'{"type": ["CompletionRecord"], "type": []}'):
            self.program.run("check", self.program.write(data, "json"), "--program", self.program.id, expect=2)


if __name__ == "__main__":
    if not PROGRAM:
        sys.exit("PEELPACK_PROGRAM names the program")
    unittest.main()
