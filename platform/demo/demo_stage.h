#pragma once

#include "core/base/date.h"
#include "platform/demo/journal_cases.h"
#include "platform/session/session.h"
#include "platform/session/signing.h"

#include <memory>
#include <optional>
#include <string>
#include <string_view>

/// What the demos of the app are played on: a program in memory whose clocks stand in the past until the term is told.
/// Everything here throws Stopped, which the maker of a demo turns into its error.
namespace peelpack::demo {

/// Who has a signing card.
struct Holder {
    std::string_view name;
    std::string_view credential;
    std::string_view pin;
};

/// A vouched card and what its holder knows.
struct CardInUse {
    session::SignerName name;
    std::string pin;
    keys::Bytes code; ///< of its QR code
    session::UnlockedCard unlocked;
};

class DemoStage {
public:
    /// The term began on the Monday of the week that lies `daysBehind` days back. `random` must outlive it.
    DemoStage(const session::Clock& clock, keys::RandomSource& random, std::int32_t daysBehind);

    [[nodiscard]] std::int32_t today() const { return m_today; } ///< days since 1970-01-01
    [[nodiscard]] base::Date firstDay() const { return m_firstDay; }
    /// Every clock of the stage goes on from there.
    void at(base::Date day, int hour);
    /// Every clock of the stage says the real time from now on.
    void letGo();

    /// The director of a new program under the usual rules, with its sites, clinical days, who may sign, and another
    /// requirement set that comes after the term.
    std::unique_ptr<session::Session> beginProgram();
    /// Of the program that was begun, as it is typed.
    [[nodiscard]] const std::string& programCode() const { return m_programCode; }
    /// Somebody whom `inviter` invites, who answers and is granted the role.
    std::unique_ptr<session::Session> join(session::Session& inviter, const std::string& name, journal::Role role);
    /// `person`: zero for somebody new.
    CardInUse giveCard(session::Session& staff, const Holder& holder, const keys::Id& person, std::string_view site);

    /// Whether its sheet ends with a signature here.
    static bool isSigned(const DemoCase& one);
    /// What the student does with the phone on the day of the case; one that is not signed is left open or withdrawn.
    static void live(session::Session& phone, DemoCase& one, const CardInUse& card);

    /// The student's parcel for the staff.
    static keys::Bytes parcelOf(const session::Session& student);
    static void sendToStaff(const session::Session& student, session::Session& staff);
    static void sendToStudent(const session::Session& staff, session::Session& student);

private:
    void tellRules(session::Session& director) const;

    struct Past {
        session::Clock real;
        std::optional<journal::Time> held;
        journal::Time look();
    };
    [[nodiscard]] session::Clock clock() const;

    keys::RandomSource& m_random;
    std::shared_ptr<Past> m_past;
    std::int16_t m_zone;
    std::int32_t m_today;
    base::Date m_firstDay;
    std::string m_programCode;
};

} // namespace peelpack::demo
