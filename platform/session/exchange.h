#pragma once

#include "platform/session/directory.h"

namespace peelpack::session {

/// To whom parcels go.
struct Recipients {
    std::vector<keys::SealKey> keys;
    std::optional<keys::Id> about; ///< only what a student's phone may hold about this student; empty: everything
};

/// For a student: to all staff devices that are known, or to whoever invited while none is. NotFound: nobody is known.
base::Result<Recipients> toStaff(const Session& session);
/// For staff: what one student's phones get.
base::Result<Recipients> toStudent(const Session& session, const Person& student);
/// For staff: everything, to the other staff devices.
base::Result<Recipients> toColleagues(const Session& session);

/// Sealed parcels, one for each volume; usually one. BadValue when it cannot be written.
base::Result<std::vector<keys::Bytes>> makeParcels(const Session& session, const Recipients& to);

/// Volumes that anybody can read and verify with the program id alone; of one student, or of everything.
base::Result<std::vector<keys::Bytes>> makeExport(const Session& session, const std::optional<keys::Id>& student);

} // namespace peelpack::session
