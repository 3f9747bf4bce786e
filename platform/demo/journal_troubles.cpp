#include "platform/demo/journal_troubles.h"

#include "platform/demo/journal_setup.h"
#include "platform/demo/journal_split.h"
#include "platform/demo/journal_term.h"
#include "platform/demo/need.h"
#include "platform/session/acts.h"
#include "sync/merge/receipts.h"

#include <algorithm>

namespace peelpack::demo {
namespace {

constexpr std::size_t weekOfLoss = 6;
constexpr std::size_t weekOfSplit = 8;
constexpr std::size_t weekOfRevokedCard = 9;
constexpr std::size_t lastWeekOfSending = 9;
constexpr std::size_t weekOfWrongPins = 11;
constexpr std::size_t weekOfUnknownCard = 12;
constexpr std::size_t weekOfContradiction = 13;

[[noreturn]] void failed(const char* story)
{
    throw Stopped{{base::ErrorCode::BadValue, std::string("The story of ") + story + " did not come out as told."}};
}

session::SheetPlace placeOf(const session::Session& session, const Student& student, const DemoCase& one)
{
    return need(session::findSheet(session, student.person, keys::hex(one.sheet.view())));
}

void loseAPhone(World& world, std::size_t week)
{
    Student& student = world.student(trouble::lostPhone);
    session::Session& desk = world.instructorOf(student);
    const journal::FeedId feed = need(student.home.session().ownFeed(student.person));
    student.home.close();
    const std::string file = student.home.file();
    world.lostPhone = std::move(student.home);
    world.lostPhone->rename(world.folder + "/lost-phone.peelvault");

    world.clock.set(world.day(week, Saturday), 14);
    journal::Revoke revoke;
    revoke.target = journal::KeyKind::Device;
    revoke.feed = feed;
    revoke.accepted = merge::receiptedCount(desk.authority(), feed);
    revoke.reason = "The phone was left on a bus.";
    need(desk.append(student.person, revoke));

    student.home =
        std::move(makeInstallations({file}, demoPassphrase, world.marks, world.random, [](std::size_t) {}).front());
    admitInto(world, desk, student.home, student.name, journal::Role::Student, {student.className}, student.person);
}

/// The phone turns up, and is used once more before anybody says so.
void useTheLostPhone(World& world, std::size_t week)
{
    const Student& student = world.student(trouble::lostPhone);
    world.clock.set(world.day(week, Tuesday), 13);
    Installation& phone = *world.lostPhone;
    phone.begin(world.marks, world.look(), world.random);
    journal::Draft draft = student.cases.back().draft;
    draft.head.date = world.day(week, Tuesday);
    need(session::openSheet(phone.session(), draft));
    world.clock.set(world.day(week, Friday), 16);
    take(world.instructorOf(student), {parcelOf(phone.session(), session::toStaff(phone.session()))});
    phone.close();
}

void revokeACard(World& world, std::size_t week)
{
    Preceptor& preceptor = world.preceptors[trouble::losesCard];
    session::Session& desk = world.staff[3].home.session(); // who vouched for it
    world.clock.set(world.day(week, Wednesday), 9);
    journal::Revoke revoke;
    revoke.target = journal::KeyKind::Card;
    revoke.card = preceptor.cards.front().unlocked->card;
    revoke.epoch = preceptor.cards.front().unlocked->epoch;
    revoke.reason = "The card was lost.";
    need(desk.append(desk.programStream(), revoke));
    preceptor.cards.front().remark = "lost, and revoked in March";
    giveCard(world, preceptor, "519348");
    vouchFor(desk, preceptor);

    Student& student = world.student(trouble::revokedCard); // has not heard of it
    const DemoCase& one = tell(world, student, week, trouble::losesCard);
    need(session::signWithCard(student.home.session(), *preceptor.cards.front().unlocked,
                               {preceptor.name, preceptor.credential}, {marksOf(one)}));
}

void tryWrongPins(World& world, std::size_t week)
{
    Student& student = world.student(trouble::wrongPins);
    const DemoCase& one = tell(world, student, week);
    const keys::SigningCard card =
        need(keys::SigningCard::fromCode(world.preceptors[one.preceptor].cards.front().code.view()));
    for (std::size_t i = 0; i < trouble::wrongTries; ++i) {
        if (session::unlockCard(student.home.session(), card, std::to_string(246'813 + i), one.sheet).ok()) {
            failed("the wrong PINs");
        }
    }
}

void signWithUnknownCard(World& world, std::size_t week)
{
    world.preceptors.push_back({world.random.id(),
                                std::string(trouble::newcomer),
                                "CST",
                                world.preceptors[trouble::usualPreceptor].site,
                                {},
                                {}});
    Preceptor& preceptor = world.preceptors.back();
    giveCard(world, preceptor, "693725").remark = "nobody vouches for it yet";
    Student& student = world.student(trouble::unknownCard);
    const DemoCase& one = tell(world, student, week);
    session::Session& phone = student.home.session();
    const keys::SigningCard card = need(keys::SigningCard::fromCode(preceptor.cards.front().code.view()));
    const session::UnlockedCard unlocked =
        need(session::unlockCard(phone, card, preceptor.cards.front().pin, one.sheet));
    if (unlocked.known) {
        failed("the unknown card");
    }
    need(session::signWithCard(phone, unlocked, {preceptor.name, preceptor.credential}, {marksOf(one)}));
}

void openForContradiction(World& world, std::size_t week)
{
    Student& student = world.student(trouble::contradiction);
    const DemoCase& one = tell(world, student, week);
    sign(world, student, world.preceptors[one.preceptor], {&one});
}

void returnAsColleague(World& world, std::size_t week)
{
    const Student& student = world.student(trouble::contradiction);
    session::Session& colleague = world.staff[student.instructor == 3 ? 4 : 3].home.session();
    world.clock.set(world.day(week, Friday), 15);
    take(colleague, {student.parcel});
    need(session::returnSheet(colleague, placeOf(colleague, student, student.cases.back()),
                              "That room was closed on this day: ask the preceptor again."));
}

void initialAsOwn(World& world, std::size_t week)
{
    const Student& student = world.student(trouble::contradiction);
    session::Session& desk = world.instructorOf(student);
    world.clock.set(world.day(week, Saturday), 15);
    need(session::initialSheet(desk, placeOf(desk, student, student.cases.back()), false, {}, {}));
}

} // namespace

DemoCase& tell(World& world, Student& student, std::size_t week, std::size_t preceptor)
{
    DemoCase one = student.cases[1];
    one.openOn = world.day(week, Thursday);
    one.draft.head.date = one.openOn;
    one.draft.head.canceled = false;
    one.marks.clear();
    for (const sheet::Skill skill : sheet::allSkills) {
        one.marks.push_back({skill, sheet::Mark::Yes, {}});
    }
    one.preceptor = preceptor;
    one.draft.head.site = world.preceptors[one.preceptor].site;
    one.ending = Ending::Told;
    world.clock.set(world.day(week, Friday), 8);
    open(student, one);
    student.cases.push_back(std::move(one));
    return student.cases.back();
}

void prepareTroubles(World& world)
{
    for (Student& student : world.students) {
        for (DemoCase& one : student.cases) {
            const auto week = static_cast<std::size_t>((one.openOn.days() - world.firstDay.days()) / 7);
            if (week == weekOfRevokedCard && one.preceptor == trouble::losesCard) {
                one.preceptor = trouble::losesCard + 1;
            }
            if (week == weekOfSplit && student.name == trouble::forked) {
                one.openOn = base::Date::fromDays(one.openOn.days() + 7);
                one.draft.head.date = one.openOn;
            }
        }
    }
    constexpr std::size_t firstLate = 3;
    constexpr std::int32_t daysLate = 35;
    for (const std::string_view name : trouble::late) {
        std::vector<DemoCase>& cases = world.student(name).cases;
        for (std::size_t i = firstLate; i < firstLate + trouble::lateSheets; ++i) {
            cases[i].openOn = base::Date::fromDays(cases[i].openOn.days() + daysLate);
            cases[i].ending = Ending::Signed;
        }
    }
}

std::vector<std::string> troublesBeforeParcels(World& world, std::size_t week)
{
    world.student(trouble::neverSent).sends = week <= lastWeekOfSending;
    switch (week) {
    case weekOfSplit:
        splitTheRecord(world, week);
        break;
    case weekOfRevokedCard:
        revokeACard(world, week);
        return {std::string(trouble::revokedCard)};
    case weekOfWrongPins:
        tryWrongPins(world, week);
        return {std::string(trouble::wrongPins)};
    case weekOfUnknownCard:
        signWithUnknownCard(world, week);
        return {std::string(trouble::unknownCard)};
    case weekOfContradiction:
        openForContradiction(world, week);
        return {std::string(trouble::contradiction)};
    default:
        break;
    }
    return {};
}

void troublesWithParcels(World& world, std::size_t week)
{
    if (week == weekOfLoss + 1) {
        useTheLostPhone(world, week);
    } else if (week == weekOfSplit) {
        findTheSplit(world, week);
    } else if (week == weekOfContradiction) {
        returnAsColleague(world, week);
    }
}

void troublesAfterParcels(World& world, std::size_t week)
{
    if (week == weekOfLoss) {
        loseAPhone(world, week);
    } else if (week == weekOfSplit) {
        goOnAfterTheSplit(world, week);
    } else if (week == weekOfContradiction) {
        initialAsOwn(world, week);
    }
}

} // namespace peelpack::demo
