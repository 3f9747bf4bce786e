#pragma once

#include "core/tally/tally.h"

namespace peelpack::tally {

/// What keeps a candidate from counting.
enum class Obstacle : std::uint8_t {
    Canceled,
    Unmarked,
    Observed,
    ImportNotInitialed, ///< from a paper log, nobody attested it
    NotInitialed,
    NotSigned,
    CardNotVouched,
    DrawnNotConfirmed,
    StubNotConfirmed,
    SignatureNotAccepted,
    SameOperation, ///< another procedure of the operation is the case in this category
    LimitReached,  ///< of the category, over all targets
    NoTarget,      ///< takes the category in this role
    SeatsKept,     ///< for specialties that are still short
    CapReached,    ///< of the category in its first-scrub target
    TargetsFull,
};

struct WhyNotCounted {
    Obstacle obstacle = Obstacle::TargetsFull;
    catalogue::Category category = catalogue::Category::General; ///< the logged one
    std::uint32_t most = 0;                                      ///< of LimitReached
    bool operator==(const WhyNotCounted&) const = default;
};

/// Why a candidate that has no seat in `count` does not count.
WhyNotCounted whyNotCounted(const requirement::RequirementSet& set, const StudentTally& tally, const Count& count,
                            std::size_t candidate);
/// In a sentence to the student.
std::string sentence(const WhyNotCounted& why);

} // namespace peelpack::tally
