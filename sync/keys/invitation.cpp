#include "sync/keys/invitation.h"

#include "sync/keys/hash.h"
#include "sync/keys/little_endian.h"

namespace peelpack::keys {
namespace {

constexpr std::array<std::uint8_t, 4> invitationMark{'P', 'P', 'I', 1};
constexpr std::array<std::uint8_t, 4> replyMark{'P', 'P', 'R', 1};
constexpr std::uint8_t lastRole = 4;

Hash replyMac(const Invitation& invitation, const VerifyKey& device, const SealKey& seal)
{
    const std::array<std::uint8_t, 1> role{invitation.role};
    return authenticator("peelpack.reply.1",
                         {invitation.program.view(), invitation.inviterDevice.view(), invitation.person.view(), role,
                          device.view(), seal.view()},
                         invitation.secret.view());
}

Bytes joinStatement(const Hash& mac)
{
    Bytes statement;
    append(statement, bytesOf("peelpack join 1\n"));
    append(statement, mac.view());
    return statement;
}

} // namespace

base::Result<Invitation> Invitation::fromCode(ByteView code)
{
    const base::Error refused{base::ErrorCode::BadInput, "This is not an invitation; ask for a new one."};
    if (code.size() != codeBytes || !std::equal(invitationMark.begin(), invitationMark.end(), code.begin())) {
        return refused;
    }
    Reader reader(code.subspan(invitationMark.size()));
    Invitation invitation;
    invitation.program = reader.fixed<VerifyKey>();
    invitation.inviterDevice = reader.fixed<VerifyKey>();
    invitation.inviterSeal = reader.fixed<SealKey>();
    invitation.person = reader.fixed<Id>();
    invitation.role = reader.number<std::uint8_t>();
    invitation.secret = Secret(reader.view(secretBytes));
    invitation.expiry = reader.number<std::int64_t>();
    if (invitation.role == 0 || invitation.role > lastRole) {
        return refused;
    }
    return invitation;
}

Secret Invitation::code() const
{
    Secret result(codeBytes);
    std::size_t at = 0;
    const auto put = [&](ByteView view) {
        std::copy(view.begin(), view.end(), result.writable().begin() + static_cast<std::ptrdiff_t>(at));
        at += view.size();
    };
    put(invitationMark);
    put(program.view());
    put(inviterDevice.view());
    put(inviterSeal.view());
    put(person.view());
    put(littleEndian(role));
    put(secret.view());
    put(littleEndian(expiry));
    return result;
}

base::Result<InvitationReply> InvitationReply::fromCode(ByteView code)
{
    if (code.size() != codeBytes || !std::equal(replyMark.begin(), replyMark.end(), code.begin())) {
        return base::Error{base::ErrorCode::BadInput, "This is not a reply to an invitation; scan it again."};
    }
    Reader reader(code.subspan(replyMark.size()));
    InvitationReply reply;
    reply.person = reader.fixed<Id>();
    reply.device = reader.fixed<VerifyKey>();
    reply.seal = reader.fixed<SealKey>();
    reply.mac = reader.fixed<Hash>();
    reply.signature = reader.fixed<Signature>();
    return reply;
}

Bytes InvitationReply::code() const
{
    Bytes result(replyMark.begin(), replyMark.end());
    append(result, person.view());
    append(result, device.view());
    append(result, seal.view());
    append(result, mac.view());
    append(result, signature.view());
    return result;
}

InvitationReply answer(const Invitation& invitation, const DeviceKey& device)
{
    InvitationReply reply;
    reply.person = invitation.person;
    reply.device = device.signing.verifyKey();
    reply.seal = device.opening.sealKey();
    reply.mac = replyMac(invitation, reply.device, reply.seal);
    reply.signature = device.signing.sign(joinStatement(reply.mac));
    return reply;
}

base::Result<bool> check(const Invitation& invitation, const InvitationReply& reply, std::int64_t now)
{
    if (now > invitation.expiry) {
        return base::Error{base::ErrorCode::BadValue, "The invitation has expired; make a new one."};
    }
    if (reply.person != invitation.person) {
        return base::Error{base::ErrorCode::BadValue, "The reply is from somebody else's invitation."};
    }
    if (!sameHash(reply.mac, replyMac(invitation, reply.device, reply.seal))) {
        return base::Error{base::ErrorCode::BadValue, "The reply was not made with this invitation."};
    }
    if (!usable(reply.seal)) {
        return base::Error{base::ErrorCode::BadValue, "Nothing can be sealed to the key in the reply."};
    }
    if (!usable(reply.device) || !verify(reply.device, joinStatement(reply.mac), reply.signature)) {
        return base::Error{base::ErrorCode::BadValue, "The reply was not signed by the device that it names."};
    }
    return true;
}

std::string comparisonDigits(const Invitation& invitation, const InvitationReply& reply)
{
    constexpr std::uint32_t range = 1'000'000;
    constexpr std::size_t digits = 6;
    const Secret code = invitation.code();
    const Id digest = shortHash("peelpack.digit.1", {code.view(), reply.code()});
    Reader reader(digest.view());
    std::string text = std::to_string(reader.number<std::uint32_t>() % range);
    return std::string(digits - text.size(), '0') + text;
}

} // namespace peelpack::keys
