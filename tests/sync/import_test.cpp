#include "sync/journal/payload.h"
#include "tests/sync/support/catch.h"
#include "tests/sync/support/events.h"

namespace peelpack::test {
namespace {

using journal::Reason;
using record::SheetStanding;
using Verdict = record::Standing::Verdict;

journal::Imported imported(const keys::Id& sheet = firstSheet)
{
    return {sheet,
            idOf(0x50),
            {"Appendectomy", "Hernia repair"},
            draft().head,
            {{0, "general", 0}, {1, "genitourinary", 0}},
            journal::ImportedRole::Second,
            "Invented Preceptor",
            "CST",
            "paper log of spring, page 3"};
}

constexpr auto kind = static_cast<std::uint16_t>(journal::Kind::Imported);

} // namespace

TEST_CASE("An import is read as it was written, and only in one form", "[import]")
{
    const journal::Imported whole = imported();
    const auto bytes = journal::encode(whole);
    REQUIRE(bytes.ok());
    const auto read = journal::decodePayload(kind, bytes.value());
    REQUIRE(read.ok());
    CHECK(std::get<journal::Imported>(read.value()) == whole);
    CHECK(kind == 40);
    CHECK_FALSE(journal::isAct(kind));
    CHECK_FALSE(journal::checkedByEveryVersion(kind));
    CHECK(journal::belongsInStudentStream(kind));
    CHECK_FALSE(journal::belongsInProgramStream(kind));

    // Every byte of it matters, and none may be missing or follow.
    for (std::size_t size = 0; size < bytes.value().size(); ++size) {
        REQUIRE_FALSE(journal::decodePayload(kind, keys::ByteView(bytes.value()).first(size)).ok());
    }
    keys::Bytes longer = bytes.value();
    longer.push_back(0);
    CHECK_FALSE(journal::decodePayload(kind, longer).ok());

    // As FORMAT.md section 4 lays it out, by hand: byte order, two ids, a list of one text, the head, one choice, the
    // role, three texts.
    journal::Imported small = imported();
    small.procedures = {"Ab"};
    small.choices = {{0, "eye", 0}};
    small.head = {base::Date::fromDays(1), {}, {}, {}, journal::notSaid, journal::notSaid, true};
    small.preceptor = {};
    small.credential = {};
    small.source = "p";
    keys::Bytes expected{1};
    expected.insert(expected.end(), 16, 0x51);
    expected.insert(expected.end(), 16, 0x50);
    const auto count = [&](std::uint8_t number) {
        expected.push_back(number);
        expected.insert(expected.end(), 7, 0);
    };
    count(1);
    count(2);
    expected.insert(expected.end(), {'A', 'b'});
    expected.insert(expected.end(), {1, 0, 0, 0});
    count(0);
    count(0);
    count(0);
    expected.insert(expected.end(), {0xFF, 0xFF, 0xFF, 0xFF, 1});
    count(1);
    expected.push_back(0);
    count(3);
    expected.insert(expected.end(), {'e', 'y', 'e', 0, 2});
    count(0);
    count(0);
    count(1);
    expected.push_back('p');
    CHECK(journal::encode(small).value() == expected);
}

TEST_CASE("An import that says too little or too much cannot be written", "[import]")
{
    const auto refusal = [](const auto& change) {
        journal::Imported one = imported();
        change(one);
        return journal::encode(one).reason();
    };
    CHECK(refusal([](auto& one) { one.source.clear(); }) == Reason::TextMissing);
    CHECK(refusal([](auto& one) { one.source = std::string(401, 'p'); }) == Reason::TextTooLong);
    CHECK(refusal([](auto& one) { one.source = std::string(400, 'p'); }) == Reason::None);
    CHECK(refusal([](auto& one) { one.preceptor = std::string(201, 'p'); }) == Reason::TextTooLong);
    CHECK(refusal([](auto& one) { one.procedures.clear(); }) == Reason::TooFew);
    CHECK(refusal([](auto& one) { one.choices.clear(); }) == Reason::TooFew);
    CHECK(refusal([](auto& one) { one.choices = {{1, "general", 0}, {0, "general", 0}}; }) == Reason::BadOrder);
    CHECK(refusal([](auto& one) { one.choices = {{2, "general", 0}}; }) == Reason::BadCombination);
    CHECK(refusal([](auto& one) { one.role = static_cast<journal::ImportedRole>(0); }) != Reason::None);
    CHECK(refusal([](auto& one) { one.role = static_cast<journal::ImportedRole>(4); }) != Reason::None);
}

TEST_CASE("Director and instructor import; a student's and a stranger's import has no effect", "[import]")
{
    World world;
    world.setUp();
    const auto byInstructor = world.append(world.instructor, world.studentId, imported(idOf(0x51)));
    const auto byDirector = world.append(world.director, world.studentId, imported(idOf(0x52)));
    const auto byStudent = world.append(world.student, world.studentId, imported(idOf(0x53)));
    const auto byStranger = world.append(deviceOf(0x66), world.studentId, imported(idOf(0x54)));
    CHECK(judgment(world.all, byInstructor).standing == trust::Judgment::Standing::Counts);
    CHECK(judgment(world.all, byDirector).standing == trust::Judgment::Standing::Counts);
    CHECK(judgment(world.all, byStudent).standing == trust::Judgment::Standing::Refused);
    CHECK(judgment(world.all, byStranger).standing == trust::Judgment::Standing::Aside);
    const record::StudentEvents events = eventsOf(world);
    CHECK(eventAt(events, byStudent).standing.why == journal::sentence(Reason::RoleMayNotWrite));
    CHECK(sheetOf(events, idOf(0x51)).standing == SheetStanding::Imported);
    CHECK(sheetOf(events, idOf(0x52)).imported->by.part == record::Part::Director);
    CHECK_FALSE(sheetOf(events, idOf(0x53)).imported);
    CHECK_FALSE(sheetOf(events, idOf(0x54)).imported);
    CHECK(sheetOf(events, idOf(0x54)).content.procedures.empty());

    const auto inProgram =
        journal::writeEntry(world.program, world.all.next(world.feedOf(world.instructor, world.programStream)),
                            {minute(900), std::nullopt}, imported(), world.instructor.signing);
    CHECK_FALSE(inProgram.ok());
}

TEST_CASE("An import keeps what it says, and the usual acts follow on it", "[import]")
{
    World world;
    world.setUp();
    const auto import = world.append(world.instructor, world.studentId, imported());
    record::SheetRecord sheet = sheetOf(eventsOf(world), firstSheet);
    REQUIRE(sheet.imported);
    CHECK(sheet.imported->said.role == sheet::Role::Second);
    CHECK(sheet.imported->said.preceptor == "Invented Preceptor");
    CHECK(sheet.imported->said.credential == "CST");
    CHECK(sheet.imported->said.source == "paper log of spring, page 3");
    CHECK(sheet.imported->entry.bytes == import.hash.bytes);
    CHECK(sheet.content.head.surgeon == "Invented Surgeon");
    CHECK(sheet.content.choices == std::vector<record::Choice>{{0, catalogue::Category::General, 0},
                                                               {1, catalogue::Category::Genitourinary, 0}});
    const auto initial = world.append(world.secondInstructor, world.studentId,
                                      journal::Initial{actAbout(firstSheet, {}, import), false});
    sheet = sheetOf(eventsOf(world), firstSheet);
    CHECK(sheet.standing == SheetStanding::Initialed);
    CHECK_FALSE(sheet.initial->onlyByAttester);
    world.append(world.instructor, world.studentId,
                 journal::Void{actAbout(firstSheet, initial.hash, import, "Not in the log.")});
    CHECK(sheetOf(eventsOf(world), firstSheet).standing == SheetStanding::Void);
}

TEST_CASE("A second import of a sheet has no effect, whoever writes it", "[import]")
{
    World world;
    world.setUp();
    const auto first = world.append(world.instructor, world.studentId, imported());
    journal::Imported other = imported();
    other.procedures = {"Craniotomy", "Hernia repair"};
    const auto second = world.append(world.instructor, world.studentId, other);
    CHECK(sheetOf(eventsOf(world), firstSheet).content.procedures.front() == "Appendectomy");
    world.append(world.instructor, world.studentId, journal::Initial{actAbout(firstSheet, {}, first), false});
    for (int tries = 0; tries < 8; ++tries) { // some of them have the smaller hash
        other.source = "page " + std::to_string(tries);
        world.append(world.secondInstructor, world.studentId, other);
        world.append(world.director, world.studentId, other);
        const record::SheetRecord sheet = sheetOf(eventsOf(world), firstSheet);
        CHECK(sheet.standing == SheetStanding::Initialed);
        CHECK(sheet.content.procedures.front() == "Appendectomy");
        CHECK(sheet.imported->entry.bytes == first.hash.bytes);
    }
    CHECK(std::get<record::Imported>(eventAt(eventsOf(world), second).what).again);

    // The same whatever the order in which the feeds come in.
    const record::StudentEvents before = eventsOf(world);
    world.all = fromVolume(world.program, volumeOf(world.all)).ledger;
    CHECK(eventsOf(world) == before);
}

TEST_CASE("An import under the id of a student's sheet leaves it as it is", "[import]")
{
    World world;
    world.setUp();
    const auto logged = world.sheet(world.student, world.studentId, firstSheet);
    const record::SheetRecord before = sheetOf(eventsOf(world), firstSheet);
    world.append(world.instructor, world.studentId, imported());
    record::SheetRecord after = sheetOf(eventsOf(world), firstSheet);
    CHECK_FALSE(after.imported);
    CHECK(after.content == before.content);
    CHECK(after.standing == SheetStanding::Signed);
    CHECK(after.signers == before.signers);
    world.append(world.instructor, world.studentId, journal::Initial{actAbout(firstSheet, {}, logged), false});
    after = sheetOf(eventsOf(world), firstSheet);
    CHECK(after.standing == SheetStanding::Initialed);
    CHECK(after.content == before.content);
}

} // namespace peelpack::test
