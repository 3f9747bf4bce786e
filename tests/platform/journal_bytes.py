"""The journal's bytes (sync/FORMAT.md), taken apart and put together; nothing is verified here."""

import hashlib
import struct

NOTICE = b"Peelpack journal 1: education records, keep them confidential.\n"
LINK = (bytes(32), bytes(64))  # before entry 0
GROUP_ORDER = 2**252 + 27742317777372353535851937790883648493
(GRANT, REVOKE, VOUCH, POLICY, OPENED, CHANGED, WITHDRAWN, ATTESTATION, LOGGED) = (1, 2, 3, 4, 16, 17, 18, 19, 20)
(INITIAL, RETURN, AMEND, REFILE, VOID, EXCEPTION, RECEIPT, ADMIT) = (32, 33, 35, 36, 37, 39, 48, 51)


def digest(size, person, *parts, key=b""):
    return hashlib.blake2b(b"".join(parts), digest_size=size, person=person, key=key).digest()


class Reader:
    def __init__(self, data):
        self.data = data
        self.at = 0

    def bytes(self, count):
        self.at += count
        return self.data[self.at - count:self.at]

    def number(self, form):
        return struct.unpack("<" + form, self.bytes(struct.calcsize("<" + form)))[0]


class Entry:
    """Body and signature of one entry."""

    def __init__(self, data):
        reader = Reader(data)
        self.data = data
        reader.bytes(1)
        self.seconds = reader.number("q")
        self.zone = reader.number("h")
        self.cites = reader.bytes(84) if reader.number("B") else b""
        self.kind = reader.number("H")
        self.payload = reader.bytes(reader.number("I"))
        self.body, self.signature = data[:-64], data[-64:]

    def sheet(self):
        """The sheet that a student's entry is about; an attestation's stands inside what was signed."""
        return self.payload[92:108] if self.kind == ATTESTATION else self.payload[1:17]


def body(kind, payload, seconds, zone=0, cites=b""):
    return (struct.pack("<BqhB", 1, seconds, zone, 1 if cites else 0) + cites + struct.pack("<HI", kind, len(payload)) +
            payload)


class Feed:
    """The entries of one device in one stream, from its first."""

    def __init__(self, program, device, stream, entries=()):
        self.program, self.device, self.stream = program, device, stream
        self.entries = list(entries)

    def copy(self):
        return Feed(self.program, self.device, self.stream, self.entries)

    def link(self, count):
        """Hash and signature of the last of the first `count` entries."""
        link = LINK
        for seq in range(count):
            link = (self.hash_after(link, seq, self.entries[seq][:-64]), self.entries[seq][-64:])
        return link

    def hash_after(self, link, seq, entry_body):
        return digest(32, b"peelpack.entry.1", self.program, self.device, self.stream, struct.pack("<I", seq), *link,
                      entry_body)

    def statement(self, seq, entry_hash):
        return b"peelpack head 1\n" + self.device + self.stream + struct.pack("<I", seq) + entry_hash

    def position(self, seq):
        return self.device + self.stream + struct.pack("<I", seq) + self.link(seq + 1)[0]

    def add(self, sign, kind, payload, seconds=1773300000, zone=0, cites=b""):
        """Signs one entry more with the device's key, whatever it says."""
        self.add_body(sign, body(kind, payload, seconds, zone, cites))
        return self

    def add_body(self, sign, entry_body):
        seq = len(self.entries)
        entry_hash = self.hash_after(self.link(seq), seq, entry_body)
        self.entries.append(entry_body + sign(self.statement(seq, entry_hash)))

    def signed_anew(self, sign, start, bodies):
        """The same feed with other bodies from `start` on: another history."""
        other = Feed(self.program, self.device, self.stream, self.entries[:start])
        for entry_body in bodies:
            other.add_body(sign, entry_body)
        return other

    def find(self, kind, sheet=None):
        """Places of the entries of a kind, about a sheet if one is named by the first digits of its id."""
        found = []
        for seq, data in enumerate(self.entries):
            entry = Entry(data)
            if entry.kind == kind and (sheet is None or entry.sheet().hex().startswith(sheet)):
                found.append(seq)
        return found

    def head(self):
        entry_hash, signature = self.link(len(self.entries))
        return (self.device, self.stream, len(self.entries), entry_hash, signature)


class Volume:
    """One volume of an export, or what is sealed in a parcel. A run is [device, stream, from, entries]."""

    def __init__(self, program, certificates=(), heads=(), runs=()):
        self.program = program
        self.certificates, self.heads, self.runs = list(certificates), list(heads), [list(run) for run in runs]

    @staticmethod
    def parse(data):
        reader = Reader(data)
        reader.bytes(len(NOTICE))
        volume = Volume(reader.bytes(32))
        reader.bytes(4)
        volume.certificates = [reader.bytes(reader.number("H")) for _ in range(reader.number("H"))]
        for _ in range(reader.number("H")):
            volume.heads.append((reader.bytes(32), reader.bytes(16), reader.number("I"), reader.bytes(32), reader.bytes(64)))
        for _ in range(reader.number("H")):
            run = [reader.bytes(32), reader.bytes(16), reader.number("I"), []]
            run[3] = [reader.bytes(reader.number("I")) for _ in range(reader.number("I"))]
            volume.runs.append(run)
        return volume

    def build(self):
        data = NOTICE + self.program + struct.pack("<HHH", 1, 1, len(self.certificates))
        data += b"".join(struct.pack("<H", len(one)) + one for one in self.certificates)
        data += struct.pack("<H", len(self.heads))
        data += b"".join(device + stream + struct.pack("<I", count) + entry_hash + signature
                         for device, stream, count, entry_hash, signature in self.heads)
        data += struct.pack("<H", len(self.runs))
        for device, stream, start, entries in self.runs:
            data += device + stream + struct.pack("<II", start, len(entries))
            data += b"".join(struct.pack("<I", len(entry)) + entry for entry in entries)
        return with_digest(data)

    def feed(self, device, stream):
        for run in self.runs:
            if (run[0], run[1], run[2]) == (device, stream, 0):
                return Feed(self.program, device, stream, run[3])
        return Feed(self.program, device, stream)

    def replace(self, feed):
        """Shows this feed, and no other history of the same device and stream."""
        self.runs = [run for run in self.runs if (run[0], run[1]) != (feed.device, feed.stream)]
        self.heads = [head for head in self.heads if (head[0], head[1]) != (feed.device, feed.stream)]
        if feed.entries:
            self.runs.append([feed.device, feed.stream, 0, list(feed.entries)])
            self.heads.append(feed.head())
        return self

    def without_heads_of(self, feed):
        self.heads = [head for head in self.heads if (head[0], head[1]) != (feed.device, feed.stream)]
        return self


def with_digest(data):
    return data + digest(32, b"peelpack.volum.1", data)


# Payloads (section 4)

def text(value):
    return struct.pack("<Q", len(value.encode())) + value.encode()


def texts(values):
    return struct.pack("<Q", len(values)) + b"".join(text(value) for value in values)


def grant(person, role, device, seal, name, scopes=()):
    return b"\1" + person + bytes([role]) + device + seal + text(name) + texts(scopes) + b"\0"


def policy(stands_on, requirement_set, days=(20000, 21000), counted=31):
    return (b"\1" + stands_on + text(requirement_set) + bytes(32) + text("") + struct.pack("<ii", *days) +
            bytes([counted]) + struct.pack("<H", 1))


def act(sheet, stands_on, about, reason):
    return b"\1" + sheet + stands_on + about + text(reason)


def amendment(sheet, about, reason, skill=4, mark=2, stands_on=bytes(32)):
    marks = struct.pack("<Q", 1) + bytes([skill, mark]) + text("")
    return act(sheet, stands_on, about, reason) + marks + b"\0" + texts([])


def exception(requirement_set, set_digest, head, required, counted, reason):
    return b"\1" + text(requirement_set) + set_digest + head + struct.pack("<II", required, counted) + text(reason)


def admission(entry, reason):
    return b"\1" + entry + text(reason)


def draft(procedure, day, site="North Campus"):
    return (texts([procedure]) + struct.pack("<i", day) + text("") + text(site) + text("") +
            struct.pack("<HHB", 65535, 65535, 0) + struct.pack("<Q", 0))


def sheet_opened(sheet, day, procedure="Open appendectomy"):
    return b"\1" + sheet + bytes(16) + draft(procedure, day)


def attestation(statement, signature):
    return b"\1" + struct.pack("<Q", len(statement)) + statement + signature


def statement_of(payload):
    """Statement and signature of an attestation's payload."""
    return payload[9:-64], payload[-64:]


def malleated(signature):
    """The same R with S + L: it fits a verifier that does not look whether S is below the group order."""
    s = int.from_bytes(signature[32:], "little") + GROUP_ORDER
    return signature[:32] + s.to_bytes(32, "little")
