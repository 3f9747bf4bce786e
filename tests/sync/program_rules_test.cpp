#include "sync/merge/contents.h"
#include "sync/trust/program_rules.h"
#include "tests/sync/support/catch.h"
#include "tests/sync/support/rules.h"

#include <algorithm>
#include <fstream>
#include <numeric>
#include <sstream>

namespace peelpack::test {
namespace {

using journal::Reason;
using Standing = trust::Judgment::Standing;

constexpr auto className = "Class of 2027";

trust::ProgramRules rulesOf(const merge::Ledger& ledger)
{
    return trust::rulesInForce(ledger.authority(), ledger.feeds());
}

/// A program with a coordinator.
struct Program {
    World world;
    keys::DeviceKey coordinator = deviceOf(0x61);

    Program()
    {
        world.setUp();
        world.append(world.instructor, world.programStream,
                     world.grant(idOf(0x60), journal::Role::Coordinator, coordinator));
    }

    journal::Position say(const keys::DeviceKey& device, const journal::Payload& payload)
    {
        return world.append(device, world.programStream, payload);
    }
    journal::Position sayAt(const keys::DeviceKey& device, const journal::Payload& payload, std::int64_t at)
    {
        return world.append(device, world.programStream, payload, {minute(at), std::nullopt});
    }
    [[nodiscard]] std::string setOn(const std::vector<std::string>& classes, const char* day) const
    {
        const trust::ProgramRules rules = rulesOf(world.all);
        const auto set = trust::setOn(rules, classes, dayOf(day));
        return set ? set->id : "none";
    }
};

/// What the rules say, without where.
std::string said(const trust::ProgramRules& rules)
{
    std::ostringstream text;
    text << (rules.policy() != nullptr ? rules.policy()->rule.requirementSet : "none");
    for (const auto& change : rules.changes) {
        text << " | " << change.rule.className << ' ' << change.rule.from.iso() << ' ' << change.rule.requirementSet;
    }
    for (const auto& [name, days] : rules.days) {
        text << " | " << name;
        for (const journal::ClinicalDay& day : days.rule.days) {
            text << ' ' << day.date.iso();
        }
    }
    for (const auto& site : rules.sites ? rules.sites->rule.sites : std::vector<journal::Site>()) {
        text << " | " << site.name;
    }
    for (const auto& [person, standing] : rules.standings) {
        text << " | " << keys::hex(person.view()).substr(0, 2) << (standing.rule.active ? " active" : " not active");
    }
    text << " | " << (rules.whoMaySign ? rules.whoMaySign->rule.signers.size() : 0);
    if (rules.overlay) {
        text << " | " << std::string(rules.overlay->rule.table.begin(), rules.overlay->rule.table.end());
    }
    return text.str();
}

/// Much that contradicts itself: two writers about the same, two classes, a director's word against staff's.
void fill(Program& program)
{
    World& world = program.world;
    const auto first = program.say(world.director, requirementsChange({}, className, "2026-03-01", "spread10"));
    program.say(world.director, requirementsChange(first.hash, {}, "2026-04-01", "cap15-four"));
    const auto days = program.say(program.coordinator, daysOf(className, {"2026-03-02"}));
    program.say(world.instructor, daysOf(className, {"2026-03-03"}, days.hash));
    program.say(world.secondInstructor, daysOf(className, {"2026-03-04"}, days.hash));
    program.say(world.secondInstructor, daysOf({}, {"2026-05-01"}));
    program.say(program.coordinator, sitesOf({"North Pavilion"}));
    program.say(world.director, sitesOf({"North Pavilion", "South Annex"}));
    program.say(world.director, journal::WhoMaySign{{}, {{"CST", journal::signsEveryRole}}});
    const auto standing =
        program.say(world.instructor, journal::PreceptorStanding{{}, world.preceptorId, std::nullopt, true});
    program.say(program.coordinator,
                journal::PreceptorStanding{standing.hash, world.preceptorId, dayOf("2026-02-01"), false});
    program.say(world.secondInstructor,
                journal::PreceptorStanding{standing.hash, world.preceptorId, dayOf("2026-02-09"), true});
    program.say(world.director, journal::PreceptorStanding{{}, idOf(0x41), dayOf("2026-02-02"), true});
    const auto overlay = program.say(world.director, overlayOf("own-one\tOwn procedure"));
    program.say(world.director, overlayOf("own-one\tAnother name", overlay.hash));
}

/// Whether this is, to the byte, the volume that is kept in a file of fixtures/journal; else it is left beside the
/// test.
bool isKept(const keys::Bytes& volume, const std::string& name)
{
    std::ifstream file(std::string(PEELPACK_FIXTURES) + "/journal/" + name, std::ios::binary);
    std::ostringstream kept;
    kept << file.rdbuf();
    const std::string actual(volume.begin(), volume.end());
    if (kept.str() != actual) {
        std::ofstream(name + ".actual", std::ios::binary) << actual;
    }
    return kept.str() == actual;
}

} // namespace

TEST_CASE("Without rules of its own a program goes by the policy alone", "[rules]")
{
    Program program;
    CHECK(said(rulesOf(program.world.all)) == "cap15 | 0");
    CHECK(program.setOn({className}, "2026-03-01") == "cap15");
    CHECK(program.setOn({}, "2199-12-31") == "cap15");
    const trust::ProgramRules rules = rulesOf(program.world.all);
    CHECK(trust::changeDays(rules, {className}).empty());
    CHECK(trust::clinicalDaysOf(rules, {className}).empty());
    CHECK_FALSE(trust::setOn({}, {className}, dayOf("2026-03-01")).has_value());
}

TEST_CASE("A set is in force from its day on, for its class, and every entry on the walk stays in force", "[rules]")
{
    Program program;
    World& world = program.world;
    const auto first = program.say(world.director, requirementsChange({}, className, "2026-03-01", "spread10"));
    CHECK(program.setOn({className}, "2026-02-28") == "cap15");
    CHECK(program.setOn({className}, "2026-03-01") == "spread10");
    CHECK(program.setOn({"Fall class"}, "2026-03-01") == "cap15");
    CHECK(program.setOn({}, "2026-03-01") == "cap15");
    CHECK(program.setOn({"A class before", className}, "2026-03-01") == "spread10");

    // Later on the walk, and from an earlier day: the latest day decides, not the order of writing.
    const auto second = program.say(world.director, requirementsChange(first.hash, {}, "2026-02-01", "cap15-four"));
    CHECK(program.setOn({className}, "2026-02-15") == "cap15-four");
    CHECK(program.setOn({className}, "2026-03-15") == "spread10");
    CHECK(program.setOn({"Fall class"}, "2026-03-15") == "cap15-four");
    CHECK(program.setOn({}, "2026-03-15") == "cap15-four");

    // From the same day: the later on the walk.
    const auto third =
        program.say(world.director, requirementsChange(second.hash, className, "2026-03-01", "spread10-140"));
    CHECK(program.setOn({className}, "2026-03-15") == "spread10-140");
    const trust::ProgramRules rules = rulesOf(world.all);
    CHECK(trust::setOn(rules, {className}, dayOf("2026-03-15"))->change->entry == third);
    CHECK(trust::changeDays(rules, {className}) == std::vector{dayOf("2026-02-01"), dayOf("2026-03-01")});
    CHECK(trust::changeDays(rules, {}) == std::vector{dayOf("2026-02-01")});

    // Of several classes the first that has one.
    program.say(world.director, requirementsChange(third.hash, "B", "2026-05-01", "two"));
    CHECK(program.setOn({className, "B"}, "2026-05-02") == "spread10-140");
    CHECK(program.setOn({"B", className}, "2026-05-02") == "two");
}

TEST_CASE("A change is the latest by chain, not by time, and no older one comes back", "[rules][attack]")
{
    Program program;
    World& world = program.world;
    const auto first = program.say(world.director, sitesOf({"North Pavilion"}));
    const auto second = program.sayAt(world.director, sitesOf({"South Annex"}, first.hash), -900'000);
    CHECK(rulesOf(world.all).sites->entry == second);
    const auto again = offer(world.all, runOf(world.all, first.feed));
    CHECK(again.report.taken == 0);
    CHECK(rulesOf(again.ledger).sites->entry == second);

    // The older rule signed anew, to stand where it stood: of the two on zero the smaller hash, and the walk goes on
    // from there alone.
    const auto replayed = program.sayAt(world.director, sitesOf({"North Pavilion"}), 900'000);
    const bool theirs = replayed.hash < first.hash;
    CHECK(rulesOf(world.all).sites->entry == (theirs ? replayed : second));

    const auto change = program.say(world.director, requirementsChange({}, className, "2026-03-01", "spread10"));
    const auto later =
        program.sayAt(world.director, requirementsChange(change.hash, className, "2026-03-01", "cap15"), -900'000);
    CHECK(trust::setOn(rulesOf(world.all), {className}, dayOf("2026-03-02"))->id == "cap15");
    CHECK(rulesOf(world.all).changes.back().entry == later);
}

TEST_CASE("A rule by somebody who may not write it counts for nothing", "[rules][attack]")
{
    Program program;
    World& world = program.world;
    const auto refused = trust::Judgment{Standing::Refused, Reason::RoleMayNotWrite};
    for (const keys::DeviceKey* device : {&world.instructor, &program.coordinator}) {
        const auto change = program.say(*device, requirementsChange({}, className, "2026-01-01", "one-case"));
        CHECK(judgment(world.all, change) == refused);
        CHECK(judgment(world.all, program.say(*device, journal::WhoMaySign{{}, {{"Anybody", 7}}})) == refused);
    }
    for (const journal::Payload& rule : everyRule()) {
        CHECK(judgment(world.all, program.say(world.student, rule)) == refused);
        CHECK(judgment(world.all, program.say(deviceOf(0x71), rule)) ==
              trust::Judgment{Standing::Aside, Reason::NoGrant});
    }
    CHECK(said(rulesOf(world.all)) == "cap15 | 0");
    const auto by = program.say(program.coordinator, sitesOf({"North Pavilion"}));
    CHECK(rulesOf(world.all).sites->entry == by);
}

TEST_CASE("Of two that stand on the same the director's goes before, then the smaller hash", "[rules]")
{
    Program program;
    World& world = program.world;
    const merge::Ledger before = world.all;
    bool smaller = false;
    bool larger = false;
    for (int i = 0; !(smaller && larger); ++i) {
        world.all = before;
        const auto staffs = program.say(program.coordinator, sitesOf({"Site " + std::to_string(i)}));
        const auto directors = program.say(world.director, sitesOf({"North Pavilion"}));
        (staffs.hash < directors.hash ? smaller : larger) = true;
        CHECK(rulesOf(world.all).sites->entry == directors);
        // What stands on the branch that is not taken does not count.
        program.say(program.coordinator, sitesOf({"Elsewhere"}, staffs.hash));
        CHECK(rulesOf(world.all).sites->entry == directors);
    }
    const auto one = program.say(world.instructor, daysOf(className, {"2026-03-02"}));
    const auto two = program.say(world.secondInstructor, daysOf(className, {"2026-03-03"}));
    CHECK(rulesOf(world.all).days.at(className).entry ==
          std::min(one, two, [](const auto& a, const auto& b) { return a.hash < b.hash; }));
}

TEST_CASE("Clinical days have a chain for each class, a standing for each person", "[rules]")
{
    Program program;
    World& world = program.world;
    const auto spring = program.say(world.instructor, daysOf(className, {"2026-03-02"}));
    program.say(world.instructor, daysOf("B", {"2026-03-09"}));
    program.say(world.instructor, daysOf({}, {"2026-03-05"}));
    // It stands on an entry of another class: part of no chain.
    program.say(world.instructor, daysOf("C", {"2026-03-30"}, spring.hash));
    const trust::ProgramRules rules = rulesOf(world.all);
    CHECK(rules.days.size() == 3);
    const auto dates = [&](const std::vector<std::string>& classes) {
        std::vector<std::string> found;
        for (const journal::ClinicalDay& day : trust::clinicalDaysOf(rules, classes)) {
            found.push_back(day.date.iso());
        }
        return found;
    };
    CHECK(dates({className}) == std::vector<std::string>{"2026-03-02", "2026-03-05"});
    CHECK(dates({className, "B"}) == std::vector<std::string>{"2026-03-02", "2026-03-05", "2026-03-09"});
    CHECK(dates({"C"}) == std::vector<std::string>{"2026-03-05"});

    const auto first = program.say(world.director, journal::PreceptorStanding{{}, idOf(0x40), std::nullopt, true});
    program.say(world.director, journal::PreceptorStanding{first.hash, idOf(0x41), std::nullopt, false});
    CHECK(rulesOf(world.all).standings.size() == 1);
    program.say(world.director, journal::PreceptorStanding{first.hash, idOf(0x40), std::nullopt, false});
    CHECK_FALSE(rulesOf(world.all).standings.at(idOf(0x40)).rule.active);
}

TEST_CASE("Whatever the order in which it comes, the same rules are in force", "[rules]")
{
    Program program;
    fill(program);
    const World& world = program.world;
    const trust::ProgramRules expected = rulesOf(world.all);
    CHECK(expected.changes.size() == 2);
    CHECK(expected.sites->rule.sites.size() == 2);
    const merge::Batch everything = merge::contents(world.all);
    std::vector<merge::Batch> pieces{{everything.certificates, {}, {}}};
    for (const merge::Run& run : everything.runs) {
        if (run.feed.stream == world.programStream) {
            pieces.push_back({{}, {}, {run}});
        }
    }
    REQUIRE(pieces.size() == 5); // certificates; director, two instructors, coordinator
    std::vector<std::size_t> order(pieces.size());
    std::iota(order.begin(), order.end(), 0U);
    std::size_t orders = 0;
    do {
        std::vector<merge::Batch> batches;
        for (const std::size_t index : order) {
            batches.push_back(pieces[index]);
        }
        const merge::TakenAll taken = merge::takeAll(merge::Ledger(world.program), batches);
        const trust::ProgramRules rules = rulesOf(taken.ledger);
        CHECK(said(rules) == said(expected));
        CHECK(rules.days.at(className).entry == expected.days.at(className).entry);
        CHECK(rules.standings.at(world.preceptorId).entry == expected.standings.at(world.preceptorId).entry);
        ++orders;
    } while (std::next_permutation(order.begin(), order.end()));
    CHECK(orders == 120);
}

TEST_CASE("An export with every rule is the file that the first build with kinds 5 to 9 wrote", "[rules][format]")
{
    Program program;
    World& world = program.world;
    journal::Position days;
    for (const journal::Payload& rule : everyRule()) {
        if (std::holds_alternative<journal::CatalogueOverlay>(rule)) {
            continue; // not known to that build
        }
        const auto at = program.say(world.director, rule);
        if (std::holds_alternative<journal::ClinicalDays>(rule)) {
            days = at;
        }
    }
    program.say(world.instructor, daysOf(className, {"2026-03-03"}, days.hash));
    const auto sites = rulesOf(world.all).sites->entry;
    program.say(program.coordinator, sitesOf({"South Annex"}, sites.hash));
    const auto refused = program.say(program.coordinator, requirementsChange({}, {}, "2026-01-01", "one-case"));
    CHECK(judgment(world.all, refused).standing == Standing::Refused);

    const keys::Bytes volume = volumeOf(world.all);
    CHECK(isKept(volume, "program-rules-v1.export"));
    CHECK(said(rulesOf(fromVolume(world.program, volume).ledger)) == said(rulesOf(world.all)));
}

TEST_CASE("The last catalogue overlay of a director is in force, and an export with one is the file that was kept",
          "[rules][format]")
{
    Program program;
    World& world = program.world;
    const auto first = program.say(world.director, overlayOf("own-one\tOwn procedure"));
    CHECK(rulesOf(world.all).overlay->entry == first);
    const auto second = program.say(world.director, overlayOf("own-two\tSecond procedure", first.hash));
    for (const keys::DeviceKey* device : {&world.instructor, &program.coordinator}) {
        const auto refused = program.say(*device, overlayOf("own-two\tThird procedure", second.hash));
        CHECK(judgment(world.all, refused) == trust::Judgment{Standing::Refused, Reason::RoleMayNotWrite});
    }
    const trust::ProgramRules rules = rulesOf(world.all);
    CHECK(rules.overlay->entry == second);
    CHECK(rules.overlay->rule == overlayOf("own-two\tSecond procedure", first.hash));

    const keys::Bytes volume = volumeOf(world.all);
    CHECK(isKept(volume, "catalogue-overlay-v1.export"));
    CHECK(said(rulesOf(fromVolume(world.program, volume).ledger)) == said(rules));
}

} // namespace peelpack::test
