#pragma once

#include "platform/session/directory.h"
#include "platform/session/setup.h"

namespace peelpack::session {

/// For how long an invitation is good when nobody says otherwise.
inline constexpr std::int64_t usualInvitationDays = 14;

/// Invites somebody who is known, for another phone, in the role and to the classes or sites that they have.
base::Result<OpenInvitation> inviteAgain(Session& session, const Person& person, std::int64_t days);

/// A device that was ended, and how many of its entries stay good, in every stream together.
struct EndedDevice {
    keys::VerifyKey key;
    std::uint32_t accepted = 0;
};
/// Ends devices of a person at the last receipted position of each stream that they wrote: one of them, or all that are
/// not ended. NotFound: there is none to end. BadValue: only an instructor or the director can; or a director's, which
/// only the program code ends.
base::Result<std::vector<EndedDevice>> endDevices(Session& session, const Person& person, const std::string& reason,
                                                  const std::optional<keys::VerifyKey>& only = std::nullopt);
/// Whether this is a director whom the director of this vault may end, with the program code.
bool endsByCode(const Session& session, const Person& person);
/// Ends all devices of a director other than one's own, by the program key: what is held of them stays good. NotFound:
/// there is none to end. BadValue: only a director can, and not oneself; or it is the key of another program.
base::Result<std::vector<EndedDevice>> endDirector(Session& session, const keys::SigningKey& programKey,
                                                   const Person& director);
/// Whether what this person writes about the end of such a device would count (FORMAT.md section 7): the director ends
/// everybody but directors, an instructor those who are neither and whom they granted or share a class or site with.
bool mayEnd(const Session& session, const Person& person);

} // namespace peelpack::session
