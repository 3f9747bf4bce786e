#include "platform/demo/journal_term.h"

#include "platform/demo/journal_acts.h"
#include "platform/demo/journal_troubles.h"
#include "platform/demo/need.h"

#include <algorithm>
#include <map>

namespace peelpack::demo {
namespace {

/// Weeks at whose end the staff exchange what they have.
bool staffMeets(std::size_t week)
{
    return week == 4 || week == 8 || week == 9 || week == 12 || week >= 15;
}

/// Students of each instructor whose last parcel is not taken in.
constexpr std::size_t waitAtTheEnd = 2;

class Term {
public:
    explicit Term(World& world) : m_world(world) {}

    void week(std::size_t week)
    {
        m_week = week;
        const std::int32_t monday = m_world.day(week, Monday).days();
        for (Student& student : m_world.students) {
            clinicalDays(student, monday);
        }
        const std::vector<std::string> extra = troublesBeforeParcels(m_world, week);
        for (Student& student : m_world.students) {
            const bool news = student.sends && (m_touched.contains(&student) ||
                                                std::find(extra.begin(), extra.end(), student.name) != extra.end());
            if (news) {
                m_world.clock.set(m_world.day(week, Friday), 12);
                student.parcel = parcelOf(student.home.session(), session::toStaff(student.home.session()));
                m_sent.push_back(&student);
            }
        }
        troublesWithParcels(m_world, week);
        for (std::size_t i = 1; i < m_world.staff.size(); ++i) {
            instructorsFriday(i);
        }
        for (Student& student : m_world.students) {
            answerReturns(student);
        }
        m_sent.clear();
        m_touched.clear();
        troublesAfterParcels(m_world, week);
        if (staffMeets(week)) {
            m_world.clock.set(m_world.day(week, Sunday), 10);
            exchange(m_world);
        }
    }

private:
    void clinicalDays(Student& student, std::int32_t monday)
    {
        std::vector<DemoCase*> ofWeek;
        for (DemoCase& one : student.cases) {
            const std::int32_t day = one.openOn.days() - monday;
            if (day >= 0 && day < 7 && one.ending != Ending::Told) {
                ofWeek.push_back(&one);
            }
        }
        std::stable_sort(ofWeek.begin(), ofWeek.end(),
                         [](const DemoCase* a, const DemoCase* b) { return a->openOn < b->openOn; });
        for (DemoCase* one : ofWeek) {
            m_world.clock.set(one->openOn, 13);
            open(student, *one);
        }
        if (ofWeek.empty()) {
            return;
        }
        m_touched.insert(&student);
        m_world.clock.set(m_world.day(m_week, Thursday), 15);
        handOver(student, ofWeek);
        m_world.clock.set(m_world.day(m_week, Thursday), 19);
        logCases(student, ofWeek);
    }

    void handOver(Student& student, const std::vector<DemoCase*>& ofWeek)
    {
        std::map<std::size_t, std::vector<const DemoCase*>> sittings;
        for (const DemoCase* one : ofWeek) {
            if (one->ending == Ending::Signed) {
                sittings[one->preceptor].push_back(one);
            } else {
                endOtherwise(student, *one);
            }
        }
        for (const auto& [preceptor, sheets] : sittings) {
            sign(m_world, student, m_world.preceptors[preceptor], sheets);
        }
    }

    void endOtherwise(Student& student, const DemoCase& one)
    {
        session::Session& phone = student.home.session();
        const Preceptor& preceptor = m_world.preceptors[one.preceptor];
        const session::SignerName signer{preceptor.name, preceptor.credential};
        switch (one.ending) {
        case Ending::Drawn:
            need(session::signWeakly(phone, signer, marksOf(one), strokes(), {}));
            break;
        case Ending::Paper:
            need(session::signWeakly(phone, signer, marksOf(one), {},
                                     "Stub " + keys::hex(one.sheet.view()).substr(0, 8)));
            break;
        case Ending::Declined:
            need(
                phone.append(phone.person(), journal::Declined{one.sheet, "I was relieved before the case was over."}));
            break;
        case Ending::Withdrawn:
            need(phone.append(phone.person(), journal::Withdrawn{one.sheet, "I was moved to another room."}));
            break;
        case Ending::Signed:
        case Ending::Unsigned:
        case Ending::OpenedTwice:
        case Ending::Told:
            break;
        }
    }

    /// Something that looks like a hand's: the bytes mean nothing.
    keys::Bytes strokes()
    {
        keys::Bytes bytes;
        for (std::size_t i = 0; i < 120; ++i) {
            bytes.push_back(static_cast<std::uint8_t>(m_dice.below(256)));
        }
        return bytes;
    }

    void logCases(Student& student, const std::vector<DemoCase*>& ofWeek)
    {
        session::Session& phone = student.home.session();
        std::vector<session::Writing> writings;
        for (const DemoCase* one : ofWeek) {
            if (one->ending == Ending::Withdrawn || one->ending == Ending::OpenedTwice) {
                continue;
            }
            writings.push_back({phone.person(), journal::Logged{one->sheet, one->choices}});
            const auto refused = std::find_if(one->marks.begin(), one->marks.end(), [](const journal::SkillMark& mark) {
                return mark.mark == sheet::Mark::No && sheet::isFirstScrubSkill(mark.skill);
            });
            if (one->ending == Ending::Signed && refused != one->marks.end() && m_dice.chance(12)) {
                writings.push_back(
                    {phone.person(), journal::ReviewAsked{one->sheet,
                                                          {refused->skill, sheet::Mark::Yes, {}},
                                                          "I did this before the preceptor came back from break."}});
            }
        }
        if (!writings.empty()) {
            need(phone.append(writings));
        }
    }

    void instructorsFriday(std::size_t index)
    {
        session::Session& desk = m_world.staff[index].home.session();
        std::vector<Student*> came;
        std::vector<keys::Bytes> parcels;
        const bool last = m_week + 1 == weeks;
        std::size_t waiting = 0;
        for (Student* student : m_sent) {
            if (student->instructor != index) {
                continue;
            }
            student->waits = last && waiting < waitAtTheEnd;
            if (student->waits) {
                ++waiting;
                continue;
            }
            came.push_back(student);
            parcels.push_back(student->parcel);
        }
        if (came.empty()) {
            return;
        }
        m_world.clock.set(m_world.day(m_week, Friday), 17);
        take(desk, parcels);
        const session::SharedSheets shared = session::SharedSheets::of(desk);
        for (Student* student : came) {
            lookThrough(desk, *student, m_dice, shared);
        }
        const session::Directory directory(desk);
        for (Student* student : came) {
            m_world.clock.set(m_world.day(m_week, Saturday), 9);
            const keys::Bytes back = parcelOf(desk, session::toStudent(desk, *directory.person(student->person)));
            take(student->home.session(), {back});
        }
    }

    void answerReturns(Student& student)
    {
        if (!student.hasReturns) {
            return;
        }
        student.hasReturns = false;
        m_world.clock.set(m_world.day(m_week, Saturday), 11);
        answer(student, m_dice);
    }

    World& m_world;
    Dice m_dice{20'260'112};
    std::size_t m_week = 0;
    std::vector<Student*> m_sent;
    std::set<const Student*> m_touched;
};

} // namespace

void open(Student& student, DemoCase& one)
{
    one.sheet = need(session::openSheet(student.home.session(), one.draft));
}

session::SheetMarks marksOf(const DemoCase& one)
{
    return {one.sheet, one.draft.procedures, one.draft.head, one.marks, one.feedback};
}

void sign(World& world, Student& student, const Preceptor& preceptor, const std::vector<const DemoCase*>& sheets)
{
    session::Session& phone = student.home.session();
    const session::SignerName signer{preceptor.name, preceptor.credential};
    if (!preceptor.phone) {
        std::vector<session::SheetMarks> marks;
        marks.reserve(sheets.size());
        for (const DemoCase* one : sheets) {
            marks.push_back(marksOf(*one));
        }
        need(session::signWithCard(phone, *preceptor.cards.back().unlocked, signer, marks));
        return;
    }
    for (const DemoCase* one : sheets) {
        const session::SheetPlace place = need(session::findSheet(phone, phone.person(), keys::hex(one->sheet.view())));
        const auto code = journal::encode(need(session::signingRequest(phone, place)));
        const auto request = code ? journal::decodeSigningRequest(code.value()) : code.reason();
        if (!request) {
            throw Stopped{{base::ErrorCode::BadValue, std::string(journal::sentence(request.reason()))}};
        }
        const keys::Bytes answer =
            need(session::answerRequest(*preceptor.phone, request.value(), signer, marksOf(*one), world.clock.look()));
        need(session::takeAnswer(phone, place, answer));
    }
}

void liveThroughTheTerm(World& world, const JournalProgress& progress)
{
    prepareTroubles(world);
    Term term(world);
    for (std::size_t week = 0; week < weeks; ++week) {
        progress("Weeks of the term:", week, weeks);
        term.week(week);
    }
}

} // namespace peelpack::demo
