"""A second reader of a parcel by light, written from sync/FORMAT.md section 9 alone: frames to parcel by elimination over
GF(2), with Python's own BLAKE2b and its integers as rows of bits."""

import hashlib
import struct

HEAD = struct.Struct("<4s16sIHH")
CHECK = 4


def digest(size, personal, *pieces):
    return hashlib.blake2b(b"".join(pieces), digest_size=size, person=personal).digest()


class Frame:
    def __init__(self, code):
        tag, self.parcel, self.length, self.count, self.number = HEAD.unpack_from(code)
        assert tag == b"PPL\x01"
        assert code[-CHECK:] == digest(16, b"peelpack.frame.1", code[:-CHECK])[:CHECK]
        self.size = -(-self.length // self.count)
        self.piece = code[HEAD.size:-CHECK]
        assert len(self.piece) == self.size

    def pieces(self):
        if self.number < self.count:
            return 1 << self.number
        stream = b"".join(digest(64, b"peelpack.spare.1", self.parcel, struct.pack("<HH", self.number, block))
                          for block in range(-(-self.count // 512)))
        chosen = int.from_bytes(stream, "little") & ((1 << self.count) - 1)  # bit i of the number is piece i
        return chosen or 1 << self.number % self.count


def parcel_of(codes):
    """The parcel of codes of one parcel, and how many of them were needed; None while some are missing."""
    rows = {}  # by the highest piece: which pieces, what they come to
    for needed, code in enumerate(codes, 1):
        frame = Frame(code)
        chosen, value = frame.pieces(), int.from_bytes(frame.piece, "big")
        while chosen and chosen.bit_length() in rows:
            row = rows[chosen.bit_length()]
            chosen, value = chosen ^ row[0], value ^ row[1]
        if not chosen:
            assert value == 0
            continue
        rows[chosen.bit_length()] = (chosen, value)
        if len(rows) == frame.count:
            break
    else:
        return None, len(codes)
    solved = {}
    for top in sorted(rows):
        chosen, value = rows[top]
        for piece in range(top - 1):
            if chosen >> piece & 1:
                value ^= solved[piece]
        solved[top - 1] = value
    whole = b"".join(solved[i].to_bytes(frame.size, "big") for i in range(frame.count))
    assert not any(whole[frame.length:])
    parcel = whole[:frame.length]
    assert digest(16, b"peelpack.light.1", parcel) == frame.parcel
    return parcel, needed
