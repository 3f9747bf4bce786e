"""Attacks by staff, contradictions between them, and weak keys: rows 9, 10, 18 and 19 of the table of attacks, by number."""

import struct
import unittest

import journal_bytes
from forge import Forge, own_feed, volume_of
from journal_bytes import ATTESTATION, Entry, Volume
from program import Program

# Every canonical point of small order of Curve25519 in Edwards form, and the zero and one of X25519.
SMALL_ORDER = [bytes.fromhex(text) for text in (
    "0100000000000000000000000000000000000000000000000000000000000000",
    "ecffffffffffffffffffffffffffffffffffffffffffffffffffffffffffff7f",
    "0000000000000000000000000000000000000000000000000000000000000000",
    "0000000000000000000000000000000000000000000000000000000000000080",
    "26e8958fc2b227b045c3f489f2ef98f0d5dfac05d3c63339b13802886d53fc05",
    "c7176a703d4dd84fba3c0b760d10670f2a2053fa2c39ccc64ec7fd7792ac037a")]
CHANGES = {"amend": ["--mark", "technique=N"], "void": [], "return": [], "refile": ["--under", "eye"]}


class AttackByStaff(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.program = Program().set_up()
        cls.addClassCleanup(cls.program.close)

    # 9: a mark changed silently, or something taken in dropped

    def test_09_no_change_without_a_reason_by_any_command(self):
        program = self.program
        sheet = program.signed_sheet("ines")
        program.give("ines", "anna")
        before = program.read(program.export("anna"))
        for command, words in CHANGES.items():
            for reason in ([], ["--reason", ""]):
                done = program.run(command, sheet, *words, *reason, vault="anna", expect=2)
                self.assertIn("needs a reason", done.complaint)
        for command, words in (("withdraw", []), ("decline", []), ("review", ["--mark", "pass=N"])):
            done = program.run("sheet", command, sheet, *words, vault="ines", expect=2)
            self.assertIn("--reason", done.complaint)
        self.assertEqual(program.read(program.export("anna")), before)
        for command, words in (("amend", CHANGES["amend"]), ("initial", [])):
            program.run(command, sheet, *words, vault="ines", expect=2)  # a student's vault
        program.run("amend", sheet, *CHANGES["amend"], "--reason", "told by the preceptor", vault="anna")
        shown = program.show("anna", sheet, "ines")
        self.assertEqual((shown["marks"], shown["original"]["marks"]), ("YYYYNYYYYA", "YYYYYYYYYA"))
        self.assertEqual(shown["history"][-1]["why"], "told by the preceptor")

    def test_09_a_hand_made_change_without_a_reason_is_refused_by_everybody_else(self):
        program = self.program
        program.enroll("mara", "carla", "Carla Dietz", "instructor", "Spring class")
        sheet = program.signed_sheet("jonas")
        program.give("jonas", "anna")
        program.give("mara", "anna", "carla")
        program.give("anna", "mara", "carla", "bruno")
        program.give("carla", "bruno")
        before = program.show("bruno", sheet, "jonas")
        volume = volume_of(program, "carla")
        with Forge(program, "carla") as forge:
            who = forge.who()
            jonas = bytes.fromhex(program.sheets("jonas")["students"][0]["id"])
            student = next(volume.feed(run[0], run[1]) for run in volume.runs
                           if run[1] == jonas and Entry(run[3][0]).kind == journal_bytes.OPENED)
            sheet_id, about = Entry(student.entries[0]).sheet(), student.link(3)[0]
            base = volume.feed(who["device"], jonas)
            start = len(base.entries)
            acts = {journal_bytes.AMEND: journal_bytes.amendment(sheet_id, about, ""),
                    journal_bytes.VOID: journal_bytes.act(sheet_id, bytes(32), about, ""),
                    journal_bytes.RETURN: journal_bytes.act(sheet_id, bytes(32), about, ""),
                    journal_bytes.REFILE: journal_bytes.act(sheet_id, bytes(32), about, "") + struct.pack("<QB", 1, 0) +
                                          journal_bytes.text("eye") + b"\0"}
            silent = [alone(volume, base.copy().add(forge.sign, kind, payload)) for kind, payload in acts.items()]
            parcels = [forge.seal(one) for one in silent] + [program.write(one.build(), "export") for one in silent]
            with_reason = forge.seal(alone(volume, base.copy().add(
                forge.sign, journal_bytes.VOID, journal_bytes.act(sheet_id, bytes(32), about, "x"))))
        for parcel in parcels:
            report = program.take("bruno", parcel)
            finding, = report["files"][0]["findings"]
            self.assertEqual((finding["verdict"], finding["entry"]), ("refused", start))
            self.assertIn("empty", finding["why"])
            self.assertFalse(report["saved"])
        self.assertEqual(program.show("bruno", sheet, "jonas"), before)
        program.take("bruno", with_reason)  # the same with a reason is an act like any other
        self.assertEqual(program.show("bruno", sheet, "jonas")["standing"], "void")

    def test_09_a_hand_made_exception_or_admission_without_a_reason_is_refused_by_everybody_else(self):
        program = self.program
        sheet = program.signed_sheet("ines")
        for taker, name in (("enno", "Enno Falk"), ("frida", "Frida Lohr")):
            program.enroll("mara", taker, name, "instructor", "Spring class")
        program.give("ines", "mara", "bruno")
        program.give("mara", "bruno", "enno", "frida")
        before = program.show("bruno", sheet, "ines")
        volume = volume_of(program, "mara")
        ines = bytes.fromhex(program.sheets("ines")["students"][0]["id"])
        with Forge(program, "mara") as forge:
            who = forge.who()
            student = next(volume.feed(run[0], run[1]) for run in volume.runs
                           if run[1] == ines and run[2] == 0 and Entry(run[3][0]).kind == journal_bytes.OPENED)
            head, entry = student.position(len(student.entries) - 1), student.position(0)
            base = volume.feed(who["device"], ines)
            start = len(base.entries)

            def made(reason):
                """An exception and an admission, signed with the director's own key."""
                payloads = ((journal_bytes.EXCEPTION, journal_bytes.exception("cap15", bytes(32), head, 120, 1, reason)),
                            (journal_bytes.ADMIT, journal_bytes.admission(entry, reason)))
                return [alone(volume, base.copy().add(forge.sign, kind, payload)) for kind, payload in payloads]
            files = [way(one) for one in made("") for way in (forge.seal, lambda one: program.write(one.build(), "export"))]
            with_reason = [program.write(one.build(), "export") for one in made("x")]
        for file in files:
            report = program.take("bruno", file)
            finding, = report["files"][0]["findings"]
            self.assertEqual((finding["verdict"], finding["entry"]), ("refused", start))
            self.assertIn("empty", finding["why"])
            self.assertFalse(report["saved"])
        self.assertEqual(program.show("bruno", sheet, "ines"), before)
        # The same with a reason is an entry like any other. Who takes it in gives nothing on: it never was in her vault.
        for taker, file in zip(("enno", "frida"), with_reason):
            report = program.take(taker, file)
            self.assertEqual((report["new"], report["files"][0]["findings"]), (1, []))

    def test_two_first_scrubs_of_one_operation_need_a_reason_by_any_command(self):
        program = self.program
        program.student("rosa", "Rosa Lind")
        program.student("tomas", "Tomas Berg")
        sheets = {}
        for who, marks in (("rosa", "YYYYYYYYYA"), ("tomas", "YYYYYYYYYA"), ("tomas", "NYYYYYYYYA")):
            sheet = program.open_sheet(who, surgeon="Dr Falk")
            program.sign(who, sheet, marks=marks)
            sheets[who, marks[0]] = sheet
        first, other, asked = sheets.values()
        program.run("sheet", "review", asked, "--mark", "verify=Y", "--reason", "I picked the case.", vault="tomas")
        for who in ("rosa", "tomas"):
            program.give(who, "anna")
        before = program.read(program.export("anna"))
        for command, sheet, name in (("initial", first, "Rosa Lind"), ("initial", other, "Tomas Berg"),
                                     ("accept", asked, "Tomas Berg")):
            for reason in ([], ["--reason", ""], ["--reason", "  "]):
                done = program.run(command, sheet, "--student", name, *reason, vault="anna", expect=2)
                self.assertIn("first scrub on this operation", done.complaint)
        self.assertEqual(program.read(program.export("anna")), before)
        why = ["--reason", "they changed places at the relief"]
        program.run("initial", first, "--student", "Rosa Lind", *why, vault="anna")
        program.run("accept", asked, "--student", "Tomas Berg", *why, vault="anna")
        self.assertEqual(program.show("anna", first, "rosa")["standing"], "initialed")
        self.assertEqual(program.show("anna", asked, "tomas")["marks"][0], "Y")

    def test_09_what_was_taken_in_cannot_be_dropped_or_rewritten(self):
        program = self.program
        student = program.student("lena", "Lena Ortiz")
        program.enroll("mara", "dora", "Dora Voss", "instructor", "Spring class")
        program.give("mara", "anna", "dora")
        program.give("anna", "mara", "dora", "bruno")
        program.give("anna", student)
        sheet = program.signed_sheet(student)
        program.give(student, "dora")
        program.give("dora", student)
        program.give("dora", "bruno", "mara")
        self.assertEqual(program.sheets(student)["onlyHere"], 0)
        volume = volume_of(program, "dora")
        with Forge(program, "dora") as forge:
            who = forge.who()
            stream = bytes.fromhex(program.sheets(student)["students"][0]["id"])
            feed = volume.feed(who["device"], stream)
            receipt = feed.find(journal_bytes.RECEIPT)[-1]
            denied = feed.signed_anew(forge.sign, receipt, [journal_bytes.body(
                journal_bytes.RETURN, journal_bytes.act(b"\x5a" * 16, bytes(32), b"\1" * 32, "never seen"), 1773300000)])
            parcel = forge.seal(volume.replace(denied), to="Bruno Katz")
        fork, = program.take("bruno", parcel)["forks"]
        self.assertEqual((fork["whose"], fork["entry"]), ("Dora Voss", receipt))
        self.assertLessEqual(len(fork["evidence"]) // 2, 300)
        # Without the student's record the receipts that others hold say what is missing.
        left = volume_of(program, "mara")
        theirs = next(left.feed(run[0], run[1]) for run in left.runs
                      if run[1] == stream and Entry(run[3][0]).kind == journal_bytes.OPENED)
        theirs.entries = []
        checked = program.check(program.write(left.replace(theirs).build(), "export"), expect=1)
        self.assertTrue(any("cut off" in fault for fault in checked["faults"]), checked)
        self.assertEqual(program.show(student, sheet)["standing"], "signed")

    # 10: two instructors contradict each other off line

    def test_10_two_instructors_off_line_end_with_one_outcome_everywhere(self):
        program = self.program
        student = program.student("milo", "Milo Brandis")
        sheet, other = program.signed_sheet(student), program.signed_sheet(student)
        program.give(student, "anna")
        program.run("initial", sheet, "--student", program.names[student], vault="anna")
        program.give("anna", "bruno", "mara")
        here = ["--student", program.names[student]]
        program.run("refile", sheet, "--under", "eye", "--reason", "belongs there", *here, vault="anna")
        program.run("initial", other, *here, vault="anna")
        program.run("return", sheet, "--reason", "the room does not fit", *here, vault="bruno")
        program.run("void", other, "--reason", "entered twice", *here, vault="bruno")
        from_anna, from_bruno = program.send("anna"), program.send("bruno")
        to_student = [program.send(who, student) for who in ("bruno", "anna")]
        for taker, parcels in (("anna", [from_bruno]), ("bruno", [from_anna]), ("mara", [from_bruno, from_anna])):
            for parcel in parcels:
                program.take(taker, parcel)
        program.take(student, *to_student)
        everybody = ("anna", "bruno", "mara", student)
        for name, standing in ((sheet, "returned"), (other, "void")):
            shown = [program.show(who, name, student) for who in everybody]
            self.assertEqual([one == shown[0] for one in shown], [True] * 4)
            self.assertEqual(shown[0]["standing"], standing)
            self.assertEqual([line["weight"] for line in shown[0]["history"]].count("beside"), 1)
        # The director's word goes first, from where both stood.
        program.run("initial", sheet, "--reason", "the room was changed", *here, vault="mara")
        program.give("mara", "anna", "bruno")
        program.give("bruno", student)
        shown = [program.show(who, sheet, student) for who in everybody]
        self.assertEqual([one == shown[0] for one in shown], [True] * 4)
        self.assertEqual(shown[0]["standing"], "initialed")

    # 18: older rules played back

    def test_18_the_rules_in_force_are_the_latest_by_chain_and_no_older_ones_come_back(self):
        program = self.program
        student = program.student("nora", "Nora Feld")

        def rules(who):
            return program.json("program", "show", vault=who)["rules"]["requirementSet"]

        old = {who: program.send("mara", who) for who in ("anna", "bruno")}
        old[student] = program.send("anna", student)
        program.run("program", "rules", "--set", "cap15", vault="mara")
        program.give("mara", "anna", "bruno")
        program.give("anna", student)
        for who, parcel in old.items():
            self.assertEqual(rules(who), "cap15")
            self.assertEqual(program.take(who, parcel)["new"], 0)
            self.assertEqual(rules(who), "cap15")
        volume = volume_of(program, "bruno")
        with Forge(program, "bruno") as forge:
            feed = own_feed(volume, forge.who(), "programStream")
            director = next(volume.feed(run[0], run[1]) for run in volume.runs
                            if Entry(run[3][0]).kind == journal_bytes.POLICY)
            first, last = director.link(1)[0], director.link(director.find(journal_bytes.POLICY)[-1] + 1)[0]
            start = len(feed.entries)
            for stands_on in (bytes(32), first, last):
                feed.add(forge.sign, journal_bytes.POLICY, journal_bytes.policy(stands_on, "spread10"))
            forge.keep(feed, start)
        program.give("bruno", "anna")
        for who in ("anna", "bruno"):
            self.assertEqual(rules(who), "cap15")
        self.assertEqual(program.check(program.export("anna", "--student", "Nora Feld"))["refused"], 3)

    # 19: weak keys and signatures

    def test_19_malleated_signatures_and_keys_of_small_order_are_refused(self):
        program = self.program
        student = program.student("olaf", "Olaf Rehn")
        sheet = program.signed_sheet(student)
        volume = volume_of(program, student)
        with Forge(program, student) as forge:
            who = forge.who()
            feed = own_feed(volume, who)
            bent = feed.copy()
            bent.entries[0] = bent.entries[0][:-64] + journal_bytes.malleated(bent.entries[0][-64:])
            seq, = feed.find(ATTESTATION, sheet)
            statement, signature = journal_bytes.statement_of(Entry(feed.entries[seq]).payload)
            inner = feed.copy()
            inner.entries = inner.entries[:seq]
            inner.add(forge.sign, ATTESTATION, journal_bytes.attestation(statement, journal_bytes.malleated(signature)))
            parcels = [forge.seal(alone(volume, history)) for history in (bent, inner)]
            for point in SMALL_ORDER:
                for forged in (b"\1" + bytes(63), point + bytes(32)):
                    entry = journal_bytes.body(journal_bytes.OPENED, journal_bytes.sheet_opened(b"\1" * 16, 20000), 0) + forged
                    parcels.append(forge.seal(Volume(volume.program, (), (), [[point, who["person"], 0, [entry]]])))
            head = Volume(volume.program, (), [(SMALL_ORDER[0], who["person"], 1, bytes(32), b"\1" + bytes(63))])
            parcels.append(forge.seal(head))
        for number, parcel in enumerate(parcels):
            with self.subTest(parcel=number):
                report = program.take("anna", parcel, expect=None)
                refused = [f for f in report["files"][0]["findings"] if f["verdict"] == "refused"]
                self.assertTrue(len(refused) == 1 or not report["files"][0]["used"], report)
                self.assertEqual(report["new"], 1 if number == 1 else 0)

    def test_19_nobody_is_granted_a_weak_key(self):
        program = self.program
        good = b"\x09" + bytes(31)
        for point in (bytes(32), b"\1" + bytes(31)):
            invitation = program.new_file("invitation")
            program.run("enroll", "invite", "--name", "Weak Key", "--role", "instructor", "--for", "Spring class", "--out",
                        invitation, vault="mara")
            code = program.read(invitation)
            reply, digits = self.reply(code, b"\7" * 32, seal=point)
            done = program.run("enroll", "grant", reply, "--digits", digits, vault="mara", expect=2)
            self.assertIn("key", done.complaint)
            reply, digits = self.reply(code, b"\7" * 32, seal=good, device=point)
            program.run("enroll", "grant", reply, "--digits", digits, vault="mara", expect=2)
        # A grant by hand does not block what others send: a parcel is sealed to every key that can be sealed to.
        volume = volume_of(program, "mara")
        with Forge(program, "mara") as forge:
            feed = own_feed(volume, forge.who(), "programStream")
            key, _ = forge.sign_with(b"\7" * 32, b"")
            start = len(feed.entries)
            feed.add(forge.sign, journal_bytes.GRANT, journal_bytes.grant(b"\7" * 16, 1, key, bytes(32), "Weak Key"))
            grant = journal_bytes.grant(b"\x08" * 16, 1, SMALL_ORDER[0], good, "Weak Key")
            weak = feed.copy().add(forge.sign, journal_bytes.GRANT, grant)
            refused = forge.seal(volume.replace(weak).without_heads_of(weak), to="Anna Weiss")
            forge.keep(feed, start)
        finding, = program.take("anna", refused)["files"][0]["findings"]
        self.assertEqual(finding["verdict"], "refused")
        self.assertIn("Weak Key", [person["name"] for person in program.json("program", "show", vault="anna")["people"]])
        program.give("anna", "bruno")
        program.give("anna", "ines")
        program.give("ines", "anna")

    def reply(self, code, seed, seal, device=None):
        """What a dishonest invited person answers, and its six digits."""
        program = self.program
        with Forge(program, "ines") as forge:
            key, _ = forge.sign_with(seed, b"")
            mac = journal_bytes.digest(32, b"peelpack.reply.1", code[4:36], code[36:68], code[100:117], device or key, seal,
                                       key=code[117:133])
            _, signature = forge.sign_with(seed, b"peelpack join 1\n" + mac)
        reply = b"PPR\1" + code[100:116] + (device or key) + seal + mac + signature
        number = struct.unpack("<I", journal_bytes.digest(16, b"peelpack.digit.1", code, reply)[:4])[0] % 1000000
        return program.write(reply, "reply"), f"{number:06}"


def alone(volume, feed):
    """A volume with nothing but this history."""
    return Volume(volume.program, (), (), [[feed.device, feed.stream, 0, feed.entries]])


if __name__ == "__main__":
    unittest.main()
