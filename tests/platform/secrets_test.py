"""Plays one case through all three people and looks at everything it leaves behind: no name, procedure, PIN or key in plain."""

import glob
import os
import re
import resource
import subprocess
import sys
import tempfile
import time
import unittest

PROGRAM = os.path.abspath(sys.argv.pop(1))
PLAY = os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..", "platform", "one_case.sh")
# What the play puts in: people, case, feedback, secrets.
PLAIN = ["Invented Student", "Invented Preceptor", "Invented Instructor", "Invented Director", "cholecystectomy", "Dr Iversen",
         "North Campus", "Room 4", "clip applier", "Spring class", "27182818", "four odd words here"]
SEALED = ["*.peelvault", "*.peelvault-wal", "*.peelvault-journal", "*.peelparcel", "marks/peelpack/marks/*.mark"]


def forms(text):
    yield text.encode()
    yield text.upper().encode()
    yield text.encode("utf-16-le")
    yield text.encode("utf-16-be")
    yield text.encode().hex().encode()


class Secrets(unittest.TestCase):
    @classmethod
    def setUpClass(cls):
        cls.temporary = tempfile.TemporaryDirectory()
        cls.folder = os.path.join(cls.temporary.name, "play")
        cls.played = subprocess.run(["bash", PLAY, cls.folder, PROGRAM], capture_output=True, text=True, check=False)

    @classmethod
    def tearDownClass(cls):
        cls.temporary.cleanup()

    def test_the_play_ends_with_the_tally(self):
        self.assertEqual(self.played.returncode, 0, self.played.stderr)
        self.assertIn("1 of 120 counted", self.played.stdout)
        self.assertIn("Everything verifies.", self.played.stdout)
        self.assertIn("initialed (card)", self.played.stdout)

    def sealed_files(self):
        found = [name for pattern in SEALED for name in glob.glob(os.path.join(self.folder, pattern))]
        self.assertGreaterEqual(len(found), 10)
        return found

    def test_nothing_plain_in_vaults_parcels_and_marks(self):
        for name in self.sealed_files():
            with open(name, "rb") as file:
                data = file.read()
            for text in PLAIN:
                for form in forms(text):
                    self.assertNotIn(form, data, f"{text} in {os.path.basename(name)}")

    def test_the_search_finds_what_is_plain(self):
        done = subprocess.run([PROGRAM, "export", "plain.export", "--vault", "student.peelvault", "--secrets-fd", "0"],
                              input=b"four odd words here\n", cwd=self.folder, capture_output=True, check=False,
                              env={**os.environ, "XDG_STATE_HOME": os.path.join(self.folder, "marks")})
        self.assertEqual(done.returncode, 0, done.stderr)
        with open(os.path.join(self.folder, "plain.export"), "rb") as file:
            data = file.read()
        for text in ["Invented Student", "cholecystectomy", "clip applier"]:
            self.assertTrue(any(form in data for form in forms(text)), text)

    def test_card_and_invitation_secrets_are_in_no_other_file(self):
        with open(os.path.join(self.folder, "preceptor.card"), "rb") as file:
            card = file.read()[-16:]
        with open(os.path.join(self.folder, "student.peelvault.invitation"), "rb") as file:
            invitation = file.read()[-24:-8]
        for name in self.sealed_files():
            with open(name, "rb") as file:
                data = file.read()
            self.assertNotIn(card, data, name)
            self.assertNotIn(invitation, data, name)

    def test_codes_are_shown_once_and_kept_nowhere(self):
        with open(os.path.join(self.folder, "setup.txt"), encoding="utf-8") as file:
            codes = re.findall(r"(?:[0-9A-Z]{5}-){6}[0-9A-Z]{5}", file.read())
        self.assertEqual(len(codes), 2)
        for name in self.sealed_files():
            with open(name, "rb") as file:
                data = file.read()
            for code in codes:
                self.assertNotIn(code.encode(), data)
                self.assertNotIn(code.replace("-", "").encode(), data)

    def test_files_with_secrets_are_for_their_owner_alone(self):
        for pattern in ["*.peelvault", "*.card", "*.invitation", "marks/peelpack/marks/*.mark"]:
            for name in glob.glob(os.path.join(self.folder, pattern)):
                self.assertEqual(os.stat(name).st_mode & 0o077, 0, name)

    def test_error_messages_name_nobody(self):
        environment = {**os.environ, "XDG_STATE_HOME": os.path.join(self.folder, "marks")}
        wrong = [
            (["sheet", "show", "0000", "--vault", "student.peelvault"], "four odd words here\n"),
            (["sheet", "list", "--vault", "student.peelvault"], "wholly different words\n"),
            (["sheet", "list", "--vault", "instructor.peelvault", "--student", "Invented Stranger"], "four odd words here\n"),
            (["preceptor", "end", "Invented Stranger", "--reason", "lost", "--vault", "instructor.peelvault"], "four odd words here\n"),
            (["take", "to-staff.peelparcel", "--vault", "student.peelvault"], "four odd words here\n"),
            (["initial", "0000", "--vault", "student.peelvault"], "four odd words here\n"),
            (["preceptor", "card", "--name", "X", "--out", "y.card", "--vault", "instructor.peelvault"], "four odd words here\n123456\n"),
            (["check", "to-staff.peelparcel", "--program", "00" * 32, "--vault", "student.peelvault"], "four odd words here\n"),
        ]
        said = b""
        for words, secrets in wrong:
            done = subprocess.run([PROGRAM, *words, "--secrets-fd", "0"], input=secrets.encode(), cwd=self.folder,
                                  env=environment, capture_output=True, check=False)
            self.assertNotEqual(done.returncode, 0, words)
            said += done.stderr
        for text in [*PLAIN, "Invented Stranger", "wholly different words", "123456"]:
            self.assertNotIn(text.encode(), said)

    def test_no_core_file_and_no_secret_on_the_command_line(self):
        reading, writing = os.pipe()
        waiting = subprocess.Popen([PROGRAM, "sheet", "list", "--vault", "student.peelvault", "--secrets-fd", str(reading)],
                                   pass_fds=(reading,), cwd=self.folder, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL,
                                   preexec_fn=lambda: resource.setrlimit(resource.RLIMIT_CORE, (0, resource.RLIM_INFINITY)))
        try:
            deadline = time.monotonic() + 60
            hard_limit = ""
            while time.monotonic() < deadline and hard_limit != "0":
                with open(f"/proc/{waiting.pid}/limits", encoding="ascii") as limits:
                    hard_limit = next(line for line in limits if line.startswith("Max core file size")).split()[5]
                time.sleep(0.02)
            self.assertEqual(hard_limit, "0")
            with open(f"/proc/{waiting.pid}/cmdline", "rb") as words:
                self.assertNotIn(b"four odd words", words.read())
        finally:
            waiting.kill()
            waiting.wait()
            os.close(reading)
            os.close(writing)
        overview = subprocess.run([PROGRAM, "--help"], capture_output=True, text=True, check=True).stdout
        for line in overview.splitlines():
            command = line[2:24].strip()
            if line.startswith("  ") and command and not line.startswith("   "):
                help_text = subprocess.run([PROGRAM, *command.split(), "--help"], capture_output=True, text=True, check=True).stdout
                for option in ["--pin ", "--passphrase", "--code ", "--secret "]:
                    self.assertNotRegex(help_text, re.escape(option) + r"[A-Z]")


if __name__ == "__main__":
    unittest.main()
