#include "tests/platform/support/stored_vaults.h"
#include "tests/platform/support/vault_place.h"
#include "tests/support/fault_vfs.h"
#include "tests/sync/support/catch.h"

#include <algorithm>
#include <iostream>

// Attack 13, in one process: after a failed write or a full disk the same vault goes on, or says that it must be opened
// again; an entry is never there twice, and never beside another in its place.
namespace peelpack::test {
namespace {

using vault::SqliteVault;

/// What is done once the save failed and the cause is gone.
enum class Then { Nothing, SameAgain, AnotherInItsPlace };
/// How the process ends.
enum class End { Closed, Killed };

const std::string mustReopen = "The vault's storage failed before; close Peelpack and open it again.";

struct Figures {
    std::size_t points = 0;
    std::size_t cases = 0;
    std::size_t failed = 0;  ///< first saves
    std::size_t retried = 0; ///< with success
    std::size_t refused = 0; ///< with the sentence
};

struct Case {
    Fault fault = Fault::None;
    std::size_t at = 0;
    Then then = Then::Nothing;
    End end = End::Closed;
    std::uint32_t seed = keepNothing;
};

class Trial {
public:
    Trial(const vault::Change& first, const vault::Change& other) : m_first(first), m_other(other)
    {
        m_last.notes["last"] = keys::Bytes{1};
        m_before = contentsAfter({});
        m_afterFirst = contentsAfter({&first});
        m_afterSame = contentsAfter({&first, &m_last});
        m_afterOther = contentsAfter({&other, &m_last});
    }

    /// Operations of a save in peace.
    std::size_t operations()
    {
        start();
        FaultVfs vfs;
        const auto vault = open();
        vfs.arm(Fault::None, 0);
        REQUIRE(vault->save(m_first).ok());
        return vfs.operations().size();
    }

    void run(const Case& now, Figures& figures)
    {
        INFO(nameOf(now.fault) << " at operation " << now.at << ", then " << static_cast<int>(now.then) << ", end "
                               << static_cast<int>(now.end) << ", seed " << now.seed);
        start();
        std::vector<vault::Contents> possible{m_afterFirst};
        {
            FaultVfs vfs;
            auto vault = open();
            vfs.arm(now.fault, now.at);
            const bool saved = vault->save(m_first).ok();
            REQUIRE(vfs.hasStruck());
            vfs.clear();
            if (!saved) {
                ++figures.failed;
                possible = afterFailure(now, *vault, figures);
            }
            if (now.end == End::Killed) {
                vfs.arm(Fault::StopBefore, 1);
            }
            vault.reset();
            vfs.crash(now.seed);
        }
        const vault::Contents found = contentsNow();
        REQUIRE(std::any_of(possible.begin(), possible.end(),
                            [&](const vault::Contents& each) { return sameContents(found, each); }));
        ++figures.cases;
    }

private:
    void start() const { writeFile(m_file, storedVault(2)); }

    std::unique_ptr<SqliteVault> open()
    {
        auto opened = SqliteVault::openWithCode(m_file, storedVaultCode(), m_marks, m_random);
        INFO((opened ? "" : opened.error().sentence));
        REQUIRE(opened.ok());
        return std::move(opened).value();
    }

    vault::Contents contentsNow() { return contentsOf(*open()); }

    vault::Contents contentsAfter(const std::vector<const vault::Change*>& changes)
    {
        start();
        auto vault = open();
        for (const vault::Change* change : changes) {
            save(*vault, *change);
        }
        return contentsOf(*vault);
    }

    /// Goes on with the same vault, and returns what may be found when it is opened again.
    std::vector<vault::Contents> afterFailure(const Case& now, SqliteVault& vault, Figures& figures)
    {
        if (now.then == Then::Nothing) {
            return {m_before, m_afterFirst};
        }
        const vault::Change& again = now.then == Then::SameAgain ? m_first : m_other;
        const auto second = vault.save(again);
        if (!second) {
            REQUIRE(second.error().sentence == mustReopen);
            ++figures.refused;
            return {m_before, m_afterFirst};
        }
        ++figures.retried;
        save(vault, m_last);
        const vault::Contents shown = contentsOf(vault);
        const vault::Contents& expected = now.then == Then::SameAgain ? m_afterSame : m_afterOther;
        REQUIRE(sameContents(shown, expected));
        return {expected};
    }

    const vault::Change& m_first;
    const vault::Change& m_other;
    vault::Change m_last;
    TemporaryFolder m_folder;
    std::string m_file = (m_folder.path() / "v.peelvault").string();
    FixedMarks m_marks;
    SeededRandom m_random{71};
    vault::Contents m_before;
    vault::Contents m_afterFirst;
    vault::Contents m_afterSame;
    vault::Contents m_afterOther;
};

void tryAll(const std::string& what, const vault::Change& first, const vault::Change& other, std::size_t stride)
{
    Trial trial(first, other);
    const std::size_t count = trial.operations();
    constexpr std::size_t dense = 8; // the last ones, one by one
    Figures figures;
    for (std::size_t at = 1; at <= count; at = at + dense < count ? std::min(at + stride, count - dense) : at + 1) {
        ++figures.points;
        for (const Fault fault : {Fault::FailOnce, Fault::DiskFull}) {
            for (const Then then : {Then::Nothing, Then::SameAgain, Then::AnotherInItsPlace}) {
                for (const End end : {End::Closed, End::Killed}) {
                    for (const std::uint32_t seed : {keepNothing, keepEverything, 2U}) {
                        trial.run({fault, at, then, end, seed}, figures);
                    }
                }
            }
        }
    }
    std::cout << what << ": " << figures.points << " of " << count << " operations, " << figures.cases << " cases, "
              << figures.failed << " failed saves, " << figures.retried << " saved on retrying, " << figures.refused
              << " told to open again\n";
    CHECK(figures.failed > 0);
    CHECK(figures.retried + figures.refused > 0);
}

} // namespace

TEST_CASE("Attack 13: a sheet saved again, or another in its place, after a failed write", "[retry][attack]")
{
    const World start = storedVaultWorld();
    World one = storedVaultWorld();
    World two = storedVaultWorld();
    one.sheet(one.student, one.studentId, idOf(0x91));
    two.sheet(two.student, two.studentId, idOf(0x92));
    vault::Change first;
    first.entries = entriesSince(start.all, one.all);
    first.notes["more"] = keys::Bytes(500, 1);
    vault::Change other;
    other.entries = entriesSince(start.all, two.all);
    REQUIRE(first.entries.front().seq == other.entries.front().seq);
    REQUIRE(first.entries.front().bytes != other.entries.front().bytes);
    tryAll("a sheet, retried", first, other, 1);
}

TEST_CASE("Attack 13: a volume so large that its commit also writes the file itself, after a failed write",
          "[retry][attack]")
{
    const World start = storedVaultWorld();
    World one = storedVaultWorld();
    one.sheet(one.student, one.studentId, idOf(0x91));
    vault::Change first;
    first.entries = entriesSince(start.all, one.all);
    first.hold = {keys::Bytes(4'200'000, 1)};
    vault::Change other;
    other.hold = {keys::Bytes(20, 2)};
    tryAll("a large volume, retried", first, other, 531);
}

} // namespace peelpack::test
