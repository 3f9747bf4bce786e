#include "sync/merge/contents.h"
#include "sync/merge/reopen.h"
#include "sync/trust/rights.h"
#include "tests/sync/support/catch.h"
#include "tests/sync/support/rules.h"

#include <algorithm>

namespace peelpack::test {
namespace {

using journal::Kind;
using journal::Reason;
using journal::Role;

constexpr std::uint16_t numberOf(Kind kind)
{
    return static_cast<std::uint16_t>(kind);
}

keys::Bytes bytes(std::initializer_list<int> values)
{
    keys::Bytes made;
    for (const int value : values) {
        made.push_back(static_cast<std::uint8_t>(value));
    }
    return made;
}

keys::Bytes encoded(const journal::Payload& payload)
{
    auto made = journal::encode(payload);
    REQUIRE(made.ok());
    return std::move(made).value();
}

/// Why a payload cannot be written after a change; None when it can.
template <class Payload, class Change>
Reason after(Payload payload, const Change& change)
{
    change(payload);
    return journal::encode(payload).reason();
}

} // namespace

TEST_CASE("Clinical days and a standing are the bytes that FORMAT.md says", "[rules]")
{
    journal::ClinicalDays days;
    days.standsOn.bytes.fill(0x0A);
    days.className = "A";
    days.days = {{base::Date::fromDays(258), "N", 450, journal::notSaid}};
    keys::Bytes expected = bytes({1});
    expected.insert(expected.end(), 32, 0x0A);
    for (const keys::Bytes& part :
         {bytes({1, 0, 0, 0, 0, 0, 0, 0, 'A'}), bytes({1, 0, 0, 0, 0, 0, 0, 0}), bytes({2, 1, 0, 0}),
          bytes({1, 0, 0, 0, 0, 0, 0, 0, 'N'}), bytes({0xC2, 1, 0xFF, 0xFF})}) {
        keys::append(expected, part);
    }
    CHECK(encoded(days) == expected);

    journal::PreceptorStanding standing{{}, idOf(0x40), base::Date::fromDays(-1), false};
    expected = bytes({1});
    expected.insert(expected.end(), 32, 0);
    expected.insert(expected.end(), 16, 0x40);
    keys::append(expected, bytes({1, 0xFF, 0xFF, 0xFF, 0xFF, 0}));
    CHECK(encoded(standing) == expected);
    standing.oriented.reset();
    expected.erase(expected.end() - 6, expected.end());
    keys::append(expected, bytes({0, 0}));
    CHECK(encoded(standing) == expected);
}

TEST_CASE("A catalogue overlay is the bytes that FORMAT.md says, up to its limit", "[rules]")
{
    journal::CatalogueOverlay overlay{{}, {'i', 'd'}};
    keys::Bytes expected = bytes({1});
    expected.insert(expected.end(), 32, 0);
    keys::append(expected, bytes({2, 0, 0, 0, 0, 0, 0, 0, 'i', 'd'}));
    CHECK(encoded(overlay) == expected);
    overlay.table.assign(49152, 'x');
    CHECK(journal::encode(overlay).ok());
    overlay.table.push_back('x');
    CHECK(journal::encode(overlay).reason() == Reason::TooMany);
}

TEST_CASE("Every rule reads back as it was written", "[rules]")
{
    for (const journal::Payload& rule : everyRule()) {
        const std::uint16_t kind = kindOf(rule);
        const keys::Bytes written = encoded(rule);
        const auto read = journal::decodePayload(kind, written);
        REQUIRE(read.ok());
        CHECK(read.value() == rule);
        keys::Bytes longer = written;
        longer.push_back(0);
        CHECK(journal::decodePayload(kind, longer).reason() == Reason::LeftOver);
        for (std::size_t size = 0; size < written.size(); ++size) {
            if (journal::decodePayload(kind, keys::ByteView(written).first(size)).ok()) {
                FAIL("kind " << kind << " was read from " << size << " of " << written.size() << " bytes");
            }
        }
        CHECK(journal::belongsInProgramStream(kind));
        CHECK_FALSE(journal::belongsInStudentStream(kind));
        CHECK_FALSE(journal::checkedByEveryVersion(kind));
    }
}

TEST_CASE("A rule outside its limits is refused", "[rules]")
{
    const std::string tooLong(201, 'x');
    const auto change = requirementsChange({}, "Spring class", "2026-03-01", "cap15");
    CHECK(after(change, [](auto& one) { one.reason.clear(); }) == Reason::TextMissing);
    CHECK(after(change, [](auto& one) { one.requirementSet.clear(); }) == Reason::TextMissing);
    CHECK(after(change, [&](auto& one) { one.className = tooLong; }) == Reason::TextTooLong);
    CHECK(after(change, [](auto& one) { one.reason = std::string(4001, 'x'); }) == Reason::TextTooLong);
    CHECK(after(change, [](auto& one) { one.from = base::Date::fromDays(84006); }) == Reason::BadNumber);
    CHECK(after(change, [](auto& one) { one.className.clear(); }) == Reason::None);

    journal::ClinicalDays days{{}, "A", {}};
    for (int i = 0; i < 512; ++i) {
        days.days.push_back({base::Date::fromDays(i), "N"});
    }
    CHECK(journal::encode(days).ok());
    CHECK(after(days, [](auto& one) { one.days.push_back({base::Date::fromDays(512), "N"}); }) == Reason::TooMany);
    CHECK(after(days, [](auto& one) { one.days[7].site.clear(); }) == Reason::TextMissing);
    CHECK(after(days, [](auto& one) { one.days[7].start = 1440; }) == Reason::BadNumber);
    CHECK(after(days, [](auto& one) { one.days[7].end = 65534; }) == Reason::BadNumber);

    const journal::Sites sites = sitesOf({"North", "South"});
    CHECK(after(sites, [](auto& one) { one.sites[0].phones = static_cast<journal::PhoneRule>(4); }) ==
          Reason::BadNumber);
    CHECK(after(sites, [](auto& one) { one.sites[0].name.clear(); }) == Reason::TextMissing);
    CHECK(after(sites, [](auto& one) { one.sites[0].note = std::string(401, 'x'); }) == Reason::TextTooLong);
    CHECK(after(sites, [](auto& one) {
              one.sites.clear();
              for (int i = 0; i < 129; ++i) {
                  one.sites.push_back({std::to_string(1000 + i), {}, {}});
              }
          }) == Reason::TooMany);

    const journal::WhoMaySign who{{}, {{"CST", journal::signsEveryRole}}};
    CHECK(after(who, [](auto& one) { one.signers[0].roles = 0; }) == Reason::BadNumber);
    CHECK(after(who, [](auto& one) { one.signers[0].roles = 8; }) == Reason::BadNumber);
    CHECK(after(who, [](auto& one) { one.signers[0].credential.clear(); }) == Reason::TextMissing);
    CHECK(after(who, [](auto& one) { one.signers.clear(); }) == Reason::None);
    CHECK(after(who, [](auto& one) {
              one.signers.clear();
              for (int i = 0; i < 33; ++i) {
                  one.signers.push_back({std::to_string(100 + i), 1});
              }
          }) == Reason::TooMany);

    keys::Bytes standing = encoded(journal::PreceptorStanding{{}, idOf(0x40), std::nullopt, true});
    standing.back() = 2;
    CHECK(journal::decodePayload(9, standing).reason() == Reason::BadBoolean);
    standing.back() = 1;
    standing[standing.size() - 2] = 2;
    CHECK(journal::decodePayload(9, standing).reason() == Reason::BadBoolean);
}

TEST_CASE("A list has one order, and nothing stands in it twice", "[rules]")
{
    const auto day = [](int number, std::string site, journal::MinuteOfDay start) {
        return journal::ClinicalDay{base::Date::fromDays(number), std::move(site), start, journal::notSaid};
    };
    const auto reason = [](std::vector<journal::ClinicalDay> days) {
        return journal::encode(journal::ClinicalDays{{}, "A", std::move(days)}).reason();
    };
    CHECK(reason({day(1, "N", 420), day(1, "S", 420), day(1, "A", 421), day(2, "A", 0)}) == Reason::None);
    CHECK(reason({day(1, "S", 420), day(1, "N", 420)}) == Reason::BadOrder);
    CHECK(reason({day(1, "A", 421), day(1, "N", 420)}) == Reason::BadOrder);
    CHECK(reason({day(2, "N", 420), day(1, "N", 420)}) == Reason::BadOrder);
    auto twice = std::vector{day(1, "N", 420), day(1, "N", 420)};
    twice[1].end = 900;
    CHECK(reason(twice) == Reason::BadOrder);
    // By the bytes of UTF-8: a letter with an accent comes after every plain one.
    CHECK(reason({day(1, "Zelt", 420), day(1, "\xC3\x84st", 420)}) == Reason::None);
    CHECK(reason({day(1, "\xC3\x84st", 420), day(1, "Zelt", 420)}) == Reason::BadOrder);

    CHECK(journal::encode(sitesOf({"North", "North"})).reason() == Reason::BadOrder);
    CHECK(journal::encode(sitesOf({"South", "North"})).reason() == Reason::BadOrder);
    CHECK(journal::encode(journal::WhoMaySign{{}, {{"RN", 1}, {"CST", 1}}}).reason() == Reason::BadOrder);
    CHECK(journal::encode(journal::WhoMaySign{{}, {{"RN", 1}, {"RN", 2}}}).reason() == Reason::BadOrder);
}

TEST_CASE(
    "Requirements, who may sign and the catalogue are the director's; days, sites and standing also the coordinators'",
    "[rules]")
{
    const auto may = [](Kind kind) {
        std::vector<Role> roles;
        for (const Role role : {Role::Director, Role::Instructor, Role::Coordinator, Role::Contact, Role::Student}) {
            if (trust::mayWrite(role, numberOf(kind))) {
                roles.push_back(role);
            }
        }
        return roles;
    };
    const std::vector<Role> directorOnly{Role::Director};
    const std::vector<Role> staff{Role::Director, Role::Instructor, Role::Coordinator};
    CHECK(may(Kind::RequirementsChange) == directorOnly);
    CHECK(may(Kind::WhoMaySign) == directorOnly);
    CHECK(may(Kind::CatalogueOverlay) == directorOnly);
    CHECK(may(Kind::ClinicalDays) == staff);
    CHECK(may(Kind::Sites) == staff);
    CHECK(may(Kind::PreceptorStanding) == staff);
}

TEST_CASE("A rule in a student's stream is refused, by whoever reads it first", "[rules]")
{
    World world;
    world.setUp();
    const journal::FeedId feed = world.feedOf(world.director, world.studentId);
    for (const journal::Payload& rule : everyRule()) {
        const journal::Place place = world.all.next(feed);
        CHECK(journal::writeEntry(world.program, place, {minute(9), std::nullopt}, rule, world.director.signing)
                  .reason() == Reason::WrongStream);
        // An older build kept it unread.
        const std::uint16_t kind = kindOf(rule);
        const auto entry = journal::writeRawEntry(world.program, place, {minute(9), std::nullopt}, kind, encoded(rule),
                                                  world.director.signing);
        merge::Batch kept = merge::contents(world.all);
        kept.runs.push_back({feed, place.seq, {keys::ByteView(entry.value().bytes)}});
        const auto reopened = merge::reopen(world.program, kept);
        REQUIRE(reopened.ok());
        REQUIRE(reopened.value().unfit.size() == 1);
        CHECK(reopened.value().unfit.front().reason == Reason::WrongStream);
    }
}

} // namespace peelpack::test
