#pragma once

#include "platform/vault/vault.h"
#include "sync/keys/device_key.h"
#include "sync/merge/ledger.h"

#include <vector>

namespace peelpack::bench {

/// Randomness that is the same in every run.
class CountedRandom final : public keys::RandomSource {
public:
    void fill(std::span<std::uint8_t> bytes) override;

private:
    std::uint64_t m_count = 0;
};

/// An invented program of usual size: each sheet opened, attested by card, and logged; a receipt for every ten sheets.
struct BenchProgram {
    explicit BenchProgram(const keys::VerifyKey& program) : ledger(program) {}

    merge::Ledger ledger;
    std::vector<vault::PlacedEntry> entries; ///< in the order in which they were written
    std::vector<keys::Id> students;
};

/// `taker` is granted the role of an instructor and writes nothing.
BenchProgram makeProgram(std::size_t students, std::size_t sheets, const keys::DeviceKey& taker);

/// One signature to be verified, with what it signs.
struct Signed {
    keys::VerifyKey key;
    keys::Bytes message;
    keys::Signature signature;
};
/// Every signature that somebody verifies who takes all of it in: entries, attestations, heads.
std::vector<Signed> signaturesOf(const merge::Ledger& ledger);

/// A sheet and the attestation of it by card, for the feed of `device`.
struct SheetAndAttestation {
    journal::SheetOpened opened;
    journal::Attestation attestation;
};
SheetAndAttestation signedSheet(const keys::VerifyKey& program, const keys::Id& student, std::size_t number,
                                keys::RandomSource& random);

/// What a vault keeps of a program: certificates and entries in transactions of `each` entries.
std::vector<vault::Change> changesOf(const BenchProgram& program, std::size_t each);

} // namespace peelpack::bench
