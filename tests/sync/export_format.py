"""The bytes of an export: sections 1 to 6 of sync/FORMAT.md, each content read to its end. For verify_export.py."""
import hashlib
import struct
from collections import namedtuple

from nacl.bindings import crypto_core_ed25519_is_valid_point
from nacl.exceptions import BadSignatureError
from nacl.signing import VerifyKey

DIRECTOR, INSTRUCTOR, COORDINATOR, CONTACT, STUDENT = range(5)
GRANT, REVOKE, VOUCH, POLICY, REQUIREMENTS, DAYS, SITES, MAY_SIGN, STANDING, OVERLAY = range(1, 11)
ATTESTATION, COMPLETE, BY_EXCEPTION, RECEIPT, FORK_FOUND, ADMIT = 19, 38, 39, 48, 50, 51
ENDLESS = 1 << 32
Entry = namedtuple("Entry", "device stream seq name signature kind said cites")
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
def requirements_change(r): return r.raw(32), r.text(), r.day(), r.text(200, True), r.raw(32), r.text(4000, True)
def clinical_day(r):
    day, site, *minutes = r.day(), r.text(200, True), r.number("H"), r.number("H")
    refuse_if(any(1440 <= minute < 65535 for minute in minutes), "a time of day out of range")
    return (day, minutes[0], site.encode()), minutes[1]
def clinical_days(r): return r.raw(32), r.text(), ascending(r.many(0, 512, lambda: clinical_day(r)))
def sites(r): return r.raw(32), ascending(r.many(0, 128, lambda: (r.text(200, True).encode(), r.among("B", 0, 3), r.text(400))))
def who_may_sign(r): return r.raw(32), ascending(r.many(0, 32, lambda: (r.text(200, True).encode(), r.among("B", 1, 7))))
def preceptor_standing(r): return r.raw(32), r.raw(16), r.maybe(r.day), r.flag()
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
def imported(r):
    said = r.raw(16), r.raw(16), r.names(1, 8), head(r), choices(r), r.among("B", 1, 3), r.text(), r.text(), r.text(400, True)
    return sure(said, lambda said: said[4][-1][0] < len(said[2]), "a choice of a procedure that is not there")
def completed(r): return r.text(200, True), r.raw(32), r.position()
def by_exception(r):
    said = completed(r) + (r.number("I"), r.number("I"), r.text(4000, True))
    return sure(said, lambda said: said[4] < said[3], "an exception where nothing is short")
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
    1: grant, 2: revoke, 3: vouch, 4: policy, 5: requirements_change, 6: clinical_days, 7: sites,
    8: who_may_sign, 9: preceptor_standing, 10: lambda r: (r.raw(32), r.blob(49152)), 16: sheet, 17: sheet, 18: reasoned, 19: attestation, 23: reasoned,
    20: lambda r: (r.raw(16), choices(r)),
    21: lambda r: (r.raw(16), r.among("B", 0, 9), r.among("B", 1, 3), r.text(4000, True)),
    22: lambda r: (r.raw(16), r.time(), r.time(), r.number("B"), r.among("B", 1, 4)),
    32: lambda r: (act(r, False), r.flag()), 33: lambda r: act(r, True), 35: amend, 37: lambda r: act(r, True),
    34: lambda r: (act(r, False), r.raw(32), r.among("B", 0, 9), r.among("B", 1, 3)),
    36: lambda r: (act(r, True), choices(r)), 38: completed, 39: by_exception, 40: imported, 48: receipt,
    49: lambda r: (r.raw(16), r.number("I"), r.day(), r.day(), r.many(1, 1024, lambda: (r.raw(32), r.flag()))), 50: fork_found,
    51: lambda r: (r.position(), r.text(4000, True)),
}
CERTIFICATES = {
    1: lambda r: (r.raw(16), r.key(), r.raw(32), r.text(200, True)), 2: lambda r: (*r.feed(), r.number("I")),
    3: lambda r: (r.raw(16), r.text(200, True), r.raw(32), r.position(), r.time()),
}
