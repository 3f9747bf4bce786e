#pragma once

#include "platform/vault/database.h"
#include "platform/vault/sealer.h"
#include "platform/vault/vault.h"

namespace peelpack::vault {

/// The note that holds this installation's wrapped keys; not among the contents.
inline constexpr const char* deviceNote = "device";

/// The rows of a vault's file that may change and go: notes of this device, volumes that wait.
class SideTables {
public:
    SideTables(const Database& database, const Sealer& sealer) : m_database(database), m_sealer(sealer) {}

    /// What opens goes to `contents`, the rest to its `damage`.
    Result<bool> readNotes(Contents& contents) const;
    Result<bool> readHeld(Contents& contents) const;
    /// One note; empty when it is not there or damaged.
    [[nodiscard]] Result<std::optional<keys::Bytes>> note(const std::string& name) const;
    /// Within a transaction.
    Result<bool> writeNotes(const Change& change) const;
    Result<bool> writeHeld(const Change& change) const;

private:
    const Database& m_database;
    const Sealer& m_sealer;
};

} // namespace peelpack::vault
