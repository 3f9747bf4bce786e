#include "tests/support/catch.h"

#include "core/role/classifier.h"

#include <array>
#include <string>
#include <vector>

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
    const auto rulesOf = [](std::initializer_list<Skill> skills) {
        role::RoleRules rules{sheet::SkillSet()};
        for (const Skill skill : skills) {
            rules.notApplicableStands.add(skill);
        }
        return rules;
    };
    const std::vector<role::RoleRules> allRules{
        {},
        rulesOf({}),
        rulesOf({Skill::Counts}),
        rulesOf({Skill::Verify, Skill::Setup}),
        rulesOf({Skill::Counts, Skill::Technique}),
        rulesOf({Skill::Verify, Skill::Setup, Skill::Counts, Skill::Pass}),
        rulesOf({Skill::Sponge, Skill::Camera}), // no first-scrub skills: N/A on them is never Yes
    };
    for (const role::RoleRules& rules : allRules) {
        std::size_t complete = 0;
        std::size_t incomplete = 0;
        for (std::uint32_t number = 0; number < 1U << 20U; ++number) {
            const Marks marks = patternOf(number);
            const Outcome outcome = role::classify(marks, false, rules);
            (outcome == Outcome::Unmarked ? incomplete : complete) += 1;
            if (outcome != restated(marks, rules)) {
                CAPTURE(number);
                REQUIRE(outcome == restated(marks, rules));
            }
        }
        CHECK(complete == 59'049);               // 3^10
        CHECK(incomplete == 1'048'576 - 59'049); // 4^10 - 3^10
    }
}

TEST_CASE("N/A never makes a case count by itself", "[role]")
{
    for (const char* letters : {"aaaaaaaaaa", "aaaaannnnn", "nnnnnaaaaa", "naaaaaaaaa", "nnnnnnnnnn"}) {
        CAPTURE(letters);
        CHECK(role::classify(marksFrom(letters), false, {}) == Outcome::Observed);
    }
    CHECK(role::classify(marksFrom("yaaaaaaaaa"), false, {}) == Outcome::First);
    CHECK(role::classify(marksFrom("yaaaaaaaaa"), false, {sheet::SkillSet()}) == Outcome::Observed);
    CHECK(role::classify(marksFrom("yyyynaaaaa"), false, {}) == Outcome::Observed);
    CHECK(role::classify(marksFrom("yyyynaaaay"), false, {}) == Outcome::Second);
    CHECK(role::classify(marksFrom("yyyyyyyyy-"), false, {}) == Outcome::Unmarked);
    CHECK(role::classify(marksFrom("-yyyyyyyyy"), false, {}) == Outcome::Unmarked);
}

TEST_CASE("A case canceled before incision has no role, whatever its marks", "[role]")
{
    for (std::uint32_t number = 0; number < 1U << 20U; number += 977) {
        REQUIRE(role::classify(patternOf(number), true, {}) == Outcome::Canceled);
        REQUIRE(role::reason(patternOf(number), true, {}) ==
                "The case was canceled before incision, so it has no role; the sheet stays, for practice.");
        REQUIRE(role::questions(patternOf(number), true, false).empty());
    }
    CHECK(role::roleOf(Outcome::First) == sheet::Role::First);
    CHECK(role::roleOf(Outcome::Second) == sheet::Role::Second);
    CHECK(role::roleOf(Outcome::Observed) == sheet::Role::Observed);
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
}

TEST_CASE("The worked sentences stand as they are", "[role]")
{
    const auto why = [](std::string_view letters, const role::RoleRules& rules = {}) {
        return role::reason(marksFrom(letters), false, rules);
    };
    CHECK(why("yyyyyynnaa") == "All five first-scrub skills are Yes, so it is first scrub; the second-scrub marks do "
                               "not change that.");
    CHECK(why("ayayynnnnn") ==
          "Every first-scrub skill is Yes or stands as N/A (\"Checked supplies and equipment\" and "
          "\"Counts, initial and closing\"), so it is first scrub; the second-scrub marks do not "
          "change that.");
    CHECK(why("yynyyynnnn") ==
          "It is not first scrub because \"Counts, initial and closing\" is No; it is second scrub "
          "because \"Sponged the wound\" is Yes.");
    CHECK(
        why("nnnyyynyny") ==
        "It is not first scrub because \"Checked supplies and equipment\", \"Set up the sterile field\" and \"Counts, "
        "initial and closing\" are No; it is second scrub because \"Sponged the wound\", \"Cut suture\" and \"Handled "
        "the camera\" are Yes.");
    CHECK(why("aaaaannnnn") == "It is an observation, recorded but not counted: no first-scrub skill is Yes, and no "
                               "second-scrub skill is Yes.");
    CHECK(why("yyayyaaaaa", {sheet::SkillSet()}) ==
          "It is an observation, recorded but not counted: \"Counts, initial and closing\" is N/A, which the "
          "requirements in force do not let stand for Yes, and no second-scrub skill is Yes.");
    CHECK(why("----------") == "No skill is marked yet, so there is no role.");
    CHECK(why("yyyy-yyyy-") ==
          "\"Kept sterile technique\" and \"Handled the camera\" are not marked yet, so there is no role.");
}

TEST_CASE("Every pattern has a reason, one sentence, that says its role", "[role]")
{
    constexpr std::array<std::string_view, 4> says{"so it is first scrub", "it is second scrub because",
                                                   "It is an observation", "so there is no role"};
    for (const role::RoleRules& rules : {role::RoleRules{}, role::RoleRules{sheet::SkillSet()}}) {
        for (std::uint32_t number = 0; number < 1U << 20U; ++number) {
            const Marks marks = patternOf(number);
            if (!marks.complete() && number % 5 != 0) {
                continue; // every complete pattern, every fifth of the others
            }
            const std::string sentence = role::reason(marks, false, rules);
            const auto said = says[static_cast<std::size_t>(role::classify(marks, false, rules))];
            const bool sound = sentence.size() > 20 && sentence.find('.') == sentence.size() - 1 &&
                               sentence.find(said) != std::string::npos && sentence.find("  ") == std::string::npos;
            if (!sound) {
                FAIL(number << ": " << sentence);
            }
        }
    }
}

// Counting rules, section 1: N/A on a first-scrub skill other than counts; N/A on counts unless the catalogue knows.
TEST_CASE("The questions of all patterns are those of the rule", "[role]")
{
    for (std::uint32_t number = 0; number < 1U << 20U; ++number) {
        const bool checked = number < 1U << 10U || number % 101 == 0; // all of the first five marks, some of the others
        for (const bool oftenNotNeeded : {false, true}) {
            if (!checked) {
                continue;
            }
            const Marks marks = patternOf(number);
            std::vector<Skill> expected;
            for (const Skill skill : {Skill::Verify, Skill::Setup, Skill::Counts, Skill::Pass, Skill::Technique}) {
                if (marks.of(skill) == Mark::NotApplicable && !(skill == Skill::Counts && oftenNotNeeded)) {
                    expected.push_back(skill);
                }
            }
            const std::vector<role::Question> asked = role::questions(marks, false, oftenNotNeeded);
            CAPTURE(number, oftenNotNeeded);
            REQUIRE(asked.size() == expected.size());
            for (std::size_t i = 0; i < asked.size(); ++i) {
                REQUIRE(asked[i].skill == expected[i]);
                REQUIRE((asked[i].kind == role::QuestionKind::NotApplicableCounts) == (expected[i] == Skill::Counts));
                REQUIRE(asked[i].sentence.ends_with("?"));
            }
        }
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
