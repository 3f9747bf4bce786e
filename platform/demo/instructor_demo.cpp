#include "platform/demo/instructor_demo.h"

#include "platform/demo/demo_program.h"
#include "platform/demo/invented_people.h"
#include "platform/demo/journal_cases.h"
#include "platform/demo/need.h"
#include "platform/files/resources.h"
#include "platform/session/acts.h"
#include "platform/session/cards.h"
#include "platform/session/exchange.h"
#include "platform/session/importing.h"
#include "platform/session/intake.h"
#include "platform/session/program_rules.h"
#include "platform/session/signing.h"
#include "platform/vault/memory_vault.h"
#include "sync/keys/code.h"
#include "sync/merge/record_content.h"

#include <algorithm>

namespace peelpack::demo {
namespace {

constexpr std::size_t classSize = 12;
constexpr std::size_t notTakenIn = 3; ///< students whose last parcel waits
constexpr std::int32_t daysBehind = 82;
constexpr std::int32_t lastDays = 9; ///< whose sheets nobody has looked at
constexpr std::size_t fewestCases = 40;
constexpr std::size_t mostCases = 64;
constexpr std::uint32_t seed = 20'260'114;
constexpr std::int64_t secondsInDay = 86'400;
constexpr std::int64_t daysToAnswer = 14;
constexpr const char* className = "spring-class";
constexpr const char* instructorName = "Bertil Moreau";

struct Holder {
    std::string_view name;
    std::string_view credential;
    std::string_view pin;
};
constexpr std::array holders = std::to_array<Holder>(
    {{"L. Brandt", "CST", "482913"}, {"T. Osei", "CST", "730518"}, {instructorName, "CST", "915264"}});

struct Signer {
    session::SignerName name;
    session::UnlockedCard card;
};

/// One student of the class while it is made.
struct Made {
    std::unique_ptr<session::Session> phone;
    std::vector<DemoCase> cases;
};

class Maker {
public:
    Maker(const catalogue::Catalogue& catalogue, const session::Clock& clock, keys::RandomSource& random)
        : m_catalogue(catalogue), m_random(random), m_real(clock), m_now(clock()),
          m_past(std::make_shared<std::optional<journal::Time>>()), m_dice(seed)
    {
    }

    InstructorDemo make()
    {
        const std::int32_t today = merge::timeOf(m_now).day().days();
        const std::int32_t weekday = (today - daysBehind + 3) % 7; // 1970-01-01 was a Thursday
        m_firstDay = base::Date::fromDays(today - daysBehind - weekday);
        at(m_firstDay, 8);
        begin();
        inventCases(today);
        const std::int32_t looked = today - lastDays;
        for (Made& student : m_students) {
            live(student, 0, looked);
            at(base::Date::fromDays(looked), 17);
            send(student);
        }
        at(base::Date::fromDays(looked), 18);
        for (const Made& student : m_students) {
            lookThrough(*student.phone);
        }
        importPaper(*m_students.front().phone);
        for (std::size_t i = 0; i < m_students.size(); ++i) {
            Made& student = m_students[i];
            askForReview(student, looked);
            live(student, looked + 1, today);
            at(base::Date::fromDays(today), 14);
            if (i + notTakenIn < m_students.size()) {
                send(student);
            } else {
                m_demo.parcels.push_back({std::string(springStudents[i]) + ".peelparcel", parcelOf(*student.phone)});
            }
        }
        m_past->reset();
        return std::move(m_demo);
    }

private:
    session::Clock clock()
    {
        return [past = m_past, real = m_real] {
            if (!*past) {
                return real();
            }
            (*past)->seconds += 5;
            return **past;
        };
    }
    void at(base::Date day, int hour)
    {
        *m_past = journal::Time{day.days() * secondsInDay + std::int64_t{hour} * 3600 - std::int64_t{m_now.zone} * 60,
                                m_now.zone};
    }

    void begin()
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
        m_director = need(session::Session::open(std::move(vault), clock(), m_random));
        m_demo.instructor = join(*m_director, instructorName, journal::Role::Instructor);
        need(session::takeIn(
            *m_demo.instructor,
            {{"parcel", need(session::makeParcels(*m_director, need(session::toColleagues(*m_director)))).front()}}));
        giveCards();
        for (std::size_t i = 0; i < classSize; ++i) {
            Made made;
            made.phone = join(*m_demo.instructor, std::string(springStudents[i]), journal::Role::Student);
            const session::Directory directory(*m_demo.instructor);
            const session::Recipients to =
                need(session::toStudent(*m_demo.instructor, *directory.person(made.phone->person())));
            need(
                session::takeIn(*made.phone, {{"parcel", need(session::makeParcels(*m_demo.instructor, to)).front()}}));
            m_students.push_back(std::move(made));
        }
    }

    std::unique_ptr<session::Session> join(session::Session& inviter, const std::string& name, journal::Role role)
    {
        const session::OpenInvitation open =
            need(session::invite(inviter, name, role, {className}, std::nullopt, daysToAnswer));
        const keys::Invitation invitation = need(keys::Invitation::fromCode(open.code));
        auto vault = std::make_unique<vault::MemoryVault>(m_random);
        const keys::InvitationReply reply = need(session::join(*vault, invitation, name));
        need(session::grant(inviter, reply));
        return need(session::Session::open(std::move(vault), clock(), m_random));
    }

    /// The last of them is the instructor, who scrubs as well.
    void giveCards()
    {
        session::Session& instructor = *m_demo.instructor;
        for (const Holder& holder : holders) {
            const keys::SigningCard card = session::newCard(instructor);
            keys::SigningKey key = need(keys::cardKey(card, instructor.program(), holder.pin));
            journal::Vouch vouch;
            session::nameCard(vouch, card.card, card.epoch, key.verifyKey());
            vouch.person = holder.name == instructorName ? instructor.person() : m_random.id();
            vouch.name = holder.name;
            vouch.credential = holder.credential;
            vouch.site = sites[m_signers.size() % sites.size()];
            need(instructor.append(instructor.programStream(), vouch));
            m_signers.push_back({{std::string(holder.name), std::string(holder.credential)},
                                 {std::move(key), card.card, card.epoch, true}});
        }
    }

    void inventCases(std::int32_t today)
    {
        const std::span<const std::string_view> names(springStudents.data(), classSize);
        const DemoClass made = demoClass(m_catalogue, "class", names, m_firstDay, daysBehind + 9, seed);
        PreceptorDays<std::size_t> days;
        auto from = made.rows.begin();
        for (std::size_t i = 0; i < classSize; ++i) {
            const auto end =
                std::find_if(from, made.rows.end(), [&](const sheet::CaseRow& row) { return row.student != names[i]; });
            std::vector<DemoCase>& cases = m_students[i].cases;
            cases = casesOf({from, end}, m_firstDay, i, fewestCases, mostCases);
            std::erase_if(cases, [&](const DemoCase& one) { return one.openOn.days() > today; });
            arrangeDays(cases, days);
            from = end;
        }
        scrubTogether(today);
    }

    /// Two pairs of students say that they were at one operation in the last days; one of the pairs as first scrub
    /// both.
    void scrubTogether(std::int32_t today)
    {
        for (std::size_t pair = 0; pair < 2; ++pair) {
            Made& one = m_students[2 * pair];
            Made& other = m_students[2 * pair + 1];
            const auto late = std::find_if(one.cases.begin(), one.cases.end(), [&](const DemoCase& candidate) {
                return candidate.openOn.days() > today - lastDays && candidate.ending == Ending::Signed;
            });
            if (late == one.cases.end()) {
                continue;
            }
            DemoCase shared = *late;
            shared.feedback.clear();
            for (DemoCase* both : {&*late, &shared}) {
                for (journal::SkillMark& mark : both->marks) {
                    const bool second = pair == 1 && both == &shared && mark.skill == sheet::Skill::Pass;
                    if (sheet::isFirstScrubSkill(mark.skill)) {
                        mark = {mark.skill, second ? sheet::Mark::No : sheet::Mark::Yes, {}};
                    }
                }
            }
            other.cases.push_back(std::move(shared));
            std::stable_sort(other.cases.begin(), other.cases.end(),
                             [](const DemoCase& a, const DemoCase& b) { return a.openOn < b.openOn; });
        }
    }

    void live(Made& student, std::int32_t first, std::int32_t last)
    {
        for (DemoCase& one : student.cases) {
            if (one.openOn.days() >= first && one.openOn.days() <= last) {
                live(*student.phone, one);
            }
        }
    }

    void live(session::Session& phone, DemoCase& one)
    {
        at(one.openOn, 13);
        one.sheet = need(session::openSheet(phone, one.draft));
        if (one.ending == Ending::Unsigned || one.ending == Ending::OpenedTwice) {
            return;
        }
        if (one.ending == Ending::Withdrawn) {
            need(phone.append(phone.person(), journal::Withdrawn{one.sheet, "I was moved to another room."}));
            return;
        }
        // The instructor scrubs now and then.
        const Signer& signer = m_signers[m_dice.chance(2) ? m_signers.size() - 1 : one.preceptor % 2];
        const session::SheetMarks marks{one.sheet, one.draft.procedures, one.draft.head, one.marks, one.feedback};
        if (one.ending == Ending::Drawn || one.ending == Ending::Paper) {
            need(session::signWeakly(phone, signer.name, marks, keys::Bytes{0, 2, 10, 10, 200, 200}, {}));
        } else {
            need(session::signWithCard(phone, signer.card, signer.name, {marks}));
        }
        need(phone.append(phone.person(), journal::Logged{one.sheet, one.choices}));
        if (m_dice.chance(4)) {
            journal::HeadChanged changed{one.sheet, m_random.id(), one.draft};
            changed.draft.head.room = "Room " + std::to_string(10 + m_dice.below(4));
            need(phone.append(phone.person(), changed));
        }
    }

    static keys::Bytes parcelOf(const session::Session& phone)
    {
        return need(session::makeParcels(phone, need(session::toStaff(phone)))).front();
    }
    void send(const Made& student)
    {
        need(session::takeIn(*m_demo.instructor, {{"parcel", parcelOf(*student.phone)}}));
    }

    /// Most of what came in is initialed; some is returned, changed, filed elsewhere.
    void lookThrough(const session::Session& phone)
    {
        session::Session& desk = *m_demo.instructor;
        std::vector<session::Writing> writings;
        for (record::SheetRecord& sheet : desk.recordOf(phone.person()).sheets) {
            const bool weak = sheet.strength == sheet::Strength::Drawn || sheet.strength == sheet::Strength::Paper;
            const bool own = !sheet.signers.empty() && sheet.signers.front().statement.name == instructorName;
            if (sheet.standing != record::SheetStanding::Signed || own) {
                continue;
            }
            const session::SheetPlace place{phone.person(), session::idOf(sheet.id), std::move(sheet)};
            const std::size_t roll = m_dice.below(100);
            if (roll < 3) {
                writings.push_back(need(session::returning(desk, place, "Which room was it? The board says Room 2.")));
            } else if (roll < 6) {
                session::SheetChange change;
                change.marks = {{sheet::Skill::Camera, sheet::Mark::NotApplicable, "No camera on this case."}};
                writings.push_back(need(session::amending(desk, place, change, "There was no camera on this case.")));
            } else if (weak) {
                if (roll < 60) {
                    writings.push_back(
                        need(session::initialing(desk, place, true, "Confirmed with the preceptor by telephone.")));
                }
            } else {
                writings.push_back(need(session::initialing(desk, place, false, {})));
            }
        }
        need(desk.append(writings));
    }

    /// One sheet of a paper log from before the phones; nobody has initialed it.
    void importPaper(const session::Session& phone)
    {
        session::PaperSheet paper;
        paper.procedures = {"Open inguinal hernia repair with mesh"};
        paper.head.date = base::Date::fromDays(m_firstDay.days() - 3);
        paper.head.site = sites.front();
        paper.choices = {{0, "general", 0}};
        paper.role = sheet::Role::First;
        paper.preceptor = holders.front().name;
        paper.credential = holders.front().credential;
        need(session::importSheets(*m_demo.instructor, phone.person(), {paper}, "paper log of the spring, page 3"));
    }

    /// Every third student asks for a mark to be looked at again.
    void askForReview(Made& student, std::int32_t looked)
    {
        if (++m_asked % 3 != 1) {
            return;
        }
        session::Session& phone = *student.phone;
        at(base::Date::fromDays(looked), 19);
        for (const record::SheetRecord& sheet : phone.recordOf(phone.person()).sheets) {
            if (sheet.isSigned() && sheet.content.marks.marks.of(sheet::Skill::Verify) == sheet::Mark::No) {
                need(phone.append(
                    phone.person(),
                    journal::ReviewAsked{session::idOf(sheet.id),
                                         {sheet::Skill::Verify, sheet::Mark::Yes, {}},
                                         "I picked the case the evening before; the day team opened it."}));
                return;
            }
        }
    }

    const catalogue::Catalogue& m_catalogue;
    keys::RandomSource& m_random;
    session::Clock m_real;
    journal::Time m_now;
    std::shared_ptr<std::optional<journal::Time>> m_past; ///< what the clocks say until it is let go
    Dice m_dice;
    base::Date m_firstDay;
    InstructorDemo m_demo;
    std::unique_ptr<session::Session> m_director;
    std::vector<Signer> m_signers;
    std::vector<Made> m_students;
    std::size_t m_asked = 0;
};

} // namespace

base::Result<InstructorDemo> makeInstructorDemo(const catalogue::Catalogue& catalogue, const session::Clock& clock,
                                                keys::RandomSource& random)
{
    try {
        return Maker(catalogue, clock, random).make();
    } catch (const Stopped& stopped) {
        return stopped.error;
    }
}

} // namespace peelpack::demo
