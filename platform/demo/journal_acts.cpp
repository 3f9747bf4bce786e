#include "platform/demo/journal_acts.h"

#include "platform/demo/need.h"
#include "platform/session/acts.h"

#include <algorithm>
#include <map>

namespace peelpack::demo {
namespace {

using record::SheetStanding;

/// By sheet.
std::map<keys::Id, record::SheetRecord> sheetsOf(const session::Session& session, const keys::Id& student)
{
    std::map<keys::Id, record::SheetRecord> sheets;
    for (record::SheetRecord& sheet : session.recordOf(student).sheets) {
        sheets.emplace(session::idOf(sheet.id), std::move(sheet));
    }
    return sheets;
}

bool isWeak(sheet::Strength strength)
{
    return strength == sheet::Strength::Drawn || strength == sheet::Strength::Paper;
}

class Look {
public:
    Look(session::Session& desk, Student& student, Dice& dice, const session::SharedSheets& shared)
        : m_desk(desk), m_student(student), m_dice(dice), m_shared(shared)
    {
    }

    void at(const DemoCase& one, record::SheetRecord&& sheet)
    {
        const session::SheetPlace place{m_student.person, one.sheet, std::move(sheet)};
        const record::SheetRecord& record = place.record;
        if (one.ending == Ending::OpenedTwice && record.standing == SheetStanding::Open) {
            need(session::voidSheet(m_desk, place, "Opened twice; the other sheet of this case stays."));
            return;
        }
        if (one.ending == Ending::Told ||
            (record.standing != SheetStanding::Signed && record.standing != SheetStanding::Amended)) {
            return;
        }
        const bool asked = std::any_of(record.reviews.begin(), record.reviews.end(), [](const record::Review& review) {
            return review.answer == record::Review::Answer::Pending;
        });
        if (asked) {
            answerReview(place);
        } else if (isWeak(record.strength)) {
            confirm(place);
        } else if (record.strength == sheet::Strength::OwnPhone || record.strength == sheet::Strength::Card) {
            decide(one, place);
        }
    }

private:
    void answerReview(const session::SheetPlace& place)
    {
        if (m_dice.chance(60)) {
            need(session::acceptReview(m_desk, place, std::nullopt, "The preceptor remembers it so.", m_shared));
        } else {
            need(session::initialSheet(m_desk, place, false, "The preceptor stands by the mark.", m_shared));
        }
    }

    void confirm(const session::SheetPlace& place)
    {
        if (m_dice.chance(60)) {
            need(session::initialSheet(m_desk, place, true, "Confirmed with the preceptor by telephone.", m_shared));
        }
    }

    void decide(const DemoCase& one, const session::SheetPlace& place)
    {
        const bool untouched = place.record.standing == SheetStanding::Signed && !place.record.returned;
        const std::size_t roll = untouched ? m_dice.below(100) : 100;
        if (roll < 3) {
            need(session::returnSheet(m_desk, place, "The room is not the one on the board of that day: look again."));
            m_student.hasReturns = true;
        } else if (roll < 5) {
            session::SheetChange change;
            change.marks = {{sheet::Skill::Camera, sheet::Mark::NotApplicable, "No camera on this case."}};
            need(session::amendSheet(m_desk, place, change, "There was no camera on this case, says the preceptor."));
        } else if (roll < 25 && !one.otherChoices.empty()) {
            need(session::refileSheet(m_desk, place, one.otherChoices, "Done by the other service at this site."));
        } else if (roll >= 8) {
            const bool beside = m_shared.hasFirstScrubBeside({session::idOf(place.student), place.record.id});
            need(session::initialSheet(m_desk, place, false, beside ? "They changed places at the relief." : "",
                                       m_shared));
        }
    }

    session::Session& m_desk;
    Student& m_student;
    Dice& m_dice;
    const session::SharedSheets& m_shared;
};

} // namespace

void lookThrough(session::Session& desk, Student& student, Dice& dice, const session::SharedSheets& shared)
{
    std::map<keys::Id, record::SheetRecord> sheets = sheetsOf(desk, student.person);
    Look look(desk, student, dice, shared);
    for (const DemoCase& one : student.cases) {
        if (const auto found = sheets.find(one.sheet); found != sheets.end()) {
            look.at(one, std::move(found->second));
        }
    }
}

void answer(Student& student, Dice& dice)
{
    session::Session& phone = student.home.session();
    const std::map<keys::Id, record::SheetRecord> sheets = sheetsOf(phone, student.person);
    for (const DemoCase& one : student.cases) {
        const auto found = sheets.find(one.sheet);
        if (one.ending == Ending::Told || found == sheets.end() || found->second.standing != SheetStanding::Returned) {
            continue;
        }
        if (dice.chance(50)) {
            journal::HeadChanged changed{one.sheet, session::idOf(found->second.operation), one.draft};
            changed.draft.head.room = "Room " + std::to_string(10 + dice.below(4));
            need(phone.append(phone.person(), changed));
        } else {
            need(phone.append(phone.person(), journal::Logged{one.sheet, one.choices}));
        }
    }
}

} // namespace peelpack::demo
