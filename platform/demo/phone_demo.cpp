#include "platform/demo/phone_demo.h"

#include "platform/demo/demo_program.h"
#include "platform/demo/demo_stage.h"
#include "platform/demo/invented_people.h"
#include "platform/demo/need.h"
#include "platform/session/acts.h"
#include "sync/merge/record_content.h"

#include <array>

namespace peelpack::demo {
namespace {

constexpr std::int32_t daysBehind = 82;
constexpr std::size_t fewestCases = 64;
constexpr std::size_t mostCases = 70;
constexpr std::uint32_t seed = 20'260'301;
constexpr std::array holders = std::to_array<Holder>(
    {{"L. Brandt", "CST", "482913"}, {"T. Osei", "CST", "730518"}, {"M. Varga", "CSFA", "915264"}});

class Maker {
public:
    Maker(const catalogue::Catalogue& catalogue, const session::Clock& clock, keys::RandomSource& random)
        : m_catalogue(catalogue), m_stage(clock, random, daysBehind)
    {
    }

    PhoneDemo make()
    {
        m_demo.director = m_stage.beginProgram();
        for (const Holder& holder : holders) {
            m_cards.push_back(m_stage.giveCard(*m_demo.director, holder, {}, sites[m_cards.size() % sites.size()]));
            const CardInUse& card = m_cards.back();
            m_demo.cards.push_back({card.name.name, card.name.credential, card.pin, card.code});
        }
        m_demo.student = m_stage.join(*m_demo.director, std::string(springStudents.front()), journal::Role::Student);
        exchange();
        liveThroughTheTerm();
        m_stage.letGo();
        return std::move(m_demo);
    }

private:
    /// The student's parcel to the director and the answer back.
    void exchange()
    {
        DemoStage::sendToStaff(*m_demo.student, *m_demo.director);
        DemoStage::sendToStudent(*m_demo.director, *m_demo.student);
    }

    void liveThroughTheTerm()
    {
        const std::array names{springStudents.front()};
        const DemoClass made = demoClass(m_catalogue, "phone", names, m_stage.firstDay(), daysBehind + 2, seed);
        std::vector<DemoCase> cases = casesOf(made.rows, m_stage.firstDay(), 0, fewestCases, mostCases);
        std::erase_if(cases, [&](const DemoCase& one) { return one.openOn.days() > m_stage.today(); });
        const std::size_t waiting = cases.size() < 3 ? 0 : cases.size() - 2; // the last two wait for a preceptor
        const std::size_t kept = cases.size() * 9 / 10;                      // what came after is only on the phone
        for (std::size_t i = 0; i < cases.size(); ++i) {
            DemoCase& one = cases[i];
            if (i >= waiting) {
                one.ending = Ending::Unsigned;
            }
            m_stage.at(one.openOn, 13);
            DemoStage::live(*m_demo.student, one, m_cards[one.preceptor % m_cards.size()]);
            if (i + 1 == kept) {
                m_stage.at(base::Date::fromDays(one.openOn.days() + 1), 9);
                exchange();
                lookThrough();
                exchange();
            }
        }
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
    DemoStage m_stage;
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
