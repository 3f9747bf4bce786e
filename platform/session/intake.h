#pragma once

#include "platform/session/session.h"

namespace peelpack::session {

/// What became of one file that was offered.
struct FileOutcome {
    std::string name; ///< as the caller named it
    bool used = false;
    std::string whyNot; ///< a sentence when it was not used
    std::size_t taken = 0;
    std::size_t known = 0;
    bool waits = false; ///< something before it is missing: it is kept, and tried again after every take-in
    std::vector<merge::Finding> findings;
};

/// What came of a take-in, for a plain report.
struct IntakeReport {
    std::vector<FileOutcome> files;
    std::size_t taken = 0;                                            ///< new entries of all files together
    std::size_t certificates = 0;                                     ///< new
    std::size_t receipts = 0;                                         ///< signed and kept in the same transaction
    std::vector<journal::ForkEvidence> forks;                         ///< found now, own record included
    std::vector<merge::Contradiction> contradictions;                 ///< receipts that what was shown contradicts
    std::vector<std::pair<keys::Id, journal::Reason>> withoutReceipt; ///< streams for which none could be signed
    bool ownRecordSplit = false; ///< from now on this installation signs nothing more with its keys
    bool saved = false;          ///< false: nothing was new, and nothing was written
};

/// A file that is offered: a parcel, or a volume of an export.
struct OfferedFile {
    std::string name;
    keys::Bytes bytes;
};

/// Takes files in: opens parcels, checks everything in them, keeps what is new together with the receipts for it in one
/// transaction. A file that cannot be used is named and changes nothing. An error: nothing was saved.
base::Result<IntakeReport> takeIn(Session& session, std::vector<OfferedFile> files);

} // namespace peelpack::session
