"""The dishonest person: a vault's own keys without the rules of the commands (support/forge.h)."""

import json
import os
import subprocess

from journal_bytes import Entry, Volume

FORGE = os.environ.get("PEELPACK_FORGE", "")


class Forge:
    """Holds a vault open; close it before a command uses the vault. kind: "keys" or "rows"."""

    def __init__(self, program, who, kind="keys"):
        self.program = program
        self.process = subprocess.Popen([FORGE, kind, program.vault(who)], stdin=subprocess.PIPE, stdout=subprocess.PIPE,
                                        env=program.environment_of(who), text=True)
        self.line(program.codes[who])

    def line(self, text):
        self.process.stdin.write(text + "\n")
        self.process.stdin.flush()
        answer = self.process.stdout.readline()
        if not answer:
            raise AssertionError("the forge ended")
        return json.loads(answer)

    def ask(self, what, **request):
        return self.line(json.dumps(dict(request, do=what)))

    def __enter__(self):
        return self

    def __exit__(self, *_):
        self.process.stdin.close()
        self.process.wait()
        self.process.stdout.close()

    def sign(self, message):
        return bytes.fromhex(self.ask("sign", message=message.hex())["signature"])

    def sign_with(self, seed, message):
        """Key and signature of another key, by its seed."""
        answer = self.ask("sign", message=message.hex(), seed=seed.hex())
        return bytes.fromhex(answer["key"]), bytes.fromhex(answer["signature"])

    def who(self):
        answer = self.ask("who")
        for name in ("device", "program", "programStream", "person"):
            answer[name] = bytes.fromhex(answer[name])
        return answer

    def seal(self, volume, **to):
        """A parcel for whom an honest one would be for; volume: Volume, or any bytes."""
        data = volume.build() if isinstance(volume, Volume) else volume
        parcel = self.program.new_file("peelparcel")
        self.ask("seal", file=self.program.write(data, "volume"), out=parcel, **to)
        return parcel

    def row_of(self, kind):
        """The first row that holds an entry of a kind (forge of rows)."""
        for row in self.ask("rows"):
            plain = bytes.fromhex(row["plain"])
            if row["feed"] > 0 and row["seq"] < 1 << 31 and Entry(plain).kind == kind:
                return row, plain
        raise AssertionError("no such row")

    def keep(self, feed, start):
        """Puts the feed's entries from `start` on into the vault, as a modified app would."""
        self.ask("keep", entries=[{"device": feed.device.hex(), "stream": feed.stream.hex(), "seq": seq,
                                   "entry": feed.entries[seq].hex()} for seq in range(start, len(feed.entries))])


def volume_of(program, who, *words):
    """What an honest export of this vault holds."""
    return Volume.parse(program.read(program.export(who, *words)))


def own_feed(volume, who, stream="person"):
    return volume.feed(who["device"], who[stream])

