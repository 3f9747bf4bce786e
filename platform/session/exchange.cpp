#include "platform/session/exchange.h"

#include "platform/session/refusal.h"
#include "sync/parcel/parcel.h"
#include "sync/parcel/volume.h"

namespace peelpack::session {
namespace {

keys::VerifyKey ownKey(const Session& session)
{
    const base::Result<const keys::DeviceKey*> own = session.device();
    return own ? own.value()->signing.verifyKey() : keys::VerifyKey{};
}

} // namespace

base::Result<Recipients> toStaff(const Session& session)
{
    Recipients to{Directory(session).staffKeys(session.person(), ownKey(session)), session.person()};
    if (to.keys.empty()) {
        const auto inviter = session.note(notes::inviter);
        const auto key = inviter ? keys::SealKey::from(*inviter) : std::nullopt;
        if (!key) {
            return base::Error{base::ErrorCode::NotFound, "No instructor is known here yet."};
        }
        to.keys.push_back(*key);
    }
    return to;
}

base::Result<Recipients> toStudent(const Session& /*session*/, const Person& student)
{
    Recipients to{Directory::keysOf(student), student.id};
    if (to.keys.empty()) {
        return base::Error{base::ErrorCode::NotFound, "This student has no phone that is still granted."};
    }
    return to;
}

base::Result<Recipients> toColleagues(const Session& session)
{
    Recipients to{Directory(session).staffKeys({}, ownKey(session)), std::nullopt};
    if (to.keys.empty()) {
        return base::Error{base::ErrorCode::NotFound, "No other instructor is known here."};
    }
    return to;
}

base::Result<std::vector<keys::Bytes>> makeParcels(const Session& session, const Recipients& to)
{
    auto volumes = parcel::writeVolumes(session.program(), merge::contents(session.ledger(), to.about));
    if (!volumes) {
        return refused(volumes.reason());
    }
    std::vector<keys::Bytes> parcels;
    for (const keys::Bytes& volume : volumes.value()) {
        auto sealed = parcel::seal(volume, to.keys, session.random());
        if (!sealed) {
            return refused(sealed.reason());
        }
        parcels.push_back(std::move(sealed).value());
    }
    return parcels;
}

base::Result<std::vector<keys::Bytes>> makeExport(const Session& session, const std::optional<keys::Id>& student)
{
    auto volumes = parcel::writeVolumes(session.program(), merge::contents(session.ledger(), student));
    if (!volumes) {
        return refused(volumes.reason());
    }
    return std::move(volumes).value();
}

} // namespace peelpack::session
