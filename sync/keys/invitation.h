#pragma once

#include "core/base/result.h"
#include "sync/keys/device_key.h"

#include <string>

namespace peelpack::keys {

/// What an inviter shows to somebody who is to join (FORMAT.md section 10). One use.
struct Invitation {
    static constexpr std::size_t codeBytes = 141;
    static constexpr std::size_t secretBytes = 16;

    VerifyKey program;
    VerifyKey inviterDevice;
    SealKey inviterSeal;
    Id person;
    std::uint8_t role = 0; ///< as in a grant, 1 to 4
    Secret secret;
    std::int64_t expiry = 0; ///< seconds since 1970, UTC

    /// BadInput for anything that is not exactly an invitation.
    static base::Result<Invitation> fromCode(ByteView code);
    [[nodiscard]] Secret code() const;
};

/// What comes back: the new device's public keys, proven to come from who had the invitation.
struct InvitationReply {
    static constexpr std::size_t codeBytes = 180;

    Id person;
    VerifyKey device;
    SealKey seal;
    Hash mac;
    Signature signature;

    /// BadInput for anything that is not exactly a reply.
    static base::Result<InvitationReply> fromCode(ByteView code);
    [[nodiscard]] Bytes code() const;
};

InvitationReply answer(const Invitation& invitation, const DeviceKey& device);

/// True when the reply answers this invitation, now. BadValue says why not: expired, another person, wrong secret,
/// wrong signature. `now` is seconds since 1970, UTC.
base::Result<bool> check(const Invitation& invitation, const InvitationReply& reply, std::int64_t now);

/// The six digits that both people compare by eye.
std::string comparisonDigits(const Invitation& invitation, const InvitationReply& reply);

} // namespace peelpack::keys
