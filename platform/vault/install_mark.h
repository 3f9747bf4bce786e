#pragma once

#include "platform/vault/vault_error.h"
#include "sync/keys/bytes.h"
#include "sync/keys/random.h"
#include "sync/keys/secret.h"

#include <optional>
#include <string>

namespace peelpack::vault {

/// Where the install mark is kept: 32 bytes that belong to one vault on one installation, in a place that no backup
/// carries along. A phone's keystore is one, a folder outside the vault another. Without its mark a vault opens with
/// its code only, and cannot sign.
class MarkStore {
public:
    static constexpr std::size_t markBytes = 32;

    MarkStore() = default;
    MarkStore(const MarkStore&) = delete;
    MarkStore& operator=(const MarkStore&) = delete;
    MarkStore(MarkStore&&) = delete;
    MarkStore& operator=(MarkStore&&) = delete;
    virtual ~MarkStore() = default;

    /// The mark of the vault in this file; empty when there is none here, or a damaged one. CannotRead.
    virtual Result<std::optional<keys::Secret>> find(const keys::Id& vault, const std::string& file) = 0;
    /// A new mark, which replaces one that is there.
    virtual Result<keys::Secret> make(const keys::Id& vault, const std::string& file, keys::RandomSource& random) = 0;
    /// True when a PIN opens nothing outside this device (a hardware keystore); else a passphrase is asked for.
    [[nodiscard]] virtual bool guardsPin() const { return false; }
};

/// Marks as files of a folder, each bound to the machine id and to the inode and generation of the vault's file: a
/// copy of the vault, even beside the original or in its place, has no mark.
class FolderMarkStore final : public MarkStore {
public:
    explicit FolderMarkStore(std::string folder) : m_folder(std::move(folder)) {}

    /// The folder of this user: peelpack/marks in XDG_STATE_HOME, or in ~/.local/state.
    static std::string usualFolder();

    Result<std::optional<keys::Secret>> find(const keys::Id& vault, const std::string& file) override;
    Result<keys::Secret> make(const keys::Id& vault, const std::string& file, keys::RandomSource& random) override;
    /// Takes away the mark of a vault that is no more; without it there, nothing.
    void remove(const keys::Id& vault);

private:
    [[nodiscard]] std::string path(const keys::Id& vault) const;

    std::string m_folder;
};

} // namespace peelpack::vault
