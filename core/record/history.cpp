#include "core/record/history.h"

#include "core/base/text.h"

#include <algorithm>
#include <initializer_list>
#include <map>
#include <tuple>

namespace peelpack::record {
namespace {

using sheet::Mark;
using sheet::Skill;

/// The pieces one after another.
std::string joined(std::initializer_list<std::string_view> pieces)
{
    std::size_t size = 0;
    for (const std::string_view piece : pieces) {
        size += piece.size();
    }
    std::string all;
    all.reserve(size);
    for (const std::string_view piece : pieces) {
        all += piece;
    }
    return all;
}

std::string filing(std::string_view verb, const std::vector<Choice>& choices)
{
    std::vector<std::string_view> labels;
    for (const Choice& choice : choices) {
        const std::string_view label =
            choice.category ? catalogue::label(*choice.category) : "a category of a newer version";
        if (std::find(labels.begin(), labels.end(), label) == labels.end()) {
            labels.push_back(label);
        }
    }
    return joined({verb, " under ", base::listed(labels, "and"), "."});
}

std::string markIs(Skill skill, std::string_view verb, Mark mark)
{
    return std::string(sheet::label(skill)) + " " + std::string(verb) + " " + std::string(sheet::inWords(mark));
}

std::size_t countOf(const sheet::Marks& marks)
{
    return static_cast<std::size_t>(std::count_if(sheet::allSkills.begin(), sheet::allSkills.end(),
                                                  [&](Skill skill) { return marks.of(skill) != Mark::Unmarked; }));
}

std::string_view inWords(HandOverCause cause)
{
    switch (cause) {
    case HandOverCause::Canceled:
        return "it was canceled";
    case HandOverCause::WrongPin:
        return "the PIN was wrong";
    case HandOverCause::WrongCard:
        return "it was not the right card";
    case HandOverCause::TimedOut:
        return "it took too long";
    }
    return {};
}

struct DecisionWords {
    std::string operator()(const Initial& initial) const
    {
        return initial.confirmed ? "Initialed, and confirmed the signature with the preceptor." : "Initialed.";
    }
    std::string operator()(const Return& /*back*/) const { return "Returned the sheet."; }
    std::string operator()(const ReviewAccepted& accepted) const
    {
        return "Accepted a mark review: " + markIs(accepted.skill, "is", accepted.mark) + ".";
    }
    std::string operator()(const Amend& amend) const
    {
        std::vector<std::string> changes;
        for (const Skill skill : sheet::allSkills) {
            if (const Mark mark = amend.marks.marks.of(skill); mark != Mark::Unmarked) {
                changes.push_back(markIs(skill, "is", mark));
            }
        }
        if (amend.head) {
            changes.emplace_back("the head");
        }
        if (!amend.procedures.empty()) {
            changes.emplace_back("the procedures");
        }
        return "Amended: " + base::listed(changes, "and") + ".";
    }
    std::string operator()(const Refile& refile) const { return filing("Re-filed", refile.choices); }
    std::string operator()(const Void& /*gone*/) const { return "Made the sheet void."; }
};

struct Words {
    bool requestOnly = false;

    std::string operator()(const Opened& opened) const
    {
        return joined({"Opened the sheet: ", base::listed(opened.draft.procedures, "and"), "."});
    }
    std::string operator()(const HeadChanged& changed) const
    {
        return joined({"Changed the sheet: ", base::listed(changed.draft.procedures, "and"), "."});
    }
    std::string operator()(const Withdrawn& /*withdrawn*/) const
    {
        return requestOnly ? "Asked to withdraw the sheet." : "Withdrew the sheet.";
    }
    std::string operator()(const Attested& attested) const
    {
        const std::string_view strength =
            attested.strength == sheet::Strength::None ? "unknown signer" : sheet::id(attested.strength);
        return joined({"Signed by ", attested.name, attested.credential.empty() ? "" : ", ", attested.credential, " (",
                       strength, "): ", base::counted(countOf(attested.marks.marks), "mark", "marks"), "."});
    }
    std::string operator()(const Logged& logged) const { return filing("Logged", logged.choices); }
    std::string operator()(const ReviewAsked& asked) const
    {
        return "Asked for a mark review: " + markIs(asked.skill, "should be", asked.wanted) + ".";
    }
    std::string operator()(const HandOverEnded& ended) const
    {
        const std::string tries =
            ended.wrongTries == 0 ? std::string() : ", " + base::counted(ended.wrongTries, "wrong try", "wrong tries");
        return "The hand-over ended unsigned: " + std::string(inWords(ended.cause)) + tries + ".";
    }
    std::string operator()(const Declined& /*declined*/) const { return "The preceptor declined to sign."; }
    std::string operator()(const Imported& imported) const
    {
        return joined({"Imported from ", imported.source, ": ", base::listed(imported.procedures, "and"), ", ",
                       sheet::inWords(imported.role), "."});
    }
    std::string operator()(const Act& act) const { return std::visit(DecisionWords{}, act.decision); }
};

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
                     std::visit(Words{requestOnly}, event.what),
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
