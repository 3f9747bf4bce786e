#include "platform/cli/tally_text.h"

#include "core/base/text.h"
#include "core/tally/why_not_counted.h"
#include "platform/english/english.h"

#include <algorithm>
#include <map>

namespace peelpack::cli {
namespace {

using catalogue::categoryAt;
using catalogue::categoryCount;

constexpr std::size_t labelWidth = 30;
constexpr std::size_t nameWidth = 20;
constexpr std::size_t mostExamples = 4;
constexpr std::size_t mostNext = 6;

std::string padded(std::string text, std::size_t width)
{
    text.append(width > text.size() ? width - text.size() : 1, ' ');
    return text;
}

std::string numberOf(std::uint32_t placed, std::uint32_t required)
{
    return std::to_string(placed) + " of " + std::to_string(required);
}

std::string anyOf(catalogue::CategorySet categories)
{
    return english::categoriesInWords(categories, "any specialty", "or");
}

void addTarget(std::string& text, const requirement::Target& target, const tally::TargetCount& count)
{
    text += "  " + english::targetLabel(target) + ": " + numberOf(count.placed, target.required) +
            (count.placed == target.required ? ", done" : "") + "\n";
    text += "    " + strokes(count.placed, target.required, target.isFirstScrub()) + "\n";
    if (target.categories.size() < 2) {
        return;
    }
    for (std::size_t i = 0; i < categoryCount; ++i) {
        if (const std::uint32_t placed = count.byCategory[i]; placed > 0) {
            text += "      " + padded(std::string(label(categoryAt(i))), labelWidth) +
                    padded(std::to_string(placed), 4) + strokes(placed, placed, target.isFirstScrub()) + "\n";
        }
    }
}

std::string rule(const requirement::Target& target)
{
    if (!target.spread) {
        return {};
    }
    std::string text = "at least " + base::counted(target.spread->each, "case", "cases") + " in each of " +
                       base::counted(target.spread->specialties, "specialty", "specialties");
    if (target.cap) {
        text += ", at most " + std::to_string(*target.cap) + " in one";
    }
    return text;
}

void addNext(std::string& text, const requirement::RequirementSet& set, const tally::StudentTally& tally)
{
    std::uint32_t missing = 0;
    for (std::size_t i = 0; i < set.targets.size(); ++i) {
        const std::uint32_t left = set.targets[i].required - tally.best.targets[i].placed;
        missing += left;
        if (left > 0) {
            text += "  Short: " + std::to_string(left) + " in " + english::targetLabel(set.targets[i]) + ".\n";
        }
    }
    if (missing == 0) {
        text += "  Nothing is short: every target is full.\n";
        return;
    }
    text += "  Ask for next:\n";
    std::map<std::pair<std::uint32_t, sheet::Role>, catalogue::CategorySet> groups;
    for (const tally::Need& need : tally.next) {
        if (need.needed > 0) {
            groups[{need.needed, need.role}].add(need.category);
        }
    }
    std::size_t shown = 0;
    for (const auto& [key, categories] : groups) {
        if (shown++ == mostNext) {
            break;
        }
        const auto& [needed, role] = key;
        text += "    " + std::string(sheet::inWords(role)) + " in " + anyOf(categories) + ": ";
        text += needed == 1 ? "the next one counts\n"
                            : "after " + std::to_string(needed) + " of them in one category the count rises by one\n";
    }
    if (groups.empty()) {
        text += "    no single category helps; ask your instructor\n";
    }
}

void addNotCounted(std::string& text, const sheet::SheetBook& book, const requirement::RequirementSet& set,
                   const tally::StudentTally& tally, const tally::Count& count)
{
    std::vector<std::pair<std::string, std::vector<std::size_t>>> reasons;
    for (std::size_t i = 0; i < tally.candidates.size(); ++i) {
        if (count.seats[i].counts()) {
            continue;
        }
        const std::string why = tally::sentence(tally::whyNotCounted(set, tally, count, i));
        const auto known =
            std::find_if(reasons.begin(), reasons.end(), [&](const auto& reason) { return reason.first == why; });
        if (known == reasons.end()) {
            reasons.push_back({why, {i}});
        } else {
            known->second.push_back(i);
        }
    }
    if (reasons.empty()) {
        return;
    }
    text += "  Not counted:\n";
    for (const auto& [why, cases] : reasons) {
        text += "    " + base::counted(cases.size(), "case", "cases") + ": " + why + "\n";
        for (std::size_t i = 0; i < cases.size() && i < mostExamples; ++i) {
            const tally::Candidate& candidate = tally.candidates[cases[i]];
            text += "      " + candidate.sheet->date.iso() + "  " + std::string(candidate.sheet->id) + "  " +
                    std::string(book.procedureText(candidate.procedure)) + "\n";
        }
        if (cases.size() > mostExamples) {
            text += "      and " + std::to_string(cases.size() - mostExamples) + " more\n";
        }
    }
}

void addRefiled(std::string& text, const sheet::SheetBook& book, const tally::StudentTally& tally)
{
    std::vector<std::size_t> moved;
    for (std::size_t i = 0; i < tally.candidates.size(); ++i) {
        const tally::Seat seat = tally.best.seats[i];
        if (seat.counts() && seat.category != static_cast<std::int8_t>(indexOf(tally.candidates[i].item.logged))) {
            moved.push_back(i);
        }
    }
    if (moved.empty()) {
        return;
    }
    text += "  Counts best under another category than logged (an instructor re-files it):\n";
    for (std::size_t i = 0; i < moved.size() && i < mostExamples; ++i) {
        const tally::Candidate& candidate = tally.candidates[moved[i]];
        const auto category = static_cast<std::uint8_t>(tally.best.seats[moved[i]].category); // counts: not negative
        text += "      " + candidate.sheet->date.iso() + "  " + std::string(candidate.sheet->id) + "  " +
                std::string(book.procedureText(candidate.procedure)) + ": " +
                std::string(label(candidate.item.logged)) + " -> " + std::string(label(categoryAt(category))) + "\n";
    }
    if (moved.size() > mostExamples) {
        text += "      and " + std::to_string(moved.size() - mostExamples) + " more\n";
    }
}

} // namespace

std::string strokes(std::uint32_t placed, std::uint32_t required, bool firstScrub)
{
    std::string text;
    for (std::uint32_t i = 0; i < std::max(placed, required); ++i) {
        if (i > 0 && i % 5 == 0) {
            text += ' ';
        }
        const bool crossing = i % 5 == 4;
        text += i >= placed ? '.' : (crossing ? '/' : (firstScrub ? '|' : ':'));
    }
    return text;
}

std::string studentText(const sheet::SheetBook& book, const sheet::BookStudent& student,
                        const requirement::RequirementSet& set, const tally::StudentTally& tally,
                        const tally::Wanted& wanted, const std::string& under)
{
    const tally::Count& count = wanted.best ? tally.best : tally.asLogged;
    std::string text(student.name);
    text += (under.empty() ? "" : "\n  " + under) + "\n  " +
            numberOf(static_cast<std::uint32_t>(count.value.counted), set.required()) + " counted, " +
            std::to_string(count.value.firstScrub) + " of them in first-scrub targets; from " +
            base::counted(tally.sheets, "sheet", "sheets") + " (" +
            base::counted(tally.observed, "observation", "observations") + ", " + std::to_string(tally.unmarked) +
            " not fully marked, " + std::to_string(tally.canceled) + " canceled)\n";
    if (wanted.best && wanted.asLogged && tally.asLogged.value.counted != tally.best.value.counted) {
        text += "  As logged " + std::to_string(tally.asLogged.value.counted) + " count.\n";
    } else if (wanted.best && wanted.asLogged) {
        text += "  As logged it is as many.\n";
    }
    text += '\n';
    for (std::size_t i = 0; i < set.targets.size(); ++i) {
        addTarget(text, set.targets[i], count.targets[i]);
        if (const std::string spread = rule(set.targets[i]); !spread.empty()) {
            text += "      (" + spread + ")\n";
        }
    }
    text += '\n';
    if (wanted.next) {
        addNext(text, set, tally);
    }
    if (wanted.best) {
        addRefiled(text, book, tally);
    }
    addNotCounted(text, book, set, tally, count);
    return text + '\n';
}

namespace {

std::string whoseAndWhy(const session::SetByName& named)
{
    std::string text = named.className.empty() ? "every class" : named.className;
    return text + (named.reason.empty() ? "" : ": " + named.reason);
}

} // namespace

std::string setInForceText(const session::SetByName& named)
{
    return "Set in force: " + named.id +
           (named.from ? ", since " + named.from->iso() + " (" + whoseAndWhy(named) + ")." : ".");
}

std::string otherSetText(const session::OtherSet& other)
{
    return other.set.id + (other.coming ? ", from " + other.change.iso() + " on (" + whoseAndWhy(other.set) + ")"
                                        : ", in force before " + other.change.iso());
}

std::string otherTallyText(const session::OtherSet& other, const requirement::RequirementSet* set,
                           const tally::StudentTally& tally, const tally::Wanted& wanted)
{
    std::string text = "  Under " + otherSetText(other) + ": ";
    if (set == nullptr) {
        return text + "not counted, that set is not at hand.\n\n";
    }
    const tally::Count& count = wanted.best ? tally.best : tally.asLogged;
    text += numberOf(static_cast<std::uint32_t>(count.value.counted), set->required()) + " counted\n";
    for (std::size_t i = 0; i < set->targets.size(); ++i) {
        addTarget(text, set->targets[i], count.targets[i]);
    }
    return text + '\n';
}

std::string briefHeader(const requirement::RequirementSet& set)
{
    std::string text;
    for (std::size_t i = 0; i < set.targets.size(); ++i) {
        text += "(" + std::to_string(i + 1) + ") " + english::targetLabel(set.targets[i]) + "\n";
    }
    text += "\n" + padded("Student", nameWidth) + padded("Counted", 12);
    for (std::size_t i = 0; i < set.targets.size(); ++i) {
        text += padded("(" + std::to_string(i + 1) + ")", 10);
    }
    return text + "Ask for next\n";
}

std::string briefLine(const sheet::BookStudent& student, const requirement::RequirementSet& set,
                      const tally::StudentTally& tally, const tally::Wanted& wanted)
{
    const tally::Count& count = wanted.best ? tally.best : tally.asLogged;
    std::string text = padded(std::string(student.name), nameWidth) +
                       padded(numberOf(static_cast<std::uint32_t>(count.value.counted), set.required()), 12);
    for (std::size_t i = 0; i < set.targets.size(); ++i) {
        text += padded(numberOf(count.targets[i].placed, set.targets[i].required), 10);
    }
    if (count.value.counted == static_cast<std::int32_t>(set.required())) {
        return text + "complete\n";
    }
    if (!tally.next.empty() && tally.next.front().needed > 0) {
        const tally::Need& best = tally.next.front();
        catalogue::CategorySet alike;
        for (const tally::Need& need : tally.next) {
            if (need.needed == best.needed && need.role == best.role) {
                alike.add(need.category);
            }
        }
        text += std::string(sheet::inWords(best.role)) + " in " + anyOf(alike);
        text += best.needed > 1 ? " (" + std::to_string(best.needed) + " until one counts)" : "";
    }
    return text + '\n';
}

std::string briefOtherLine(const session::OtherSet& other, const requirement::RequirementSet* set,
                           const tally::StudentTally& tally, const tally::Wanted& wanted)
{
    const tally::Count& count = wanted.best ? tally.best : tally.asLogged;
    return "  under " + otherSetText(other) + ": " +
           (set == nullptr ? "that set is not at hand"
                           : numberOf(static_cast<std::uint32_t>(count.value.counted), set->required())) +
           "\n";
}

namespace {

/// Broken between words so that no line is longer than `width` bytes, unless a word is.
std::string wrapped(std::string_view text, std::size_t width)
{
    std::string out;
    std::size_t column = 0;
    for (const std::string_view word : base::split(text, ' ')) {
        if (column > 0 && column + 1 + word.size() > width) {
            out += '\n';
            column = 0;
        } else if (column > 0) {
            out += ' ';
            ++column;
        }
        out += word;
        column += word.size();
    }
    return out;
}

} // namespace

std::string tallyFooter(const std::vector<const requirement::RequirementSet*>& sets, tally::Level level)
{
    constexpr std::size_t width = 100;
    std::string requirements;
    std::string sources;
    for (const requirement::RequirementSet* set : sets) {
        requirements +=
            wrapped("Requirements: " + set->id + ", " + set->title + ". Level: " + std::string(id(level)) + ".",
                    width) +
            "\n";
        sources += wrapped("Source: " + (set->source.empty() ? std::string("not named") : set->source), width) + "\n";
    }
    return requirements + "Strokes: | first scrub, : first or second scrub, / closes a five, . still needed.\n" +
           sources +
           wrapped("Only initialed cases support completion; the program's director decides which requirements are in "
                   "force "
                   "and who has met them.",
                   width) +
           "\n";
}

} // namespace peelpack::cli
