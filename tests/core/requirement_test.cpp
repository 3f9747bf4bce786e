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
        const std::vector<std::string> ids{"first-general", "first-specialty", "second-general", "second-specialty"};
        CategorySet apart;
        apart.add(Category::DiagnosticEndoscopy);
        apart.add(Category::LaborDelivery);
        CategorySet general;
        general.add(Category::General);
        const std::vector<CategorySet> categories{general, CategorySet::specialties(), general | apart,
                                                  CategorySet::specialties() | apart};
        for (std::size_t i = 0; i < 4; ++i) {
            CHECK(set.targets[i].id == ids[i]);
            CHECK(set.targets[i].categories == categories[i]);
            CHECK(set.targets[i].accepts(sheet::Role::First));
            CHECK(set.targets[i].accepts(sheet::Role::Second) == (i >= 2));
            CHECK_FALSE(set.targets[i].accepts(sheet::Role::Observed));
            CHECK(set.targets[i].isFirstScrub() == (i < 2));
            CHECK(set.targets[i].cap.has_value() == (i == 1 && line.cap.has_value()));
            CHECK(set.targets[i].spread.has_value() == (i == 1));
        }
        CHECK(set.targets[1].cap == line.cap);
        CHECK(set.targets[1].spread == requirement::Spread{line.specialties, line.each});
        REQUIRE(set.limits.size() == 2);
        CHECK(set.limits[0] == requirement::Limit{Category::DiagnosticEndoscopy, 10});
        CHECK(set.limits[1] == requirement::Limit{Category::LaborDelivery, 5});
    }
    CHECK(files::shippedSetIds() == std::vector<std::string>{"cap15", "spread10", "cap15-four", "spread10-140"});
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
    hasFlaw(with([](RequirementSet& s) { s.targets[0].spread->specialties = 0; }), "targets[0].spread",
            "reserves no seat");
    hasFlaw(with([](RequirementSet& s) {
                s.targets[0].spread = requirement::Spread{2'147'483'648, 2};
            }),
            "targets[0].spread", "more than the 30"); // the product has more than 32 bits
    hasFlaw(with([](RequirementSet& s) { s.targets[0].categories.add(Category::DiagnosticEndoscopy); }),
            "targets[0].spread", "no specialty");
}

TEST_CASE("What is just within the rules has no flaw", "[requirement]")
{
    const RequirementSet good = files::requirementSetFromJson(sound).value();
    const auto isSound = [&](const auto& change) {
        RequirementSet set = good;
        change(set);
        const std::vector<requirement::Flaw> flaws = requirement::validate(set);
        CAPTURE(flaws.empty() ? std::string() : flaws[0].place + ": " + flaws[0].reason);
        CHECK(flaws.empty());
    };
    isSound([](RequirementSet& s) { s.limits.clear(); });
    isSound([](RequirementSet& s) { s.limits[0].most = 0; });
    isSound([](RequirementSet& s) { s.limits[0].most = 10'000; });
    isSound([](RequirementSet& s) { s.targets[0].required = 15; }); // all seats reserved
    isSound([](RequirementSet& s) { s.targets[0].cap.reset(); });
    isSound([](RequirementSet& s) { s.targets[0].cap = 5; });
    isSound([](RequirementSet& s) { s.targets[0].spread->specialties = 6; });
    isSound([](RequirementSet& s) {
        s.targets[0].spread = requirement::Spread{11, 2};
        s.targets[0].cap = 3; // 33 for 30
    });
    isSound([](RequirementSet& s) {
        s.targets[0].cap.reset();
        s.targets[0].required = 10'000;
    });
    isSound([](RequirementSet& s) { s.targets[0].categories.add(Category::General); });
    isSound([](RequirementSet& s) { s.source.clear(); });
    isSound([](RequirementSet& s) {
        s.targets[0].spread.reset();
        s.targets.resize(requirement::mostTargets, s.targets[0]);
        for (std::size_t i = 0; i < s.targets.size(); ++i) {
            s.targets[i].id = "target " + std::to_string(i);
        }
        CHECK(s.required() == 240);
    });
    CHECK(RequirementSet().required() == 0);
}

TEST_CASE("The validator lists every flaw of a set, each once", "[requirement]")
{
    RequirementSet set = files::requirementSetFromJson(sound).value();
    set.id.clear();
    set.title.clear();
    set.targets[0].required = 0;
    set.targets[0].spread.reset();
    set.targets[0].cap = 0;
    set.targets.push_back(set.targets[0]);
    set.targets[1].acceptsFirst = false;
    set.targets[1].categories = {};
    set.limits.push_back({Category::Eye, 10'001});
    std::vector<std::string> places;
    for (const requirement::Flaw& flaw : requirement::validate(set)) {
        places.push_back(flaw.place);
        CHECK_FALSE(flaw.reason.empty());
        CHECK_FALSE(flaw.mend.empty());
    }
    std::sort(places.begin(), places.end());
    CHECK(places == std::vector<std::string>{"id", "limits[1].category", "limits[1].most", "targets[0].cap",
                                             "targets[0].required", "targets[1].cap", "targets[1].categories",
                                             "targets[1].id", "targets[1].required", "targets[1].roles", "title"});
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

    CHECK_FALSE(files::requirementSet("nosuch").ok());
    CHECK_FALSE(files::requirementSet("./nosuch.json").ok());
    CHECK(files::requirementSet("nosuch").error().sentence.find("cap15, spread10, cap15-four or spread10-140") !=
          std::string::npos);
}

TEST_CASE("A member of the wrong type, missing or unknown is named with its place", "[requirement]")
{
    struct Change {
        const char* from;
        const char* to;
        const char* said;
    };
    for (const Change& change : {
             Change{"\"id\": \"x\"", "\"id\": 7", "id: it is no text"},
             Change{"\"title\": \"t\"", "\"title\": null", "title: it is no text"},
             Change{"\"title\": \"t\"", "\"title\": \"t\", \"source\": []", "source: it is no text"},
             Change{"[\"counts\"]", "\"counts\"", "notApplicable: it is no list"},
             Change{"[\"counts\"]", "[1]", "notApplicable: one of the list is no text"},
             Change{"[\"counts\"]", "[\"count\"]", "notApplicable: \"count\" is no first-scrub skill"},
             Change{"true", "1", "assistCounts: it is neither true nor false"},
             Change{"true", "null", "assistCounts: it is neither true nor false"},
             Change{"\"targets\": [", "\"targets\": [7, ", "targets[0]: this is no object"},
             Change{"\"id\": \"a\"", "\"id\": []", "targets[0].id: it is no text"},
             Change{"\"id\": \"a\", ", "", "targets[0].id: it is missing"},
             Change{"\"roles\": [\"first\"], ", "", "targets[0].roles: it is missing"},
             Change{"[\"first\"]", "\"first\"", "targets[0].roles: it is no list"},
             Change{"[\"first\"]", "[\"observed\"]", "targets[0].roles: \"observed\" is no role that counts"},
             Change{"[\"specialties\"]", "{}", "targets[0].categories: it is no list"},
             Change{"[\"specialties\"]", "[\"specialty\"]", "targets[0].categories: \"specialty\" is no category"},
             Change{"30", "true", "targets[0].required: it is no whole number"},
             Change{"30", "4294967296", "targets[0].required: it is no whole number"},
             Change{"30", "99999999999999999999", "targets[0].required: it is no whole number"},
             Change{"30", "3e1", "targets[0].required: it is no whole number"},
             Change{"\"required\": 30, ", "", "targets[0].required: it is missing"},
             Change{"\"cap\": 9", "\"cap\": null", "targets[0].cap: it is no whole number"},
             Change{"\"cap\": 9", "\"caps\": 9", "targets[0]: \"caps\" is no known member"},
             Change{"{\"specialties\": 3, \"each\": 5}", "[3, 5]", "targets[0].spread: this is no object"},
             Change{"\"specialties\": 3, ", "", "targets[0].spread.specialties: it is missing"},
             Change{"\"each\": 5", "\"each\": \"5\"", "targets[0].spread.each: it is no whole number"},
             Change{"\"each\": 5", "\"each\": 5, \"of\": 1", "targets[0].spread: \"of\" is no known member"},
             Change{"[{\"category\": \"eye\", \"most\": 4}]", "{}", "limits: it is no list"},
             Change{"[{\"category\": \"eye\", \"most\": 4}]", "[4]", "limits[0]: this is no object"},
             Change{"\"category\": \"eye\"", "\"category\": \"specialties\"",
                    "limits[0].category: \"specialties\" is no"},
             Change{"\"most\": 4", "\"most\": -4", "limits[0].most: it is no whole number"},
             Change{", \"most\": 4", "", "limits[0].most: it is missing"},
             Change{"\"title\"", "\"Title\"", "the whole: \"Title\" is no known member"},
         }) {
        const std::string sentence = errorOf(replaced(sound, change.from, change.to));
        CAPTURE(sentence, change.said);
        CHECK(sentence.find(std::string("\n  ") + change.said) != std::string::npos);
        CHECK(sentence.ends_with("."));
    }
    CHECK(errorOf("{}").find("targets: there is no list of targets") != std::string::npos);
    CHECK(errorOf(R"({"targets": {}})").find("targets: there is no list of targets") != std::string::npos);
}

TEST_CASE("A member that stands twice is refused wherever it stands", "[requirement]")
{
    CHECK(errorOf(replaced(sound, "\"cap\": 9", "\"cap\": 9, \"cap\": 9")).find("\"cap\" twice") != std::string::npos);
    CHECK(errorOf(replaced(sound, "\"each\": 5", "\"each\": 5, \"each\": 6")).find("\"each\" twice") !=
          std::string::npos);
    CHECK(errorOf(replaced(sound, "\"most\": 4", "\"most\": 4, \"most\": 4")).find("\"most\" twice") !=
          std::string::npos);
    CHECK(errorOf(replaced(sound, "\"limits\"", "\"targets\"")).find("\"targets\" twice") != std::string::npos);
    CHECK(errorOf(replaced(sound, "\"title\"", "\"\\u0069d\"")).find("\"id\" twice") != std::string::npos);
}

TEST_CASE("What is no JSON is refused with its line", "[requirement]")
{
    for (const std::string& text :
         {std::string("x"), std::string("{"), std::string(sound) + "}", replaced(sound, "30,", "30"),
          replaced(sound, "true", "True"), replaced(sound, "\"t\"", "'t'"), replaced(sound, "30", "NaN"),
          replaced(sound, "30", "030"), replaced(sound, "\"t\"", "\"\xC3\""), std::string("// set\n") + sound,
          std::string(100'000, '['), std::string(sound).substr(0, 100)}) {
        const std::string sentence = errorOf(text);
        CAPTURE(sentence);
        CHECK(sentence.find("is no JSON: look at line ") != std::string::npos);
    }
    CHECK(errorOf(replaced(sound, "\"most\"", "most")).find("line 4 ") != std::string::npos);
    for (std::size_t length = 0; length + 1 < std::string_view(sound).size(); ++length) {
        REQUIRE_FALSE(files::requirementSetFromJson(std::string_view(sound).substr(0, length)).ok());
    }
}

TEST_CASE("All that is wrong is said at once", "[requirement]")
{
    const std::string types = errorOf(replaced(replaced(sound, "30", "\"30\""), "\"eye\"", "\"foot\""));
    CHECK(types.find("targets[0].required") != std::string::npos);
    CHECK(types.find("limits[0].category") != std::string::npos);
    const std::string rules = errorOf(replaced(replaced(sound, "30", "0"), "4}", "10001}"));
    CHECK(rules.find("targets[0].required: 0 cases") != std::string::npos);
    CHECK(rules.find("limits[0].most: the limit is out of range") != std::string::npos);
    // A wrong type in one place does not hide a broken rule in another.
    const std::string both = errorOf(replaced(replaced(sound, "true", "\"yes\""), "\"cap\": 9", "\"cap\": 2"));
    CHECK(both.find("assistCounts: it is neither") != std::string::npos);
    CHECK(both.find("targets[0].cap: with 2 cases at most") != std::string::npos);
    const std::string spelling = errorOf(replaced(replaced(sound, "\"title\"", "\"titel\""), "\"x\"", "\"\""));
    CHECK(spelling.find("\"titel\" is no known member") != std::string::npos);
    CHECK(spelling.find("title: it is missing") != std::string::npos);
    CHECK(spelling.find("id: the set has no id") != std::string::npos);
    // And nothing is said twice, nor what only follows from it.
    const auto lines = [](const std::string& text) { return std::count(text.begin(), text.end(), '\n'); };
    CHECK(lines(types) == 2);
    CHECK(lines(both) == 3); // the spread asks for more than that cap, too
    CHECK(lines(spelling) == 3);
    CHECK(lines(errorOf(replaced(sound, "30", "\"30\""))) == 1);
    CHECK(lines(errorOf(replaced(sound, "\"eye\"", "\"foot\""))) == 1);
    CHECK(lines(errorOf("{}")) == 4); // id, title, notApplicable, targets
    CHECK(lines(errorOf(replaced(sound, "{\"category\": \"eye\"",
                                 "{\"category\": \"foot\", \"most\": 1}, {\"category\": \"general\""))) == 1);
}
