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

base::Sentence sentence(Reason reason)
{
    switch (reason) {
    case Reason::None:
        return {};
    case Reason::TooLarge:
        return base::said("Journal", "This is larger than the format allows.");
    case Reason::TooShort:
        return base::said("Journal", "This ends before it is complete; get it again.");
    case Reason::LeftOver:
        return base::said("Journal", "There are bytes after the end; get it again.");
    case Reason::UnknownVersion:
        return base::said("Journal", "This was made by a newer version of Peelpack; update this one.");
    case Reason::ByteOrder:
        return base::said("Journal", "The contents are not in the byte order of the format.");
    case Reason::BadBoolean:
        return base::said("Journal", "A yes-or-no value is neither yes nor no.");
    case Reason::BadNumber:
        return base::said("Journal", "A number is outside what the format allows.");
    case Reason::BadText:
        return base::said("Journal", "A text holds bytes or control characters that no text has.");
    case Reason::TextTooLong:
        return base::said("Journal", "A text is longer than the format allows.");
    case Reason::TextMissing:
        return base::said("Journal", "A text that must be given, such as a reason, is empty.");
    case Reason::TooMany:
        return base::said("Journal", "A list claims more items than the format or the file has room for.");
    case Reason::TooFew:
        return base::said("Journal", "A list has fewer items than it must have.");
    case Reason::TooDeep:
        return base::said("Journal", "The contents are nested too deep.");
    case Reason::BadOrder:
        return base::said("Journal", "Items are not in order, or one is there twice.");
    case Reason::BadCombination:
        return base::said("Journal", "Two values do not go together.");
    case Reason::WrongStream:
        return base::said("Journal", "This kind of entry does not belong in this stream.");
    case Reason::NotOurs:
        return base::said("Journal", "This is not a Peelpack file of this sort.");
    case Reason::BadDigest:
        return base::said("Journal", "The file was damaged on its way; get it again.");
    case Reason::PredecessorMissing:
        return base::said("Journal", "Earlier entries are missing; this waits until they come.");
    case Reason::BadSignature:
        return base::said("Journal", "The signature does not fit: this was altered, or signed by another.");
    case Reason::UnusableKey:
        return base::said("Journal", "A public key in this cannot be used.");
    case Reason::WrongProgram:
        return base::said("Journal", "This belongs to another program.");
    case Reason::WrongStudent:
        return base::said("Journal", "This attestation was made for another student.");
    case Reason::BadSigner:
        return base::said("Journal", "The attestation is not signed by who it names.");
    case Reason::BadEvidence:
        return base::said("Journal", "The evidence of a split record does not hold.");
    case Reason::RecordForked:
        return base::said("Journal", "This phone's record split here, often after a restore.");
    case Reason::BranchNotKept:
        return base::said("Journal", "This record split so often that this branch is not kept; the evidence is.");
    case Reason::NoGrant:
        return base::said("Journal", "Nobody in the program has granted this device anything yet.");
    case Reason::NewerKind:
        return base::said("Journal", "Made by a newer Peelpack; kept and passed on.");
    case Reason::RoleMayNotWrite:
        return base::said("Journal", "Who wrote this may not write this kind of entry.");
    case Reason::NotTheirStudent:
        return base::said("Journal", "This device writes under another student's id.");
    case Reason::OutOfScope:
        return base::said("Journal", "This concerns a class or site that its writer has no say in.");
    case Reason::Revoked:
        return base::said("Journal", "This came after the device was revoked.");
    case Reason::PastFork:
        return base::said("Journal", "This comes after the place where the record split.");
    case Reason::CardRevoked:
        return base::said("Journal", "The signing card was revoked before this was delivered.");
    case Reason::UnknownSigner:
        return base::said("Journal", "Nobody has vouched for who signed this.");
    case Reason::NotAdmissible:
        return base::said("Journal", "Only an entry of a student that is set aside can be admitted.");
    case Reason::NotForThisDevice:
        return base::said("Journal", "This parcel is not for this device.");
    case Reason::NotCommitted:
        return base::said("Journal", "This parcel's key does not fit its commitment; it was damaged or tampered with.");
    case Reason::HeaderDamaged:
        return base::said("Journal", "The head of this parcel was altered; get it again.");
    case Reason::ChunkDamaged:
        return base::said("Journal", "The contents of this parcel were altered or cut off; get it again.");
    case Reason::TooManyFeeds:
        return base::said("Journal", "This brings more unknown devices than a program has.");
    case Reason::TooManyEntries:
        return base::said("Journal", "This brings more entries than one parcel may.");
    }
    return {};
}

} // namespace peelpack::journal
