#!/usr/bin/python3
"""Verifies an export of a Peelpack journal. Written from sync/FORMAT.md alone, as a second reading of it.

Usage: verify_export.py PROGRAM_ID_HEX VOLUME...
Prints one line per finding and a last line of counts. Exit 0: everything verifies and counts. 1: something does not. 2: usage.
"""
import hashlib
import struct
import sys
from collections import namedtuple
from pathlib import Path

from nacl.bindings import crypto_core_ed25519_is_valid_point
from nacl.exceptions import BadSignatureError
from nacl.signing import VerifyKey

NOTICE = b"Peelpack journal 1: education records, keep them confidential.\n"
DIRECTOR, INSTRUCTOR, COORDINATOR, CONTACT, STUDENT = range(5)
GRANT, REVOKE, VOUCH, POLICY, ATTESTATION, COMPLETE, RECEIPT, FORK_FOUND, ADMIT = 1, 2, 3, 4, 19, 38, 48, 50, 51
ENDLESS = 1 << 32
Entry = namedtuple("Entry", "device stream seq name signature kind said cites")
Receipted = namedtuple("Receipted", "by device stream seq name")
Grant = namedtuple("Grant", "person role device seal name scopes continues")
Revoke = namedtuple("Revoke", "target device stream card epoch accepted reason")
Vouch = namedtuple("Vouch", "person name credential site target key card epoch")
Signer = namedtuple("Signer", "kind key card epoch name credential strokes stub")

def digest(size, personal, message): return hashlib.blake2b(message, digest_size=size, person=personal.encode()).digest()
def head_statement(device, stream, seq, name): return b"peelpack head 1\n" + device + stream + struct.pack("<I", seq) + name
def shown(device, stream, seq, *_): return f"entry {seq} of {device.hex()[:8]}/{stream.hex()[:8]}"
def refuse_if(wrong, why):
    if wrong:
        raise ValueError(why)

def sure(value, fits, why):
    refuse_if(not fits(value), why)
    return value

def signed(key, message, signature):
    try:
        return VerifyKey(key).verify(message, signature) == message
    except (BadSignatureError, ValueError):
        return False

class Reader:
    """Numbers, bytes, texts and lists as sections 1 and 3 fix them."""
    def __init__(self, data): self.data, self.at = data, 0
    def left(self): return len(self.data) - self.at
    def raw(self, size):
        refuse_if(size > self.left(), "ends before it is complete")
        self.at += size
        return self.data[self.at - size:self.at]
    def number(self, form): return struct.unpack("<" + form, self.raw(struct.calcsize(form)))[0]
    def among(self, form, low, high): return sure(self.number(form), lambda n: low <= n <= high, "a number out of range")
    def flag(self): return self.among("B", 0, 1) == 1
    def count(self, low, high): return self.among("Q", low, min(high, self.left()))
    def text(self, most=200, needed=False):
        value = self.raw(self.count(0, 4 * most)).decode()
        control = any((c < " " and c != "\n") or c == "\x7f" for c in value)
        return sure(value, lambda text: needed <= len(text) <= most and not control, "a text that may not be")
    def blob(self, most): return self.raw(self.count(0, most))
    def many(self, low, high, item): return [item() for _ in range(self.count(low, high))]
    def names(self, low, high): return self.many(low, high, lambda: self.text(200, True))
    def maybe(self, item): return item() if self.flag() else None
    def feed(self): return self.raw(32), self.raw(16)
    def position(self): return self.feed() + (self.number("I"), self.raw(32))
    def time(self): return self.number("q"), self.among("h", -900, 900)
    def day(self): return self.among("i", -25567, 84005)
    def key(self): return sure(self.raw(32), crypto_core_ed25519_is_valid_point, "a key outside the prime-order group")
    def end(self): refuse_if(self.left(), "bytes left over")

def coded(data, content):
    r = Reader(data)
    refuse_if(r.raw(1) != b"\x01", "another byte order")
    said = content(r)
    r.end()
    return said

# What sections 4 to 6 say is inside, each read to its end.
def ascending(items): return sure(items, lambda all: not any(a[0] >= b[0] for a, b in zip(all, all[1:])), "items out of order")
def choices(r): return ascending(r.many(1, 8, lambda: (r.among("B", 0, 7), r.text(200, True), r.among("B", 0, 8))))
def act(r, reason): return r.raw(16), r.raw(32), r.raw(32), r.text(4000, reason)
def sheet(r): return r.raw(16), r.raw(16), r.names(1, 8), head(r), marks(r)
def reasoned(r): return r.raw(16), r.text(4000, True)
def grant(r): return Grant(r.raw(16), r.among("B", 1, 4), r.key(), r.raw(32), r.text(200, True), r.names(0, 64), r.maybe(r.position))
def policy(r): return r.raw(32), r.text(200, True), r.raw(32), r.text(), r.day(), r.day(), r.among("B", 0, 31), r.number("H")
def receipt(r): return ascending(r.many(1, 1024, lambda: (r.raw(32), r.number("I"), r.raw(32)))), r.number("I")
def head(r):
    said = r.day(), r.text(), r.text(), r.text(), r.number("H"), r.number("H"), r.flag()
    return sure(said, lambda head: all(minute < 1440 or minute == 65535 for minute in head[4:6]), "a time of day out of range")
def marks(r):
    said = ascending(r.many(0, 10, lambda: (r.among("B", 0, 9), r.among("B", 1, 3), r.text())))
    return sure(said, lambda marks: all(mark == 3 or not reason for _, mark, reason in marks), "a reason without N/A")
def revoke(r):
    said = Revoke(r.among("B", 1, 2), *r.feed(), r.raw(16), r.number("I"), r.number("I"), r.text(4000, True))
    device, card = any(said.device + said.stream) or said.accepted > 0, any(said.card) or said.epoch > 0
    return sure(said, lambda _: device and not card if said.target == 1 else not device, "a revocation of two things or of nothing")
def vouch(r):
    said = Vouch(r.raw(16), r.text(200, True), r.text(), r.text(), r.among("B", 1, 2), r.key(), r.raw(16), r.number("I"))
    return sure(said, lambda _: said.target == 2 or not (any(said.card) or said.epoch), "a device with the number of a card")
def amend(r):
    return sure((act(r, True), marks(r), r.maybe(lambda: head(r)), r.names(0, 8)), lambda said: any(said[1:]), "an amendment of nothing")
def fork_found(r):
    place, links = (*r.feed(), r.number("I")), [(r.raw(32), r.raw(64)), (r.raw(32), r.raw(64))]
    holds = links[0] < links[1] and all(signed(place[0], head_statement(*place, name), signature) for name, signature in links)
    return sure(place, lambda _: holds, "evidence that does not hold")
def statement(r):
    said = r.raw(32), r.raw(16), r.raw(32), r.names(1, 8), head(r), marks(r), r.text(4000), r.text(35, True)
    r.number("H"), r.text(4000, True)
    s = Signer(r.among("B", 1, 4), r.key(), r.raw(16), r.number("I"), r.text(200, True), r.text(), r.blob(16384), r.text())
    shape = s.kind == 2 or not (any(s.card) or s.epoch), (s.kind == 3) == bool(s.strokes), (s.kind == 4) == bool(s.stub)
    return sure((said[0], said[1], s, r.time()), lambda _: all(shape), "a signer of no shape")
def attestation(r):
    data, signature, tag = r.blob(49152), r.raw(64), b"peelpack attest 1\n"
    refuse_if(not data.startswith(tag), "no attestation")
    said = coded(data[len(tag):], statement)
    return sure(said, lambda _: signed(said[2].key, data, signature), "an attestation whose signature does not fit")

KINDS = {
    1: grant, 2: revoke, 3: vouch, 4: policy, 16: sheet, 17: sheet, 18: reasoned, 19: attestation, 23: reasoned,
    20: lambda r: (r.raw(16), choices(r)),
    21: lambda r: (r.raw(16), r.among("B", 0, 9), r.among("B", 1, 3), r.text(4000, True)),
    22: lambda r: (r.raw(16), r.time(), r.time(), r.number("B"), r.among("B", 1, 4)),
    32: lambda r: (act(r, False), r.flag()), 33: lambda r: act(r, True), 35: amend, 37: lambda r: act(r, True),
    34: lambda r: (act(r, False), r.raw(32), r.among("B", 0, 9), r.among("B", 1, 3)),
    36: lambda r: (act(r, True), choices(r)), 38: lambda r: (r.text(200, True), r.raw(32), r.position()), 48: receipt,
    49: lambda r: (r.raw(16), r.number("I"), r.day(), r.day(), r.many(1, 1024, lambda: (r.raw(32), r.flag()))), 50: fork_found,
    51: lambda r: (r.position(), r.text(4000, True)),
}
CERTIFICATES = {
    1: lambda r: (r.raw(16), r.key(), r.raw(32), r.text(200, True)), 2: lambda r: (*r.feed(), r.number("I")),
    3: lambda r: (r.raw(16), r.text(200, True), r.raw(32), r.position(), r.time()),
}

def may_write(role, kind):
    return role == STUDENT if 16 <= kind <= 23 else role == DIRECTOR if kind in (POLICY, COMPLETE) else \
        kind == FORK_FOUND or role <= (CONTACT if kind == VOUCH else INSTRUCTOR)

class Authority:
    """Section 7 in layers, and the strengths of section 5; without scopes, and without what a revoked card or phone signed."""
    def __init__(self, program_stream, entries, certificates):
        self.program_stream, self.all = program_stream, [e for place in sorted(entries) for e in entries[place]]
        self.holders, self.accepted, self.forks, self.cards, self.directors = {}, {}, {}, {}, {}
        self.receipts, self.denied, self.admitted, self.phones, admits = [], set(), set(), set(), []
        for e in self.all:
            for *feed, seq in [e[:3]] * (len(entries[e[:3]]) > 1) + [e.said] * (e.kind == FORK_FOUND):
                self.lower(self.forks, tuple(feed), seq)
        for kind, epoch, _, said in sorted(certificates, key=lambda c: c[2]):
            if kind == 1 and self.directors.setdefault(epoch, said) is said:
                self.holders[said[1]] = (DIRECTOR, said[0])
            elif kind == 2:
                self.lower(self.accepted, said[:2], said[2])
        for role in (DIRECTOR, INSTRUCTOR, COORDINATOR, CONTACT):
            layer = [e for e in self.all if self.holders.get(e.device, [None])[0] == role and may_write(role, e.kind)
                     and e.seq < min(self.good(e), self.forks.get(e[:2], ENDLESS))]
            for e in sorted((e for e in layer if e.kind == GRANT), key=lambda e: (e.said.role, e.name)):
                given = (e.said.role, e.said.person)
                if (given[0] == INSTRUCTOR and role != DIRECTOR) or self.holders.setdefault(e.said.device, given) != given:
                    self.denied.add(e[:4])
            for said in (e.said for e in layer if e.kind == VOUCH):
                (self.phones if said.target == 1 else self.cards.setdefault((said.card, said.epoch), set())).add(said.key)
            self.receipts += [Receipted(e, device, e.stream, *rest) for e in layer if e.kind == RECEIPT for device, *rest in e.said[0]]
            for e in (e for e in layer if e.kind == REVOKE and e.said.target == 1):
                if self.holders.get(e.said.device, (STUDENT, None))[0] <= role:
                    self.denied.add(e[:4])
                else:  # an instructor takes back neither what the same device receipted before, nor what is cited
                    kept = [r.seq + 1 for r in self.receipts if role == INSTRUCTOR and r[1:3] == e.said[1:3]
                            and (r.by[:4] == e.cites or (r.by[:2] == e[:2] and r.by.seq < e.seq))]
                    self.lower(self.accepted, e.said[1:3], max([e.said.accepted] + kept))
            admits += [e for e in layer if e.kind == ADMIT]
        for e in admits:
            good = self.holders.get(e.said[0][0]) == (STUDENT, e.stream)
            (self.admitted if good else self.denied).add(e.said[0] if good else e[:4])
    @staticmethod
    def lower(limits, feed, seq): limits[feed] = min(seq, limits.get(feed, ENDLESS))
    def good(self, e): return self.accepted.get(e[:2], 0 if (e.device, self.program_stream) in self.accepted else ENDLESS)
    def standing(self, e):
        """Why it does not count; empty when it does."""
        role, person = self.holders.get(e.device, (None, None))
        if role is None or e.kind not in KINDS:
            return "aside: nobody with authority granted this device anything" if role is None else "aside: a kind of a newer version"
        if not may_write(role, e.kind) or (role == STUDENT and person != e.stream) or e[:4] in self.denied:
            return "refused: its writer may not write that here"
        if e[:4] not in self.admitted and e.seq >= min(self.good(e), self.forks.get(e[:2], ENDLESS)):
            return "aside: revoked" if e.seq >= self.good(e) else "aside: past a fork"
        signer = e.said[2] if e.kind == ATTESTATION and e[:4] not in self.admitted else None
        if signer and signer.kind < 3:
            known = self.phones if signer.kind == 1 else self.cards.get((signer.card, signer.epoch), {signer.key})
            if signer.key not in known or (signer.kind == 2 and signer.key in self.holders):
                return "aside: nobody vouches for the signer"
        return ""

class Export:
    def __init__(self, program):
        self.program, self.program_stream = program, digest(16, "peelpack.progs.1", program)
        self.entries, self.certificates, self.heads, self.faults = {}, {}, set(), []
    def certificate(self, data):
        r = Reader(data)
        version, kind, epoch, content, signature = r.number("B"), r.number("B"), r.number("I"), r.raw(r.number("H")), r.raw(64)
        r.end()
        refuse_if(len(data) > 4096 or version != 1 or kind not in CERTIFICATES, "a certificate of a newer version")
        genuine = signed(self.program, b"peelpack cert 1\n" + self.program + data[:-64], signature)
        refuse_if(not genuine, "a certificate that the program key did not sign")
        name = digest(32, "peelpack.certs.1", self.program + data[:-64])
        self.certificates[name] = kind, epoch, name, coded(content, CERTIFICATES[kind])
    def place(self, e, said):
        """What sections 2, 4 and 5 say about a payload in its stream."""
        inside = e.stream == self.program_stream
        fits = {GRANT: lambda: (said.role == STUDENT) != inside and (said.role != STUDENT or said.person == e.stream),
                REVOKE: lambda: inside if said.target == 2 else said.stream == e.stream,
                COMPLETE: lambda: not inside and said[2][1] == e.stream, ADMIT: lambda: not inside and said[0][1] == e.stream}
        others = (e.kind in (VOUCH, POLICY)) == inside or e.kind in (RECEIPT, FORK_FOUND)
        refuse_if(not fits.get(e.kind, lambda: others)(), "a kind in the wrong stream")
        if e.kind == ATTESTATION:
            own = said[:2] == (self.program, e.stream) and (said[2].kind in (3, 4)) == (said[2].key == e.device)
            refuse_if(not own, "an attestation made for something else")
    def entry(self, data, device, stream, seq, before):
        """One entry that may follow any of `before`, each a (hash, signature)."""
        refuse_if(not 82 <= len(data) <= 65536, "an entry of a wrong size")
        body, signature, r = data[:-64], data[-64:], Reader(data[:-64])
        refuse_if(r.number("B") != 1, "an entry of a newer version")
        cites, kind = (r.time(), r.maybe(r.position))[1], r.number("H")
        payload = r.raw(r.number("I"))
        r.end()
        place = self.program + device + stream + struct.pack("<I", seq)
        names = (digest(32, "peelpack.entry.1", place + b"".join(link) + body) for link in before)
        name = next((name for name in names if signed(device, head_statement(device, stream, seq, name), signature)), None)
        refuse_if(name is None, "a signature or a chain that does not fit")
        said = coded(payload, KINDS[kind]) if kind in KINDS else None
        e = Entry(device, stream, seq, name, signature, kind, said, cites)
        if kind in KINDS:
            self.place(e, said)
        return e
    def run(self, device, stream, start, entries):
        before = [(bytes(32), bytes(64))] if start == 0 else [e[3:5] for e in self.entries.get((device, stream, start - 1), [])]
        for seq, data in enumerate(entries, start):
            try:
                refuse_if(not before, "its predecessor is not here")
                e = self.entry(data, device, stream, seq, before)
            except ValueError as fault:
                self.faults.append(f"{shown(device, stream, seq)}: {fault}")
                return
            held = self.entries.setdefault(e[:3], [])
            held += [e] * (e[3:5] not in [other[3:5] for other in held])
            before = [e[3:5]]
    def volume(self, data):
        r = Reader(data[:-32])
        refuse_if(len(data) > 64 * 1024 * 1024 or r.raw(len(NOTICE)) != NOTICE, "this is no volume")
        refuse_if(r.raw(32) != self.program, "another program")
        refuse_if(digest(32, "peelpack.volum.1", data[:-32]) != data[-32:], "damaged")
        number, of = r.number("H"), r.number("H")
        for _ in range(r.among("H", 0, 4096)):
            self.certificate(r.raw(r.number("H")))
        for _ in range(r.among("H", 0, 1024)):
            place, count, name, signature = r.feed(), r.number("I"), r.raw(32), r.raw(64)
            genuine = count and signed(place[0], head_statement(*place, count - 1, name), signature)
            refuse_if(not genuine, "a head that its device did not sign")
            self.heads.add((*place, count - 1, name))
        for _ in range(r.among("H", 0, 4096)):
            place, start, count = r.feed(), r.number("I"), r.number("I")
            self.run(*place, start, [r.raw(r.number("I")) for _ in range(count)])
        r.end()
        return number, of
    def judge(self):
        """Section 11, steps 5 and 6; answers the counts of the last line."""
        authority = Authority(self.program_stream, self.entries, self.certificates.values())
        for what, items in (("receipt", [r[1:] for r in authority.receipts]), ("head", sorted(self.heads))):
            for place in items:
                held = [e.name for e in self.entries.get(place[:3], [])]
                if place[3] not in held:
                    self.faults.append(f"a {what} names {shown(*place)}: " + ("another stands there" if held else "it was cut off"))
        forks = [place for place, held in sorted(self.entries.items()) for _ in held[1:]]
        why = [(e, authority.standing(e)) for e in authority.all]
        self.faults += [f"{shown(*place)}: a fork" for place in forks] + [f"{shown(*e)}: {words}" for e, words in why if words]
        return {"entries": len(why), "attestations": sum(e.kind == ATTESTATION for e, _ in why), "certificates": len(self.certificates),
                "forks": len(forks), "directors": len(authority.directors),
                **{standing: sum(words.startswith(standing) for _, words in why) for standing in ("aside", "refused")}}

def main(arguments):
    if len(arguments) < 2 or len(arguments[0]) != 64:
        print(__doc__)
        return 2
    export, numbers = Export(bytes.fromhex(arguments[0])), []
    for path in arguments[1:]:
        try:
            numbers.append(export.volume(Path(path).read_bytes()))
        except ValueError as fault:
            export.faults.append(f"{path}: {fault}")
    if numbers and sorted(n for n, _ in numbers) != list(range(1, numbers[0][1] + 1)):
        export.faults.append("a volume is missing or there twice")
    counts = ", ".join(f"{count} {name}" for name, count in export.judge().items())
    print("\n".join(export.faults + [counts]))
    return 1 if export.faults else 0

if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
