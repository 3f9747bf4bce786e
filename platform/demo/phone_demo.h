#pragma once

#include "core/catalogue/catalogue.h"
#include "platform/session/session.h"

#include <memory>
#include <string>
#include <vector>

namespace peelpack::demo {

/// One student of the invented program for trying the phone: a journal in memory with most of a term behind it, gone
/// when it is closed. Its program is made anew each time, so that nothing of it is taken in anywhere else.
struct PhoneDemo {
    struct Card {
        std::string name;
        std::string credential;
        std::string pin;
        keys::Bytes code; ///< of its QR code
    };
    std::unique_ptr<session::Session> student;
    std::vector<Card> cards;
    /// The director's journal, which answers parcels.
    std::unique_ptr<session::Session> director;
};

/// What unlocks the demo.
inline constexpr const char* phoneDemoPin = "246813";

/// `random` must outlive it.
base::Result<PhoneDemo> makePhoneDemo(const catalogue::Catalogue& catalogue, const session::Clock& clock,
                                      keys::RandomSource& random);

} // namespace peelpack::demo
