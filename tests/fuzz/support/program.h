#pragma once

#include "sync/journal/entry.h"
#include "sync/journal/statement.h"
#include "sync/keys/device_key.h"
#include "sync/merge/ledger.h"

#include <span>
#include <vector>

/// What the fuzz targets share: one invented program whose keys never change, so that an input means the same in every
/// run, and the way a broken property ends it.
namespace peelpack::fuzz {

/// Ends the run with the property's name, so that the input is kept.
void require(bool holds, const char* property);

/// 16 equal bytes.
keys::Id idOf(std::uint8_t byte);

/// The people and devices of FORMAT.md section 12, and a ledger in which they have written a little.
struct Program {
    Program();

    keys::SigningKey key;
    keys::VerifyKey id;
    keys::Id stream;
    keys::DeviceKey director;
    keys::DeviceKey instructor;
    keys::DeviceKey student;
    keys::SigningKey card;
    keys::SigningKey preceptor; ///< signs on a phone of their own
    keys::Id directorId = idOf(0x10);
    keys::Id instructorId = idOf(0x20);
    keys::Id studentId = idOf(0x30);
    keys::Id preceptorId = idOf(0x40);
    keys::Id cardId = idOf(0x42);
    keys::Id sheet = idOf(0x51);

    /// A director, an instructor, a student, a vouched card, a sheet with its attestation, a receipt.
    merge::Ledger ledger;

    /// The seed of one of the three devices, empty for a stranger's.
    [[nodiscard]] keys::Bytes seedOf(const keys::VerifyKey& device) const;
    [[nodiscard]] journal::FeedId studentFeed() const { return {student.signing.verifyKey(), studentId}; }
    [[nodiscard]] journal::Grant grant(const keys::Id& person, journal::Role role, const keys::DeviceKey& device) const;
    [[nodiscard]] journal::Vouch vouch() const;
    [[nodiscard]] journal::Draft draft() const;
    [[nodiscard]] journal::Statement statement(journal::SignerKind kind) const;
    /// One payload of every kind that there is.
    [[nodiscard]] std::vector<journal::Payload> payloads() const;

private:
    void append(const keys::DeviceKey& device, const keys::Id& in, const journal::Payload& payload);
};

const Program& program();

/// Every kind that this version knows.
std::span<const std::uint16_t> knownKinds();
std::uint16_t kindOf(const journal::Payload& payload);

/// The same bytes from what they were read as, or it ends the run.
void requireSameBytes(const journal::Payload& payload, keys::ByteView bytes);

} // namespace peelpack::fuzz
