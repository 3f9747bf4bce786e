// The app's process is killed in the middle of a draft, at each keystroke, and of a signature, at random moments: the
// draft is there again up to the last key, and a signature is there whole or not at all. PEELPACK_SEED: of the moments.

#include "tests/qml/support/phone_world.h"

#include <QFile>
#include <QGuiApplication>
#include <QProcess>
#include <QThread>
#include <unistd.h>

#include <csignal>
#include <cstdio>
#include <cstdlib>
#include <random>

using namespace peelpack;

namespace {

constexpr int signatures = 40;
constexpr const char* typed = "lap chole";

void spinUntil(const std::function<bool()>& done)
{
    constexpr int most = 3000;
    for (int i = 0; i < most && !done(); ++i) {
        QGuiApplication::processEvents();
        QThread::msleep(5);
    }
}

void say(const char* word)
{
    std::printf("%s\n", word);
    std::fflush(stdout);
}

bool open(test::PhoneWorld& world)
{
    world.phone()->unlock(QString::fromLatin1(test::PhoneWorld::secret));
    spinUntil([&] {
        return world.phone()->stage() == shell::Phone::Open || world.phone()->stage() == shell::Phone::HandedOver ||
               !world.phone()->error().isEmpty();
    });
    return world.phone()->desk() != nullptr;
}

/// Types so many keys and dies.
[[noreturn]] void dieTyping(const QString& folder, int keys)
{
    test::PhoneWorld world(folder);
    if (open(world)) {
        for (int i = 1; i <= keys; ++i) {
            world.phone()->student()->newSheet()->setQuery(QString::fromLatin1(typed, i));
        }
        say("typed");
    }
    kill(getpid(), SIGKILL);
    std::abort();
}

/// Marks and signs a sheet; whoever started it kills it.
[[noreturn]] void sign(const QString& folder, const QString& sheet, const QString& pin)
{
    test::PhoneWorld world(folder);
    QFile card(folder + QStringLiteral("/card"));
    if (open(world) && card.open(QIODevice::ReadOnly)) {
        world.phone()->giveAway({sheet});
        preceptor::HandOver& handOver = *world.phone()->handOver();
        handOver.next();
        for (int skill = 0; skill < 10; ++skill) {
            handOver.mark(skill, 1);
        }
        handOver.next();
        handOver.next();
        handOver.takeCard(card.readAll());
        handOver.introduce(QStringLiteral("A. Ferro"), QStringLiteral("CST"));
        say("signing");
        handOver.sign(pin);
        spinUntil([&] { return handOver.step() == preceptor::HandOver::Signed || !handOver.error().isEmpty(); });
        say(handOver.step() == preceptor::HandOver::Signed ? "signed" : qPrintable(handOver.error()));
    }
    QThread::sleep(60);
    std::abort();
}

int drafts(const QString& self, const QString& folder, test::PhoneWorld& world)
{
    int faults = 0;
    for (int keys = 1; keys <= static_cast<int>(qstrlen(typed)); ++keys) {
        world.closePhone();
        QProcess child;
        child.start(self, {QStringLiteral("type"), folder, QString::number(keys)});
        child.waitForFinished(60'000);
        world.restart();
        const bool opened = open(world);
        const QString query = opened ? world.phone()->student()->newSheet()->query() : QString();
        if (!child.readAllStandardOutput().contains("typed") || query != QString::fromLatin1(typed, keys)) {
            std::fprintf(stderr, "After %d keys the draft says \"%s\".\n", keys, qPrintable(query));
            ++faults;
        }
    }
    world.phone()->student()->newSheet()->discard();
    return faults;
}

int signaturesKilled(const QString& self, const QString& folder, test::PhoneWorld& world, unsigned seed)
{
    std::mt19937 dice(seed);
    int faults = 0;
    int whole = 0;
    int none = 0;
    for (int round = 0; round < signatures; ++round) {
        const QString sheet = world.openSheet(QStringLiteral("Appendectomy %1").arg(round), 0);
        world.closePhone();
        QProcess child;
        child.start(self, {QStringLiteral("sign"), folder, sheet, world.pinOf(0)});
        QByteArray heard;
        while (!heard.contains("signing") && child.waitForReadyRead(60'000)) {
            heard += child.readAllStandardOutput();
        }
        QThread::msleep(dice() % 450);
        child.kill();
        child.waitForFinished(10'000);
        heard += child.readAllStandardOutput();
        world.restart();
        if (!open(world)) {
            std::fprintf(stderr, "Round %d: the phone does not open: %s\n", round, qPrintable(world.phone()->error()));
            return faults + 1;
        }
        const record::SheetRecord& record = *world.phone()->desk()->sheet(sheet);
        const bool isWhole = record.standing == record::SheetStanding::Signed && record.content.marks.marks.complete();
        const bool isNone = record.standing == record::SheetStanding::Open && record.content.marks.marks.none();
        whole += isWhole ? 1 : 0;
        none += isNone ? 1 : 0;
        if ((!isWhole && !isNone) || (heard.contains("signed\n") && !isWhole)) {
            std::fprintf(stderr,
                         "Round %d: neither whole nor nothing, or a signature that was said to be there is not.\n",
                         round);
            ++faults;
        }
        if (world.phone()->stage() == shell::Phone::HandedOver) {
            if (!world.phone()->handOver()->marks()->rows().empty() && world.phone()->handOver()->open() != 10) {
                std::fprintf(stderr, "Round %d: marks came back without a signature.\n", round);
                ++faults;
            }
            world.phone()->takeBack(QString::fromLatin1(test::PhoneWorld::secret));
            spinUntil([&] { return world.phone()->stage() == shell::Phone::Open; });
        } else if (isNone) {
            std::fprintf(stderr, "Round %d: the hand-over was forgotten.\n", round);
            ++faults;
        }
    }
    std::printf("%d signatures killed: %d whole, %d not there\n", signatures, whole, none);
    return faults;
}

} // namespace

int main(int argc, char* argv[])
{
    QGuiApplication application(argc, argv);
    if (argc == 4 && qstrcmp(argv[1], "type") == 0) {
        dieTyping(QString::fromLocal8Bit(argv[2]), std::atoi(argv[3]));
    }
    if (argc == 5 && qstrcmp(argv[1], "sign") == 0) {
        sign(QString::fromLocal8Bit(argv[2]), QString::fromLocal8Bit(argv[3]), QString::fromLocal8Bit(argv[4]));
    }
    const char* given = std::getenv("PEELPACK_SEED");
    const unsigned seed = given != nullptr ? static_cast<unsigned>(std::atoi(given)) : 20'270'312U;
    std::printf("seed %u\n", seed);
    const QTemporaryDir folder;
    test::PhoneWorld world(folder.path());
    world.setUp();
    world.keepCard(0, folder.filePath(QStringLiteral("card")));
    if (!open(world)) {
        std::fprintf(stderr, "The phone does not open: %s\n", qPrintable(world.phone()->error()));
        return 1;
    }
    const QString self = QCoreApplication::applicationFilePath();
    const int faults = drafts(self, folder.path(), world) + signaturesKilled(self, folder.path(), world, seed);
    return faults == 0 ? 0 : 1;
}
