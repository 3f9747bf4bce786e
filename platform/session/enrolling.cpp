#include "platform/session/enrolling.h"

#include "sync/merge/receipts.h"

#include <algorithm>

namespace peelpack::session {

base::Result<OpenInvitation> inviteAgain(Session& session, const Person& person, std::int64_t days)
{
    return invite(session, person.name, person.role, person.scopes, person.id, days);
}

base::Result<std::vector<EndedDevice>> endDevices(Session& session, const Person& person, const std::string& reason,
                                                  const std::optional<keys::VerifyKey>& only)
{
    if (!session.isStaff()) {
        return base::Error{base::ErrorCode::BadValue, "Only an instructor or the director can end a device."};
    }
    const keys::Id stream = grantStream(session, person.role, person.id);
    std::vector<Writing> writings;
    std::vector<EndedDevice> ended;
    for (const GrantedDevice& device : person.devices) {
        if (device.revoked || (only && *only != device.key)) {
            continue;
        }
        journal::Revoke revoke;
        revoke.target = journal::KeyKind::Device;
        revoke.feed = {device.key, stream};
        revoke.accepted = merge::receiptedCount(session.authority(), revoke.feed);
        revoke.reason = reason;
        ended.push_back({device.key, revoke.accepted});
        writings.push_back({stream, revoke});
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
