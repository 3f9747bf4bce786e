"""Who leaves a program or loses a device: what was received of them stays, what comes later does not count. Through the
commands on real vaults."""

import unittest

from program import PASSPHRASE, Program


class Leaving(unittest.TestCase):
    def setUp(self):
        self.program = Program()
        self.addCleanup(self.program.close)
        self.program.set_up()

    def initialed_sheet(self, student="ines", by="anna"):
        program = self.program
        sheet = program.signed_sheet(student)
        program.give(student, by)
        program.run("initial", sheet, vault=by)
        return sheet

    def test_what_an_instructor_who_left_had_done_stays_done(self):
        program = self.program
        first = self.initialed_sheet()
        other = self.initialed_sheet("jonas")
        program.give("anna", "mara")
        self.assertEqual(program.counted("mara", "initialed"), 2)
        # A third sheet, initialed before they leave, of which nobody has heard.
        late = self.initialed_sheet()
        ended = program.json("enroll", "end", "Anna Weiss", "--reason", "Has left.", vault="mara")["ended"]
        self.assertEqual(len(ended), 1)
        self.assertEqual(program.counted("mara", "initialed"), 2)
        for student, sheet in (("ines", first), ("jonas", other)):
            self.assertEqual(program.show("mara", sheet, student)["standing"], "initialed")

        program.give("anna", "mara")  # too late
        self.assertEqual(program.counted("mara", "initialed"), 2)
        self.assertNotEqual(program.show("mara", late, "ines")["standing"], "initialed")
        # Everybody they let in is still there, and what they vouched for still counts.
        self.assertEqual(program.counted("mara", "attested"), 3)
        program.exchange("mara", "bruno")
        self.assertEqual(program.counted("bruno", "initialed"), 2)
        program.run("initial", late, "--student", "Ines Duarte", vault="bruno")
        self.assertEqual(program.counted("bruno", "initialed"), 3)
        program.give("bruno", "ines")
        self.assertEqual(program.counted("ines", "initialed"), 2)

    def test_a_director_who_handed_over_is_ended_by_the_program_code_alone(self):
        program = self.program
        sheet = self.initialed_sheet(by="mara")
        export = program.export("mara")
        program.names["olga"] = "Olga Reyes"
        program.run("program", "takeover", "--name", "Olga Reyes", vault="olga", secrets=(program.program_code, PASSPHRASE))
        program.take("olga", export)
        before = program.json("program", "show", vault="olga")
        self.assertEqual(program.counted("olga", "initialed"), 1)

        end = ("program", "end", "Mara Stone")
        program.run(*end, vault="olga", secrets=(PASSPHRASE, "AAAAA-AAAAA-AAAAA-AAAAA-AAAAA-AAAAA-AAAAA"), expect=2)
        program.run(*end, vault="anna", secrets=(PASSPHRASE, program.program_code), expect=2)
        program.run("program", "end", "Olga Reyes", vault="olga", secrets=(PASSPHRASE, program.program_code), expect=2)
        program.run("program", "end", "Anna Weiss", vault="olga", secrets=(PASSPHRASE, program.program_code), expect=2)
        program.run("enroll", "end", "Mara Stone", "--reason", "Has left.", vault="olga", expect=2)
        self.assertEqual(program.json("program", "show", vault="olga"), before)

        ended = program.json(*end, vault="olga", secrets=(PASSPHRASE, program.program_code))["ended"]
        self.assertEqual(len(ended), 1)
        program.run(*end, vault="olga", secrets=(PASSPHRASE, program.program_code), expect=2)
        after = program.json("program", "show", vault="olga")
        self.assertEqual(after["rules"], before["rules"])
        self.assertEqual(program.counted("olga", "initialed"), 1)
        self.assertEqual(program.show("olga", sheet, "ines")["standing"], "initialed")

        # What the old director signs from now on changes nothing, for the new one and for whoever hears of the end.
        program.run("program", "rules", "--set", "cap15", "--counted", "own-phone,card", vault="mara")
        later = program.export("mara")
        program.take("olga", later)
        self.assertEqual(program.json("program", "show", vault="olga")["rules"], before["rules"])
        program.take("anna", program.send("olga"), later)
        self.assertEqual(program.json("program", "show", vault="anna")["rules"], before["rules"])
        self.assertEqual(program.counted("anna", "initialed"), 1)
        program.check(program.export("anna"))

    def test_an_invitation_is_taken_back(self):
        program = self.program
        invitation = program.new_file("invitation")
        program.run("enroll", "invite", "--name", "Nadia Roth", "--for", "Spring class", "--out", invitation, vault="anna")
        listed = program.json("enroll", "invitations", vault="anna")["invitations"]
        self.assertEqual([(one["name"], one["role"], one["for"]) for one in listed], [("Nadia Roth", "student", ["Spring class"])])
        self.assertIn("Nadia Roth, student, Spring class, until ", program.run("enroll", "invitations", vault="anna").text)
        program.run("enroll", "withdraw", "Nadia", vault="anna", expect=2)
        program.run("enroll", "withdraw", "Nadia Roth", vault="mara", expect=2)  # made on another device
        program.run("enroll", "withdraw", "Nadia Roth", vault="anna")
        program.run("enroll", "withdraw", "Nadia Roth", vault="anna", expect=2)
        self.assertEqual(program.json("enroll", "invitations", vault="anna")["invitations"], [])
        reply = program.new_file("reply")
        digits = program.json("enroll", "join", invitation, "--name", "N. Roth", "--out", reply, vault="nadia")["digits"]
        refused = program.run("enroll", "grant", reply, "--digits", digits, vault="anna", expect=2)
        self.assertIn("answers no invitation that is open here", refused.complaint)


if __name__ == "__main__":
    unittest.main()
