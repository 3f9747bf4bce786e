#include "platform/demo/demo_stage.h"

#include "platform/demo/invented_people.h"
#include "platform/demo/need.h"
#include "platform/files/resources.h"
#include "platform/session/cards.h"
#include "platform/session/exchange.h"
#include "platform/session/intake.h"
#include "platform/session/program_rules.h"
#include "platform/session/rule_writing.h"
#include "platform/vault/memory_vault.h"
#include "sync/keys/code.h"
#include "sync/merge/record_content.h"

namespace peelpack::demo {
namespace {

constexpr std::int64_t secondsInHour = 3'600;
constexpr std::int64_t secondsInDay = 24 * secondsInHour;
constexpr std::int64_t daysToAnswer = 14;
constexpr std::int32_t daysOfTerm = 120;
constexpr const char* className = "Spring class";

} // namespace

journal::Time DemoStage::Past::look()
{
    if (!held) {
        return real();
    }
    held->seconds += 5;
    return *held;
}

DemoStage::DemoStage(const session::Clock& clock, keys::RandomSource& random, std::int32_t daysBehind)
    : m_random(random), m_past(std::make_shared<Past>(Past{clock, std::nullopt}))
{
    const journal::Time now = clock();
    m_zone = now.zone;
    m_today = merge::timeOf(now).day().days();
    const std::int32_t weekday = (m_today - daysBehind + 3) % 7; // 1970-01-01 was a Thursday
    m_firstDay = base::Date::fromDays(m_today - daysBehind - weekday);
    at(m_firstDay, 8);
}

session::Clock DemoStage::clock() const
{
    return [past = m_past] { return past->look(); };
}

void DemoStage::at(base::Date day, int hour)
{
    m_past->held = journal::Time{day.days() * secondsInDay + hour * secondsInHour - std::int64_t{m_zone} * 60, m_zone};
}

void DemoStage::letGo()
{
    m_past->held.reset();
}

std::unique_ptr<session::Session> DemoStage::beginProgram()
{
    session::Rules rules = need(session::rulesOfShippedSet(files::usualSetId));
    rules.term = "Demo";
    rules.firstDay = m_firstDay;
    rules.lastDay = base::Date::fromDays(m_firstDay.days() + daysOfTerm);
    rules.counted = session::countsAllButNewCards;
    const keys::Secret code = m_random.secret(keys::codeSecretBytes);
    const keys::Secret typed = keys::codeText(keys::CodeSort::Program, code.view());
    m_programCode.assign(typed.view().begin(), typed.view().end());
    auto vault = std::make_unique<vault::MemoryVault>(m_random);
    need(session::beginProgram(*vault, need(keys::programKey(code.view())), "Adela Winther", rules, clock(), m_random));
    auto director = need(session::Session::open(std::move(vault), clock(), m_random));
    tellRules(*director);
    return director;
}

void DemoStage::tellRules(session::Session& director) const
{
    constexpr journal::MinuteOfDay begin = 7 * 60;
    constexpr journal::MinuteOfDay end = 15 * 60 + 30;
    constexpr std::int32_t daysOfWork = 5;
    std::vector<journal::ClinicalDay> days;
    for (std::int32_t day = 0; day <= daysOfTerm; ++day) {
        for (const std::string_view site : sites) {
            if (day % 7 < daysOfWork) { // the term begins on a Monday
                days.push_back({base::Date::fromDays(m_firstDay.days() + day), std::string(site), begin, end});
            }
        }
    }
    need(session::setClinicalDays(director, std::string(className), std::move(days)));
    using enum journal::PhoneRule;
    need(session::setSites(director,
                           {{std::string(sites[0]), Core, "Lockers at the desk; ask for a key."},
                            {std::string(sites[1]), LoungeOnly, ""},
                            {std::string(sites[2]), NotAtAll, "Pen-signed stubs, entered the same evening."}}));
    need(session::setWhoMaySign(director, {{"CSFA", journal::signsEveryRole},
                                           {"CST", journal::signsEveryRole},
                                           {"RN", journal::signsSecondScrub | journal::signsObservation}}));
    const session::Rules next = need(session::rulesOfShippedSet("cap15"));
    need(session::changeRequirements(director, {std::string(className),
                                                base::Date::fromDays(m_firstDay.days() + daysOfTerm + 1),
                                                next.requirementSet,
                                                next.setDigest,
                                                "The list of the next term.",
                                                {}}));
}

std::unique_ptr<session::Session> DemoStage::join(session::Session& inviter, const std::string& name,
                                                  journal::Role role)
{
    const session::OpenInvitation open =
        need(session::invite(inviter, name, role, {className}, std::nullopt, daysToAnswer));
    const keys::Invitation invitation = need(keys::Invitation::fromCode(open.code));
    auto vault = std::make_unique<vault::MemoryVault>(m_random);
    const keys::InvitationReply reply = need(session::join(*vault, invitation, name));
    need(session::grant(inviter, reply));
    return need(session::Session::open(std::move(vault), clock(), m_random));
}

CardInUse DemoStage::giveCard(session::Session& staff, const Holder& holder, const keys::Id& person,
                              std::string_view site)
{
    const keys::SigningCard card = session::newCard(staff);
    keys::SigningKey key = need(keys::cardKey(card, staff.program(), holder.pin));
    journal::Vouch vouch;
    session::nameCard(vouch, card.card, card.epoch, key.verifyKey());
    vouch.person = person == keys::Id{} ? m_random.id() : person;
    vouch.name = holder.name;
    vouch.credential = holder.credential;
    vouch.site = site;
    need(staff.append(staff.programStream(), vouch));
    constexpr std::int32_t daysBeforeTerm = 21;
    need(session::setStanding(staff, vouch.person, base::Date::fromDays(m_firstDay.days() - daysBeforeTerm), true));
    const keys::Secret code = card.code();
    return {{std::string(holder.name), std::string(holder.credential)},
            std::string(holder.pin),
            keys::Bytes(code.view().begin(), code.view().end()),
            {std::move(key), card.card, card.epoch, true}};
}

bool DemoStage::isSigned(const DemoCase& one)
{
    return one.ending != Ending::Unsigned && one.ending != Ending::OpenedTwice && one.ending != Ending::Withdrawn;
}

void DemoStage::live(session::Session& phone, DemoCase& one, const CardInUse& card)
{
    one.sheet = need(session::openSheet(phone, one.draft));
    if (one.ending == Ending::Withdrawn) {
        need(phone.append(phone.person(), journal::Withdrawn{one.sheet, "I was moved to another room."}));
    }
    if (!isSigned(one)) {
        return;
    }
    const session::SheetMarks marks{one.sheet, one.draft.procedures, one.draft.head, one.marks, one.feedback};
    if (one.ending == Ending::Drawn || one.ending == Ending::Paper) {
        need(session::signWeakly(phone, card.name, marks, keys::Bytes{0, 2, 10, 10, 200, 200}, {}));
    } else {
        need(session::signWithCard(phone, card.unlocked, card.name, {marks}));
    }
    need(phone.append(phone.person(), journal::Logged{one.sheet, one.choices}));
}

keys::Bytes DemoStage::parcelOf(const session::Session& student)
{
    return need(session::makeParcels(student, need(session::toStaff(student)))).front();
}

void DemoStage::sendToStaff(const session::Session& student, session::Session& staff)
{
    need(session::takeIn(staff, {{"parcel", parcelOf(student)}}));
}

void DemoStage::sendToStudent(const session::Session& staff, session::Session& student)
{
    const session::Directory directory(staff);
    const session::Recipients back = need(session::toStudent(staff, *directory.person(student.person())));
    need(session::takeIn(student, {{"parcel", need(session::makeParcels(staff, back)).front()}}));
}

} // namespace peelpack::demo
