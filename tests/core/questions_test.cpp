#include "core/questions/signer_questions.h"
#include "tests/support/catch.h"
#include "tests/support/story.h"

#include <algorithm>
#include <random>
#include <set>

using namespace peelpack;
using namespace peelpack::questions;
using record::MinuteOfDay;

namespace {

constexpr MinuteOfDay hour = 60;

/// By one invented preceptor, at one site, on one day.
Signing signing(std::string sheet, std::string room, MinuteOfDay start, MinuteOfDay end)
{
    Signing one;
    one.signer = "4040";
    one.name = "Invented Preceptor";
    one.student = "Invented Student";
    one.sheet = std::move(sheet);
    one.date = *base::Date::fromIso("2026-03-02");
    one.site = "North Campus";
    one.room = std::move(room);
    one.start = start;
    one.end = end;
    return one;
}

Signing signedAt(std::string sheet, std::string site, std::int64_t seconds)
{
    Signing one = signing(std::move(sheet), "4", record::notSaid, record::notSaid);
    one.site = std::move(site);
    one.signedAt = seconds;
    return one;
}

std::vector<std::string> sheetsOf(const SignerQuestion& question)
{
    std::vector<std::string> sheets;
    for (const Signing& one : question.sheets) {
        sheets.push_back(one.sheet);
    }
    return sheets;
}

/// The sheets of the only question; none when nothing is asked.
std::vector<std::string> asked(std::vector<Signing> signings)
{
    const auto questions = signerQuestions(std::move(signings), {});
    REQUIRE(questions.size() <= 1);
    return questions.empty() ? std::vector<std::string>{} : sheetsOf(questions.front());
}

using Sheets = std::vector<std::string>;

} // namespace

TEST_CASE("Operations of one preceptor that overlap elsewhere are a question", "[questions]")
{
    const Signing first = signing("a", "Room 4", 8 * hour, 10 * hour);
    CHECK(asked({first, signing("b", "Room 5", 9 * hour, 11 * hour)}) == Sheets{"a", "b"});
    CHECK(asked({first, signing("b", "Room 5", 8 * hour + 10, 8 * hour + 20)}) == Sheets{"a", "b"}); // within the first
    CHECK(asked({signing("b", "Room 5", 7 * hour, 11 * hour), first}) == Sheets{"a", "b"});
    CHECK(asked({first, signing("b", "Room 5", 10 * hour, 11 * hour)}).empty());  // one after the other
    CHECK(asked({first, signing("b", " room  4", 9 * hour, 11 * hour)}).empty()); // two students in one room
    CHECK(asked({first, signing("b", "", 9 * hour, 11 * hour)}).empty());
    CHECK(asked({first, signing("b", "Room 5", 9 * hour, record::notSaid)}).empty());
    CHECK(asked({first, signing("b", "Room 5", record::notSaid, 9 * hour)}).empty());

    Signing elsewhere = signing("b", "Room 4", 9 * hour, 11 * hour);
    elsewhere.site = "South Campus";
    CHECK(asked({first, elsewhere}) == Sheets{"a", "b"});
    elsewhere.room.clear();
    CHECK(asked({first, elsewhere}) == Sheets{"a", "b"});
    elsewhere.site.clear();
    elsewhere.room = "Room 5";
    CHECK(asked({first, elsewhere}).empty()); // of which site nobody said
    Signing nowhere = first;
    nowhere.site.clear();
    CHECK(asked({nowhere, elsewhere}) == Sheets{"a", "b"});

    Signing other = signing("b", "Room 5", 9 * hour, 11 * hour);
    other.signer = "4141";
    CHECK(asked({first, other}).empty());
    Signing nextDay = signing("b", "Room 5", 9 * hour, 11 * hour);
    nextDay.date = base::Date::fromDays(nextDay.date.days() + 1);
    CHECK(asked({first, nextDay}).empty());
    const Signing night = signing("c", "Room 4", 22 * hour, 2 * hour); // until the next morning
    nextDay.start = 1 * hour;
    CHECK(asked({nextDay, night}) == Sheets{"c", "b"});
}

TEST_CASE("An overlap names all that meet another one, and nothing else", "[questions]")
{
    const std::vector<Signing> signings{
        signing("a", "Room 4", 8 * hour, 10 * hour),  signing("b", "Room 4", 9 * hour, 11 * hour),
        signing("c", "Room 5", 10 * hour, 12 * hour), signing("d", "Room 6", 13 * hour, 14 * hour),
        signing("e", "Room 7", 13 * hour, 14 * hour),
    };
    const auto questions = signerQuestions(signings, {});
    REQUIRE(questions.size() == 2);
    CHECK(questions[0].kind == SignerQuestionKind::Overlap);
    CHECK(sheetsOf(questions[0]) == Sheets{"b", "c"});
    CHECK(sheetsOf(questions[1]) == Sheets{"d", "e"});
    CHECK(questions[0].name == "Invented Preceptor");
    CHECK(
        questions[0].sentence ==
        "These 2 sheets overlap in time, at different sites or in different rooms: was the preceptor at each of them?");
}

TEST_CASE("Overlaps are what comparing every pair finds, whatever the order", "[questions]")
{
    std::mt19937 random(20);
    const auto upTo = [&](unsigned limit) { return random() % limit; };
    for (int round = 0; round < 400; ++round) {
        std::vector<Signing> signings;
        const std::size_t count = 2 + upTo(12);
        for (std::size_t i = 0; i < count; ++i) {
            const auto start = static_cast<MinuteOfDay>(upTo(600));
            Signing one = signing(std::string(1, static_cast<char>('a' + i)), std::array{"", "4", "5"}[upTo(3)], start,
                                  static_cast<MinuteOfDay>(start + 1 + upTo(60)));
            one.site = std::array{"", "North", "South"}[upTo(3)];
            signings.push_back(std::move(one));
        }
        std::set<std::string> expected;
        for (const Signing& a : signings) {
            for (const Signing& b : signings) {
                const bool sites = !a.site.empty() && !b.site.empty() && a.site != b.site;
                const bool rooms = a.site == b.site && !a.room.empty() && !b.room.empty() && a.room != b.room;
                if (a.start < b.end && b.start < a.end && (sites || rooms)) {
                    expected.insert(a.sheet);
                }
            }
        }
        const auto questions = signerQuestions(signings, {count, 60});
        std::set<std::string> found;
        for (const SignerQuestion& question : questions) {
            for (const std::string& sheet : sheetsOf(question)) {
                CAPTURE(round, sheet);
                CHECK(found.insert(sheet).second); // in one question only
            }
        }
        CAPTURE(round);
        CHECK(found == expected);
        std::shuffle(signings.begin(), signings.end(), random);
        CHECK(signerQuestions(signings, {count, 60}) == questions);
    }
}

TEST_CASE("More sheets of one day than are plausible are a question", "[questions]")
{
    std::vector<Signing> signings;
    for (int i = 0; i < 12; ++i) {
        Signing one = signing("s" + std::to_string(10 + i), "4", record::notSaid, record::notSaid);
        one.student = i % 2 == 0 ? "Invented Student" : "Second Student";
        signings.push_back(std::move(one));
    }
    CHECK(asked(signings).empty());
    signings.push_back(signings.front()); // the same sheet, signed again
    CHECK(asked(signings).empty());
    signings.back().sheet = "s30";
    const auto questions = signerQuestions(signings, {});
    REQUIRE(questions.size() == 1);
    CHECK(questions.front().kind == SignerQuestionKind::ManyInADay);
    CHECK(questions.front().sheets.size() == 13);
    CHECK(questions.front().sentence == "These 13 sheets are of one day, and more than 12 are unusual: did the "
                                        "preceptor sign each of them?");
    CHECK(signerQuestions(signings, {13, 60}).empty());
    CHECK(signerQuestions({signings[0], signings[1], signings[2]}, {2, 60}).size() == 1);
    signings.back().date = *base::Date::fromIso("2026-03-03");
    CHECK(asked(signings).empty());
}

TEST_CASE("Signatures within seconds for different sites are a question", "[questions]")
{
    constexpr std::int64_t noon = 1'772'366'400;
    const Signing first = signedAt("a", "North Campus", noon);
    CHECK(asked({first, signedAt("b", "South Campus", noon + 60)}) == Sheets{"a", "b"});
    CHECK(asked({signedAt("b", "South Campus", noon - 60), first}) == Sheets{"a", "b"});
    CHECK(asked({first, signedAt("b", "South Campus", noon + 61)}).empty());
    CHECK(asked({first, signedAt("b", "north  campus", noon + 60)}).empty()); // one sitting
    CHECK(asked({first, signedAt("b", "", noon + 60)}).empty());
    CHECK(asked({first, signedAt("c", "North Campus", noon + 1), signedAt("b", "South Campus", noon + 59)}) ==
          Sheets{"a", "b", "c"});
    CHECK(signerQuestions({first, signedAt("b", "South Campus", noon + 60)}, {12, 59}).empty());
    const auto questions = signerQuestions({first, signedAt("b", "South Campus", noon + 9)}, {12, 10});
    REQUIRE(questions.size() == 1);
    CHECK(questions.front().kind == SignerQuestionKind::SignedTogether);
    CHECK(questions.front().sentence == "These 2 sheets of different sites were signed within 10 seconds of one "
                                        "another: did the preceptor sign each of them?");
    // Clocks claim what they like.
    CHECK(asked({signedAt("a", "North Campus", INT64_MAX), signedAt("b", "South Campus", INT64_MIN)}).empty());
    CHECK(asked({signedAt("a", "North Campus", INT64_MAX), signedAt("b", "South Campus", INT64_MAX)}).size() == 2);
}

TEST_CASE("What was confirmed with the preceptor is asked no more", "[questions]")
{
    std::vector<Signing> signings{signing("a", "Room 4", 8 * hour, 10 * hour),
                                  signing("b", "Room 5", 9 * hour, 11 * hour)};
    signings[0].confirmed = true;
    CHECK(asked(signings) == Sheets{"a", "b"});
    signings[1].confirmed = true;
    CHECK(asked(signings).empty());
}

TEST_CASE("A hundred thousand signatures of one card are looked through without comparing every pair", "[questions]")
{
    std::vector<Signing> signings;
    for (int i = 0; i < 100'000; ++i) {
        Signing one = signing("s" + std::to_string(i), "Room " + std::to_string(i % 7), 8 * hour, 20 * hour);
        one.signedAt = i;
        one.site = i % 2 == 0 ? "North" : "South";
        signings.push_back(std::move(one));
    }
    const auto questions = signerQuestions(signings, {});
    REQUIRE(questions.size() == 3);
    for (const SignerQuestion& question : questions) {
        CHECK(question.sheets.size() == signings.size());
    }
}

TEST_CASE("The signatures of a record are those by card or phone, with the head that was signed", "[questions]")
{
    support::Story story;
    story.student(record::Opened{support::draft()});
    record::Attested said = support::attested(support::allYes());
    said.key.bytes.fill(0x77);
    said.head.start = 8 * hour;
    said.head.site = "North Campus";
    said.signedAt = {1'772'366'400, 0};
    const base::EntryHash entry = story.student(said);
    auto signings = signingsOf(story.record(), "Invented Student", "51515151");
    REQUIRE(signings.size() == 1);
    Signing expected = signing("51515151", "4", 8 * hour, record::notSaid);
    expected.signer = said.person->hex();
    expected.date = said.head.date;
    expected.signedAt = 1'772'366'400;
    expected.entry = entry;
    CHECK(signings.front() == expected);

    record::Head moved = said.head;
    moved.room = "5";
    support::Story amended = story;
    amended.act(record::Amend{{}, moved, {}}, entry, "It was room 5.");
    CHECK(signingsOf(amended.record(), "", "").front().room == "5");
    support::Story confirmed = story;
    confirmed.act(record::Initial{true}, entry);
    CHECK(signingsOf(confirmed.record(), "", "").front().confirmed);
    support::Story gone = story;
    gone.act(record::Void{}, entry, "Not a case.");
    CHECK(signingsOf(gone.record(), "", "").empty());

    said.person.reset(); // a card for which nobody vouches
    said.strength = sheet::Strength::CardNew;
    story.student(said);
    signings = signingsOf(story.record(), "", "");
    REQUIRE(signings.size() == 2);
    CHECK(signings.back().signer == said.key.hex());
    for (const sheet::Strength weak : {sheet::Strength::Drawn, sheet::Strength::Paper}) {
        said.strength = weak;
        story.student(said);
        CHECK(signingsOf(story.record(), "", "").size() == 2);
    }
}

TEST_CASE("The signatures of a row are by the preceptors' names", "[questions]")
{
    sheet::CaseRow row;
    row.sheet = "s1";
    row.student = "Invented Student";
    row.date = *base::Date::fromIso("2026-03-02");
    row.site = "North Campus";
    row.room = "4";
    row.start = "08:00";
    row.end = "9:00"; // not as it is written
    row.preceptor = "Invented  PRECEPTOR; Second Preceptor;";
    CHECK(signingsOf(row).empty());
    row.attested = sheet::Strength::Drawn;
    CHECK(signingsOf(row).empty());
    row.attested = sheet::Strength::Card;
    const auto signings = signingsOf(row);
    REQUIRE(signings.size() == 2);
    Signing expected = signing("s1", "4", 8 * hour, record::notSaid);
    expected.signer = "invented preceptor";
    expected.name = "Invented  PRECEPTOR";
    CHECK(signings[0] == expected);
    CHECK(signings[1].name == "Second Preceptor");
    for (const char* wrong : {"", "24:00", "08:60", "0800", "08:0x", "-1:00", "08:00:00"}) {
        row.start = wrong;
        CAPTURE(wrong);
        CHECK(signingsOf(row).front().start == record::notSaid);
    }
    row.start = "23:59";
    CHECK(signingsOf(row).front().start == 23 * hour + 59);
}
