#include "tests/support/catch.h"

#include "core/role/classifier.h"

#include <string>

using namespace peelpack;
using role::Outcome;
using sheet::Mark;
using sheet::Marks;
using sheet::Skill;

namespace {

Marks patternOf(std::uint32_t number)
{
    Marks marks;
    for (const Skill skill : sheet::allSkills) {
        marks.set(skill, static_cast<Mark>(number & 3U));
        number >>= 2U;
    }
    return marks;
}

/// The rule of counting rules, section 1, once more and in another way: by tallying marks.
Outcome restated(const Marks& marks, const role::RoleRules& rules)
{
    int unmarked = 0;
    int firstYes = 0;
    int firstLacking = 0;
    int secondYes = 0;
    for (unsigned i = 0; i < 10; ++i) {
        const auto skill = static_cast<Skill>(i);
        const Mark mark = marks.of(skill);
        unmarked += mark == Mark::Unmarked ? 1 : 0;
        if (i < 5) {
            firstYes += mark == Mark::Yes ? 1 : 0;
            const bool stands = mark == Mark::NotApplicable && rules.notApplicableStands.contains(skill);
            firstLacking += mark == Mark::Yes || stands ? 0 : 1;
        } else {
            secondYes += mark == Mark::Yes ? 1 : 0;
        }
    }
    if (unmarked > 0) {
        return Outcome::Unmarked;
    }
    if (firstLacking == 0 && firstYes > 0) {
        return Outcome::First;
    }
    return secondYes > 0 ? Outcome::Second : Outcome::Observed;
}

Marks marksFrom(std::string_view letters) // y n a and -, in the order of the skills
{
    Marks marks;
    for (std::size_t i = 0; i < letters.size(); ++i) {
        const Mark mark = letters[i] == 'y'   ? Mark::Yes
                          : letters[i] == 'n' ? Mark::No
                          : letters[i] == 'a' ? Mark::NotApplicable
                                              : Mark::Unmarked;
        marks.set(sheet::allSkills[i], mark);
    }
    return marks;
}

} // namespace

TEST_CASE("All 4^10 mark patterns have the role of the rule", "[role]")
{
    std::vector<role::RoleRules> allRules{{}, {sheet::SkillSet()}};
    role::RoleRules countsOnly{sheet::SkillSet()};
    countsOnly.notApplicableStands.add(Skill::Counts);
    allRules.push_back(countsOnly);
    std::size_t complete = 0;
    for (const role::RoleRules& rules : allRules) {
        for (std::uint32_t number = 0; number < 1U << 20U; ++number) {
            const Marks marks = patternOf(number);
            const Outcome outcome = role::classify(marks, false, rules);
            complete += outcome != Outcome::Unmarked ? 1 : 0;
            if (outcome != restated(marks, rules)) {
                CAPTURE(number);
                REQUIRE(outcome == restated(marks, rules));
            }
        }
    }
    CHECK(complete == 3 * 59'049); // 3^10 complete patterns under each of the rules
}

TEST_CASE("A case canceled before incision has no role, whatever its marks", "[role]")
{
    for (std::uint32_t number = 0; number < 1U << 20U; number += 977) {
        REQUIRE(role::classify(patternOf(number), true, {}) == Outcome::Canceled);
    }
    CHECK_FALSE(role::roleOf(Outcome::Canceled).has_value());
    CHECK_FALSE(role::roleOf(Outcome::Unmarked).has_value());
}

TEST_CASE("The reason is a sentence that names the marks that decide", "[role]")
{
    const auto says = [](std::string_view letters, const char* part) {
        const std::string sentence = role::reason(marksFrom(letters), false, {});
        CAPTURE(sentence);
        CHECK(sentence.find(part) != std::string::npos);
        CHECK(sentence.ends_with("."));
    };
    says("yyyyynnnnn", "All five first-scrub skills are Yes");
    says("yyayynnnnn", "\"Counts, initial and closing\"");
    says("ynyyyynnnn", "\"Set up the sterile field\" is No");
    says("nnyyyynnnn", "\"Checked supplies and equipment\" and \"Set up the sterile field\" are No");
    says("aaaaaynnnn", "no first-scrub skill is Yes");
    says("nnnnnnnnna", "observation");
    says("----------", "No skill is marked yet");
    says("yyyyyyyyy-", "\"Handled the camera\" is not marked yet");
    CHECK(role::reason(marksFrom("yyyyyyyyyy"), true, {}).find("canceled before incision") != std::string::npos);
    CHECK(role::reason(marksFrom("yyayyynnnn"), false, {sheet::SkillSet()}).find("do not let stand for Yes") !=
          std::string::npos);
    for (std::uint32_t number = 0; number < 1U << 20U; number += 1009) {
        REQUIRE(role::reason(patternOf(number), false, {}).ends_with("."));
    }
}

TEST_CASE("N/A on a first-scrub skill raises a question and never changes the role", "[role]")
{
    CHECK(role::questions(marksFrom("yyyyyaaaaa"), false, false).empty());
    CHECK(role::questions(marksFrom("yyayynnnnn"), false, true).empty()); // counts, where the catalogue knows
    const auto counts = role::questions(marksFrom("yyayynnnnn"), false, false);
    REQUIRE(counts.size() == 1);
    CHECK(counts[0].kind == role::QuestionKind::NotApplicableCounts);
    const auto two = role::questions(marksFrom("aayyynnnnn"), false, true);
    REQUIRE(two.size() == 2);
    CHECK(two[0].skill == Skill::Verify);
    CHECK(two[0].kind == role::QuestionKind::NotApplicableSkill);
    CHECK(role::questions(marksFrom("aaaaannnnn"), true, false).empty()); // canceled
    CHECK(role::classify(marksFrom("aayyynnnnn"), false, {}) == Outcome::First);
}
