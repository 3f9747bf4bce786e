"""An invented program on real vaults, set up and used through the commands alone."""

import datetime
import json
import os
import resource
import subprocess
import tempfile

PASSPHRASE = "four odd words here"
CARD_PIN = "27182818"
HANG = 600  # seconds; only so that a hang ends
WITH_SANITIZER = "asan" in os.environ.get("PEELPACK_KIND", "")
PROGRAM = os.environ.get("PEELPACK_PROGRAM", "")


def small_set(name, first, second):
    """A requirement set of general cases alone, which few sheets meet; invented."""
    return {"id": name, "title": "An invented small set", "source": "invented for this test",
            "notApplicable": ["counts"], "assistCounts": False,
            "targets": [{"id": "first-general", "roles": ["first"], "categories": ["general"], "required": first},
                        {"id": "second-general", "roles": ["first", "second"], "categories": ["general"], "required": second}],
            "limits": []}


class Unexpected(AssertionError):
    """A command answered with another exit code than was expected."""


class Done:
    def __init__(self, words, finished):
        self.words = words
        self.code = finished.returncode
        self.text = finished.stdout.decode()
        self.complaint = finished.stderr.decode()

    @property
    def json(self):
        return json.loads(self.text)


def limits(memory, file_size):
    def set_them():
        if memory and not WITH_SANITIZER:
            resource.setrlimit(resource.RLIMIT_AS, (memory, memory))
        if file_size is not None:
            resource.setrlimit(resource.RLIMIT_FSIZE, (file_size, file_size))
    return set_them if memory or file_size is not None else None


class Program:
    """A folder with vaults in it. A vault is named by its file's first word: "anna" is anna.peelvault."""

    def __init__(self):
        self.holder = tempfile.TemporaryDirectory()
        self.folder = self.holder.name
        self.environment = dict(os.environ, XDG_STATE_HOME=os.path.join(self.folder, "state"), TZ="UTC", LC_ALL="C.UTF-8")
        self.codes = {}
        self.names = {}
        self.students = set()
        self.homes = {}  # of vaults that are on another device than the rest: where that device keeps its marks
        self.count = 0

    def close(self):
        self.holder.cleanup()

    def path(self, name):
        return os.path.join(self.folder, name)

    def vault(self, who):
        return who if "/" in who else self.path(who + ".peelvault")

    def new_file(self, ending):
        self.count += 1
        return self.path(f"file{self.count}.{ending}")

    def write(self, data, ending):
        path = self.new_file(ending)
        with open(path, "wb") as out:
            out.write(data)
        return path

    def read(self, path):
        with open(path, "rb") as file:
            return file.read()

    def environment_of(self, vault):
        return dict(self.environment, XDG_STATE_HOME=self.homes[vault]) if vault in self.homes else self.environment

    def start(self, *words, vault=None, secrets=(PASSPHRASE,), keep_open=False, **options):
        """Starts a command with the secrets given, a line each, on a descriptor; without waiting for it. `keep_open`:
        more secrets go to the descriptor self.secrets."""
        reader, writer = os.pipe()
        os.write(writer, "".join(line + "\n" for line in secrets).encode())
        if keep_open:
            self.secrets = writer
        else:
            os.close(writer)
        arguments = [PROGRAM, *words, "--secrets-fd", str(reader)]
        if vault:
            arguments += ["--vault", self.vault(vault)]
        try:
            return subprocess.Popen(arguments, stdout=subprocess.PIPE, stderr=subprocess.PIPE, stdin=subprocess.DEVNULL,
                                    pass_fds=[reader], env=self.environment_of(vault), cwd=self.folder, **options)
        finally:
            os.close(reader)

    def run(self, *words, vault=None, secrets=(PASSPHRASE,), expect=0, memory=None, file_size=None, **options):
        process = self.start(*words, vault=vault, secrets=secrets, preexec_fn=limits(memory, file_size), **options)
        stdout, stderr = process.communicate(timeout=HANG)
        done = Done(words, subprocess.CompletedProcess(words, process.returncode, stdout, stderr))
        if expect is not None and done.code != expect:
            raise Unexpected(f"{' '.join(words)}: exit code {done.code}, not {expect}\n{done.text}{done.complaint}")
        return done

    def json(self, *words, **options):
        return self.run(*words, "--json", **options).json

    def peak_of(self, *words, vault=None):
        """What a command that succeeds answered, and the most memory that it had at a time, in bytes."""
        process = self.start(*words, "--json", vault=vault)
        with process.stdout, process.stderr:
            text, complaint = process.stdout.read(), process.stderr.read()
        _, status, usage = os.wait4(process.pid, 0)
        process.returncode = os.waitstatus_to_exitcode(status)
        if process.returncode != 0:
            raise Unexpected(f"{' '.join(words)}: exit code {process.returncode}\n{text.decode()}{complaint.decode()}")
        return json.loads(text), usage.ru_maxrss * 1024

    # Setting up

    def begin(self, director="mara", name="Mara Stone", requirement_set="spread10"):
        reader, writer = os.pipe()
        process = subprocess.Popen([PROGRAM, "program", "new", "--vault", self.vault(director), "--name", name, "--set",
                                    requirement_set, "--secrets-fd", str(reader), "--json"], stdout=subprocess.PIPE,
                                   pass_fds=[reader], env=self.environment, cwd=self.folder)
        os.close(reader)
        with process, os.fdopen(writer, "w") as secrets:
            process.stdout.readline()
            self.program_code = process.stdout.readline().decode().strip()
            secrets.write(f"{self.program_code}\n{PASSPHRASE}\n")
            secrets.flush()
            answer = json.loads(process.stdout.readline())
        self.id = answer["program"]
        self.codes[director] = answer["vaultCode"]
        self.names[director] = name

    def join(self, inviter, who, invitation):
        """Joins and is granted; a vault that is there already goes on with new keys."""
        reply = self.new_file("reply")
        joined = self.json("enroll", "join", invitation, "--name", self.names[who], "--out", reply, vault=who)
        self.codes.setdefault(who, joined.get("vaultCode"))
        self.run("enroll", "grant", reply, "--digits", joined["digits"], vault=inviter)

    def enroll(self, inviter, who, name, role, scope):
        self.names[who] = name
        if role == "student":
            self.students.add(who)
        invitation = self.new_file("invitation")
        self.run("enroll", "invite", "--name", name, "--role", role, "--for", scope, "--out", invitation, vault=inviter)
        self.join(inviter, who, invitation)

    def enroll_again(self, inviter, who, vault=None):
        vault = vault or who
        self.names[vault] = self.names[who]
        if who in self.students:
            self.students.add(vault)
        invitation = self.new_file("invitation")
        self.run("enroll", "invite", "--again", self.names[who], "--out", invitation, vault=inviter)
        self.join(inviter, vault, invitation)

    def card(self, maker, name, pin=CARD_PIN, *more):
        card = self.new_file("card")
        answer = self.json("preceptor", "card", "--name", name, "--credential", "CST", "--site", "North Campus", "--out",
                           card, *more, vault=maker, secrets=(PASSPHRASE, pin))
        return card, answer

    def set_up(self):
        """A director, two instructors, two students and a vouched card, all of whom know of one another."""
        self.begin()
        self.enroll("mara", "anna", "Anna Weiss", "instructor", "Spring class")
        self.enroll("mara", "bruno", "Bruno Katz", "instructor", "Spring class")
        self.give("mara", "anna", "bruno")
        self.brandt, _ = self.card("anna", "L. Brandt")
        self.enroll("anna", "ines", "Ines Duarte", "student", "Spring class")
        self.enroll("anna", "jonas", "Jonas Vale", "student", "Spring class")
        self.give("anna", "mara", "bruno")
        for student in ("ines", "jonas"):
            self.give("anna", student)
        return self

    def student(self, who, name):
        """One more student, whose record a test may ruin."""
        self.enroll("anna", who, name, "student", "Spring class")
        self.give("anna", who)
        return who

    # Carrying

    def send(self, sender, to=None):
        parcel = self.new_file("peelparcel")
        words = ["--to", self.names[to]] if to else []
        self.run("send", "--out", parcel, *words, vault=sender)
        return parcel

    def take(self, taker, *files, expect=0, **options):
        return self.json("take", *files, vault=taker, expect=expect, **options)

    def give(self, sender, *takers):
        """One parcel from one vault to others; of staff to a student it is addressed."""
        to = takers[0] if len(takers) == 1 and takers[0] in self.students else None
        parcel = self.send(sender, to)
        return [self.take(taker, parcel) for taker in takers][-1]

    def exchange(self, *staff):
        """Everybody's parcel to everybody else, until nothing is new for anybody."""
        for _ in range(4):
            parcels = {who: self.send(who) for who in staff}
            taken = [self.take(who, *(parcels[other] for other in staff if other != who)) for who in staff]
            if not any(report["saved"] for report in taken):
                return
        raise AssertionError("the exchange does not come to an end")

    def export(self, who, *words):
        path = self.new_file("export")
        self.run("export", path, *words, vault=who)
        return path

    def check(self, *files, expect=0, **options):
        return self.json("check", *files, "--program", self.id, expect=expect, **options)

    # Sheets

    def open_sheet(self, student, procedure="Laparoscopic cholecystectomy", date=None, surgeon=None, **options):
        """Each student's with a surgeon of their own, or all would seem to be of one operation."""
        surgeon = surgeon or "Dr Iversen" + student[:1].upper()
        date = date or datetime.datetime.now(datetime.timezone.utc).date().isoformat()
        return self.json("sheet", "open", "--procedure", procedure, "--date", date, "--surgeon", surgeon, "--site",
                         "North Campus", "--room", "Room 4", vault=student, **options)["sheets"][0]

    def sign(self, student, sheet, *words, card=None, pin=CARD_PIN, marks="YYYYYYYYYA", expect=0):
        return self.run("sheet", "sign", sheet, "--card", card or self.brandt, "--marks", marks, "--yes", "--json", *words,
                        vault=student, secrets=(PASSPHRASE, pin), expect=expect)

    def signed_sheet(self, student, *words, under="general", **options):
        sheet = self.open_sheet(student)
        self.sign(student, sheet, *words, **options)
        self.run("sheet", "log", sheet, "--under", under, vault=student)
        return sheet

    def show(self, who, sheet, student=None):
        words = ["--student", self.names[student]] if student and student != who else []
        return self.json("sheet", "show", sheet, *words, vault=who)

    def sheets(self, who, student=None):
        words = ["--student", self.names[student]] if student and student != who else []
        return self.json("sheet", "list", *words, vault=who)

    def questions(self, who, sheet):
        """What the queue of a staff member asks about a sheet; None when the sheet does not wait."""
        for student in self.json("queue", vault=who)["students"]:
            for waiting in student["sheets"]:
                if waiting["sheet"] == sheet:
                    return waiting["questions"]
        return None

    def counted(self, who, level="attested"):
        students = self.json("tally", self.vault(who), "--level", level)["students"]
        return sum(student["best"]["counted"] for student in students)
