#include "core/record/history.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace peelpack::record {
namespace {

struct ReasonGiven {
    std::string operator()(const Withdrawn& withdrawn) const { return withdrawn.reason; }
    std::string operator()(const ReviewAsked& asked) const { return asked.reason; }
    std::string operator()(const Declined& declined) const { return declined.reason; }
    std::string operator()(const Act& act) const { return act.reason; }
    template <class Other>
    std::string operator()(const Other& /*other*/) const
    {
        return {};
    }
};

HistoryLine lineOf(const Event& event, bool requestOnly)
{
    HistoryLine line{event.entry,
                     event.writer,
                     happeningOf(event.what, requestOnly),
                     event.claimed,
                     std::visit(ReasonGiven{}, event.what),
                     Weight::Counts,
                     event.standing.why};
    if (event.standing.verdict == Standing::Verdict::Aside) {
        line.weight = Weight::Aside;
    } else if (event.standing.verdict == Standing::Verdict::Refused) {
        line.weight = Weight::Refused;
    }
    return line;
}

HistoryLine studentLine(const SheetEvents& events, std::size_t index, const WithoutEffect& without)
{
    const Event& event = *events.student[index];
    HistoryLine line = lineOf(event, without.requestOnly[index]);
    if (line.weight == Weight::Counts && without.import != nullptr && !std::holds_alternative<Withdrawn>(event.what)) {
        line.weight = Weight::NoEffect;
        line.whyNot = "The sheet was imported: the student can only withdraw it.";
        return line;
    }
    if (line.weight == Weight::Counts && without.requestOnly[index]) {
        line.weight = Weight::NoEffect;
        line.whyNot = "The sheet was initialed before this; an instructor decides.";
    } else if (line.weight == Weight::Counts && without.afterInitial[index]) {
        line.weight = Weight::NoEffect;
        line.whyNot = "The instructor whose action is in force had not seen this.";
    }
    return line;
}

HistoryLine importLine(const Event& event, const WithoutEffect& without)
{
    HistoryLine line = lineOf(event, false);
    if (line.weight == Weight::Counts && &event != without.import) {
        line.weight = Weight::NoEffect;
        line.whyNot = without.import == nullptr ? "The sheet is the student's own." : "The sheet was imported before.";
    }
    return line;
}

HistoryLine actLine(const Event& event, const WithoutEffect& without)
{
    HistoryLine line = lineOf(event, false);
    if (line.weight == Weight::Counts && without.import != nullptr && changesMarks(std::get<Act>(event.what))) {
        line.weight = Weight::NoEffect;
        line.whyNot = "The sheet was imported: it has no marks to change.";
        return line;
    }
    if (line.weight == Weight::Counts && !std::get<Act>(event.what).inForce) {
        line.weight = Weight::Beside;
        line.whyNot = "Another action was taken in its place.";
    }
    return line;
}

/// Where an act stands in the history.
struct ActPlace {
    std::size_t after = 0; ///< student events before it
    std::size_t depth = 0; ///< acts on which it stands
    bool beside = false;
    base::EntryHash entry;
    std::size_t index = 0;

    [[nodiscard]] auto key() const { return std::tie(after, depth, beside, entry, index); }
};

std::vector<ActPlace> placesOf(const SheetEvents& events, const Sights& sights)
{
    std::map<base::EntryHash, std::vector<std::size_t>> followers;
    std::map<base::EntryHash, std::size_t> held;
    for (std::size_t i = 0; i < events.acts.size(); ++i) {
        followers[events.act(i).standsOn].push_back(i);
        held.emplace(events.acts[i]->entry, i);
    }
    std::vector<ActPlace> places(events.acts.size());
    std::vector<std::size_t> open;
    for (std::size_t i = 0; i < places.size(); ++i) {
        const std::size_t unseen = events.sawImportOnly(events.act(i)) ? 0 : events.student.size();
        const std::size_t after = sights[i] ? *sights[i] + 1 : unseen;
        places[i] = {after, 0, !events.act(i).inForce, events.acts[i]->entry, i};
        if (!held.contains(events.act(i).standsOn)) {
            open.push_back(i);
        }
    }
    while (!open.empty()) {
        const ActPlace before = places[open.back()];
        open.pop_back();
        const auto found = followers.find(before.entry);
        if (found == followers.end() || held.at(before.entry) != before.index) {
            continue;
        }
        for (const std::size_t i : found->second) {
            places[i].after = sights[i] ? std::max(places[i].after, before.after) : before.after;
            places[i].depth = before.depth + 1;
            open.push_back(i);
        }
    }
    std::sort(places.begin(), places.end(), [](const ActPlace& a, const ActPlace& b) { return a.key() < b.key(); });
    return places;
}

} // namespace

bool SheetEvents::sawImportOnly(const Act& act) const
{
    return std::any_of(imports.begin(), imports.end(), [&](const Event* import) { return import->entry == act.about; });
}

bool changesMarks(const Act& act)
{
    const auto* amend = std::get_if<Amend>(&act.decision);
    return std::holds_alternative<ReviewAccepted>(act.decision) || (amend != nullptr && !amend->marks.marks.none());
}

Sights sightsOf(const SheetEvents& events)
{
    Sights sights(events.acts.size());
    if (sights.empty()) {
        return sights;
    }
    std::map<base::EntryHash, std::size_t> places;
    for (std::size_t i = 0; i < events.student.size(); ++i) {
        places.emplace(events.student[i]->entry, i);
    }
    for (std::size_t i = 0; i < sights.size(); ++i) {
        if (const auto found = places.find(events.act(i).about); found != places.end()) {
            sights[i] = found->second;
        }
    }
    return sights;
}

std::vector<HistoryLine> historyOf(const SheetEvents& events, const Sights& sights, const WithoutEffect& without)
{
    std::vector<HistoryLine> history;
    history.reserve(events.imports.size() + events.student.size() + events.acts.size());
    std::vector<const Event*> imports = events.imports;
    std::sort(imports.begin(), imports.end(), [&](const Event* a, const Event* b) {
        return std::pair(a != without.import, a->entry) < std::pair(b != without.import, b->entry);
    });
    for (const Event* import : imports) {
        history.push_back(importLine(*import, without));
    }
    std::size_t next = 0;
    for (const ActPlace& place : placesOf(events, sights)) {
        for (; next < place.after; ++next) {
            history.push_back(studentLine(events, next, without));
        }
        history.push_back(actLine(*events.acts[place.index], without));
    }
    for (; next < events.student.size(); ++next) {
        history.push_back(studentLine(events, next, without));
    }
    return history;
}

} // namespace peelpack::record
