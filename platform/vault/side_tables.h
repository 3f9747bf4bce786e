#pragma once

#include "platform/vault/database.h"
#include "platform/vault/sealer.h"
#include "platform/vault/vault.h"

namespace peelpack::vault {

/// The rows of a vault's file that may change and go: notes of this device, its wrapped keys, volumes that wait. A
/// sealed list of them says what has to be there, so that a row that went missing shows. Whatever is written next takes
/// what is there then as right.
class SideTables {
public:
    SideTables(const Database& database, const Sealer& sealer) : m_database(database), m_sealer(sealer) {}

    /// What opens goes to `contents`, the rest to its `damage`.
    Result<bool> read(Contents& contents) const;
    /// The wrapped keys of this installation, which are not among the contents; empty when not there or damaged.
    [[nodiscard]] Result<std::optional<keys::Bytes>> device() const;
    /// Within a transaction.
    Result<bool> write(const Change& change) const;
    /// After the commit: reads from the file what write() wrote and opens it.
    [[nodiscard]] Result<bool> readBack(const Change& change) const;
    /// Within a transaction.
    Result<bool> writeDevice(keys::ByteView wrapped) const;

private:
    Result<bool> readNotes(Contents& contents) const;
    Result<bool> readHeld(Contents& contents) const;
    Result<bool> writeNotes(const Change& change) const;
    Result<bool> writeHeld(const Change& change) const;
    [[nodiscard]] Result<std::optional<keys::Bytes>> row(const std::string& key) const;
    [[nodiscard]] Result<bool> writeRow(const std::string& key, keys::ByteView plain) const;
    /// Over all notes, and the numbers and sizes of what waits.
    [[nodiscard]] Result<keys::Bytes> digest() const;
    [[nodiscard]] Result<bool> writeList() const;

    const Database& m_database;
    const Sealer& m_sealer;
};

} // namespace peelpack::vault
