#pragma once

#include "core/catalogue/catalogue.h"
#include "platform/demo/demo_clock.h"
#include "platform/demo/demo_marks.h"
#include "platform/demo/installation.h"
#include "platform/demo/journal_cases.h"
#include "platform/session/exchange.h"
#include "platform/session/intake.h"
#include "platform/session/signing.h"
#include "sync/keys/card.h"

#include <string>
#include <vector>

/// Everybody of the invented program while it is made, with their vaults, cards and cases.
namespace peelpack::demo {

inline constexpr const char* demoPassphrase = "walnut lantern gravel otter";

struct Staff {
    std::string name;
    journal::Role role = journal::Role::Instructor;
    std::vector<std::string> scopes;
    Installation home;
};

struct Card {
    std::string file; ///< name in the folder of cards
    std::string pin;
    std::string remark; ///< what is wrong with it; empty: nothing
    keys::Secret code;
    std::unique_ptr<session::UnlockedCard> unlocked; ///< a PIN is stretched once, not in every sitting
};

struct Preceptor {
    keys::Id person;
    std::string name;
    std::string credential;
    std::string site;
    std::vector<Card> cards;              ///< the newest last
    std::optional<keys::DeviceKey> phone; ///< signs with it, and then has no card
};

struct Student {
    std::string name;
    std::string className;
    std::size_t instructor = 0; ///< index of the staff
    keys::Id person;
    Installation home;
    std::vector<DemoCase> cases;
    bool sends = true;
    bool hasReturns = false; ///< something came back that they have not answered
    bool waits = false;      ///< nobody has taken in the latest parcel
    keys::Bytes parcel;      ///< the latest
};

struct World {
    World(std::string where, DemoMarks& markStore)
        : folder(std::move(where)), firstDay(*base::Date::fromYearMonthDay(2026, 1, 12)), marks(markStore)
    {
    }

    std::string folder;
    base::Date firstDay;
    DemoClock clock;
    keys::SystemRandom random;
    DemoMarks& marks;
    keys::Secret programCode;
    std::vector<Staff> staff; ///< the director first
    std::vector<Preceptor> preceptors;
    std::vector<Student> students;
    std::optional<Installation> lostPhone;
    std::vector<keys::Bytes> splitParcels; ///< of the two histories of one phone

    [[nodiscard]] session::Clock look()
    {
        return [this] { return clock.look(); };
    }
    [[nodiscard]] base::Date day(std::size_t week, std::size_t weekday) const
    {
        return base::Date::fromDays(firstDay.days() + static_cast<std::int32_t>(week * 7 + weekday));
    }
    [[nodiscard]] session::Session& director() const { return staff.front().home.session(); }
    [[nodiscard]] session::Session& instructorOf(const Student& student) const
    {
        return staff[student.instructor].home.session();
    }
    /// Only names of the invented program.
    [[nodiscard]] Student& student(std::string_view name);
};

inline constexpr std::size_t weeks = 17;
enum Weekday : std::size_t { Monday, Tuesday, Wednesday, Thursday, Friday, Saturday, Sunday };

/// Makes a parcel; there is always one volume.
keys::Bytes parcelOf(const session::Session& from, base::Result<session::Recipients> to);
/// Takes files in and ends when one of them cannot be used.
session::IntakeReport take(session::Session& into, const std::vector<keys::Bytes>& files);
/// Everybody of the staff takes in what all others hold.
void exchange(World& world);
/// "ines-duarte"
std::string fileNameOf(std::string_view name);

} // namespace peelpack::demo
