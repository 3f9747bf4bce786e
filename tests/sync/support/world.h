#pragma once

#include "sync/journal/decoded.h"
#include "sync/journal/statement.h"
#include "sync/keys/card.h"
#include "sync/keys/code.h"
#include "sync/keys/device_key.h"
#include "sync/merge/ledger.h"
#include "sync/parcel/parcel.h"
#include "sync/parcel/volume.h"

#include <string>
#include <vector>

namespace peelpack::test {

/// Randomness that a seed fixes: block i is BLAKE2b(seed, i).
class SeededRandom final : public keys::RandomSource {
public:
    explicit SeededRandom(std::uint8_t seed) : m_seed(seed) {}
    void fill(std::span<std::uint8_t> bytes) override;

private:
    std::uint8_t m_seed;
    std::uint64_t m_block = 0;
};

/// 16 equal bytes.
keys::Id idOf(std::uint8_t byte);
/// A device key from seeds of equal bytes.
keys::DeviceKey deviceOf(std::uint8_t byte);
keys::SigningKey signerOf(std::uint8_t byte);

/// 2026-03-01 12:00 UTC, and so many minutes.
journal::Time minute(std::int64_t minutes);

/// One invented program: the program key, and what every device wrote, held in one place so that tests can hand it on
/// as they like.
class World {
public:
    World();

    keys::SigningKey programKey;
    keys::VerifyKey program;
    keys::Id programStream;
    keys::DeviceKey director = deviceOf(0x11);
    keys::DeviceKey instructor = deviceOf(0x21);
    keys::DeviceKey secondInstructor = deviceOf(0x25);
    keys::DeviceKey student = deviceOf(0x31);
    keys::DeviceKey otherStudent = deviceOf(0x35);
    keys::SigningKey card = signerOf(0x44);
    keys::Id cardId = idOf(0x42);
    keys::Id studentId = idOf(0x30);
    keys::Id otherStudentId = idOf(0x34);
    keys::Id instructorId = idOf(0x20);
    keys::Id secondInstructorId = idOf(0x24);
    keys::Id preceptorId = idOf(0x40);

    /// What everybody together wrote.
    merge::Ledger all;

    /// Appends to a feed of `all`; fails the test when the entry is not taken.
    journal::Position append(const keys::DeviceKey& device, const keys::Id& stream, const journal::Payload& payload);
    journal::Position append(const keys::DeviceKey& device, const keys::Id& stream, const journal::Payload& payload,
                             const journal::EntryContext& context);
    void certify(std::uint32_t epoch, const trust::CertificateContent& content);

    /// Director, policy, two instructors, a vouched card, two students.
    void setUp();

    [[nodiscard]] journal::Grant grant(const keys::Id& person, journal::Role role, const keys::DeviceKey& device) const;
    [[nodiscard]] journal::Statement statement(const keys::Id& student, const keys::Id& sheet) const;
    /// The sheet opened, attested by the card, and logged.
    journal::Position sheet(const keys::DeviceKey& device, const keys::Id& student, const keys::Id& sheet);
    /// The instructor device's receipt for a stream, as merge::receiptFor says; nothing when there is nothing new.
    std::optional<journal::Position> receipt(const keys::DeviceKey& device, const keys::Id& stream);

    [[nodiscard]] journal::FeedId feedOf(const keys::DeviceKey& device, const keys::Id& stream) const
    {
        return {device.signing.verifyKey(), stream};
    }

private:
    std::int64_t m_minute = 0;
};

/// Offers one run to a ledger; the batch is lent only for the call. Fails the test when the batch is refused.
merge::Taken offer(const merge::Ledger& ledger, const merge::Run& run);
/// An entry at a place, signed by a device; fails the test when it cannot be written.
journal::SignedEntry write(const World& world, const journal::Place& place, const journal::Payload& payload,
                           const keys::DeviceKey& device, std::int64_t minutes = 900);

journal::Draft draft();
journal::Act act(const keys::Id& sheet, const keys::Hash& standsOn, std::string reason = {});

/// A ledger's single volume; fails the test when it needs more.
keys::Bytes volumeOf(const merge::Ledger& ledger);
keys::Bytes volumeOf(const keys::VerifyKey& program, const merge::Batch& batch);

/// A new ledger from one volume; fails the test when the volume cannot be used.
merge::Taken fromVolume(const keys::VerifyKey& program, keys::ByteView volume);

/// The verdict of an entry of the ledger by its position.
trust::Judgment judgment(const merge::Ledger& ledger, const journal::Position& position);

/// The trunk of a ledger's feed as a run, from seq on.
merge::Run runOf(const merge::Ledger& ledger, const journal::FeedId& feed, std::uint32_t from = 0);

} // namespace peelpack::test
