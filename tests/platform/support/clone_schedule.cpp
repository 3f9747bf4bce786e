#include "tests/platform/support/clone_schedule.h"

#include "platform/session/exchange.h"
#include "platform/session/intake.h"
#include "platform/session/setup.h"
#include "sync/journal/fork.h"
#include "tests/sync/support/catch.h"

#include <algorithm>

namespace peelpack::test {
namespace {

using session::Session;

constexpr std::uint8_t instructorSeed = 91;

/// What everybody starts from: a director's certificate and the grant for the instructor.
struct Start {
    World world;
    vault::Change change;

    Start()
    {
        SeededRandom random(instructorSeed);
        vault::MemoryVault instructor(random);
        world.certify(1, trust::DirectorCertificate{idOf(0x10), world.director.signing.verifyKey(),
                                                    world.director.opening.sealKey(), "Invented Director"});
        world.append(world.director, world.programStream,
                     world.grant(world.instructorId, journal::Role::Instructor, *instructor.device().value()));
        change = changeOf(world.all);
        const keys::ByteView program = world.program.view();
        change.notes[session::notes::program] = keys::Bytes(program.begin(), program.end());
    }

    [[nodiscard]] vault::Change of(const keys::Id& person, journal::Role role) const
    {
        vault::Change own = change;
        own.notes[session::notes::person] = keys::Bytes(person.bytes.begin(), person.bytes.end());
        own.notes[session::notes::role] = keys::Bytes{static_cast<std::uint8_t>(role)};
        return own;
    }
};

const Start& start()
{
    static const Start value;
    return value;
}

template <class T>
T require(base::Result<T> result)
{
    INFO((result ? "" : result.error().sentence));
    REQUIRE(result.ok());
    return std::move(result).value();
}

} // namespace

CloneSchedule::CloneSchedule(const MakePlaces& make, std::uint32_t seed, bool marksToo)
    : m_marksToo(marksToo), m_dice(seed), m_random(static_cast<std::uint8_t>(seed)), m_phones(phones)
{
    const World& world = start().world;
    m_places = make(phones, start().of(world.studentId, journal::Role::Student), m_random);
    openPhone(0);
    SeededRandom same(instructorSeed);
    auto vault = std::make_unique<vault::MemoryVault>(same);
    REQUIRE(vault->save(start().of(world.instructorId, journal::Role::Instructor)).ok());
    m_instructor = require(Session::open(
        std::move(vault), [this] { return minute(m_minute++); }, m_random));
}

void CloneSchedule::openPhone(std::size_t phone)
{
    m_phones[phone].reset();
    m_phones[phone] = require(Session::open(
        m_places->at(phone).open(), [this] { return minute(m_minute++); }, m_random));
}

void CloneSchedule::run(std::size_t steps, ScheduleFigures& figures)
{
    for (std::size_t i = 0; i < steps; ++i) {
        step();
    }
    for (std::size_t round = 0; round < 2; ++round) {
        for (std::size_t phone = 0; phone < phones; ++phone) {
            if (m_phones[phone]) {
                exchange(phone);
            }
        }
    }
    for (const auto& [feed, places] : m_delivered) {
        m_figures.splits += static_cast<std::size_t>(
            std::count_if(places.begin(), places.end(), [](const auto& place) { return place.second.size() > 1; }));
    }
    figures.writes += m_figures.writes;
    figures.barred += m_figures.barred;
    figures.restores += m_figures.restores;
    figures.newFeeds += m_figures.newFeeds;
    figures.exchanges += m_figures.exchanges;
    figures.splits += m_figures.splits;
    figures.schedulesWithSplit += m_figures.splits > 0 ? 1 : 0;
}

void CloneSchedule::step()
{
    std::size_t phone = roll(phones);
    while (!m_phones[phone]) {
        phone = (phone + 1) % phones;
    }
    const std::size_t what = roll(20);
    if (what < 9) {
        write(phone);
    } else if (what < 12) {
        exchange(phone);
    } else if (what < 14) {
        backUp(phone);
    } else if (what < 17) {
        restore();
    } else if (what < 19) {
        if (m_phones[phone]->writeBar().stands()) {
            goOnAnew(phone);
        }
    } else {
        openPhone(phone);
    }
}

void CloneSchedule::write(std::size_t phone)
{
    Session& session = *m_phones[phone];
    const bool barred = session.writeBar().stands();
    const std::string text = "Reason " + std::to_string(m_dice());
    const auto position = session.append(session.person(), journal::Withdrawn{idOf(0x51), text});
    REQUIRE(position.ok() != barred);
    if (barred) {
        ++m_figures.barred;
        return;
    }
    ++m_figures.writes;
    const journal::Position& place = position.value();
    std::set<keys::Hash>& there = m_written[place.feed][place.seq];
    there.insert(place.hash);
    REQUIRE((m_marksToo || there.size() == 1)); // without its mark no copy ever signs beside the original
}

void CloneSchedule::backUp(std::size_t phone)
{
    m_phones[phone].reset();
    m_places->backUp(phone);
    openPhone(phone);
}

void CloneSchedule::restore()
{
    if (m_places->backups() == 0) {
        return;
    }
    const std::size_t phone = roll(phones);
    m_phones[phone].reset();
    const bool withMark = m_marksToo && roll(3) > 0;
    m_places->restore(roll(m_places->backups()), phone, withMark);
    openPhone(phone);
    ++m_figures.restores;
    REQUIRE((withMark || !m_phones[phone]->device().ok()));
    REQUIRE((withMark || m_phones[phone]->writeBar().stands()));
}

void CloneSchedule::goOnAnew(std::size_t phone)
{
    m_phones[phone].reset();
    m_places->at(phone).setUpAnew();
    openPhone(phone);
    Session& session = *m_phones[phone];
    require(session.setNote(session::notes::stopped, std::nullopt));
    REQUIRE_FALSE(session.writeBar().stands());
    REQUIRE_FALSE(m_written.contains(require(session.ownFeed(session.person()))));
    ++m_figures.newFeeds;
}

void CloneSchedule::exchange(std::size_t phone)
{
    Session& session = *m_phones[phone];
    deliver(session, *m_instructor, true);
    noteDelivered(session);
    grantIfNew(session);
    deliver(*m_instructor, session, false);
    ++m_figures.exchanges;
    requireNothingSilent(session);
}

void CloneSchedule::deliver(Session& from, Session& to, bool toStaff)
{
    // A copy without its mark opens no parcels, and gives and takes what is not sealed.
    const bool sealed = from.device().ok() && to.device().ok();
    std::vector<keys::Bytes> carried;
    if (!sealed) {
        carried = require(session::makeExport(from, to.isStaff() ? from.person() : to.person()));
    } else if (toStaff) {
        carried = require(session::makeParcels(from, require(session::toStaff(from))));
    } else {
        const session::Directory directory(from);
        const session::Person* person = directory.person(to.person());
        REQUIRE(person != nullptr);
        carried = require(session::makeParcels(from, require(session::toStudent(from, *person))));
    }
    for (keys::Bytes& bytes : carried) {
        const session::IntakeReport report = require(session::takeIn(to, {{"carried", std::move(bytes)}}));
        INFO(report.files.front().whyNot);
        REQUIRE(report.files.front().used);
    }
}

void CloneSchedule::grantIfNew(const Session& phone)
{
    const auto device = phone.device();
    if (!device.ok() || m_instructor->authority().holder(device.value()->signing.verifyKey()) != nullptr) {
        return;
    }
    const journal::Grant grant = start().world.grant(phone.person(), journal::Role::Student, *device.value());
    require(m_instructor->append(session::grantStream(*m_instructor, journal::Role::Student, phone.person()), grant));
}

void CloneSchedule::noteDelivered(const Session& phone)
{
    for (const auto& [id, feed] : phone.ledger().feeds()) {
        feed.eachSegment([&, &feedId = id](std::uint32_t from, const journal::Segment& segment) {
            for (const journal::KeptEntry& entry : segment.entries) {
                m_delivered[feedId][from++].insert(entry.link.hash);
            }
        });
    }
}

void CloneSchedule::requireNothingSilent(const Session& phone)
{
    const merge::Ledger& instructors = m_instructor->ledger();
    for (const auto& [id, places] : m_delivered) {
        const auto split =
            std::find_if(places.begin(), places.end(), [](const auto& place) { return place.second.size() > 1; });
        if (split == places.end()) {
            continue;
        }
        const journal::Feed* feed = instructors.feed(id);
        REQUIRE(feed != nullptr);
        const auto evidence = feed->evidence();
        REQUIRE(std::any_of(evidence.begin(), evidence.end(), [&](const journal::ForkEvidence& each) {
            return each.seq == split->first && journal::holds(each);
        }));
    }
    if (phone.writeBar().stands()) {
        return;
    }
    // It goes on: then nobody holds anything else of its feed than it does itself.
    const journal::FeedId own = require(phone.ownFeed(phone.person()));
    const journal::Feed* here = phone.ledger().feed(own);
    const journal::Feed* there = instructors.feed(own);
    REQUIRE((here == nullptr) == (there == nullptr));
    if (here != nullptr) {
        REQUIRE_FALSE(there->forked());
        REQUIRE(here->head() == there->head());
    }
}

} // namespace peelpack::test
