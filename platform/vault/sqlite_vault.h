#pragma once

#include "platform/vault/entry_table.h"
#include "platform/vault/install_mark.h"
#include "platform/vault/sealer.h"
#include "platform/vault/side_tables.h"
#include "platform/vault/slot.h"
#include "platform/vault/vault.h"

#include <memory>

namespace peelpack::vault {

class SqliteVault;

struct MadeVault {
    std::unique_ptr<SqliteVault> vault;
    keys::Secret code; ///< 16 bytes: shown once as keys::codeText, and kept nowhere
};

/// A vault in an SQLite file, each row sealed on its own under a random data key that the passphrase or PIN with the
/// install mark opens, or the vault code. Nothing but random bytes, numbers of rows and their sizes is in plain.
class SqliteVault final : public Vault {
public:
    /// A new vault with a new install mark; the file appears complete or not at all. Exists, WeakSecret, CannotWrite.
    static Result<MadeVault> make(const std::string& file, SecretKind kind, keys::ByteView secret, MarkStore& marks,
                                  keys::RandomSource& random);
    /// Opens with passphrase or PIN; a wrong try is written down before it is known to be wrong. `now`: seconds since
    /// 1970, UTC. Every Fault but Exists and WeakSecret.
    static Result<std::unique_ptr<SqliteVault>> open(const std::string& file, keys::ByteView secret, MarkStore& marks,
                                                     keys::RandomSource& random, std::int64_t now);
    /// Opens with the 16 bytes of the vault code, also without the install mark.
    static Result<std::unique_ptr<SqliteVault>> openWithCode(const std::string& file, keys::ByteView code,
                                                             MarkStore& marks, keys::RandomSource& random);

    [[nodiscard]] const keys::Id& id() const override { return m_sealer.vault(); }
    Result<Contents> contents() override;
    Result<bool> save(const Change& change) override;
    Result<const keys::DeviceKey*> device() override;
    Result<bool> renewDevice() override;

    /// Whether this is the passphrase or PIN, by the same rules and counts as open().
    Result<bool> check(keys::ByteView secret, std::int64_t now);
    /// Whether it is a passphrase or a PIN that opens it.
    [[nodiscard]] Result<SecretKind> secretKind() const;
    /// Wraps the data key anew; rows stay as they are. Wrong tries are forgotten. A missing install mark is made.
    Result<bool> changeSecret(SecretKind kind, keys::ByteView secret);
    /// A new vault code; the old one opens nothing any more.
    Result<keys::Secret> changeCode();

private:
    SqliteVault(std::string file, std::unique_ptr<Database> database, Sealer sealer, std::optional<keys::Secret> mark,
                MarkStore& marks, keys::RandomSource& random);
    static Result<std::unique_ptr<SqliteVault>> opened(const std::string& file, std::unique_ptr<Database> database,
                                                       const keys::Id& vault, keys::Secret dataKey, MarkStore& marks,
                                                       keys::RandomSource& random);

    Result<bool> writeDevice(const keys::DeviceSeeds& seeds);
    /// One that is there is kept, also on a copy: the original beside it lives on it too.
    Result<bool> makeMissingMark();

    std::string m_file;
    std::unique_ptr<Database> m_database;
    Sealer m_sealer;
    std::optional<keys::Secret> m_mark; ///< empty: this is a copy
    MarkStore& m_marks;
    keys::RandomSource& m_random;
    EntryTable m_entries;
    SideTables m_side;
    std::optional<keys::DeviceKey> m_device;
};

} // namespace peelpack::vault
