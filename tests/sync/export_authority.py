"""Who may write what in an export: section 7 of sync/FORMAT.md, and the strengths of section 5. For verify_export.py."""
from collections import defaultdict, namedtuple

from export_format import (ADMIT, ATTESTATION, BY_EXCEPTION, COMPLETE, CONTACT, COORDINATOR, DAYS, DIRECTOR, ENDLESS, FORK_FOUND, GRANT,
                           INSTRUCTOR, KINDS, MAY_SIGN, OVERLAY, POLICY, RECEIPT, REQUIREMENTS, REVOKE, SITES, STANDING, STUDENT, VOUCH)

DEVICE, CARD = 1, 2  # what is vouched for, and what is revoked
Receipted = namedtuple("Receipted", "by device stream seq name count")

LOWEST = {VOUCH: CONTACT, DAYS: COORDINATOR, SITES: COORDINATOR, STANDING: COORDINATOR, **dict.fromkeys(
    (POLICY, REQUIREMENTS, MAY_SIGN, OVERLAY, COMPLETE, BY_EXCEPTION), DIRECTOR)}

def may_write(role, kind):
    return role == STUDENT if 16 <= kind <= 23 else kind == FORK_FOUND or role <= LOWEST.get(kind, INSTRUCTOR)

class Holder:
    """Whose device it is. scopes: None for every scope."""
    def __init__(self, role, person, scopes=()):
        self.role, self.person, self.scopes, self.givers = role, person, set(scopes) or None, set()
    def add_scopes(self, scopes):
        self.scopes = self.scopes | set(scopes) if self.scopes and scopes else None
    def has(self, scope): return self.scopes is None or scope in self.scopes
    def shares(self, scopes): return self.scopes is None or bool(self.scopes & scopes)

class Vouched:
    """One key that somebody vouches for: who did, and at which sites."""
    def __init__(self): self.givers, self.sites = set(), set()

class Authority:
    """Section 7 in layers, and the strengths of section 5; without policies and actions in force."""
    def __init__(self, program_stream, entries, certificates):
        self.program_stream, self.entries = program_stream, entries
        self.all = [e for place in sorted(entries) for e in entries[place]]
        self.holders, self.directors, self.accepted, self.forks = {}, {}, {}, {}
        self.cards = defaultdict(set)       # keys by (card id, epoch)
        self.phones = set()                 # keys
        self.vouched = defaultdict(Vouched)  # by key
        self.ended = defaultdict(list)      # revocations by (card id, epoch), or by a phone's key
        self.receipts, self.denied, self.admitted = [], {}, set()
        for e in self.all:
            for *feed, seq in [e[:3]] * (len(entries[e[:3]]) > 1) + [e.said] * (e.kind == FORK_FOUND):
                self.lower(self.forks, tuple(feed), seq)
        for kind, epoch, _, said in sorted(certificates, key=lambda c: c[2]):
            if kind == 1 and self.directors.setdefault(epoch, said) is said:
                self.holders[said[1]] = Holder(DIRECTOR, said[0])
            elif kind == 2:
                self.lower(self.accepted, said[:2], said[2])
        admits = []
        for role in (DIRECTOR, INSTRUCTOR, COORDINATOR, CONTACT):
            layer = [e for e in self.all if e.device in self.holders and self.holders[e.device].role == role
                     and may_write(role, e.kind) and e.seq < min(self.good(e), self.forks.get(e[:2], ENDLESS))]
            self.take_grants(role, [e for e in layer if e.kind == GRANT])
            for e in (e for e in layer if e.kind == VOUCH):
                self.take_vouch(self.holders[e.device], e)
            self.receipts += [Receipted(e, device, e.stream, *rest, e.said[1])
                              for e in layer if e.kind == RECEIPT for device, *rest in e.said[0]]
            for e in (e for e in layer if e.kind == REVOKE):
                self.take_revocation(self.holders[e.device], e)
            admits += [e for e in layer if e.kind == ADMIT]
        for e in admits:
            target = self.holders.get(e.said[0][0])
            if target and (target.role, target.person) == (STUDENT, e.stream):
                self.admitted.add(e.said[0])
            else:
                self.deny(e, "it admits no student's entry")
    @staticmethod
    def lower(limits, feed, seq): limits[feed] = min(seq, limits.get(feed, ENDLESS))
    def good(self, e): return self.accepted.get(e[:2], 0 if (e.device, self.program_stream) in self.accepted else ENDLESS)
    def deny(self, e, why="its writer may not write that here"): self.denied[e[:4]] = "refused: " + why

    def take_grants(self, giver, grants):
        for e in sorted(grants, key=lambda e: (e.said.role, e.name)):
            if e.said.role == INSTRUCTOR and giver != DIRECTOR:
                self.deny(e)
                continue
            known = e.said.device in self.holders
            holder = self.holders.setdefault(e.said.device, Holder(e.said.role, e.said.person, e.said.scopes))
            if (holder.role, holder.person) != (e.said.role, e.said.person):
                self.deny(e)
                continue
            if known:
                holder.add_scopes(e.said.scopes)
            holder.givers.add(self.holders[e.device].person)
    def take_vouch(self, writer, e):
        if writer.role == CONTACT and not writer.has(e.said.site):
            self.deny(e, "out of its writer's scopes")
            return
        (self.phones if e.said.target == DEVICE else self.cards[e.said.card, e.said.epoch]).add(e.said.key)
        self.vouched[e.said.key].givers.add(writer.person)
        self.vouched[e.said.key].sites.add(e.said.site)
    def vouched_in_scope(self, writer, keys):
        return any(writer.person in self.vouched[key].givers or writer.shares(self.vouched[key].sites)
                   for key in keys if key in self.vouched)
    def take_revocation(self, writer, e):
        said, target = e.said, self.holders.get(e.said.device) if e.said.target == DEVICE else None
        if target and target.role <= writer.role:
            self.deny(e)
            return
        if writer.role == INSTRUCTOR:
            keys = self.cards.get((said.card, said.epoch), ()) if said.target == CARD else [said.device]
            theirs = target and (writer.person in target.givers or writer.shares(target.scopes or set()))
            if not (theirs or (target is None and self.vouched_in_scope(writer, keys))):
                self.deny(e, "out of its writer's scopes")
                return
        if said.target == CARD:
            self.ended[said.card, said.epoch].append(e)
            return
        # An instructor takes back neither what the same device receipted before, nor what is cited.
        kept = [r.seq + 1 for r in self.receipts if writer.role == INSTRUCTOR and r[1:3] == said[1:3]
                and (r.by[:4] == e.cites or (r.by[:2] == e[:2] and r.by.seq < e.seq))]
        self.lower(self.accepted, said[1:3], max([said.accepted] + kept))
        if said.stream == self.program_stream:
            self.ended[said.device].append(e)

    def delivered_before(self, e, revocation):
        """Whether a receipt of the revoking device, from before it, covers the attestation."""
        return e.seq < self.forks.get(e[:2], ENDLESS) and any(
            r[1:3] == e[:2] and r.seq >= e.seq and r.by.device == revocation.device and r.count <= revocation.seq
            and r.name in [held.name for held in self.entries.get(r[1:4], [])] for r in self.receipts)
    def signer_standing(self, e, signer):
        if signer.kind > CARD:
            return ""
        known = self.phones if signer.kind == DEVICE else self.cards.get((signer.card, signer.epoch), {signer.key})
        if signer.key not in known or (signer.kind == CARD and signer.key in self.holders):
            return "aside: nobody vouches for the signer"
        ended = self.ended.get(signer.key if signer.kind == DEVICE else (signer.card, signer.epoch), [])
        return "" if all(self.delivered_before(e, one) for one in ended) else "aside: the signer was revoked before"
    def standing(self, e):
        """Why it does not count; empty when it does."""
        holder = self.holders.get(e.device)
        if holder is None or e.kind not in KINDS:
            return "aside: nobody with authority granted this device anything" if holder is None else "aside: a kind of a newer version"
        if not may_write(holder.role, e.kind) or (holder.role == STUDENT and holder.person != e.stream):
            return "refused: its writer may not write that here"
        if e[:4] in self.denied:
            return self.denied[e[:4]]
        if e[:4] in self.admitted:
            return ""
        if e.seq >= min(self.good(e), self.forks.get(e[:2], ENDLESS)):
            return "aside: revoked" if e.seq >= self.good(e) else "aside: past a fork"
        return self.signer_standing(e, e.said[2]) if e.kind == ATTESTATION else ""
