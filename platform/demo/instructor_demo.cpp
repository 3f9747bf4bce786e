#include "platform/demo/instructor_demo.h"

#include "platform/demo/demo_program.h"
#include "platform/demo/demo_stage.h"
#include "platform/demo/invented_people.h"
#include "platform/demo/need.h"
#include "platform/session/acts.h"
#include "platform/session/exchange.h"
#include "platform/session/importing.h"
#include "platform/session/intake.h"
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
constexpr const char* instructorName = "Bertil Moreau";

constexpr std::array holders = std::to_array<Holder>(
    {{"L. Brandt", "CST", "482913"}, {"T. Osei", "CST", "730518"}, {instructorName, "CST", "915264"}});

/// One student of the class while it is made.
struct Made {
    std::unique_ptr<session::Session> phone;
    std::vector<DemoCase> cases;
};

class Maker {
public:
    Maker(const catalogue::Catalogue& catalogue, const session::Clock& clock, keys::RandomSource& random)
        : m_catalogue(catalogue), m_random(random), m_stage(clock, random, daysBehind), m_dice(seed)
    {
    }

    InstructorDemo make()
    {
        const std::int32_t today = m_stage.today();
        begin();
        inventCases(today);
        const std::int32_t looked = today - lastDays;
        for (Made& student : m_students) {
            live(student, 0, looked);
            m_stage.at(base::Date::fromDays(looked), 17);
            DemoStage::sendToStaff(*student.phone, *m_demo.instructor);
        }
        m_stage.at(base::Date::fromDays(looked), 18);
        const session::SharedSheets shared = session::SharedSheets::of(*m_demo.instructor);
        for (const Made& student : m_students) {
            lookThrough(*student.phone, shared);
        }
        importPaper(*m_students.front().phone);
        for (std::size_t i = 0; i < m_students.size(); ++i) {
            Made& student = m_students[i];
            askForReview(student, looked);
            live(student, looked + 1, today);
            m_stage.at(base::Date::fromDays(today), 14);
            if (i + notTakenIn < m_students.size()) {
                DemoStage::sendToStaff(*student.phone, *m_demo.instructor);
            } else {
                m_demo.parcels.push_back(
                    {std::string(springStudents[i]) + ".peelparcel", DemoStage::parcelOf(*student.phone)});
            }
        }
        const session::Recipients to = need(session::toColleagues(*m_demo.instructor));
        need(session::takeIn(*m_director, {{"parcel", need(session::makeParcels(*m_demo.instructor, to)).front()}}));
        m_stage.letGo();
        m_demo.director = std::move(m_director);
        return std::move(m_demo);
    }

private:
    void begin()
    {
        m_director = m_stage.beginProgram();
        m_demo.programCode = m_stage.programCode();
        m_demo.instructor = m_stage.join(*m_director, instructorName, journal::Role::Instructor);
        session::Session& instructor = *m_demo.instructor;
        need(session::takeIn(
            instructor,
            {{"parcel", need(session::makeParcels(*m_director, need(session::toColleagues(*m_director)))).front()}}));
        for (const Holder& holder : holders) {
            const keys::Id person = holder.name == instructorName ? instructor.person() : keys::Id{};
            m_cards.push_back(m_stage.giveCard(instructor, holder, person, sites[m_cards.size() % sites.size()]));
        }
        for (std::size_t i = 0; i < classSize; ++i) {
            Made made;
            made.phone = m_stage.join(instructor, std::string(springStudents[i]), journal::Role::Student);
            DemoStage::sendToStudent(instructor, *made.phone);
            m_students.push_back(std::move(made));
        }
    }

    void inventCases(std::int32_t today)
    {
        const std::span<const std::string_view> names(springStudents.data(), classSize);
        const DemoClass made = demoClass(m_catalogue, "class", names, m_stage.firstDay(), daysBehind + 9, seed);
        PreceptorDays<std::size_t> days;
        auto from = made.rows.begin();
        for (std::size_t i = 0; i < classSize; ++i) {
            const auto end =
                std::find_if(from, made.rows.end(), [&](const sheet::CaseRow& row) { return row.student != names[i]; });
            std::vector<DemoCase>& cases = m_students[i].cases;
            cases = casesOf({from, end}, m_stage.firstDay(), i, fewestCases, mostCases);
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

    /// The instructor, whose card is the last, scrubs now and then.
    void live(session::Session& phone, DemoCase& one)
    {
        m_stage.at(one.openOn, 13);
        const bool isSigned = DemoStage::isSigned(one);
        const std::size_t card = isSigned && m_dice.chance(2) ? m_cards.size() - 1 : one.preceptor % 2;
        DemoStage::live(phone, one, m_cards[card]);
        if (isSigned && m_dice.chance(4)) {
            journal::HeadChanged changed{one.sheet, m_random.id(), one.draft};
            changed.draft.head.room = "Room " + std::to_string(10 + m_dice.below(4));
            need(phone.append(phone.person(), changed));
        }
    }

    /// Most of what came in is initialed; some is returned, changed, filed elsewhere.
    void lookThrough(const session::Session& phone, const session::SharedSheets& shared)
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
            const bool beside = shared.hasFirstScrubBeside({session::idOf(place.student), session::idOf(place.sheet)});
            const std::size_t roll = m_dice.below(100);
            if (roll < 3) {
                writings.push_back(need(session::returning(desk, place, "Which room was it? The board says Room 2.")));
            } else if (roll < 6) {
                session::SheetChange change;
                change.marks = {{sheet::Skill::Camera, sheet::Mark::NotApplicable, "No camera on this case."}};
                writings.push_back(need(session::amending(desk, place, change, "There was no camera on this case.")));
            } else if (weak) {
                if (roll < 60) {
                    writings.push_back(need(
                        session::initialing(desk, place, true, "Confirmed with the preceptor by telephone.", shared)));
                }
            } else {
                writings.push_back(need(session::initialing(
                    desk, place, false, beside ? "They changed places at the relief." : "", shared)));
            }
        }
        need(desk.append(writings));
    }

    /// One sheet of a paper log from before the phones; nobody has initialed it.
    void importPaper(const session::Session& phone)
    {
        session::PaperSheet paper;
        paper.procedures = {"Open inguinal hernia repair with mesh"};
        paper.head.date = base::Date::fromDays(m_stage.firstDay().days() - 3);
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
        m_stage.at(base::Date::fromDays(looked), 19);
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
    DemoStage m_stage;
    Dice m_dice;
    InstructorDemo m_demo;
    std::unique_ptr<session::Session> m_director;
    std::vector<CardInUse> m_cards;
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
