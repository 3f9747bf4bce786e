#include "platform/demo/journal_demo.h"
#include "platform/demo/journal_troubles.h"
#include "platform/files/resources.h"
#include "platform/files/text_file.h"
#include "platform/session/directory.h"
#include "sync/journal/fork.h"
#include "sync/merge/bounds.h"
#include "tests/support/temporary_folder.h"
#include "tests/sync/support/catch.h"

#include <QCoreApplication>
#include <QProcess>

#include <algorithm>
#include <cstdlib>
#include <filesystem>
#include <set>
#include <sstream>

// The invented program as `peelpack demo` makes it, read with the journal's library.
namespace peelpack::test {
namespace {

namespace fs = std::filesystem;
using demo::trouble::late;
using record::SheetStanding;
using record::Weight;

/// Made once for all cases, with install marks of its own.
class Made {
public:
    Made()
    {
        setenv("XDG_STATE_HOME", (m_folder.path() / "state").c_str(), 1);
        REQUIRE(peelpack({"demo", root(), "--json"}) == 0);
    }

    int peelpack(const QStringList& words)
    {
        QProcess process;
        process.start(QStringLiteral(PEELPACK_PROGRAM), words);
        REQUIRE(process.waitForFinished(-1));
        m_said = process.readAllStandardError().toStdString();
        return process.exitCode();
    }
    [[nodiscard]] const std::string& said() const { return m_said; }
    [[nodiscard]] QString root() const { return QString::fromStdString((m_folder.path() / "demo").string()); }
    [[nodiscard]] fs::path program() const { return m_folder.path() / "demo" / "program"; }
    [[nodiscard]] const fs::path& folder() const { return m_folder.path(); }

    std::unique_ptr<session::Session> open(const fs::path& file)
    {
        const std::int64_t now = 1'790'000'000;
        auto vault =
            vault::SqliteVault::open(file.string(), keys::bytesOf(demo::demoPassphrase), m_marks, m_random, now);
        INFO((vault ? std::string() : vault.error().sentence));
        REQUIRE(vault.ok());
        auto session = session::Session::open(
            std::move(vault).value(),
            [] {
                return journal::Time{now, 0};
            },
            m_random);
        REQUIRE(session.ok());
        return std::move(session).value();
    }

private:
    TemporaryFolder m_folder;
    vault::FolderMarkStore m_marks{(m_folder.path() / "state" / "peelpack" / "marks").string()};
    keys::SystemRandom m_random;
    std::string m_said;
};

Made& made()
{
    static Made once;
    return once;
}

session::Session& director()
{
    static const std::unique_ptr<session::Session> once = made().open(made().program() / "director.peelvault");
    return *once;
}

keys::Id personNamed(std::string_view name)
{
    const session::Directory directory(director());
    return directory.findPerson(name).value()->id;
}

record::StudentRecord recordNamed(std::string_view name)
{
    return director().recordOf(personNamed(name));
}

std::size_t linesOf(const record::StudentRecord& student, Weight weight)
{
    std::size_t count = 0;
    for (const record::SheetRecord& sheet : student.sheets) {
        count += static_cast<std::size_t>(
            std::count_if(sheet.history.begin(), sheet.history.end(),
                          [&](const record::HistoryLine& line) { return line.weight == weight; }));
    }
    return count;
}

std::size_t waysNotCounted(const record::StudentRecord& student, journal::Reason reason)
{
    std::size_t count = 0;
    for (const record::SheetRecord& sheet : student.sheets) {
        count += static_cast<std::size_t>(
            std::count_if(sheet.history.begin(), sheet.history.end(), [&](const record::HistoryLine& line) {
                return line.weight == Weight::Aside && line.whyNot == journal::sentence(reason);
            }));
    }
    return count;
}

} // namespace

TEST_CASE("The sheets of all students at once are those of one student after another", "[demo]")
{
    std::vector<keys::Id> students;
    const session::Directory directory(director());
    for (const session::Person& person : directory.people()) {
        students.push_back(person.id);
    }
    const std::vector<record::StudentRecord> together = director().recordsOf(students);
    REQUIRE(together.size() == students.size());
    for (std::size_t i = 0; i < students.size(); ++i) {
        CHECK(together[i] == director().recordOf(students[i]));
    }
}

TEST_CASE("Every vault of the demo opens undamaged, and everybody is there", "[demo]")
{
    std::size_t students = 0;
    std::size_t instructors = 0;
    for (const fs::directory_entry& entry : fs::directory_iterator(made().program())) {
        const std::string name = entry.path().filename().string();
        if (entry.path().extension() != ".peelvault" || name == "director.peelvault") {
            continue;
        }
        INFO(name);
        const std::unique_ptr<session::Session> session = made().open(entry.path());
        CHECK(session->damage().empty());
        CHECK_FALSE(session->writeBar().stands());
        CHECK(session->program() == director().program());
        students += name.starts_with("student-") ? 1U : 0U;
        instructors += name.starts_with("instructor-") ? 1U : 0U;
        if (name == "student-noor-haddad.peelvault") { // sheets never sent
            CHECK(session::onlyHere(*session) > 10);
            CHECK(session->recordOf(session->person()).sheets.size() >
                  director().recordOf(session->person()).sheets.size());
        }
    }
    CHECK(director().damage().empty());
    CHECK(students == 40);
    CHECK(instructors == 4);

    const session::Directory directory(director());
    std::set<std::string> classes;
    std::map<journal::Role, std::size_t> roles;
    std::set<sheet::Strength> strengths;
    std::set<SheetStanding> standings;
    std::size_t canceled = 0;
    std::size_t reviews = 0;
    std::size_t declined = 0;
    for (const session::Person& person : directory.people()) {
        ++roles[person.role];
        if (person.role != journal::Role::Student) {
            continue;
        }
        classes.insert(person.scopes.begin(), person.scopes.end());
        const record::StudentRecord record = director().recordOf(person.id);
        CHECK(record.sheets.size() >= 10);
        CHECK(record.sheets.size() <= 45);
        for (const record::SheetRecord& sheet : record.sheets) {
            strengths.insert(sheet.strength);
            standings.insert(sheet.standing);
            canceled += sheet.content.head.canceled ? 1U : 0U;
            reviews += sheet.reviews.size();
            declined += static_cast<std::size_t>(
                std::count_if(sheet.history.begin(), sheet.history.end(), [](const record::HistoryLine& line) {
                    return line.what.what == record::Happened::Declined;
                }));
        }
    }
    CHECK(roles == std::map<journal::Role, std::size_t>{
                       {journal::Role::Director, 1}, {journal::Role::Instructor, 4}, {journal::Role::Student, 40}});
    CHECK(classes == std::set<std::string>{"spring-class", "fall-class"});
    CHECK(strengths.size() == 6);
    CHECK(standings.size() == 7);
    CHECK(canceled > 5);
    CHECK(reviews > 10);
    CHECK(declined > 0);
    std::set<std::string> sites;
    std::size_t phones = 0;
    for (const session::Preceptor& preceptor : directory.preceptors()) {
        sites.insert(preceptor.site);
        phones += preceptor.keys.front().kind == journal::KeyKind::Device ? 1U : 0U;
    }
    CHECK(directory.preceptors().size() == 9);
    CHECK(sites.size() == 3);
    CHECK(phones == 2);
}

TEST_CASE("Each trouble of the demo is really there", "[demo]")
{
    const trust::Authority& authority = director().authority();
    const session::Directory directory(director());

    SECTION("a record that forked, with the evidence held")
    {
        const keys::Id student = personNamed(demo::trouble::forked);
        std::size_t forked = 0;
        std::size_t evidence = 0;
        std::size_t writtenAfter = 0;
        for (const auto& [id, feed] : director().ledger().feeds()) {
            CHECK((!feed.forked() || id.stream == student));
            forked += feed.forked() ? 1U : 0U;
            if (id.stream != student) {
                continue;
            }
            const trust::Holder* holder = authority.holder(id.device);
            REQUIRE(holder != nullptr);
            writtenAfter += holder->role == journal::Role::Student && !feed.forked() ? feed.count() : 0U;
            journal::eachTrunkEntry(feed, feed.count(), nullptr, [&](const journal::Decoded& entry) {
                if (const auto* found = std::get_if<journal::ForkFound>(&entry.payload)) {
                    ++evidence;
                    CHECK(journal::holds(found->evidence));
                }
            });
        }
        CHECK(forked == 1);
        for (const session::GrantedDevice& device : directory.person(student)->devices) {
            CHECK_FALSE(device.revoked); // parcels go to a phone whose record forked, or it would not hear of it
        }
        CHECK(evidence >= 1);
        CHECK(writtenAfter > 5);
        const record::StudentRecord record = recordNamed(demo::trouble::forked);
        CHECK(waysNotCounted(record, journal::Reason::PastFork) >= 2);
    }
    SECTION("a lost phone that was revoked, and a new one that went on")
    {
        const session::Person* student = directory.person(personNamed(demo::trouble::lostPhone));
        REQUIRE(student->devices.size() == 2);
        CHECK(student->devices[0].revoked != student->devices[1].revoked);
        const record::StudentRecord record = recordNamed(demo::trouble::lostPhone);
        CHECK(waysNotCounted(record, journal::Reason::Revoked) == 1);
        const auto phone = made().open(made().program() / "student-rosa-quintero.peelvault");
        CHECK(phone->recordOf(phone->person()).sheets.size() > 10); // the history came back
    }
    SECTION("a revoked card")
    {
        CHECK(waysNotCounted(recordNamed(demo::trouble::revokedCard), journal::Reason::CardRevoked) == 1);
        const session::Preceptor* owner = directory.findPreceptor("J. Pruitt").value();
        CHECK(std::count_if(owner->keys.begin(), owner->keys.end(),
                            [](const session::SigningKeyOf& key) { return key.revoked; }) == 1);
        std::size_t others = 0;
        for (const session::Person& person : directory.people()) {
            others += person.name == demo::trouble::revokedCard
                          ? 0U
                          : waysNotCounted(director().recordOf(person.id), journal::Reason::CardRevoked);
        }
        CHECK(others == 0); // what was receipted before stays good
    }
    SECTION("sheets opened late, and no other questions about times")
    {
        for (const session::Person& person : directory.people()) {
            INFO(person.name);
            std::size_t dated = 0;
            std::size_t other = 0;
            for (const auto& [id, feed] : director().ledger().feeds()) {
                const trust::Holder* holder = authority.holder(id.device);
                if (holder == nullptr || holder->person != person.id) {
                    continue;
                }
                for (const merge::TimeQuestion& question : merge::timeQuestions(authority, director().ledger(), id)) {
                    const bool isDated = question.sort == merge::TimeQuestion::Sort::DatedBeforeReceipts;
                    ++(isDated ? dated : other);
                }
            }
            const bool isLate = std::find(std::begin(late), std::end(late), person.name) != std::end(late);
            CHECK(dated == (isLate ? demo::trouble::lateSheets : 0U));
            CHECK(other == 0);
        }
    }
    SECTION("two instructors who contradict each other")
    {
        const record::StudentRecord record = recordNamed(demo::trouble::contradiction);
        CHECK(linesOf(record, Weight::Beside) == 1);
        CHECK(std::any_of(record.sheets.begin(), record.sheets.end(), [](const record::SheetRecord& sheet) {
            return sheet.standing == SheetStanding::Returned &&
                   std::any_of(sheet.history.begin(), sheet.history.end(),
                               [](const record::HistoryLine& line) { return line.weight == Weight::Beside; });
        }));
    }
    SECTION("wrong PINs in a hand-over")
    {
        std::size_t tries = 0;
        for (const record::SheetRecord& sheet : recordNamed(demo::trouble::wrongPins).sheets) {
            for (const record::HandOverEnded& ended : sheet.handOversEnded) {
                CHECK(ended.cause == record::HandOverCause::WrongPin);
                tries += ended.wrongTries;
            }
        }
        CHECK(tries == demo::trouble::wrongTries);
    }
    SECTION("a card that nobody vouches for")
    {
        const record::StudentRecord record = recordNamed(demo::trouble::unknownCard);
        CHECK(std::count_if(record.sheets.begin(), record.sheets.end(), [](const record::SheetRecord& sheet) {
                  return sheet.strength == sheet::Strength::CardNew;
              }) == 1);
    }
}

TEST_CASE("The director's ledger of the demo, exported, satisfies the second verifier", "[demo]")
{
    const base::Result<std::vector<keys::Bytes>> volumes = session::makeExport(director(), std::nullopt);
    REQUIRE(volumes.ok());
    QStringList words{QStringLiteral(PEELPACK_VERIFIER),
                      QString::fromStdString(keys::hex(director().program().view()))};
    for (std::size_t i = 0; i < volumes.value().size(); ++i) {
        const std::string file = (made().folder() / ("volume-" + std::to_string(i))).string();
        const keys::Bytes& bytes = volumes.value()[i];
        REQUIRE(files::writeWholeFile(file, {reinterpret_cast<const char*>(bytes.data()), bytes.size()}).ok());
        words << QString::fromStdString(file);
    }
    QProcess verifier;
    verifier.start(QStringLiteral("/usr/bin/python3"), words);
    REQUIRE(verifier.waitForFinished(-1));
    const std::string said = verifier.readAllStandardOutput().toStdString();
    INFO(said << verifier.readAllStandardError().toStdString());
    // Everything verifies; what does not count is the trouble that was put in: a split record, a lost phone and
    // a lost card.
    CHECK(verifier.exitCode() == 1);
    CHECK(said.find(" 2 forks, 1 directors, 4 aside, 0 refused") != std::string::npos);
    std::istringstream lines(said);
    std::map<std::string, std::size_t> findings;
    for (std::string line; std::getline(lines, line);) {
        const std::size_t colon = line.find(": ");
        if (colon != std::string::npos) {
            ++findings[line.substr(colon + 2)];
        }
    }
    CHECK(findings == std::map<std::string, std::size_t>{{"a fork", 2},
                                                         {"aside: past a fork", 2},
                                                         {"aside: revoked", 1},
                                                         {"aside: the signer was revoked before", 1}});
}

TEST_CASE("A few parcels of the demo wait to be taken in", "[demo]")
{
    const auto desk = made().open(made().program() / "instructor-bertil-moreau.peelvault");
    std::vector<session::OfferedFile> offered;
    for (const fs::directory_entry& entry : fs::directory_iterator(made().program() / "parcels")) {
        const std::string text = files::readWholeFile(entry.path().string(), 64U << 20U).value();
        offered.push_back({entry.path().filename().string(), {text.begin(), text.end()}});
    }
    CHECK(offered.size() == 40);
    const base::Result<session::IntakeReport> report = session::takeIn(*desk, std::move(offered));
    REQUIRE(report.ok());
    const auto& files = report.value().files;
    CHECK(std::all_of(files.begin(), files.end(), [](const session::FileOutcome& file) { return file.used; }));
    const auto news =
        std::count_if(files.begin(), files.end(), [](const session::FileOutcome& file) { return file.taken > 0; });
    CHECK(news >= 4);
    CHECK(news <= 10);
}

TEST_CASE("The demo leaves nothing half-made, and spares a program that is there", "[demo]")
{
    CHECK(made().peelpack({QStringLiteral("demo"), made().root()}) == 2);
    CHECK(made().said().find("holds a program already") != std::string::npos);
    CHECK(made().peelpack({QStringLiteral("demo"), made().root(), QStringLiteral("--csv")}) == 2);
    CHECK_FALSE(fs::exists(made().folder() / "demo" / "program.unfinished"));

    const std::string folder = (made().folder() / "fails").string();
    const auto catalogue = files::shippedCatalogue();
    const auto silent = [](std::string_view /*what*/, std::size_t /*done*/, std::size_t /*of*/) {};
    CHECK_FALSE(demo::JournalDemo::make(folder, "/dev/null/marks", catalogue.value(), silent).ok());
    CHECK_FALSE(fs::exists(folder));
}

} // namespace peelpack::test
