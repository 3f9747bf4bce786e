#include "platform/session/samples.h"

#include "platform/session/checks.h"
#include "platform/session/repudiations.h"

#include <algorithm>

namespace peelpack::session {
namespace {

/// A seed that nobody chose has few enough digits to be read out.
constexpr std::uint64_t mostOwnSeed = 999'999;

std::uint64_t ownSeed(keys::RandomSource& random)
{
    std::array<std::uint8_t, sizeof(std::uint64_t)> bytes{};
    random.fill(bytes);
    std::uint64_t seed = 0;
    for (const std::uint8_t byte : bytes) {
        seed = (seed << 8U) | byte;
    }
    return seed % (mostOwnSeed + 1);
}

} // namespace

base::Result<DrawnSample> drawSample(const Session& session, const std::vector<keys::Id>& students,
                                     const SampleWish& wish)
{
    if (!session.isStaff()) {
        return base::Error{base::ErrorCode::BadValue, "Only an instructor or the director draws sheets to confirm."};
    }
    std::vector<questions::Signing> signings = signingsIn(session, students);
    std::set<base::EntryHash> answered;
    for (const keys::Id& student : students) {
        answered.merge(repudiatedIn(session, student));
    }
    std::erase_if(signings, [&](const questions::Signing& signing) {
        return answered.contains(signing.entry) || (wish.from && signing.date < *wish.from) ||
               (wish.to && *wish.to < signing.date);
    });
    const std::uint64_t seed = wish.seed ? *wish.seed : ownSeed(session.random());
    return DrawnSample{seed, questions::sampleOf(std::move(signings), wish.count, seed)};
}

} // namespace peelpack::session
