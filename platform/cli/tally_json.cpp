#include "platform/cli/tally_json.h"

#include "core/tally/why_not_counted.h"

namespace peelpack::cli {
namespace {

using nlohmann::ordered_json;

ordered_json targetsJson(const requirement::RequirementSet& set, const tally::Count& count)
{
    ordered_json list = ordered_json::array();
    for (std::size_t i = 0; i < set.targets.size(); ++i) {
        ordered_json byCategory = ordered_json::object();
        for (std::size_t category = 0; category < catalogue::categoryCount; ++category) {
            if (const std::uint32_t cases = count.targets[i].byCategory[category]; cases > 0) {
                byCategory[std::string(id(catalogue::categoryAt(category)))] = cases;
            }
        }
        list.push_back({{"id", set.targets[i].id},
                        {"required", set.targets[i].required},
                        {"placed", count.targets[i].placed},
                        {"byCategory", std::move(byCategory)}});
    }
    return list;
}

ordered_json casesJson(const sheet::SheetBook& book, const requirement::RequirementSet& set,
                       const tally::StudentTally& tally, const tally::Count& count)
{
    ordered_json list = ordered_json::array();
    for (std::size_t i = 0; i < tally.candidates.size(); ++i) {
        const tally::Candidate& candidate = tally.candidates[i];
        const tally::Seat seat = count.seats[i];
        std::optional<catalogue::Category> category;
        if (seat.counts()) {
            category = catalogue::categoryAt(static_cast<std::size_t>(seat.category));
        }
        ordered_json line{{"sheet", candidate.sheet->id},
                          {"row", candidate.row},
                          {"procedure", book.procedureText(candidate.procedure)},
                          {"role", id(tally::countedOutcome(candidate, category))},
                          {"category", nullptr},
                          {"target", nullptr}};
        if (category) {
            line["category"] = id(*category);
            line["target"] = set.targets[static_cast<std::size_t>(seat.target)].id;
        } else {
            line["why"] = tally::sentence(tally::whyNotCounted(set, tally, count, i));
        }
        list.push_back(std::move(line));
    }
    return list;
}

ordered_json countJson(const sheet::SheetBook& book, const requirement::RequirementSet& set,
                       const tally::StudentTally& tally, const tally::Count& count)
{
    return {{"required", set.required()},
            {"counted", count.value.counted},
            {"firstScrub", count.value.firstScrub},
            {"targets", targetsJson(set, count)},
            {"cases", casesJson(book, set, tally, count)}};
}

void addCounts(ordered_json& json, const sheet::SheetBook& book, const requirement::RequirementSet& set,
               const tally::StudentTally& tally, const tally::Wanted& wanted)
{
    if (wanted.best) {
        json["best"] = countJson(book, set, tally, tally.best);
    }
    if (wanted.asLogged) {
        json["asLogged"] = countJson(book, set, tally, tally.asLogged);
    }
    if (wanted.next) {
        ordered_json next = ordered_json::array();
        for (const tally::Need& need : tally.next) {
            next.push_back({{"category", id(need.category)},
                            {"role", id(need.role)},
                            {"needed", need.needed == 0 ? ordered_json(nullptr) : ordered_json(need.needed)}});
        }
        json["next"] = std::move(next);
    }
}

} // namespace

ordered_json studentJson(const sheet::SheetBook& book, const sheet::BookStudent& student,
                         const requirement::RequirementSet& set, const tally::StudentTally& tally,
                         const tally::Wanted& wanted)
{
    ordered_json json{{"student", student.name},
                      {"sheets", tally.sheets},
                      {"observed", tally.observed},
                      {"unmarked", tally.unmarked},
                      {"canceled", tally.canceled}};
    addCounts(json, book, set, tally, wanted);
    return json;
}

void addSets(ordered_json& json, const session::SetByName& named)
{
    json["set"] = named.id;
    json["setFrom"] = named.from ? ordered_json(named.from->iso()) : ordered_json(nullptr);
    json["otherSets"] = ordered_json::array();
}

void addOtherSet(ordered_json& json, const session::OtherSet& other, const sheet::SheetBook& book,
                 const requirement::RequirementSet* set, const tally::StudentTally& tally, const tally::Wanted& wanted)
{
    ordered_json one{{"set", other.set.id},
                     {"coming", other.coming},
                     {"change", other.change.iso()},
                     {"reason", other.coming ? other.set.reason : std::string()}};
    if (set != nullptr) {
        addCounts(one, book, *set, tally, wanted);
    }
    json["otherSets"].push_back(std::move(one));
}

} // namespace peelpack::cli
