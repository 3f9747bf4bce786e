#!/usr/bin/python3
"""Verifies an export of a Peelpack journal. Written from sync/FORMAT.md alone, as a second reading of it.

Usage: verify_export.py PROGRAM_ID_HEX VOLUME...
Prints one line per finding and a last line of counts. Exit 0: everything verifies. 1: something does not. 2: usage.
"""
import hashlib
import struct
import sys

from nacl.exceptions import BadSignatureError, ValueError as NaclValueError
from nacl.signing import VerifyKey

NOTICE = b"Peelpack journal 1: education records, keep them confidential.\n"

class Refused(Exception):
    """Why something does not verify."""

def refuse_if(wrong, why):
    if wrong:
        raise Refused(why)

def digest(size, personal, message):
    return hashlib.blake2b(message, digest_size=size, person=personal.encode()).digest()

def signed(key, message, signature):
    try:
        VerifyKey(key).verify(message, signature)
        return True
    except (BadSignatureError, NaclValueError):
        return False

class Reader:
    """Numbers, bytes, texts and lists as sections 1 and 3 fix them."""
    def __init__(self, data):
        self.data, self.at = data, 0
    def left(self): return len(self.data) - self.at
    def raw(self, size):
        refuse_if(size > self.left(), "ends before it is complete")
        self.at += size
        return self.data[self.at - size:self.at]
    def number(self, form):
        return struct.unpack("<" + form, self.raw(struct.calcsize(form)))[0]
    def among(self, form, low, high):
        value = self.number(form)
        refuse_if(not low <= value <= high, "a number out of range")
        return value
    def flag(self): return self.among("B", 0, 1) == 1
    def count(self, low, high):
        value = self.number("Q")
        refuse_if(value > self.left() or not low <= value <= high, "a list of a wrong length")
        return value
    def text(self, most=200, needed=False):
        size = self.number("Q")
        refuse_if(size > 4 * most or size > self.left(), "a text too long")
        try:
            value = self.raw(size).decode("utf-8")
        except UnicodeDecodeError:
            raise Refused("a text that is no UTF-8")
        refuse_if(len(value) > most or any((c < " " and c != "\n") or c == "\x7f" for c in value) or (needed and not value),
                  "a text that may not be")
        return value
    def blob(self, most): return self.raw(self.count(0, most))
    def many(self, low, high, item): return [item() for _ in range(self.count(low, high))]
    def maybe(self, item): return item() if self.flag() else None
    def position(self): return self.raw(32), self.raw(16), self.number("I"), self.raw(32)
    def time(self): return self.number("q"), self.among("h", -900, 900)
    def day(self): return self.among("i", -25567, 84005)
    def end(self):
        refuse_if(self.left(), "bytes left over")

def head(r):
    result = r.day(), r.text(), r.text(), r.text(), r.number("H"), r.number("H")
    refuse_if(any(minute >= 1440 and minute != 65535 for minute in result[4:]), "a time of day out of range")
    return result + (r.flag(),)

def procedures(r, low=1):
    return r.many(low, 8, lambda: r.text(200, True))

def ascending(items):
    refuse_if(any(a[0] >= b[0] for a, b in zip(items, items[1:])), "items out of order")

def marks(r):
    result = r.many(0, 10, lambda: (r.among("B", 0, 9), r.among("B", 1, 3), r.text()))
    ascending(result)
    refuse_if(any(mark[2] and mark[1] != 3 for mark in result), "a reason without N/A")
    return result

def choices(r):
    ascending(r.many(1, 8, lambda: (r.among("B", 0, 7), r.text(200, True), r.among("B", 0, 8))))

def act(r, reason):
    r.raw(16 + 32 + 32), r.text(4000, reason)

def receipt(r):
    items = r.many(1, 1024, lambda: (r.raw(32), r.number("I"), r.raw(32)))
    r.number("I"), ascending(items)
    return items

def grant(r):
    person, role = r.raw(16), r.among("B", 1, 4)
    device, _, _ = r.raw(32), r.raw(32), r.text(200, True)
    r.many(0, 64, lambda: r.text(200, True))
    r.maybe(r.position)
    return person, role, device

def amend(r):
    act(r, True)
    refuse_if(not (bool(marks(r)) | (r.maybe(lambda: head(r)) is not None) | bool(procedures(r, 0))), "an amendment of nothing")

def sheet(r):
    r.raw(32), procedures(r), head(r), marks(r)

def reasoned(r):
    r.raw(16), r.text(4000, True)

def policy(r):
    r.raw(32), r.text(200, True), r.raw(32), r.text(), r.day(), r.day(), r.among("B", 0, 31), r.number("H")

def fork_found(r):
    device, stream, seq = r.raw(32), r.raw(16), r.raw(4)
    links = [(r.raw(32), r.raw(64)), (r.raw(32), r.raw(64))]
    statements = [b"peelpack head 1\n" + device + stream + seq + link[0] for link in links]
    refuse_if(not links[0] < links[1] or not all(signed(device, s, l[1]) for s, l in zip(statements, links)),
              "evidence that does not hold")

KINDS = {
    1: grant, 4: policy, 35: amend, 48: receipt, 50: fork_found,
    2: lambda r: (r.among("B", 1, 2), r.raw(32 + 16 + 16), r.number("I"), r.number("I"), r.text(4000, True)),
    3: lambda r: (r.raw(16), r.text(200, True), r.text(), r.text(), r.among("B", 1, 2), r.raw(32 + 16), r.number("I")),
    16: sheet, 17: sheet, 18: reasoned, 23: reasoned,
    19: lambda r: (r.blob(49152), r.raw(64)),
    20: lambda r: (r.raw(16), choices(r)),
    21: lambda r: (r.raw(16), r.among("B", 0, 9), r.among("B", 1, 3), r.text(4000, True)),
    22: lambda r: (r.raw(16), r.time(), r.time(), r.number("B"), r.among("B", 1, 4)),
    32: lambda r: (act(r, False), r.flag()),
    33: lambda r: act(r, True), 37: lambda r: act(r, True),
    34: lambda r: (act(r, False), r.raw(32), r.among("B", 0, 9), r.among("B", 1, 3)),
    36: lambda r: (act(r, True), choices(r)),
    38: lambda r: (r.text(200, True), r.raw(32), r.position()),
    49: lambda r: (r.raw(16), r.number("I"), r.day(), r.day(), r.many(1, 1024, lambda: (r.raw(32), r.flag()))),
    51: lambda r: (r.position(), r.text(4000, True)),
}
IN_PROGRAM_STREAM = {1, 2, 3, 4, 48, 50}
NOT_IN_STUDENT_STREAM = {3, 4}

def coded(data):
    r = Reader(data)
    refuse_if(r.raw(1) != b"\x01", "another byte order")
    return r

class Export:
    def __init__(self, program):
        self.program = program
        self.program_stream = digest(16, "peelpack.progs.1", program)
        self.entries = {}  # (device, stream, seq) -> [(hash, signature)]
        self.bytes = {}
        self.directors, self.receipts, self.heads, self.faults = {}, [], set(), []
        self.counts = {"entries": 0, "attestations": 0, "certificates": 0, "forks": 0}
    def certificate(self, data):
        r = Reader(data)
        version, kind, epoch, length = r.number("B"), r.number("B"), r.number("I"), r.number("H")
        content, signature = coded(r.raw(length)), r.raw(64)
        r.end()
        refuse_if(version != 1 or kind not in (1, 2, 3), "a certificate of a newer version")
        refuse_if(not signed(self.program, b"peelpack cert 1\n" + self.program + data[:-64], signature),
                  "a certificate that the program key did not sign")
        if kind == 1:
            key = digest(32, "peelpack.certs.1", self.program + data[:-64])
            device = content.raw(16) and content.raw(32)
            content.raw(32), content.text(200, True)
            self.directors[epoch] = min(self.directors.get(epoch, (key, device)), (key, device))
        elif kind == 2:
            content.raw(48), content.number("I")
        else:
            content.raw(16), content.text(200, True), content.raw(32), content.position(), content.time()
        content.end()
    def attestation(self, payload, device, stream):
        r = coded(payload)
        data, signature = r.blob(49152), r.raw(64)
        tag = b"peelpack attest 1\n"
        refuse_if(not data.startswith(tag), "no attestation")
        s = coded(data[len(tag):])
        program, student = s.raw(32), s.raw(16)
        s.raw(32), procedures(s), head(s), marks(s), s.text(4000), s.text(35, True), s.number("H"), s.text(4000, True)
        kind, key, card, epoch = s.among("B", 1, 4), s.raw(32), s.raw(16), s.number("I")
        s.text(200, True), s.text()
        strokes, stub = s.blob(16384), s.text()
        s.time(), s.end()
        refuse_if(kind != 2 and (any(card) or epoch) or (kind == 3) != bool(strokes) or (kind == 4) != bool(stub), "a signer of no shape")
        refuse_if(program != self.program or student != stream or (kind in (3, 4)) != (key == device), "an attestation made for something else")
        refuse_if(not signed(key, data, signature), "an attestation whose signature does not fit")
        self.counts["attestations"] += 1
    def payload(self, kind, payload, device, stream):
        in_program = stream == self.program_stream
        if kind not in KINDS:
            return None
        refuse_if(kind not in IN_PROGRAM_STREAM if in_program else kind in NOT_IN_STUDENT_STREAM, "a kind in the wrong stream")
        r = coded(payload)
        said = KINDS[kind](r)
        r.end()
        refuse_if(kind == 1 and ((said[1] == 4) == in_program or (said[1] == 4 and said[0] != stream)), "a grant in the wrong stream")
        return said
    def entry(self, data, device, stream, seq, before):
        """One entry that may follow any of `before`; answers its (hash, signature)."""
        refuse_if(not 82 <= len(data) <= 65536, "an entry of a wrong size")
        body, signature = data[:-64], data[-64:]
        r = Reader(body)
        refuse_if(r.number("B") != 1, "an entry of a newer version")
        r.time()
        if r.flag():
            r.position()
        kind, length = r.number("H"), r.number("I")
        payload = r.raw(length)
        r.end()
        said = self.payload(kind, payload, device, stream)
        place = device + stream + struct.pack("<I", seq)
        for previous_hash, previous_signature in before:
            name = digest(32, "peelpack.entry.1", self.program + place + previous_hash + previous_signature + body)
            if signed(device, b"peelpack head 1\n" + place + name, signature):
                break
        else:
            raise Refused("a signature or a chain that does not fit")
        if kind == 19:
            self.attestation(payload, device, stream)
        if kind == 48:
            self.receipts += [(item[0], stream, item[1], item[2]) for item in said]
        return name, signature
    def run(self, device, stream, start, entries):
        before = [(bytes(32), bytes(64))] if start == 0 else self.entries.get((device, stream, start - 1), [])
        for seq, data in enumerate(entries, start):
            refuse_if(not before, f"entry {seq}: its predecessor is not here")
            try:
                link = self.entry(data, device, stream, seq, before)
            except Refused as fault:
                raise Refused(f"entry {seq} of {device.hex()[:8]}/{stream.hex()[:8]}: {fault}")
            held = self.entries.setdefault((device, stream, seq), [])
            if link not in held:
                self.counts["entries"] += 1
                self.counts["forks"] += len(held) > 0
                held.append(link)
            before = [link]
    def volume(self, data):
        r = Reader(data)
        refuse_if(len(data) > 64 * 1024 * 1024 or r.raw(len(NOTICE)) != NOTICE, "this is no volume")
        refuse_if(r.raw(32) != self.program, "another program")
        refuse_if(digest(32, "peelpack.volum.1", data[:-32]) != data[-32:], "damaged")
        r.data = data[:-32]
        number, of = r.number("H"), r.number("H")
        for _ in range(r.number("H")):
            self.certificate(r.raw(r.number("H")))
            self.counts["certificates"] += 1
        for _ in range(r.number("H")):
            place, count, name, signature = r.raw(48), r.number("I"), r.raw(32), r.raw(64)
            refuse_if(not count or not signed(place[:32], b"peelpack head 1\n" + place + struct.pack("<I", count - 1) + name, signature),
                      "a head that its device did not sign")
            self.heads.add((place[:32], place[32:], count - 1, name))
        for _ in range(r.number("H")):
            device, stream, start, count = r.raw(32), r.raw(16), r.number("I"), r.number("I")
            refuse_if(count > r.left() // 86, "more entries claimed than there is room for")
            entries = [r.raw(r.number("I")) for _ in range(count)]
            try:
                self.run(device, stream, start, entries)
            except Refused as fault:
                self.faults.append(str(fault))
        r.end()
        return number, of
    def compare(self):
        """Section 11, step 5."""
        for what, items in (("receipt", self.receipts), ("head", self.heads)):
            for device, stream, seq, name in items:
                held = [link[0] for link in self.entries.get((device, stream, seq), [])]
                if name not in held:
                    self.faults.append(f"a {what} names entry {seq} of {device.hex()[:8]}/{stream.hex()[:8]}: "
                                       + ("another stands there" if held else "it was cut off"))

def main(arguments):
    if len(arguments) < 2 or len(arguments[0]) != 64:
        print(__doc__)
        return 2
    export, numbers = Export(bytes.fromhex(arguments[0])), []
    for path in arguments[1:]:
        try:
            with open(path, "rb") as file:
                numbers.append(export.volume(file.read()))
        except Refused as fault:
            export.faults.append(f"{path}: {fault}")
    if numbers and sorted(n for n, _ in numbers) != list(range(1, numbers[0][1] + 1)):
        export.faults.append("a volume is missing or there twice")
    export.compare()
    for fault in export.faults:
        print(fault)
    print(", ".join(f"{count} {name}" for name, count in export.counts.items()) + f", {len(export.directors)} directors")
    return 1 if export.faults else 0

if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
