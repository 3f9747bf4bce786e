#include "platform/app/screens.h"

#include "platform/app/code_screens.h"
#include "platform/app/program_screens.h"
#include "platform/app/screen_walk.h"
#include "platform/app/staff_screens.h"
#include "platform/app/window.h"
#include "qml/parts/pack_seal.h"

#include <QDateTime>
#include <QDir>
#include <QFile>
#include <QTemporaryDir>

#include <algorithm>

namespace peelpack::app {
namespace {

/// From here on only the instructor's screens are drawn: nobody has a phone that wide.
constexpr int deskWidth = 1400;

using preceptor::HandOver;
using shell::Phone;

/// Shares nothing: pictures need no files.
class NoShare final : public share::Share {
public:
    void save(const QString&, const QByteArray&) override {}
    void open(const QString&) override {}
};

/// A fixed afternoon, so that the pictures are the same on every day.
journal::Time afternoon()
{
    constexpr std::int64_t day = 20'889; // 2027-03-12
    constexpr std::int16_t zone = -300;
    return {day * 86'400 + std::int64_t{15} * 3'600 - std::int64_t{zone} * 60, zone};
}

class Walker {
public:
    Walker(student::Shelf& shelf, const ScreenVisit& visit)
        : m_marks(m_place.filePath(QStringLiteral("marks")).toStdString()),
          m_phone({m_place.filePath(QStringLiteral("demo.peelvault")).toStdString(),
                   m_place.filePath(QStringLiteral("app.ini")), m_marks, afternoon, m_random, m_camera, m_share,
                   shelf}),
          m_window(m_phone), m_ownMarks(m_place.filePath(QStringLiteral("own-marks")).toStdString()),
          m_ownVault(m_place.filePath(QStringLiteral("own.peelvault"))),
          m_ownPhone({m_ownVault.toStdString(), m_place.filePath(QStringLiteral("own.ini")), m_ownMarks, afternoon,
                      m_random, m_camera, m_share, shelf}),
          m_ownWindow(m_ownPhone), m_walk(visit)
    {
    }

    [[nodiscard]] bool ready() const { return m_window.window() != nullptr && m_ownWindow.window() != nullptr; }
    [[nodiscard]] int count() const { return m_walk.count(); }
    [[nodiscard]] const QString& error() const { return m_walk.error(); }

    void draw(const ScreenDress& dress)
    {
        m_dress = dress;
        wear(m_phone, m_window);
        wear(m_ownPhone, m_ownWindow);
        m_walk.wear(m_dress, m_window.window());
        const bool desk = dress.size.width() >= deskWidth;
        if (!desk) {
            drawFirst();
        }
        drawStaff(m_walk, m_phone);
        if (error().isEmpty()) {
            m_walk.wear(m_dress, m_ownWindow.window());
            walkDirector(m_walk, m_ownPhone);
            forgetOwnVault();
            m_walk.wear(m_dress, m_window.window());
        }
        if (desk || !error().isEmpty()) {
            return;
        }
        m_phone.openDemo();
        waitUntil([this] { return m_phone.stage() == Phone::Open || !m_phone.error().isEmpty(); });
        if (m_phone.stage() != Phone::Open) {
            fail(m_phone.error());
            return;
        }
        drawStudent();
        drawPreceptor();
        m_phone.leaveDemo();
        settle();
        m_walk.wear(m_dress, m_ownWindow.window());
        drawOwnPhone();
    }

private:
    void wear(Phone& phone, Window& window) const
    {
        shell::Settings* settings = phone.settings();
        settings->setTheme(m_dress.dark ? shell::Settings::Dark : shell::Settings::Light);
        settings->setTextPercent(m_dress.textPercent);
        settings->setLanguage(m_dress.language);
        settings->setCalm(true);
        window.window()->setMinimumSize(QSize(1, 1));
        window.window()->resize(m_dress.size);
    }
    void settle() { m_walk.settle(); }
    void waitUntil(const std::function<bool()>& done) { m_walk.waitUntil(done); }
    void shoot(const char* screen) { m_walk.shoot(screen); }
    void open(const char* list, bool opened) { m_walk.open(list, opened); }
    void put(const char* object, const char* property, const QVariant& value) { m_walk.put(object, property, value); }
    void fail(const QString& why) { m_walk.fail(why); }

    void drawFirst()
    {
        shoot("01-welcome");
        put("firstPages", "way", QStringLiteral("join"));
        shoot("02-invitation");
        put("firstPages", "way", QString());
        walkFirstDirector(m_walk, m_phone);
    }

    void drawStudent()
    {
        student::StudentPages* student = m_phone.student();
        shoot("10-today");
        put("home", "place", 1);
        shoot("11-sheets");
        for (const auto& [list, screen] : {std::pair{"stateList", "11-states"}, {"specialtyList", "11-specialties"}}) {
            open(list, true);
            shoot(screen);
            open(list, false);
        }
        put("sheetListPage", "picking", true);
        shoot("11-sitting");
        put("sheetListPage", "picking", false);
        put("home", "place", 2);
        shoot("12-tally");
        put("home", "place", 3);
        shoot("13-me");
        put("home", "place", 0);
        put("home", "over", QStringLiteral("new"));
        student->newSheet()->setQuery(QStringLiteral("vent he"));
        student->newSheet()->favor(student->newSheet()->hits()->rows().front().id, true);
        shoot("14-search");
        student->newSheet()->setQuery({});
        shoot("14-favorites");
        student->newSheet()->take(QStringLiteral("Ventral hernia repair"));
        student->newSheet()->setRoom(QStringLiteral("Room 4"));
        shoot("15-new-sheet");
        put("newSheetPage", "more", true);
        shoot("15-all-fields");
        student->newSheet()->discard();
        put("home", "over", QStringLiteral("parcels"));
        shoot("16-parcels");
        drawCodes(m_walk, m_phone, m_camera);
        put("home", "over", QStringLiteral("phone"));
        shoot("17-my-phone");
        put("myPhonePage", "doing", QStringLiteral("secret"));
        shoot("17-new-secret");
        drawSheets();
        put("home", "over", QString());
    }

    void drawSheets()
    {
        student::StudentPages* student = m_phone.student();
        const auto show = [&](int seal, bool twoPlaces, const char* screen) {
            for (const student::SheetRow& row : student->sheets()->rows()->rows()) {
                student->sheet()->show(row.id);
                if (row.seal == seal && (!twoPlaces || student->sheet()->places()->rowCount() > 1)) {
                    put("home", "over", QStringLiteral("sheet"));
                    shoot(screen);
                    return;
                }
            }
            fail(QStringLiteral("The demo has no sheet for %1.").arg(QString::fromLatin1(screen)));
        };
        show(parts::PackSeal::Open, false, "20-open-sheet");
        for (const auto& [doing, screen] : {std::pair{"wait", "20-waits-for"}, {"withdraw", "20-withdrawing"}}) {
            put("sheetPage", "doing", QString::fromLatin1(doing));
            shoot(screen);
        }
        show(parts::PackSeal::Signed, false, "21-signed-sheet");
        show(parts::PackSeal::Initialed, true, "22-two-specialties");
        show(parts::PackSeal::Returned, false, "23-returned-sheet");
        show(parts::PackSeal::Amended, false, "24-changed-sheet");
    }

    void drawPreceptor()
    {
        QStringList open;
        for (const student::SheetRow& row : m_phone.student()->sheets()->rows()->rows()) {
            if (row.seal == parts::PackSeal::Open) {
                open.append(row.id);
            }
        }
        m_phone.giveAway(open.mid(0, 1));
        HandOver* handOver = m_phone.handOver();
        if (handOver == nullptr) {
            fail(m_phone.error());
            return;
        }
        shoot("30-performed");
        handOver->go(HandOver::OwnPhone);
        m_request = handOver->request();
        shoot("31-own-phone");
        handOver->go(HandOver::Declining);
        shoot("32-declining");
        handOver->go(HandOver::Performed);
        handOver->next();
        shoot("33-marking");
        handOver->markFirstScrubYes();
        handOver->mark(static_cast<int>(sheet::Skill::Counts), static_cast<int>(sheet::Mark::NotApplicable));
        handOver->mark(static_cast<int>(sheet::Skill::Sponge), static_cast<int>(sheet::Mark::Yes));
        handOver->mark(static_cast<int>(sheet::Skill::Cut), static_cast<int>(sheet::Mark::No));
        shoot("34-marking-why");
        handOver->reason(static_cast<int>(sheet::Skill::Counts), QStringLiteral("No countable items were used"));
        handOver->setFeedback(QStringLiteral("Had the mesh on the field before it was asked for."));
        handOver->next();
        shoot("35-read-back");
        handOver->next();
        shoot("36-signing");
        for (const auto& [way, screen] : {std::pair{"type", "36-typed-code"}, {"make", "36-no-card"}}) {
            put("cardWays", "way", QString::fromLatin1(way));
            shoot(screen);
        }
        handOver->takeCard(m_phone.demoCard(1));
        shoot("37-pin");
        handOver->dropCard();
        handOver->makeCard(QStringLiteral("R. Halvorsen"), QStringLiteral("CST"));
        shoot("38-new-card");
        handOver->dropCard();
        handOver->go(HandOver::Drawing);
        shoot("39-drawing");
        handOver->go(HandOver::Signing);
        handOver->takeCard(m_phone.demoCard(1));
        handOver->sign(QStringLiteral("730518"));
        waitUntil([&] { return handOver->step() == HandOver::Signed || !handOver->error().isEmpty(); });
        shoot("40-signed");
        m_phone.takeBack(QLatin1String(demo::phoneDemoPin));
        waitUntil([this] { return m_phone.stage() == Phone::Open; });
        shoot("41-sealed");
    }

    void drawOwnPhone()
    {
        put("firstPages", "way", QStringLiteral("sign"));
        shoot("50-sign-here");
        const QString secret = QStringLiteral("harbor linen oak");
        m_ownPhone.first()->signing()->make(QStringLiteral("L. Brandt"), QStringLiteral("CST"), secret, secret, false);
        waitUntil([this] { return m_ownPhone.first()->signing()->made(); });
        shoot("51-key-made");
        m_ownPhone.first()->signing()->finish();
        waitUntil([this] { return m_ownPhone.stage() == Phone::Signing; });
        preceptor::SigningPhone* signing = m_ownPhone.signing();
        if (signing == nullptr) {
            fail(m_ownPhone.error());
            return;
        }
        shoot("52-signing-key");
        for (const auto& [over, screen] : {std::pair{"", "53-own-home"},
                                           {"name", "54-own-name"},
                                           {"phone", "55-this-phone"},
                                           {"signed", "56-nothing-signed"},
                                           {"scan", "57-scan-sheet"}}) {
            put("signerHome", "over", QString::fromLatin1(over));
            shoot(screen);
        }
        signing->read(QByteArrayLiteral("no code of ours"));
        shoot("58-other-code");
        signing->read(m_request);
        shoot("60-own-performed");
        preceptor::OwnSheet* sheet = signing->sheet();
        sheet->next();
        sheet->markFirstScrubYes();
        sheet->mark(static_cast<int>(sheet::Skill::Sponge), static_cast<int>(sheet::Mark::Yes));
        shoot("61-own-marking");
        sheet->next();
        shoot("62-own-read-back");
        sheet->next();
        shoot("63-own-secret");
        signing->sign(secret);
        waitUntil([&] { return signing->place() == preceptor::SigningPhone::AtAnswer; });
        shoot("64-answer");
        signing->goHome();
        put("signerHome", "over", QStringLiteral("signed"));
        shoot("65-signed-here");
        put("signerHome", "over", QString());
        m_ownPhone.lock();
        shoot("66-locked");
        forgetOwnVault();
    }

    /// The own phone is as nobody has used it.
    void forgetOwnVault()
    {
        m_ownPhone.lock();
        settle(); // the vault is closed
        for (const char* end : {"", "-wal", "-shm"}) {
            QFile::remove(m_ownVault + QLatin1String(end));
        }
        m_ownPhone.lock();
        settle();
    }

    QTemporaryDir m_place;
    vault::FolderMarkStore m_marks;
    keys::SystemRandom m_random;
    StillCamera m_camera;
    NoShare m_share;
    Phone m_phone;
    Window m_window;
    vault::FolderMarkStore m_ownMarks;
    QString m_ownVault;
    Phone m_ownPhone; ///< of a preceptor
    Window m_ownWindow;
    ScreenWalk m_walk;
    QByteArray m_request; ///< of the sheet that the own phone signs
    ScreenDress m_dress;
};

} // namespace

QString ScreenDress::name() const
{
    return QStringLiteral("%1x%2-%3-%4-%5")
        .arg(size.width())
        .arg(size.height())
        .arg(dark ? QStringLiteral("dark") : QStringLiteral("light"))
        .arg(textPercent)
        .arg(language);
}

std::vector<ScreenDress> allDresses()
{
    std::vector<ScreenDress> dresses;
    for (const QSize size :
         {QSize(360, 640), QSize(390, 844), QSize(844, 390), QSize(1180, 820), QSize(1440, 900), QSize(2560, 1440)}) {
        for (const bool dark : {false, true}) {
            for (const int percent : {100, 200}) {
                for (const char* language : {"en", "es"}) {
                    dresses.push_back({size, dark, percent, QString::fromLatin1(language)});
                }
            }
        }
    }
    return dresses;
}

base::Result<int> walkScreens(const std::vector<ScreenDress>& dresses, student::Shelf& shelf, const ScreenVisit& visit)
{
    Walker walker(shelf, visit);
    if (!walker.ready()) {
        return base::Error{base::ErrorCode::CannotRead, "The screens could not be loaded."};
    }
    for (const ScreenDress& dress : dresses) {
        walker.draw(dress);
        if (!walker.error().isEmpty()) {
            return base::Error{base::ErrorCode::CannotWrite, walker.error().toStdString()};
        }
    }
    return walker.count();
}

base::Result<int> drawScreens(const QString& folder, const std::vector<ScreenDress>& dresses, student::Shelf& shelf)
{
    const auto draw = [&](const ScreenDress& dress, const QString& screen, QQuickWindow& window) {
        const QString place = folder + QLatin1Char('/') + dress.name();
        return QDir().mkpath(place) &&
               window.grabWindow().save(place + QLatin1Char('/') + screen + QStringLiteral(".png"));
    };
    return walkScreens(dresses, shelf, draw);
}

} // namespace peelpack::app
