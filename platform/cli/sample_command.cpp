#include "platform/cli/commands.h"

#include "core/base/text.h"
#include "platform/cli/answer.h"
#include "platform/cli/student_choice.h"
#include "platform/cli/vault_access.h"
#include "platform/session/samples.h"

namespace peelpack::cli {
namespace {

constexpr std::uint64_t usualCount = 10;
constexpr std::uint64_t mostCount = 10'000;
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
    session::SampleWish wish{static_cast<std::size_t>(count.value()), std::nullopt, from.value(), to.value()};
    if (arguments.has("seed")) {
        wish.seed = givenSeed.value();
    }
    const base::Result<session::DrawnSample> sample =
        session::drawSample(chosen.value().session(), chosen.value().students, wish);
    if (!sample) {
        return sample.error();
    }
    const std::uint64_t seed = sample.value().seed;
    const questions::Sample& drawn = sample.value().sample;
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
