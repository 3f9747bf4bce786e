#include "platform/session/enrolling.h"

#include "platform/session/refusal.h"
#include "sync/merge/receipts.h"

#include <algorithm>

namespace peelpack::session {

base::Result<OpenInvitation> inviteAgain(Session& session, const Person& person, std::int64_t days)
{
    return invite(session, person.name, person.role, person.scopes, person.id, days);
}

namespace {

/// What a device wrote, in `first` and elsewhere: a device that is ended in the program stream loses every stream that
/// is not named (FORMAT.md section 7).
std::vector<journal::FeedId> feedsOf(const Session& session, const keys::VerifyKey& device, const keys::Id& first)
{
    std::vector<journal::FeedId> feeds{{device, first}};
    for (const auto& [id, feed] : session.ledger().feeds()) {
        if (id.device == device && id.stream != first) {
            feeds.push_back(id);
        }
    }
    return feeds;
}

} // namespace

base::Result<std::vector<EndedDevice>> endDevices(Session& session, const Person& person, const std::string& reason,
                                                  const std::optional<keys::VerifyKey>& only)
{
    if (!session.isStaff()) {
        return base::Error{base::ErrorCode::BadValue, "Only an instructor or the director can end a device."};
    }
    if (person.role == journal::Role::Director) {
        return base::Error{base::ErrorCode::BadValue, "Only the program code ends a director's device."};
    }
    const keys::Id stream = grantStream(session, person.role, person.id);
    std::vector<Writing> writings;
    std::vector<EndedDevice> ended;
    for (const GrantedDevice& device : person.devices) {
        if (device.revoked || (only && *only != device.key)) {
            continue;
        }
        EndedDevice& one = ended.emplace_back(EndedDevice{device.key, 0});
        for (const journal::FeedId& feed : feedsOf(session, device.key, stream)) {
            journal::Revoke revoke;
            revoke.target = journal::KeyKind::Device;
            revoke.feed = feed;
            revoke.accepted = merge::receiptedCount(session.authority(), feed);
            revoke.reason = reason;
            one.accepted += revoke.accepted;
            writings.push_back({feed.stream, revoke});
        }
    }
    if (writings.empty()) {
        return base::Error{base::ErrorCode::NotFound, "This person has no device that is still granted."};
    }
    const auto written = session.append(writings);
    if (!written) {
        return written.error();
    }
    return ended;
}

bool endsByCode(const Session& session, const Person& person)
{
    return session.role() == journal::Role::Director && person.role == journal::Role::Director &&
           person.id != session.person();
}

base::Result<std::vector<EndedDevice>> endDirector(Session& session, const keys::SigningKey& programKey,
                                                   const Person& director)
{
    if (!endsByCode(session, director)) {
        return base::Error{base::ErrorCode::BadValue, "Only a director ends another director's device."};
    }
    if (programKey.verifyKey() != session.program()) {
        return base::Error{base::ErrorCode::BadInput, "That is not the code of this program."};
    }
    std::vector<keys::Bytes> certificates;
    std::vector<EndedDevice> ended;
    for (const GrantedDevice& device : director.devices) {
        const trust::Holder* holder = session.authority().holder(device.key);
        if (device.revoked || holder == nullptr) {
            continue;
        }
        EndedDevice& one = ended.emplace_back(EndedDevice{device.key, 0});
        for (const journal::FeedId& feed : feedsOf(session, device.key, session.programStream())) {
            const journal::Feed* held = session.ledger().feed(feed);
            const std::uint32_t accepted = held == nullptr ? 0 : held->count();
            auto certificate =
                trust::writeCertificate(programKey, holder->epoch, trust::DirectorRevoked{feed, accepted});
            if (!certificate) {
                return refused(certificate.reason());
            }
            one.accepted += accepted;
            certificates.push_back(std::move(certificate).value());
        }
    }
    if (ended.empty()) {
        return base::Error{base::ErrorCode::NotFound, "This person has no device that is still granted."};
    }
    if (const base::Result<bool> kept = session.keepCertificates(std::move(certificates)); !kept) {
        return kept.error();
    }
    return ended;
}

bool mayEnd(const Session& session, const Person& person)
{
    using journal::Role;
    if (!session.isStaff() || person.role == Role::Director) {
        return false;
    }
    if (session.role() == Role::Director) {
        return true;
    }
    const base::Result<const keys::DeviceKey*> own = session.device();
    const trust::Holder* writer = own ? session.authority().holder(own.value()->signing.verifyKey()) : nullptr;
    if (person.role == Role::Instructor || writer == nullptr) {
        return false;
    }
    const auto shares = [&](const std::string& scope) {
        return std::binary_search(writer->scopes.begin(), writer->scopes.end(), scope);
    };
    return writer->scopes.empty() ||
           std::any_of(person.devices.begin(), person.devices.end(), [&](const GrantedDevice& device) {
               const trust::Holder* target = session.authority().holder(device.key);
               return target != nullptr && (target->grantedBy.contains(writer->person) ||
                                            std::any_of(target->scopes.begin(), target->scopes.end(), shares));
           });
}

} // namespace peelpack::session
