#pragma once

#include <cstdint>

namespace peelpack::journal {

/// What an entry is (FORMAT.md section 4). Numbers outside this list are kinds of a newer version: kept, not read.
enum class Kind : std::uint16_t {
    Grant = 1,
    Revoke = 2,
    Vouch = 3,
    Policy = 4,
    RequirementsChange = 5,
    ClinicalDays = 6,
    Sites = 7,
    WhoMaySign = 8,
    PreceptorStanding = 9,
    CatalogueOverlay = 10,
    SheetOpened = 16,
    HeadChanged = 17,
    Withdrawn = 18,
    Attestation = 19,
    Logged = 20,
    ReviewAsked = 21,
    HandOverEnded = 22,
    Declined = 23,
    Initial = 32,
    Return = 33,
    ReviewAccepted = 34,
    Amend = 35,
    Refile = 36,
    Void = 37,
    Complete = 38,
    CompleteByException = 39,
    Imported = 40,
    Receipt = 48,
    CardStatement = 49,
    ForkFound = 50,
    Admit = 51,
};

/// Director is never granted: only a certificate of the program key makes one.
enum class Role : std::uint8_t { Director = 0, Instructor = 1, Coordinator = 2, Contact = 3, Student = 4 };

enum class KeyKind : std::uint8_t { Device = 1, Card = 2 };

} // namespace peelpack::journal
