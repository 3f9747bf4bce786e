// How quickly an instructor's class board is there, with 60 students and 12,000 sheets, and what folding and counting
// cost against decryption alone. No test: it prints.
#include "platform/app/window.h"
#include "platform/files/resources.h"
#include "platform/session/cards.h"
#include "platform/session/exchange.h"
#include "platform/session/intake.h"
#include "platform/session/signing.h"
#include "platform/vault/memory_vault.h"
#include "tests/qml/support/small_program.h"
#include "tests/qml/support/test_camera.h"
#include "tests/qml/support/test_share.h"

#include <QDateTime>
#include <QElapsedTimer>
#include <QGuiApplication>
#include <QTemporaryDir>

#include <cstdio>
#include <cstdlib>

using namespace peelpack;
using test::need;
using test::now;

namespace {

constexpr const char* passphrase = "amber walnut lantern";
constexpr std::int64_t daysToAnswer = 14;

double since(const QElapsedTimer& timer)
{
    return static_cast<double>(timer.nsecsElapsed()) / 1e6;
}

void spinUntil(const std::function<bool()>& done)
{
    while (!done()) {
        QGuiApplication::processEvents(QEventLoop::AllEvents, 5);
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    }
}

/// A class in an instructor's vault in a folder of its own.
class Class {
public:
    Class(int students, int sheets)
        : m_marks((m_folder.path() + QStringLiteral("/marks")).toStdString()),
          m_file((m_folder.path() + QStringLiteral("/instructor.peelvault")).toStdString()),
          m_shelf(files::shippedCatalogue)
    {
        need(m_shelf.prepare());
        auto made = need(vault::SqliteVault::make(m_file, vault::SecretKind::Passphrase,
                                                  keys::bytesOf(std::string_view(passphrase)), m_marks, m_random));
        const auto staff = test::beginSmallProgram(std::move(made.vault), m_random);
        const keys::SigningCard card = session::newCard(*staff);
        keys::SigningKey key = need(keys::cardKey(card, staff->program(), "482913"));
        journal::Vouch vouch;
        session::nameCard(vouch, card.card, card.epoch, key.verifyKey());
        vouch.person = m_random.id();
        vouch.name = "A. Ferro";
        need(staff->append(staff->programStream(), vouch));
        const session::UnlockedCard unlocked{std::move(key), card.card, card.epoch, true};
        for (int i = 0; i < students; ++i) {
            addStudent(*staff, unlocked, i, sheets);
        }
    }

    [[nodiscard]] std::unique_ptr<vault::SqliteVault> open()
    {
        return need(vault::SqliteVault::open(m_file, keys::bytesOf(std::string_view(passphrase)), m_marks, m_random,
                                             now().seconds));
    }
    [[nodiscard]] shell::Surroundings surroundings()
    {
        return {m_file, m_folder.path() + QStringLiteral("/app.ini"), m_marks, now, m_random, m_camera, m_share,
                m_shelf};
    }
    [[nodiscard]] student::Shelf& shelf() { return m_shelf; }
    [[nodiscard]] keys::RandomSource& random() { return m_random; }

private:
    void addStudent(session::Session& staff, const session::UnlockedCard& card, int number, int sheets)
    {
        const std::string name = "Student " + std::to_string(number);
        const session::OpenInvitation open =
            need(session::invite(staff, name, journal::Role::Student, {"class"}, std::nullopt, daysToAnswer));
        auto vault = std::make_unique<vault::MemoryVault>(m_random);
        const keys::InvitationReply reply =
            need(session::join(*vault, need(keys::Invitation::fromCode(open.code)), name));
        need(session::grant(staff, reply));
        const auto phone = need(session::Session::open(std::move(vault), now, m_random));
        const session::Directory directory(staff);
        const auto to = need(session::toStudent(staff, *directory.person(phone->person())));
        need(session::takeIn(*phone, {{"parcel", need(session::makeParcels(staff, to)).front()}}));

        const auto& procedures = m_shelf.catalogue().procedures();
        std::vector<journal::Draft> drafts;
        for (int i = 0; i < sheets; ++i) {
            journal::Draft draft;
            draft.procedures = {procedures[static_cast<std::size_t>(number * 31 + i * 7) % procedures.size()].name};
            draft.head.date = base::Date::fromDays(20'000 + i / 2);
            draft.head.surgeon = "Dr Okafor";
            draft.head.site = "Site " + std::to_string(number % 5);
            draft.head.room = "Room " + std::to_string((number + i) % 40);
            drafts.push_back(std::move(draft));
        }
        const std::vector<keys::Id> ids = need(session::openSheets(*phone, drafts));
        std::vector<session::SheetMarks> marks;
        for (std::size_t i = 0; i < ids.size(); ++i) {
            session::SheetMarks one{ids[i], drafts[i].procedures, drafts[i].head, {}, {}};
            for (const sheet::Skill skill : sheet::allSkills) {
                const bool no = sheet::isFirstScrubSkill(skill) && i % 3 == 0;
                one.marks.push_back({skill, no ? sheet::Mark::No : sheet::Mark::Yes, {}});
            }
            marks.push_back(std::move(one));
        }
        need(session::signWithCard(*phone, card, {"A. Ferro", "CST"}, marks));
        need(session::takeIn(staff,
                             {{"parcel", need(session::makeParcels(*phone, need(session::toStaff(*phone)))).front()}}));
    }

    QTemporaryDir m_folder;
    vault::FolderMarkStore m_marks;
    std::string m_file;
    keys::SystemRandom m_random;
    camera::NoCamera m_camera;
    test::TestShare m_share;
    student::Shelf m_shelf;
};

void foldAgainstDecryption(Class& made)
{
    auto vault = made.open();
    QElapsedTimer timer;
    timer.start();
    const std::size_t rows = need(vault->contents()).entries.size();
    const double decryption = since(timer);
    timer.restart();
    auto session = need(session::Session::open(std::move(vault), now, made.random()));
    const double opened = since(timer);
    instructor::StaffDesk desk(std::move(session), made.shelf());
    timer.restart();
    desk.finish();
    const double folded = since(timer);
    timer.restart();
    instructor::StaffPages pages(desk);
    const double lists = since(timer);
    std::printf("%zu entries: decryption alone %.0f ms, with the chain %.0f ms; fold and tally %.0f ms, ratio to "
                "decryption %.2f (target 4); lists and board from it %.0f ms\n",
                rows, decryption, opened, folded, folded / decryption, lists);
}

void boardOnScreen(Class& made)
{
    shell::Phone phone(made.surroundings());
    app::Window window(phone);
    spinUntil([&] { return window.window()->isExposed(); });
    for (int i = 0; i < 3; ++i) {
        QElapsedTimer timer;
        timer.start();
        phone.unlock(QString::fromLatin1(passphrase));
        spinUntil([&] { return phone.stage() == shell::Phone::Staff || !phone.error().isEmpty(); });
        window.window()->findChild<QObject*>(QStringLiteral("staffHome"))->setProperty("place", 1);
        window.window()->grabWindow();
        const double first = since(timer);
        spinUntil([&] { return phone.staffDesk()->isReady(); });
        window.window()->grabWindow();
        const double full = since(timer);
        std::printf("class board from the closed vault: first frame %.0f ms, every count on it %.0f ms (target 2000; "
                    "passphrase included)\n",
                    first, full);
        phone.lock();
        spinUntil([&] { return phone.stage() == shell::Phone::Locked; });
    }
}

} // namespace

int main(int argc, char* argv[])
{
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    QGuiApplication application(argc, argv);
    app::dressApplication();
    constexpr int students = 60;
    constexpr int sheets = 200;
    Class made(argc > 1 ? std::atoi(argv[1]) : students, argc > 2 ? std::atoi(argv[2]) : sheets);
    foldAgainstDecryption(made);
    boardOnScreen(made);
    return 0;
}
