#pragma once

#include "platform/session/session.h"
#include "sync/keys/invitation.h"

namespace peelpack::session {

/// Whether a new program code that was typed back is the one that was shown, so that it is known to be on paper before
/// anything depends on it. BadInput: a slip of the pen, and where; or another code.
base::Result<bool> checkTypedBack(const keys::Secret& code, std::string_view typed);

/// The rules with which a program begins, or that replace older ones.
struct Rules {
    std::string requirementSet; ///< id
    keys::Hash setDigest;       ///< of the set's text
    std::string term;           ///< "Spring 2027"; may be empty
    base::Date firstDay;
    base::Date lastDay;
    std::uint8_t counted = 3; ///< as in a policy: own phone and card
};

/// Makes a fresh vault the director's: certificate of the program key, first policy. The program key itself is kept
/// nowhere; the program code re-creates it. With a later epoch: a new director of a program that exists, whose policy
/// comes in with the first parcel.
base::Result<bool> beginProgram(vault::Vault& vault, const keys::SigningKey& programKey, const std::string& name,
                                const Rules& rules, const Clock& clock, keys::RandomSource& random);
base::Result<bool> takeOverProgram(vault::Vault& vault, const keys::SigningKey& programKey, std::uint32_t epoch,
                                   const keys::Id& person, const std::string& name);

/// Makes a fresh vault, or one that must go on in a new feed, that of the invited person; the reply goes back to the
/// inviter.
base::Result<keys::InvitationReply> join(vault::Vault& vault, const keys::Invitation& invitation,
                                         const std::string& name);

/// An invitation that was given out and not answered yet.
struct OpenInvitation {
    keys::Bytes code; ///< of keys::Invitation
    std::string name; ///< of the invited person
    std::vector<std::string> scopes;
    bool again = false; ///< the person is known: the new device goes on where an older one was
};

/// The first call makes a new person; `person` names one who is known and gets another device. `days` until it expires.
base::Result<OpenInvitation> invite(Session& session, const std::string& name, journal::Role role,
                                    const std::vector<std::string>& scopes, const std::optional<keys::Id>& person,
                                    std::int64_t days);
std::vector<OpenInvitation> openInvitations(const Session& session);
/// Takes an invitation back: whoever answers it is not let in. NotFound: it is not open.
base::Result<bool> withdrawInvitation(Session& session, keys::ByteView code);

/// A reply with the invitation that it answers.
struct Answered {
    OpenInvitation invitation;
    std::string digits; ///< six, to be compared with those on the other device
};
/// NotFound: no open invitation fits. BadValue: expired, or not from who had the invitation.
base::Result<Answered> matchReply(const Session& session, const keys::InvitationReply& reply);
/// Grants the role once the digits were compared. A known person's device continues the feed that is held of the older
/// one.
base::Result<journal::Position> grant(Session& session, const keys::InvitationReply& reply);

/// The program stream for staff, the student's own for a student.
keys::Id grantStream(const Session& session, journal::Role role, const keys::Id& person);

} // namespace peelpack::session
