#pragma once

#include "platform/vault/vault_error.h"
#include "sync/journal/feed_id.h"
#include "sync/keys/device_key.h"
#include "sync/keys/shared_bytes.h"

#include <cstdint>
#include <functional>
#include <map>
#include <optional>
#include <string>
#include <vector>

namespace peelpack::vault {

/// One entry and where it stands.
struct PlacedEntry {
    journal::FeedId feed;
    std::uint32_t seq = 0;
    keys::SharedBytes bytes;
    bool operator==(const PlacedEntry&) const = default;
};

/// What is kept in one transaction: all of it or nothing. Entries and certificates are never changed or removed.
struct Change {
    std::vector<keys::Bytes> certificates;
    std::vector<PlacedEntry> entries; ///< each after what it builds on
    /// Small values of this device by name; an empty value removes the name.
    std::map<std::string, std::optional<keys::Bytes>> notes;
    std::vector<keys::Bytes> hold;      ///< volumes that wait for what comes before them
    std::vector<std::uint64_t> release; ///< waiting volumes that are no longer needed

    [[nodiscard]] bool empty() const
    {
        return certificates.empty() && entries.empty() && notes.empty() && hold.empty() && release.empty();
    }
};

/// A part of a vault that does not open. What is around it is read all the same.
struct Damage {
    std::string place; ///< "row 17 (entry 5 of feed 2)"; names no person
    bool operator==(const Damage&) const = default;
};

/// A volume that waits for what comes before it.
struct HeldVolume {
    std::uint64_t number = 0;
    keys::Bytes bytes;
};

/// Everything that a vault holds, in the order in which it came.
struct Contents {
    std::vector<keys::Bytes> certificates;
    std::vector<PlacedEntry> entries;
    std::map<std::string, keys::Bytes> notes;
    std::vector<HeldVolume> held;
    std::vector<Damage> damage; ///< empty: every part was there and opened
};

/// How many volumes wait at most, and their bytes together; of more the oldest is let go.
inline constexpr std::size_t mostHeld = 16;
inline constexpr std::size_t mostHeldBytes = std::size_t{64} * 1024 * 1024;

/// The sealed store of one installation, unlocked. One thread at a time.
class Vault {
public:
    Vault() = default;
    Vault(const Vault&) = delete;
    Vault& operator=(const Vault&) = delete;
    Vault(Vault&&) = delete;
    Vault& operator=(Vault&&) = delete;
    virtual ~Vault() = default;

    [[nodiscard]] virtual const keys::Id& id() const = 0;
    /// Reads everything. Parts that do not open are named in `damage`.
    virtual Result<Contents> contents() = 0;
    /// All or nothing. When it answers without an error, everything was read back and opened from where it is kept.
    virtual Result<bool> save(const Change& change) = 0;

    /// The keys of this installation, wrapped under the install mark and never in any backup. MarkMissing on a copy.
    virtual Result<const keys::DeviceKey*> device() = 0;
    /// Makes new keys for this installation: what was written with the old ones can only be continued in a new feed. A
    /// missing install mark is made.
    virtual Result<bool> renewDevice() = 0;
};

} // namespace peelpack::vault
