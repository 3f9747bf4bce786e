#pragma once

#include "platform/session/intake.h"
#include "sync/carry/collector.h"

#include <string>
#include <vector>

namespace peelpack::cli {

/// What became of the pictures that were written.
struct WrittenCodes {
    std::string folder;
    std::size_t codes = 0; ///< pictures
    std::size_t plain = 0; ///< of them enough to read the parcel
};

/// A parcel as pictures code-00001.png, ... of its running codes (FORMAT.md section 9) in a folder that is made where
/// there is none. `spare`: codes besides the plain ones. BadValue: more than goes by light. CannotWrite.
base::Result<WrittenCodes> writeCodes(const std::string& folder, const keys::Bytes& parcel, std::size_t spare);

/// By its name.
bool isPicture(const std::string& file);

/// What pictures of codes gave, in the order of the files.
struct ReadCodes {
    std::vector<session::OfferedFile> parcels; ///< whole ones, named after the picture that was the last needed
    std::vector<carry::Progress> unfinished;   ///< of which codes are missing
    std::vector<std::string> without;          ///< pictures without a readable code of a parcel
    std::size_t startedAnew = 0;               ///< how often a code did not go with those before
};
/// CannotRead: a file cannot be read.
base::Result<ReadCodes> readCodes(const std::vector<std::string>& pictures);

} // namespace peelpack::cli
