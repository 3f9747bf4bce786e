#!/usr/bin/python3
"""Verifies an export of a Peelpack journal. Written from sync/FORMAT.md alone, as a second reading of it.

Usage: verify_export.py PROGRAM_ID_HEX VOLUME...
Prints one line per finding and a last line of counts. Exit 0: everything verifies and counts. 1: something does not. 2: usage.
"""
import struct
import sys
from pathlib import Path

from export_authority import Authority
from export_format import (ADMIT, ATTESTATION, BY_EXCEPTION, CERTIFICATES, COMPLETE, FORK_FOUND, GRANT, KINDS, OVERLAY, RECEIPT, REVOKE,
                           STUDENT, VOUCH, Entry, Reader, coded, digest, head_statement, refuse_if, shown, signed)

NOTICE = b"Peelpack journal 1: education records, keep them confidential.\n"

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
                COMPLETE: lambda: not inside and said[2][1] == e.stream, BY_EXCEPTION: lambda: not inside and said[2][1] == e.stream,
                ADMIT: lambda: not inside and said[0][1] == e.stream}
        others = (VOUCH <= e.kind <= OVERLAY) == inside or e.kind in (RECEIPT, FORK_FOUND)
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
        for what, items in (("receipt", [r[1:5] for r in authority.receipts]), ("head", sorted(self.heads))):
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
