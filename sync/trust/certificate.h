#pragma once

#include "sync/journal/feed_id.h"
#include "sync/journal/reason.h"
#include "sync/keys/sign.h"

#include <string>
#include <variant>
#include <vector>

namespace peelpack::trust {

inline constexpr std::size_t mostCertificateBytes = 4096;

/// The program key makes a device the director's.
struct DirectorCertificate {
    static constexpr std::uint8_t type = 1;
    keys::Id person;
    keys::VerifyKey device;
    keys::SealKey seal;
    std::string name;
    bool operator==(const DirectorCertificate&) const = default;
};

/// The program key ends a director's feed.
struct DirectorRevoked {
    static constexpr std::uint8_t type = 2;
    journal::FeedId feed;
    std::uint32_t accepted = 0; ///< entries that stay good
    bool operator==(const DirectorRevoked&) const = default;
};

/// The program key confirms a completion, for outsiders that do not read journals.
struct Completion {
    static constexpr std::uint8_t type = 3;
    keys::Id student;
    std::string requirementSet;
    keys::Hash setDigest;
    journal::Position head;
    journal::Time time;
    bool operator==(const Completion&) const = default;
};

using CertificateContent = std::variant<DirectorCertificate, DirectorRevoked, Completion>;

/// A certificate whose signature was verified (FORMAT.md section 6).
struct Certificate {
    std::uint32_t epoch = 0; ///< counts directors
    CertificateContent content;
    keys::Hash hash;
    keys::Bytes bytes; ///< as they were signed, with the signature
};

/// A reason when a reader would refuse it.
journal::Checked<keys::Bytes> writeCertificate(const keys::SigningKey& programKey, std::uint32_t epoch,
                                               const CertificateContent& content);
/// From bytes that may be hostile. Reasons: form, BadSignature.
journal::Checked<Certificate> readCertificate(const keys::VerifyKey& program, keys::ByteView bytes);

/// Of the director certificates of each epoch the one that holds: the smallest hash.
std::vector<const Certificate*> directorsThatHold(const std::vector<Certificate>& certificates);

/// Director certificates that do not hold, because another of the same epoch does: evidence that the program key was
/// used twice.
std::vector<const Certificate*> contradicted(const std::vector<Certificate>& certificates);

} // namespace peelpack::trust
