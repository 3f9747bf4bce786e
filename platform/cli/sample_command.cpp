#include "platform/cli/commands.h"

#include "core/base/text.h"
#include "core/questions/sample.h"
#include "platform/cli/answer.h"
#include "platform/cli/student_choice.h"
#include "platform/cli/vault_access.h"
#include "platform/session/checks.h"
#include "platform/session/repudiations.h"

namespace peelpack::cli {
namespace {

constexpr std::uint64_t usualCount = 10;
constexpr std::uint64_t mostCount = 10'000;
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

nlohmann::ordered_json signingJson(const questions::Signing& signing)
{
    return {{"student", signing.student}, {"sheet", signing.sheet}, {"date", signing.date.iso()},
            {"site", signing.site},       {"room", signing.room},   {"entry", signing.entry.hex()}};
}

base::Result<Answer> sample(const Arguments& arguments)
{
    const auto count = wholeNumber(arguments, "count", 1, mostCount, usualCount);
    const auto givenSeed = wholeNumber(arguments, "seed", 0, UINT64_MAX, 0);
    const auto from = dateOption(arguments, "from");
    const auto to = dateOption(arguments, "to");
    if (const base::Error* error = base::firstError(count, givenSeed)) {
        return *error;
    }
    if (const base::Error* error = base::firstError(from, to)) {
        return *error;
    }
    const base::Result<ChosenVault> chosen = openChosen(arguments);
    if (!chosen) {
        return chosen.error();
    }
    const session::Session& session = chosen.value().session();
    if (!session.isStaff()) {
        return base::Error{base::ErrorCode::BadValue, "Only an instructor or the director draws sheets to confirm."};
    }
    const std::vector<keys::Id>& students = chosen.value().students;
    std::vector<questions::Signing> signings = session::signingsIn(session, students);
    std::set<base::EntryHash> answered; // the preceptor has said already that it is not theirs
    for (const keys::Id& student : students) {
        answered.merge(session::repudiatedIn(session, student));
    }
    std::erase_if(signings, [&](const questions::Signing& signing) {
        return answered.contains(signing.entry) || (from.value() && signing.date < *from.value()) ||
               (to.value() && *to.value() < signing.date);
    });
    const std::uint64_t seed = arguments.has("seed") ? givenSeed.value() : ownSeed(session.random());
    const questions::Sample drawn =
        questions::sampleOf(std::move(signings), static_cast<std::size_t>(count.value()), seed);
    Answer answer;
    answer.json = {{"seed", seed}, {"of", drawn.of}, {"sheets", drawn.sheets}};
    answer.json["preceptors"] = nlohmann::ordered_json::array();
    const questions::Signing* before = nullptr;
    for (const questions::Signing& signing : drawn.signings) {
        if (before == nullptr || before->signer != signing.signer) {
            answer.json["preceptors"].push_back(
                {{"preceptor", signing.name}, {"sheets", nlohmann::ordered_json::array()}});
            answer.text += "Ask " + signing.name + "\n";
        }
        before = &signing;
        answer.json["preceptors"].back()["sheets"].push_back(signingJson(signing));
        answer.text += "  " + signing.sheet + "  " + signing.date.iso() + "  " + signing.student +
                       (signing.site.empty() ? "" : ", " + signing.site) +
                       (signing.room.empty() ? "" : ", " + signing.room) + "\n";
    }
    answer.text += drawn.of == 0 ? "No signed sheet is left to confirm.\n"
                                 : base::counted(drawn.sheets, "sheet", "sheets") + " of " + std::to_string(drawn.of) +
                                       " that are not confirmed yet; drawn with --seed " + std::to_string(seed) +
                                       ".\nKeep what the preceptor says: initial --confirmed, or preceptor statement "
                                       "--not-mine.\n";
    return answer;
}

} // namespace

Command sampleCommand()
{
    std::vector<OptionSpec> options = studentOptions();
    options.insert(options.end(), {{"count", "N", "how many sheets (10)"},
                                   {"seed", "N", "draws the same sheets again from the same vault; a new one else"},
                                   {"from", "DATE", "only operations from this day on"},
                                   {"to", "DATE", "only operations up to this day"}});
    return {{"sample",
             "Draw signed sheets at random, to be confirmed with their preceptors; those that are confirmed already "
             "are left out.",
             {},
             withVaultOptions(std::move(options)),
             "peelpack sample --count 12 --class \"Spring class\"\n  whom to ask about which sheets, and the seed"},
            [](const Arguments& arguments) { return give(arguments, sample(arguments)); }};
}

} // namespace peelpack::cli
