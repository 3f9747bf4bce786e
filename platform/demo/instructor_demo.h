#pragma once

#include "core/catalogue/catalogue.h"
#include "platform/session/session.h"

#include <memory>
#include <string>
#include <vector>

namespace peelpack::demo {

/// An instructor of the invented program with a class of a dozen students and most of a term behind them, for trying
/// the instructor's pages: a journal in memory, gone when it is closed. Its program is made anew each time, so that
/// nothing of it is taken in anywhere else.
struct InstructorDemo {
    struct Parcel {
        std::string name;
        keys::Bytes bytes;
    };
    std::unique_ptr<session::Session> instructor;
    std::unique_ptr<session::Session> director; ///< has all that the instructor has
    std::string programCode;                    ///< as it is typed
    std::vector<Parcel> parcels;                ///< of students, not taken in yet
};

/// `random` must outlive it.
base::Result<InstructorDemo> makeInstructorDemo(const catalogue::Catalogue& catalogue, const session::Clock& clock,
                                                keys::RandomSource& random);

} // namespace peelpack::demo
