#pragma once

#include "core/questions/signing.h"

namespace peelpack::questions {

/// A sample of signed sheets, to be confirmed with the preceptors.
struct Sample {
    std::size_t of = 0;            ///< sheets that it was drawn from
    std::size_t sheets = 0;        ///< that were drawn
    std::vector<Signing> signings; ///< on them and not confirmed yet; by preceptor's name, then date
};

/// Draws `count` sheets, or all when there are no more, from those with a signature that is not confirmed yet. Every
/// set of that size is equally likely, so that nobody who does not know the seed can tell what will be asked about.
/// The same signings, in whatever order, and the same seed give the same sample on every machine: the sheets in the
/// order of student and sheet are drawn from one by one with the numbers of the generator mt19937_64 of the C++
/// standard, of which those that would make a draw uneven are passed over.
Sample sampleOf(std::vector<Signing> signings, std::size_t count, std::uint64_t seed);

} // namespace peelpack::questions
