#include "platform/session/setup.h"

#include "platform/session/directory.h"
#include "platform/session/refusal.h"
#include "platform/vault/vault_error.h"
#include "sync/keys/card.h"
#include "sync/keys/code.h"

#include <nlohmann/json.hpp>

#include <algorithm>

namespace peelpack::session {
namespace {

using journal::Role;

constexpr std::int64_t secondsInDay = 86'400;

keys::Bytes bytesOf(std::string_view text)
{
    return {text.begin(), text.end()};
}

keys::Bytes copy(keys::ByteView view)
{
    return {view.begin(), view.end()};
}

void setIdentity(vault::Change& change, const keys::VerifyKey& program, const keys::Id& person, Role role,
                 const std::string& name)
{
    change.notes[notes::program] = copy(program.view());
    change.notes[notes::person] = copy(person.view());
    change.notes[notes::role] = keys::Bytes{static_cast<std::uint8_t>(role)};
    change.notes[notes::name] = bytesOf(name);
}

base::Result<keys::Bytes> directorCertificate(vault::Vault& vault, const keys::SigningKey& programKey,
                                              std::uint32_t epoch, const keys::Id& person, const std::string& name)
{
    const vault::Result<const keys::DeviceKey*> device = vault.device();
    if (!device) {
        return vault::asError(device.error());
    }
    auto bytes = trust::writeCertificate(programKey, epoch,
                                         trust::DirectorCertificate{person, device.value()->signing.verifyKey(),
                                                                    device.value()->opening.sealKey(), name});
    if (!bytes) {
        return refused(bytes.reason());
    }
    return std::move(bytes).value();
}

base::Result<bool> saved(vault::Vault& vault, const vault::Change& change)
{
    const vault::Result<bool> done = vault.save(change);
    return done ? base::Result<bool>(true) : vault::asError(done.error());
}

/// Open invitations as a note: CBOR, sealed like everything else.
keys::Bytes toNote(const std::vector<OpenInvitation>& open)
{
    nlohmann::json list = nlohmann::json::array();
    for (const OpenInvitation& invitation : open) {
        list.push_back({{"code", nlohmann::json::binary(invitation.code)},
                        {"name", invitation.name},
                        {"scopes", invitation.scopes},
                        {"again", invitation.again}});
    }
    return nlohmann::json::to_cbor(list);
}

base::Result<keys::Invitation> read(const OpenInvitation& open)
{
    return keys::Invitation::fromCode(open.code);
}

/// The newest entry that is held of the person's earlier devices in a stream: the new device goes on there.
std::optional<journal::Position> newestHead(const Session& session, const keys::Id& person, const keys::Id& stream)
{
    std::optional<journal::Position> newest;
    for (const auto& [id, feed] : session.ledger().feeds()) {
        const trust::Holder* holder = session.authority().holder(id.device);
        const bool theirs = id.stream == stream && holder != nullptr && holder->person == person;
        if (theirs && feed.count() > 0 && (!newest || feed.count() - 1 > newest->seq)) {
            newest = journal::Position{id, feed.count() - 1, feed.head().hash};
        }
    }
    return newest;
}

} // namespace

base::Result<bool> checkTypedBack(const keys::Secret& code, std::string_view typed)
{
    const base::Result<keys::Secret> read = keys::codeFromText(keys::CodeSort::Program, typed);
    if (!read) {
        return read.error();
    }
    return read.value().equals(code.view())
               ? base::Result<bool>(true)
               : base::Error{base::ErrorCode::BadInput, "That is another code; nothing was made."};
}

base::Result<bool> beginProgram(vault::Vault& vault, const keys::SigningKey& programKey, const std::string& name,
                                const Rules& rules, const Clock& clock, keys::RandomSource& random)
{
    const keys::Id person = random.id();
    const keys::VerifyKey program = programKey.verifyKey();
    base::Result<keys::Bytes> certificate = directorCertificate(vault, programKey, 1, person, name);
    if (!certificate) {
        return certificate.error();
    }
    const keys::DeviceKey& device = *vault.device().value();
    const journal::Policy policy{
        {}, rules.requirementSet, rules.setDigest, rules.term, rules.firstDay, rules.lastDay, rules.counted, 1};
    const journal::FeedId feed{device.signing.verifyKey(), keys::programStream(program)};
    auto entry = journal::writeEntry(program, {feed, 0, {}}, {clock(), std::nullopt}, policy, device.signing);
    if (!entry) {
        return refused(entry.reason());
    }
    vault::Change change;
    change.certificates.push_back(std::move(certificate).value());
    change.entries.push_back({feed, 0, std::move(entry).value().bytes});
    setIdentity(change, program, person, Role::Director, name);
    return saved(vault, change);
}

base::Result<bool> takeOverProgram(vault::Vault& vault, const keys::SigningKey& programKey, std::uint32_t epoch,
                                   const keys::Id& person, const std::string& name)
{
    base::Result<keys::Bytes> certificate = directorCertificate(vault, programKey, epoch, person, name);
    if (!certificate) {
        return certificate.error();
    }
    vault::Change change;
    change.certificates.push_back(std::move(certificate).value());
    setIdentity(change, programKey.verifyKey(), person, Role::Director, name);
    return saved(vault, change);
}

base::Result<keys::InvitationReply> join(vault::Vault& vault, const keys::Invitation& invitation,
                                         const std::string& name)
{
    const vault::Result<vault::Contents> contents = vault.contents();
    if (!contents) {
        return vault::asError(contents.error());
    }
    const auto& known = contents.value().notes;
    if (const auto program = known.find(notes::program); program != known.end()) {
        const bool samePerson = program->second == copy(invitation.program.view()) && known.contains(notes::person) &&
                                known.at(notes::person) == copy(invitation.person.view());
        if (!samePerson) {
            return base::Error{base::ErrorCode::BadValue,
                               "This vault belongs to somebody or some program already; join with a new vault."};
        }
        // The same person again: after a split record or on a copy. New keys, so that nothing is signed twice.
        if (const vault::Result<bool> renewed = vault.renewDevice(); !renewed) {
            return vault::asError(renewed.error());
        }
    }
    const vault::Result<const keys::DeviceKey*> device = vault.device();
    if (!device) {
        return vault::asError(device.error());
    }
    vault::Change change;
    setIdentity(change, invitation.program, invitation.person, static_cast<Role>(invitation.role), name);
    change.notes[notes::inviter] = copy(invitation.inviterSeal.view());
    change.notes[notes::stopped] = std::nullopt;
    if (const base::Result<bool> kept = saved(vault, change); !kept) {
        return kept.error();
    }
    return keys::answer(invitation, *device.value());
}

std::vector<OpenInvitation> openInvitations(const Session& session)
{
    std::vector<OpenInvitation> open;
    const std::optional<keys::Bytes> note = session.note(notes::invitations);
    if (!note) {
        return open;
    }
    const nlohmann::json list = nlohmann::json::from_cbor(*note, true, false);
    for (const nlohmann::json& item : list) {
        open.push_back({item.at("code").get_binary(), item.at("name").get<std::string>(),
                        item.at("scopes").get<std::vector<std::string>>(), item.at("again").get<bool>()});
    }
    return open;
}

base::Result<OpenInvitation> invite(Session& session, const std::string& name, Role role,
                                    const std::vector<std::string>& scopes, const std::optional<keys::Id>& person,
                                    std::int64_t days)
{
    const base::Result<const keys::DeviceKey*> device = session.device();
    if (!device) {
        return device.error();
    }
    const bool may =
        session.role() == Role::Director || (session.role() == Role::Instructor && role > Role::Instructor);
    if (!may || role == Role::Director) {
        return base::Error{base::ErrorCode::BadValue,
                           "A director invites anybody, an instructor everybody but instructors; a new director takes "
                           "over with the program code."};
    }
    if (name.empty() || (role != Role::Instructor && scopes.empty())) {
        return base::Error{base::ErrorCode::BadValue,
                           "An invitation needs a name, and a class or site unless it is for "
                           "an instructor of the whole program."};
    }
    keys::Invitation invitation;
    invitation.program = session.program();
    invitation.inviterDevice = device.value()->signing.verifyKey();
    invitation.inviterSeal = device.value()->opening.sealKey();
    invitation.person = person ? *person : session.random().id();
    invitation.role = static_cast<std::uint8_t>(role);
    invitation.secret = session.random().secret(keys::Invitation::secretBytes);
    invitation.expiry = session.now().seconds + days * secondsInDay;
    OpenInvitation made{copy(invitation.code().view()), name, scopes, person.has_value()};
    std::vector<OpenInvitation> open = openInvitations(session);
    std::erase_if(open, [&](const OpenInvitation& other) { // expired, or replaced by this one
        const auto old = read(other);
        return !old || old.value().expiry < session.now().seconds || old.value().person == invitation.person;
    });
    open.push_back(made);
    if (const base::Result<bool> kept = session.setNote(notes::invitations, toNote(open)); !kept) {
        return kept.error();
    }
    return made;
}

base::Result<bool> withdrawInvitation(Session& session, keys::ByteView code)
{
    std::vector<OpenInvitation> open = openInvitations(session);
    const auto isIt = [&](const OpenInvitation& one) { return std::ranges::equal(one.code, code); };
    if (std::erase_if(open, isIt) == 0) {
        return base::Error{base::ErrorCode::NotFound, "This invitation is not open any more."};
    }
    return session.setNote(notes::invitations, toNote(open));
}

base::Result<Answered> matchReply(const Session& session, const keys::InvitationReply& reply)
{
    for (const OpenInvitation& open : openInvitations(session)) {
        const base::Result<keys::Invitation> invitation = read(open);
        if (!invitation || invitation.value().person != reply.person) {
            continue;
        }
        const base::Result<bool> fits = keys::check(invitation.value(), reply, session.now().seconds);
        if (!fits) {
            return fits.error();
        }
        return Answered{open, keys::comparisonDigits(invitation.value(), reply)};
    }
    return base::Error{base::ErrorCode::NotFound, "This reply answers no invitation that is open here: it was answered "
                                                  "already, has expired, or was given out on another device."};
}

keys::Id grantStream(const Session& session, Role role, const keys::Id& person)
{
    return role == Role::Student ? person : session.programStream();
}

base::Result<journal::Position> grant(Session& session, const keys::InvitationReply& reply)
{
    const base::Result<Answered> answered = matchReply(session, reply);
    if (!answered) {
        return answered.error();
    }
    const OpenInvitation& open = answered.value().invitation;
    const auto role = static_cast<Role>(read(open).value().role);
    const keys::Id stream = grantStream(session, role, reply.person);
    journal::Grant grant{reply.person, role, reply.device, reply.seal, open.name, open.scopes, std::nullopt};
    if (open.again) {
        grant.continues = newestHead(session, reply.person, stream);
    }
    base::Result<journal::Position> written = session.append(stream, grant);
    if (!written) {
        return written;
    }
    if (const base::Result<bool> kept = withdrawInvitation(session, open.code); !kept) {
        return kept.error();
    }
    return written;
}

} // namespace peelpack::session
