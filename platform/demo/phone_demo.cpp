#include "platform/demo/phone_demo.h"

#include "platform/demo/demo_program.h"
#include "platform/demo/invented_people.h"
#include "platform/demo/journal_cases.h"
#include "platform/demo/need.h"
#include "platform/files/resources.h"
#include "platform/session/acts.h"
#include "platform/session/cards.h"
#include "platform/session/exchange.h"
#include "platform/session/intake.h"
#include "platform/session/program_rules.h"
#include "platform/session/signing.h"
#include "platform/vault/memory_vault.h"
#include "sync/keys/code.h"
#include "sync/merge/record_content.h"

#include <array>

namespace peelpack::demo {
namespace {

constexpr std::int32_t daysBehind = 82;
constexpr std::size_t fewestCases = 64;
constexpr std::size_t mostCases = 70;
constexpr std::uint32_t seed = 20'260'301;
constexpr std::int64_t secondsInDay = 86'400;

struct Holder {
    std::string_view name;
    std::string_view credential;
    std::string_view pin;
};
constexpr std::array holders = std::to_array<Holder>(
    {{"L. Brandt", "CST", "482913"}, {"T. Osei", "CST", "730518"}, {"M. Varga", "CSFA", "915264"}});

struct CardInUse {
    PhoneDemo::Card card;
    session::UnlockedCard unlocked;
};

/// A clock that stands in the past until it is let go.
struct Past {
    session::Clock real;
    std::optional<journal::Time> held;
    journal::Time look()
    {
        if (!held) {
            return real();
        }
        held->seconds += 5;
        return *held;
    }
};

class Maker {
public:
    Maker(const catalogue::Catalogue& catalogue, const session::Clock& clock, keys::RandomSource& random)
        : m_catalogue(catalogue), m_random(random), m_past(std::make_shared<Past>(Past{clock, std::nullopt})),
          m_now(clock())
    {
    }

    PhoneDemo make()
    {
        const std::int32_t today = merge::timeOf(m_now).day().days();
        const std::int32_t weekday = (today - daysBehind + 3) % 7; // 1970-01-01 was a Thursday
        m_firstDay = base::Date::fromDays(today - daysBehind - weekday);
        at(m_firstDay, 8);
        beginProgram();
        giveCards();
        join();
        liveThroughTheTerm(today);
        m_past->held.reset();
        return std::move(m_demo);
    }

private:
    session::Clock clock()
    {
        return [past = m_past] { return past->look(); };
    }
    void at(base::Date day, int hour)
    {
        m_past->held = journal::Time{
            day.days() * secondsInDay + std::int64_t{hour} * 3600 - std::int64_t{m_now.zone} * 60, m_now.zone};
    }

    void beginProgram()
    {
        session::Rules rules = need(session::rulesOfShippedSet(files::usualSetId));
        rules.term = "Demo";
        rules.firstDay = m_firstDay;
        rules.lastDay = base::Date::fromDays(m_firstDay.days() + 120);
        rules.counted = session::countsAllButNewCards;
        const keys::Secret code = m_random.secret(keys::codeSecretBytes);
        auto vault = std::make_unique<vault::MemoryVault>(m_random);
        need(session::beginProgram(*vault, need(keys::programKey(code.view())), "Adela Winther", rules, clock(),
                                   m_random));
        m_demo.director = need(session::Session::open(std::move(vault), clock(), m_random));
    }

    void giveCards()
    {
        session::Session& director = *m_demo.director;
        for (const Holder& holder : holders) {
            const keys::SigningCard card = session::newCard(director);
            keys::SigningKey key = need(keys::cardKey(card, director.program(), holder.pin));
            journal::Vouch vouch;
            session::nameCard(vouch, card.card, card.epoch, key.verifyKey());
            vouch.person = m_random.id();
            vouch.name = holder.name;
            vouch.credential = holder.credential;
            vouch.site = sites[m_cards.size() % sites.size()];
            need(director.append(director.programStream(), vouch));
            const keys::Secret code = card.code();
            m_cards.push_back({{std::string(holder.name), std::string(holder.credential), std::string(holder.pin),
                                keys::Bytes(code.view().begin(), code.view().end())},
                               {std::move(key), card.card, card.epoch, true}});
            m_demo.cards.push_back(m_cards.back().card);
        }
    }

    void join()
    {
        constexpr std::int64_t daysToAnswer = 14;
        session::Session& director = *m_demo.director;
        const std::string name(springStudents.front());
        const session::OpenInvitation open =
            need(session::invite(director, name, journal::Role::Student, {"spring-class"}, std::nullopt, daysToAnswer));
        const keys::Invitation invitation = need(keys::Invitation::fromCode(open.code));
        auto vault = std::make_unique<vault::MemoryVault>(m_random);
        const keys::InvitationReply reply = need(session::join(*vault, invitation, name));
        need(session::grant(director, reply));
        m_demo.student = need(session::Session::open(std::move(vault), clock(), m_random));
        exchange();
    }

    /// The student's parcel to the director and the answer back.
    void exchange()
    {
        session::Session& student = *m_demo.student;
        session::Session& director = *m_demo.director;
        need(session::takeIn(
            director, {{"parcel", need(session::makeParcels(student, need(session::toStaff(student)))).front()}}));
        const session::Directory directory(director);
        const session::Recipients back = need(session::toStudent(director, *directory.person(student.person())));
        need(session::takeIn(student, {{"parcel", need(session::makeParcels(director, back)).front()}}));
    }

    void liveThroughTheTerm(std::int32_t today)
    {
        const std::array names{springStudents.front()};
        const DemoClass made = demoClass(m_catalogue, "phone", names, m_firstDay, daysBehind + 2, seed);
        std::vector<DemoCase> cases = casesOf(made.rows, m_firstDay, 0, fewestCases, mostCases);
        std::erase_if(cases, [&](const DemoCase& one) { return one.openOn.days() > today; });
        const std::size_t waiting = cases.size() < 3 ? 0 : cases.size() - 2; // the last two wait for a preceptor
        const std::size_t kept = cases.size() * 9 / 10;                      // what came after is only on the phone
        for (std::size_t i = 0; i < cases.size(); ++i) {
            live(cases[i], i >= waiting);
            if (i + 1 == kept) {
                at(base::Date::fromDays(cases[i].openOn.days() + 1), 9);
                exchange();
                lookThrough();
                exchange();
            }
        }
    }

    void live(DemoCase& one, bool unsignedYet)
    {
        session::Session& student = *m_demo.student;
        at(one.openOn, 13);
        one.sheet = need(session::openSheet(student, one.draft));
        if (unsignedYet || one.ending == Ending::Unsigned || one.ending == Ending::OpenedTwice) {
            return;
        }
        const CardInUse& card = m_cards[one.preceptor % m_cards.size()];
        const session::SignerName signer{card.card.name, card.card.credential};
        const session::SheetMarks marks{one.sheet, one.draft.procedures, one.draft.head, one.marks, one.feedback};
        if (one.ending == Ending::Withdrawn) {
            need(student.append(student.person(), journal::Withdrawn{one.sheet, "I was moved to another room."}));
            return;
        }
        if (one.ending == Ending::Drawn || one.ending == Ending::Paper) {
            need(session::signWeakly(student, signer, marks, keys::Bytes{0, 2, 10, 10, 200, 200}, {}));
        } else {
            need(session::signWithCard(student, card.unlocked, signer, {marks}));
        }
        need(student.append(student.person(), journal::Logged{one.sheet, one.choices}));
    }

    /// The instructor initials most of what came in, returns one, and changes one.
    void lookThrough()
    {
        session::Session& director = *m_demo.director;
        const keys::Id person = m_demo.student->person();
        std::size_t number = 0;
        bool returned = false;
        for (const record::SheetRecord& sheet : director.recordOf(person).sheets) {
            if (sheet.standing != record::SheetStanding::Signed) {
                continue;
            }
            const session::SheetPlace place{person, session::idOf(sheet.id), sheet};
            const bool weak = sheet.strength == sheet::Strength::Drawn || sheet.strength == sheet::Strength::Paper;
            if (!returned && number > 20) {
                need(session::returnSheet(director, place, "Which room was it? The log says Room 2."));
                returned = true;
            } else if (number % 11 == 7) {
                journal::Head head = session::headOf(sheet.content.head);
                head.room = "Room 6";
                need(session::amendSheet(director, place, {{}, head, {}}, "The schedule says Room 6."));
            } else if (!weak) {
                need(session::initialSheet(director, place, false, {}, {}));
            }
            ++number;
        }
    }

    const catalogue::Catalogue& m_catalogue;
    keys::RandomSource& m_random;
    std::shared_ptr<Past> m_past;
    journal::Time m_now;
    base::Date m_firstDay;
    PhoneDemo m_demo;
    std::vector<CardInUse> m_cards;
};

} // namespace

base::Result<PhoneDemo> makePhoneDemo(const catalogue::Catalogue& catalogue, const session::Clock& clock,
                                      keys::RandomSource& random)
{
    try {
        return Maker(catalogue, clock, random).make();
    } catch (const Stopped& stopped) {
        return stopped.error;
    }
}

} // namespace peelpack::demo
