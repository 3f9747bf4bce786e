#pragma once

#include "tests/platform/support/vault_place.h"

#include <vector>

namespace peelpack::test {

/// A program in which much was written: `sheets` sheets of one student, each opened, attested and logged, a receipt
/// after every fifth.
World busyWorld(std::size_t sheets);

/// Where a row of entries lies.
struct RowPlace {
    std::uint64_t number = 0;
    std::string words; ///< as damage to it is named
    keys::Bytes sealed;
};

/// A closed vault with the entries of a busy world, a few notes and a waiting volume. Copies pass for the original.
class FilledVault {
public:
    explicit FilledVault(std::size_t sheets);

    TemporaryFolder folder;
    std::string file = (folder.path() / "v.peelvault").string();
    FixedMarks marks;
    SeededRandom random{31};
    keys::Secret code;
    vault::Contents contents; ///< what is in it
    keys::VerifyKey device;
    keys::Bytes bytes; ///< of the file

    /// From the file as it is now.
    [[nodiscard]] vault::Result<std::unique_ptr<vault::SqliteVault>> tryOpen();
    /// Puts the file back as it was.
    void restore() const;
    [[nodiscard]] std::vector<RowPlace> rows() const;
};

} // namespace peelpack::test
