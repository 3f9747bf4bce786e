#include "tests/support/catch.h"

#include "core/requirement/requirement_set.h"
#include "platform/files/requirement_json.h"
#include "platform/files/resources.h"
#include "tests/support/shipped_sets.h"

#include <algorithm>
#include <string>

using namespace peelpack;
using catalogue::Category;
using catalogue::CategorySet;
using requirement::RequirementSet;

namespace {

constexpr const char* sound = R"({"id": "x", "title": "t", "notApplicable": ["counts"], "assistCounts": true,
  "targets": [{"id": "a", "roles": ["first"], "categories": ["specialties"], "required": 30, "cap": 9,
               "spread": {"specialties": 3, "each": 5}}],
  "limits": [{"category": "eye", "most": 4}]})";

void hasFlaw(RequirementSet set, const std::string& place, const std::string& reason)
{
    const std::vector<requirement::Flaw> flaws = requirement::validate(set);
    CAPTURE(place, reason);
    CHECK(std::any_of(flaws.begin(), flaws.end(), [&](const requirement::Flaw& flaw) {
        return flaw.place == place && flaw.reason.find(reason) != std::string::npos && !flaw.mend.empty();
    }));
}

std::string errorOf(const std::string& text)
{
    const base::Result<RequirementSet> set = files::requirementSetFromJson(text);
    REQUIRE_FALSE(set.ok());
    return set.error().sentence;
}

std::string replaced(std::string text, const std::string& from, const std::string& to)
{
    const std::size_t at = text.find(from);
    REQUIRE(at != std::string::npos);
    return text.replace(at, from.size(), to);
}

} // namespace

// Core Curriculum for Surgical Technology, 6th edition as first issued and revised, Surgical Rotation Case
// Requirements, as restated by the college pages that the sets name; the two local variants from the catalogues that
// they name.
TEST_CASE("The four shipped sets are those of the published table", "[requirement]")
{
    struct Line {
        const char* id;
        std::uint32_t firstGeneral, firstSpecialty, secondGeneral, secondSpecialty, specialties, each;
        std::optional<std::uint32_t> cap;
        std::uint32_t total;
    };
    for (const Line& line :
         {Line{"cap15", 20, 60, 10, 30, 5, 1, 15, 120}, Line{"spread10", 20, 60, 10, 30, 4, 10, {}, 120},
          Line{"cap15-four", 20, 60, 10, 30, 4, 1, 15, 120}, Line{"spread10-140", 30, 60, 20, 30, 4, 10, {}, 140}}) {
        const RequirementSet set = support::shippedSet(line.id);
        CAPTURE(line.id);
        CHECK(set.id == line.id);
        CHECK(requirement::validate(set).empty());
        CHECK(set.notApplicable == sheet::SkillSet::allFirstScrub());
        CHECK_FALSE(set.assistCounts);
        CHECK(set.required() == line.total);
        CHECK(set.source.size() > 40);
        REQUIRE(set.targets.size() == 4);
        CHECK(set.targets[0].required == line.firstGeneral);
        CHECK(set.targets[1].required == line.firstSpecialty);
        CHECK(set.targets[2].required == line.secondGeneral);
        CHECK(set.targets[3].required == line.secondSpecialty);
        CHECK(set.targets[0].isFirstScrub());
        CHECK(set.targets[1].isFirstScrub());
        CHECK(set.targets[2].accepts(sheet::Role::First));
        CHECK(set.targets[3].accepts(sheet::Role::Second));
        CHECK(set.targets[1].categories == CategorySet::specialties());
        CHECK(set.targets[1].cap == line.cap);
        CHECK(set.targets[1].spread == requirement::Spread{line.specialties, line.each});
        for (const std::size_t second : {2U, 3U}) {
            CHECK(set.targets[second].categories.contains(Category::DiagnosticEndoscopy));
            CHECK(set.targets[second].categories.contains(Category::LaborDelivery));
        }
        REQUIRE(set.limits.size() == 2);
        CHECK(set.limits[0] == requirement::Limit{Category::DiagnosticEndoscopy, 10});
        CHECK(set.limits[1] == requirement::Limit{Category::LaborDelivery, 5});
    }
    CHECK(files::shippedSetIds().size() == 4);
}

TEST_CASE("The validator names the place, the reason and the mend", "[requirement]")
{
    const RequirementSet good = files::requirementSetFromJson(sound).value();
    CHECK(requirement::validate(good).empty());
    const auto with = [&](const auto& change) {
        RequirementSet set = good;
        change(set);
        return set;
    };
    hasFlaw(with([](RequirementSet& s) { s.id.clear(); }), "id", "no id");
    hasFlaw(with([](RequirementSet& s) { s.title.clear(); }), "title", "no title");
    hasFlaw(with([](RequirementSet& s) { s.targets.clear(); }), "targets", "no target");
    hasFlaw(with([](RequirementSet& s) { s.targets.resize(9, s.targets[0]); }), "targets", "9 targets");
    hasFlaw(with([](RequirementSet& s) { s.targets.resize(2, s.targets[0]); }), "targets",
            "more than one target has a spread");
    hasFlaw(with([](RequirementSet& s) { s.targets.resize(2, s.targets[0]); }), "targets[1].id", "used twice");
    hasFlaw(with([](RequirementSet& s) { s.targets[0].id.clear(); }), "targets[0].id", "no id");
    hasFlaw(with([](RequirementSet& s) { s.targets[0].acceptsFirst = false; }), "targets[0].roles", "no role");
    hasFlaw(with([](RequirementSet& s) { s.targets[0].categories = {}; }), "targets[0].categories", "no category");
    hasFlaw(with([](RequirementSet& s) { s.targets[0].required = 0; }), "targets[0].required", "0 cases");
    hasFlaw(with([](RequirementSet& s) { s.targets[0].required = 10'001; }), "targets[0].required", "10001 cases");
    hasFlaw(with([](RequirementSet& s) { s.targets[0].cap = 0; }), "targets[0].cap", "cap of 0");
    hasFlaw(with([](RequirementSet& s) { s.targets[0].cap = 2; }), "targets[0].cap", "can never be reached");
    hasFlaw(with([](RequirementSet& s) { s.targets[0].spread->each = 0; }), "targets[0].spread", "reserves no seat");
    hasFlaw(with([](RequirementSet& s) { s.targets[0].spread->specialties = 12; }), "targets[0].spread.specialties",
            "12 specialties");
    hasFlaw(with([](RequirementSet& s) { s.targets[0].spread->each = 11; }), "targets[0].spread", "more than the 30");
    hasFlaw(with([](RequirementSet& s) { s.targets[0].cap = 4; }), "targets[0].spread.each", "the cap of 4");
    hasFlaw(with([](RequirementSet& s) { s.targets[0].categories.add(Category::LaborDelivery); }), "targets[0].spread",
            "no specialty");
    hasFlaw(with([](RequirementSet& s) { s.limits.resize(2, s.limits[0]); }), "limits[1].category", "two limits");
    hasFlaw(with([](RequirementSet& s) { s.limits[0].most = 10'001; }), "limits[0].most", "out of range");
}

TEST_CASE("A set written by hand is read, or explained", "[requirement]")
{
    const RequirementSet set = files::requirementSetFromJson(sound).value();
    CHECK(set.assistCounts);
    CHECK(set.notApplicable.contains(sheet::Skill::Counts));
    CHECK_FALSE(set.notApplicable.contains(sheet::Skill::Setup));
    CHECK(set.targets[0].cap == 9U);
    CHECK(set.limits[0].category == Category::Eye);

    CHECK(errorOf("").find("line 1") != std::string::npos);
    CHECK(errorOf("{\n\"id\": \"x\",\n\"title\" \"t\"}").find("line 3") != std::string::npos);
    CHECK(errorOf("[]").find("no object") != std::string::npos);
    CHECK(errorOf(replaced(sound, "\"title\"", "\"id\"")).find("\"id\" twice") != std::string::npos);
    CHECK(errorOf(replaced(sound, "\"title\"", "\"titel\"")).find("\"titel\" is no known member") != std::string::npos);
    CHECK(errorOf(replaced(sound, "30", "\"30\"")).find("targets[0].required") != std::string::npos);
    CHECK(errorOf(replaced(sound, "30", "-30")).find("targets[0].required") != std::string::npos);
    CHECK(errorOf(replaced(sound, "30", "3.5")).find("targets[0].required") != std::string::npos);
    CHECK(errorOf(replaced(sound, "[\"first\"]", "[\"third\"]")).find("\"third\" is no role") != std::string::npos);
    CHECK(errorOf(replaced(sound, "\"eye\"", "\"foot\"")).find("limits[0].category") != std::string::npos);
    CHECK(errorOf(replaced(sound, "true", "\"yes\"")).find("assistCounts") != std::string::npos);
    CHECK(errorOf(replaced(sound, "[\"counts\"]", "[\"camera\"]")).find("\"camera\" is no first-scrub skill") !=
          std::string::npos);

    // All that is wrong is said at once.
    const std::string several = errorOf(replaced(replaced(sound, "30", "\"30\""), "\"eye\"", "\"foot\""));
    CHECK(several.find("targets[0].required") != std::string::npos);
    CHECK(several.find("limits[0].category") != std::string::npos);
    CHECK_FALSE(files::requirementSet("nosuch").ok());
    CHECK_FALSE(files::requirementSet("./nosuch.json").ok());
}
