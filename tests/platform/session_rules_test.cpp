#include "platform/files/resources.h"
#include "platform/session/acts.h"
#include "platform/session/aside.h"
#include "platform/session/cards.h"
#include "platform/session/completion.h"
#include "platform/session/exchange.h"
#include "platform/session/intake.h"
#include "platform/session/program_rules.h"
#include "platform/session/repudiations.h"
#include "platform/session/samples.h"
#include "platform/session/setup.h"
#include "platform/session/signing.h"
#include "platform/vault/memory_vault.h"
#include "sync/keys/code.h"
#include "tests/support/catch.h"

// What the session holds for the app and for every command: acts on sheets, completions, admissions, samples.
namespace peelpack::session {
namespace {

template <class T>
T need(base::Result<T> result)
{
    INFO((result ? std::string() : result.error().sentence));
    REQUIRE(result);
    return std::move(result).value();
}

journal::Time clockOfTest()
{
    static std::int64_t seconds = 1'805'000'000; // in March 2027
    return {++seconds, -300};
}

/// A director who scrubs as well, a student, and a card for each of two preceptors: the director and somebody else.
struct Place {
    keys::SystemRandom random;
    keys::Secret code = random.secret(keys::codeSecretBytes);
    std::unique_ptr<Session> director;
    std::unique_ptr<Session> student;
    std::optional<UnlockedCard> own;
    std::optional<UnlockedCard> other;

    Place()
    {
        Rules rules = need(rulesOfShippedSet(files::usualSetId));
        rules.firstDay = base::Date::fromDays(0);
        rules.lastDay = base::Date::fromDays(60'000);
        rules.counted = countsAllButNewCards;
        auto vault = std::make_unique<vault::MemoryVault>(random);
        REQUIRE(beginProgram(*vault, need(keys::programKey(code.view())), "Mara Stone", rules, clockOfTest, random));
        director = need(Session::open(std::move(vault), clockOfTest, random));
        own.emplace(card("Mara Stone", director->person()));
        other.emplace(card("L. Brandt", random.id()));
        const OpenInvitation open =
            need(invite(*director, "Ines Duarte", journal::Role::Student, {"spring-class"}, std::nullopt, 14));
        auto phone = std::make_unique<vault::MemoryVault>(random);
        REQUIRE(grant(*director,
                      need(join(*phone, need(keys::Invitation::fromCode(open.code)), std::string("Ines Duarte")))));
        student = need(Session::open(std::move(phone), clockOfTest, random));
        const Directory directory(*director);
        give(*director, *student, need(toStudent(*director, *directory.person(student->person()))));
    }

    UnlockedCard card(const std::string& name, const keys::Id& person)
    {
        const keys::SigningCard made = newCard(*director);
        keys::SigningKey key = need(keys::cardKey(made, director->program(), "482913"));
        journal::Vouch vouch;
        nameCard(vouch, made.card, made.epoch, key.verifyKey());
        vouch.person = person;
        vouch.name = name;
        REQUIRE(director->append(director->programStream(), vouch));
        return {std::move(key), made.card, made.epoch, true};
    }
    static void give(const Session& from, Session& to, const Recipients& recipients)
    {
        REQUIRE(takeIn(to, {{"parcel", need(makeParcels(from, recipients)).front()}}));
    }
    keys::Id sign(const UnlockedCard& with, const std::string& signer)
    {
        journal::Draft draft;
        draft.procedures = {"Tonsillectomy"};
        draft.head.date = base::Date::fromDays(20'890);
        const keys::Id sheet = need(openSheet(*student, draft));
        SheetMarks marks{sheet, draft.procedures, draft.head, {}, {}};
        for (const sheet::Skill skill : sheet::allSkills) {
            marks.marks.push_back({skill, sheet::Mark::Yes, {}});
        }
        REQUIRE(signWithCard(*student, with, {signer, "CST"}, {marks}));
        REQUIRE(student->append(student->person(), journal::Logged{sheet, {{0, "ear-nose-throat", 0}}}));
        give(*student, *director, need(toStaff(*student)));
        return sheet;
    }
    [[nodiscard]] SheetPlace placeOf(const keys::Id& sheet) const
    {
        return need(findSheet(*director, student->person(), keys::hex(sheet.view())));
    }
    [[nodiscard]] std::uint32_t written() const
    {
        const journal::Feed* feed = director->ledger().feed(need(director->ownFeed(student->person())));
        return feed == nullptr ? 0 : feed->count();
    }
};

} // namespace

TEST_CASE("Nobody initials alone what only they signed, by whatever way", "[session]")
{
    Place place;
    const keys::Id mine = place.sign(*place.own, "Mara Stone");
    const keys::Id theirs = place.sign(*place.other, "L. Brandt");
    const std::uint32_t before = place.written();
    const SharedSheets shared = SharedSheets::of(*place.director);
    for (const char* reason : {"", "I was there"}) {
        for (const bool confirmed : {false, true}) {
            const auto refused = initialSheet(*place.director, place.placeOf(mine), confirmed, reason, shared);
            REQUIRE_FALSE(refused);
            CHECK(refused.error().sentence.find("Nobody initials alone") != std::string::npos);
        }
    }
    CHECK(place.written() == before);
    CHECK(initialSheet(*place.director, place.placeOf(theirs), false, {}, shared));
    CHECK(place.placeOf(theirs).record.standing == record::SheetStanding::Initialed);
    CHECK(place.placeOf(mine).record.standing == record::SheetStanding::Signed);
}

TEST_CASE("Nothing that needs a reason is written without one: void, return, change, file elsewhere, admit, exception",
          "[session]")
{
    Place place;
    const keys::Id sheet = place.sign(*place.other, "L. Brandt");
    const std::uint32_t before = place.written();
    const SheetPlace at = place.placeOf(sheet);
    Session& director = *place.director;
    SheetChange change;
    change.marks = {{sheet::Skill::Camera, sheet::Mark::No, {}}};
    const auto catalogue = need(files::shippedCatalogue());
    const CompletionState state = need(completionState(director, catalogue, place.student->person()));
    for (const char* reason : {"", "   ", "\n\t"}) {
        CHECK_FALSE(voidSheet(director, at, reason));
        CHECK_FALSE(returnSheet(director, at, reason));
        CHECK_FALSE(amendSheet(director, at, change, reason));
        CHECK_FALSE(refileSheet(director, at, {{0, "general", 0}}, reason));
        CHECK_FALSE(admitEntry(director, state.head, reason));
        CHECK_FALSE(decideCompletion(director, state, reason));
    }
    CHECK(place.written() == before);
    CHECK_FALSE(admitEntry(director, state.head, "looked into it")); // it counts already
    CHECK(place.written() == before);
    CHECK(asideEntries(director).empty());
}

TEST_CASE("A completion by exception is decided once, says what was short, and is superseded by a later one",
          "[session]")
{
    Place place;
    Session& director = *place.director;
    place.sign(*place.other, "L. Brandt");
    const auto catalogue = need(files::shippedCatalogue());
    const keys::Id student = place.student->person();
    CompletionState state = need(completionState(director, catalogue, student));
    CHECK_FALSE(state.complete());
    REQUIRE(decideCompletion(director, state, "The site closed."));
    REQUIRE(decideCompletion(director, state, "The site closed."));
    std::vector<CompletionDecision> decisions = decisionsAbout(director, student);
    REQUIRE(decisions.size() == 1);
    CHECK(decisions[0].exception == "The site closed.");
    CHECK(decisions[0].required == state.required);
    CHECK(decisions[0].counted == 0);
    CHECK(decisions[0].by == "Mara Stone");
    CHECK(isAbout(decisions[0], state));

    const keys::SigningKey key = need(keys::programKey(place.code.view()));
    const Directory directory(director);
    CHECK_FALSE(lastRecordOf(director, student));
    const MadeRecord made =
        need(makeRecord(director, key, *directory.person(student), state, "The site closed.", std::nullopt));
    const auto verified = evidence::verifyRecord(made.record, director.program());
    REQUIRE(verified);
    CHECK(verified.value().exception == "The site closed.");
    CHECK(lastRecordOf(director, student)->id == verified.value().id);

    place.sign(*place.other, "L. Brandt"); // more came in: the decision is not about these sheets
    state = need(completionState(director, catalogue, student));
    CHECK_FALSE(isAbout(decisions[0], state));
    REQUIRE(decideCompletion(director, state, "The site closed again."));
    decisions = decisionsAbout(director, student);
    REQUIRE(decisions.size() == 2);
    CHECK(decisions.back().exception == "The site closed again.");
    CHECK(isAbout(decisions.back(), state));
    Session& phone = *place.student;
    CHECK_FALSE(decideCompletion(phone, state, "I say so."));
}

TEST_CASE("A program code that is mistyped, or another program's, gives no key", "[session]")
{
    Place place;
    const keys::Secret typed = keys::codeText(keys::CodeSort::Program, place.code.view());
    const std::string text(typed.view().begin(), typed.view().end());
    CHECK(programKeyFromCode(place.director->program(), text));
    CHECK_FALSE(programKeyFromCode(place.director->program(), text.substr(1)));
    CHECK_FALSE(programKeyFromCode(place.director->program(), ""));
    const keys::SigningKey stranger = need(keys::SigningKey::fromSeed(place.random.secret(32).view()));
    CHECK_FALSE(programKeyFromCode(stranger.verifyKey(), text));
}

TEST_CASE("What a preceptor says is not theirs is kept and not drawn again; what is confirmed neither", "[session]")
{
    Place place;
    Session& director = *place.director;
    const keys::Id student = place.student->person();
    for (int i = 0; i < 3; ++i) {
        place.sign(*place.other, "L. Brandt");
    }
    const DrawnSample all = need(drawSample(director, {student}, {10, 7, std::nullopt, std::nullopt}));
    CHECK(all.sample.of == 3);
    CHECK(all.seed == 7);
    CHECK(need(drawSample(director, {student}, {10, 7, std::nullopt, std::nullopt})).sample.signings ==
          all.sample.signings);
    const questions::Signing& denied = all.sample.signings.front();
    const Writing writing = need(sayingNotTheirs(director, student, denied.entry));
    REQUIRE(director.append(writing.stream, writing.payload));
    CHECK(repudiatedIn(director, student) == std::set<base::EntryHash>{denied.entry});
    const DrawnSample fewer = need(drawSample(director, {student}, {10, 7, std::nullopt, std::nullopt}));
    CHECK(fewer.sample.of == 2);
    const SheetPlace at = need(findSheet(director, student, fewer.sample.signings.front().sheet));
    REQUIRE(initialSheet(director, at, true, "by telephone", {}));
    CHECK(need(drawSample(director, {student}, {10, 7, std::nullopt, std::nullopt})).sample.of == 1);
    CHECK_FALSE(drawSample(*place.student, {student}, {}));
    CHECK_FALSE(sayingNotTheirs(*place.student, student, denied.entry));
}

} // namespace peelpack::session
