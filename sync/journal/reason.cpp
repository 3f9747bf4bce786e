#include "sync/journal/reason.h"

namespace peelpack::journal {

std::string_view word(Verdict verdict)
{
    switch (verdict) {
    case Verdict::Taken:
        return "taken";
    case Verdict::Known:
        return "known";
    case Verdict::Gap:
        return "gap";
    case Verdict::Aside:
        return "aside";
    case Verdict::Refused:
        return "refused";
    case Verdict::Forked:
        return "forked";
    }
    return {};
}

std::string_view sentence(Reason reason)
{
    switch (reason) {
    case Reason::None:
        return {};
    case Reason::TooLarge:
        return "This is larger than the format allows.";
    case Reason::TooShort:
        return "This ends before it is complete; get it again.";
    case Reason::LeftOver:
        return "There are bytes after the end; get it again.";
    case Reason::UnknownVersion:
        return "This was made by a newer version of Peelpack; update this one.";
    case Reason::ByteOrder:
        return "The contents are not in the byte order of the format.";
    case Reason::BadBoolean:
        return "A yes-or-no value is neither yes nor no.";
    case Reason::BadNumber:
        return "A number is outside what the format allows.";
    case Reason::BadText:
        return "A text holds bytes or control characters that no text has.";
    case Reason::TextTooLong:
        return "A text is longer than the format allows.";
    case Reason::TextMissing:
        return "A text that must be given, such as a reason, is empty.";
    case Reason::TooMany:
        return "A list claims more items than the format or the file has room for.";
    case Reason::TooFew:
        return "A list has fewer items than it must have.";
    case Reason::TooDeep:
        return "The contents are nested too deep.";
    case Reason::BadOrder:
        return "Items are not in order, or one is there twice.";
    case Reason::BadCombination:
        return "Two values do not go together.";
    case Reason::WrongStream:
        return "This kind of entry does not belong in this stream.";
    case Reason::NotOurs:
        return "This is not a Peelpack file of this sort.";
    case Reason::BadDigest:
        return "The file was damaged on its way; get it again.";
    case Reason::PredecessorMissing:
        return "Earlier entries are missing; this waits until they come.";
    case Reason::BadSignature:
        return "The signature does not fit: this was altered, or signed by another.";
    case Reason::UnusableKey:
        return "A public key in this cannot be used.";
    case Reason::WrongProgram:
        return "This belongs to another program.";
    case Reason::WrongStudent:
        return "This attestation was made for another student.";
    case Reason::BadSigner:
        return "The attestation is not signed by who it names.";
    case Reason::BadEvidence:
        return "The evidence of a split record does not hold.";
    case Reason::RecordForked:
        return "This phone's record split here, often after a restore.";
    case Reason::BranchNotKept:
        return "This record split so often that this branch is not kept; the evidence is.";
    case Reason::NoGrant:
        return "Nobody in the program has granted this device anything yet.";
    case Reason::NewerKind:
        return "Made by a newer Peelpack; kept and passed on.";
    case Reason::RoleMayNotWrite:
        return "Who wrote this may not write this kind of entry.";
    case Reason::NotTheirStudent:
        return "This device writes under another student's id.";
    case Reason::OutOfScope:
        return "This concerns a class or site that its writer has no say in.";
    case Reason::Revoked:
        return "This came after the device was revoked.";
    case Reason::PastFork:
        return "This comes after the place where the record split.";
    case Reason::CardRevoked:
        return "The signing card was revoked before this was delivered.";
    case Reason::UnknownSigner:
        return "Nobody has vouched for who signed this.";
    case Reason::NotAdmissible:
        return "Only an entry of a student that is set aside can be admitted.";
    case Reason::NotForThisDevice:
        return "This parcel is not for this device.";
    case Reason::NotCommitted:
        return "This parcel's key does not fit its commitment; it was damaged or tampered with.";
    case Reason::HeaderDamaged:
        return "The head of this parcel was altered; get it again.";
    case Reason::ChunkDamaged:
        return "The contents of this parcel were altered or cut off; get it again.";
    case Reason::TooManyFeeds:
        return "This brings more unknown devices than a program has.";
    case Reason::TooManyEntries:
        return "This brings more entries than one parcel may.";
    }
    return {};
}

} // namespace peelpack::journal
