#include "tests/qml/support/phone_world.h"

#include "platform/files/resources.h"
#include "platform/session/acts.h"
#include "platform/session/cards.h"
#include "platform/session/exchange.h"
#include "platform/session/intake.h"
#include "platform/session/program_rules.h"
#include "platform/session/rule_writing.h"
#include "platform/vault/memory_vault.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"
#include "sync/keys/code.h"
#include "sync/trust/policy.h"
#include "tests/qml/support/small_program.h"

#include <QBuffer>
#include <QCoreApplication>
#include <QDateTime>
#include <QFile>
#include <QFileInfo>
#include <qrcodegen/qrcodegen.hpp>
#include <sys/resource.h>

#include <csignal>
#include <cstdlib>

namespace peelpack::test {
namespace {

QImage pictureOf(const keys::Bytes& code)
{
    constexpr int module = 6;
    constexpr int quiet = 4;
    const qrcodegen::QrCode qr =
        qrcodegen::QrCode::encodeBinary({code.begin(), code.end()}, qrcodegen::QrCode::Ecc::MEDIUM);
    const int side = (qr.getSize() + 2 * quiet) * module;
    QImage picture(side + 120, side + 80, QImage::Format_RGB32);
    picture.fill(QColor(214, 206, 190));
    for (int y = 0; y < side; ++y) {
        for (int x = 0; x < side; ++x) {
            const bool dark = qr.getModule(x / module - quiet, y / module - quiet);
            picture.setPixel(x + 60, y + 40, dark ? qRgb(20, 20, 24) : qRgb(250, 250, 250));
        }
    }
    return picture;
}

} // namespace

PhoneWorld::PhoneWorld(const QString& folder, QObject* parent)
    : QObject(parent), m_folder(folder.isEmpty() ? m_own.path() : folder),
      m_vaultFile((m_folder + QStringLiteral("/student.peelvault")).toStdString()),
      m_marks((m_folder + QStringLiteral("/marks")).toStdString()), m_shelf(files::shippedCatalogue)
{
    need(m_shelf.prepare()); // as the app does once its window is there
    beginProgram();
    connect(&m_share, &share::Share::saved, this, [this] {
        ++m_saves;
        Q_EMIT phoneChanged();
    });
    startPhone();
}

PhoneWorld::~PhoneWorld()
{
    fillStorage(false);
}

void PhoneWorld::startPhone()
{
    m_phone = std::make_unique<shell::Phone>(shell::Surroundings{
        m_vaultFile, m_folder + QStringLiteral("/app.ini"), m_marks, clock(), m_random, m_camera, m_share, m_shelf});
    Q_EMIT phoneChanged();
}

session::Clock PhoneWorld::clock()
{
    return [this] { return journal::Time{QDateTime::currentSecsSinceEpoch() + m_offset, -300}; };
}

void PhoneWorld::startPreceptorPhone()
{
    m_preceptorPhone.reset();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    m_preceptorMarks =
        std::make_unique<vault::FolderMarkStore>((m_folder + QStringLiteral("/preceptor-marks")).toStdString());
    m_preceptorPhone = std::make_unique<shell::Phone>(shell::Surroundings{
        (m_folder + QStringLiteral("/preceptor.peelvault")).toStdString(), m_folder + QStringLiteral("/preceptor.ini"),
        *m_preceptorMarks, clock(), m_random, m_preceptorCamera, m_preceptorShare, m_shelf});
    Q_EMIT phoneChanged();
}

void PhoneWorld::preceptorCameraIsThere(bool there)
{
    m_preceptorCamera.present = there;
}

void PhoneWorld::bringToStudent()
{
    session::Session& student = m_phone->desk()->session();
    const session::Directory directory(*m_director);
    const auto to = need(session::toStudent(*m_director, *directory.person(student.person())));
    need(session::takeIn(student, {{"parcel", need(session::makeParcels(*m_director, to)).front()}}));
    m_phone->desk()->refresh();
}

bool PhoneWorld::vouchFor(const QString& name, const QByteArray& key)
{
    const auto bytes = keys::fromHex(key.toStdString());
    const auto verify = bytes ? keys::VerifyKey::from(*bytes) : std::nullopt;
    if (!verify) {
        return false;
    }
    journal::Vouch vouch;
    vouch.person = m_random.id();
    vouch.name = name.toStdString();
    vouch.keyKind = journal::KeyKind::Device;
    vouch.key = *verify;
    need(m_director->append(m_director->programStream(), vouch));
    bringToStudent();
    return true;
}

void PhoneWorld::carryToPreceptor()
{
    m_preceptorShare.readyName = m_share.lastName;
    m_preceptorShare.ready = m_share.last;
}

void PhoneWorld::carryToStudent()
{
    m_share.readyName = m_preceptorShare.lastName;
    m_share.ready = m_preceptorShare.last;
}

void PhoneWorld::preceptorCameraSees(const QString& picture)
{
    m_preceptorCamera.frames = {QImage(picture).convertToFormat(QImage::Format_RGB32)};
}

void PhoneWorld::studentCameraSees(const QString& picture)
{
    m_camera.frames = {QImage(picture).convertToFormat(QImage::Format_RGB32)};
}

QString PhoneWorld::file(const QString& name) const
{
    return m_folder + QLatin1Char('/') + name;
}

void PhoneWorld::readyBytes(bool preceptors, const QByteArray& bytes)
{
    TestShare& share = preceptors ? m_preceptorShare : m_share;
    share.readyName = QStringLiteral("code.bin");
    share.ready = bytes;
}

QByteArray PhoneWorld::cardBytes(int preceptor) const
{
    return words::toArray(cardCode(preceptor));
}

QByteArray PhoneWorld::lastSavedBy(bool preceptors) const
{
    return preceptors ? m_preceptorShare.last : m_share.last;
}

QByteArray PhoneWorld::changedAt(const QByteArray& bytes, int place) const
{
    QByteArray changed = bytes;
    changed[place] = static_cast<char>(changed[place] ^ 1);
    return changed;
}

void PhoneWorld::setCounted(int bits)
{
    const auto before = trust::policyInForce(m_director->authority(), m_director->ledger().feeds());
    journal::Policy policy = before->policy;
    policy.standsOn = before->entry.hash;
    policy.counted = static_cast<std::uint8_t>(bits);
    need(m_director->append(m_director->programStream(), policy));
    bringToStudent();
}

void PhoneWorld::expectSigner(const QString& credential, int roles)
{
    journal::MaySign signer{credential.toStdString(), static_cast<std::uint8_t>(roles)};
    need(session::setWhoMaySign(*m_director, session::withSigner(session::whoMaySign(*m_director), std::move(signer))));
    bringToStudent();
}

void PhoneWorld::listDayToday(const QString& site, int phones)
{
    need(session::setSites(*m_director, {{site.toStdString(), static_cast<journal::PhoneRule>(phones), {}}}));
    need(session::setClinicalDays(*m_director, {}, {{session::today(*m_director), site.toStdString(), 420, 930}}));
    bringToStudent();
}

void PhoneWorld::changeRequirements(const QString& set, int daysAhead)
{
    const session::Rules rules = need(session::rulesOfShippedSet(set.toStdString()));
    const base::Date from = base::Date::fromDays(session::today(*m_director).days() + daysAhead);
    need(session::changeRequirements(*m_director,
                                     {{}, from, rules.requirementSet, rules.setDigest, "The new list", {}}));
    bringToStudent();
}

void PhoneWorld::beginProgram()
{
    m_director = beginSmallProgram(std::make_unique<vault::MemoryVault>(m_random), m_random);
    const std::pair<const char*, const char*> people[]{{"A. Ferro", "482913"}, {"B. Lund", "730518"}};
    for (const auto& [name, pin] : people) {
        keys::SigningCard card = session::newCard(*m_director);
        const keys::SigningKey key = need(keys::cardKey(card, m_director->program(), pin));
        journal::Vouch vouch;
        session::nameCard(vouch, card.card, card.epoch, key.verifyKey());
        vouch.person = m_random.id();
        vouch.name = name;
        vouch.credential = "CST";
        need(m_director->append(m_director->programStream(), vouch));
        m_preceptors.push_back({name, pin, std::move(card), key.verifyKey()});
    }
    m_ownPhone = need(keys::deviceKey(keys::newDeviceSeeds(m_random)));
    journal::Vouch vouch;
    vouch.person = m_random.id();
    vouch.name = "C. Okoye";
    vouch.credential = "RN";
    vouch.keyKind = journal::KeyKind::Device;
    vouch.key = m_ownPhone->signing.verifyKey();
    need(m_director->append(m_director->programStream(), vouch));
}

QString PhoneWorld::invitation()
{
    constexpr std::int64_t days = 14;
    const session::OpenInvitation open =
        need(session::invite(*m_director, "Ines Duarte", journal::Role::Student, {"spring-class"}, std::nullopt, days));
    return QString::fromLatin1(words::toArray(open.code).toBase64());
}

void PhoneWorld::readyInvitation()
{
    m_share.readyName = QStringLiteral("ines.invitation");
    m_share.ready = QByteArray::fromBase64(invitation().toLatin1());
}

QString PhoneWorld::grant()
{
    const keys::Bytes code =
        words::toBytes(m_phone->first() != nullptr ? m_phone->first()->joining()->reply() : m_share.last);
    const auto reply = keys::InvitationReply::fromCode(code);
    if (!reply) {
        return {};
    }
    const auto answered = session::matchReply(*m_director, reply.value());
    if (!answered) {
        return {};
    }
    need(session::grant(*m_director, reply.value()));
    return QString::fromStdString(answered.value().digits);
}

void PhoneWorld::setUp()
{
    auto made = need(
        vault::SqliteVault::make(m_vaultFile, vault::SecretKind::Passphrase, keys::bytesOf(secret), m_marks, m_random));
    const auto invitation =
        need(keys::Invitation::fromCode(words::toBytes(QByteArray::fromBase64(this->invitation().toLatin1()))));
    const keys::InvitationReply reply = need(session::join(*made.vault, invitation, "Ines Duarte"));
    need(session::grant(*m_director, reply));
    auto student = need(session::Session::open(
        std::move(made.vault),
        [] {
            return journal::Time{QDateTime::currentSecsSinceEpoch(), -300};
        },
        m_random));
    const session::Directory directory(*m_director);
    const auto to = need(session::toStudent(*m_director, *directory.person(student->person())));
    need(session::takeIn(*student, {{"parcel", need(session::makeParcels(*m_director, to)).front()}}));
    student.reset();
    startPhone();
}

const record::SheetRecord& PhoneWorld::sheet(const QString& id) const
{
    const record::SheetRecord* found = m_phone->desk() == nullptr ? nullptr : m_phone->desk()->sheet(id);
    if (found == nullptr) {
        qFatal("The open phone has no such sheet.");
    }
    return *found;
}

QString PhoneWorld::openSheet(const QString& procedure, int ago)
{
    student::Desk& desk = *m_phone->desk();
    journal::SheetOpened opened;
    opened.sheet = m_random.id();
    opened.operation = m_random.id();
    opened.draft.procedures = {procedure.toStdString()};
    opened.draft.head.date = base::Date::fromDays(desk.today().days() - ago);
    opened.draft.head.surgeon = "Dr Okafor";
    opened.draft.head.site = "North Campus";
    opened.draft.head.room = "Room 4";
    if (const QString failed = desk.write({opened}); !failed.isEmpty()) {
        qFatal("%s", qPrintable(failed));
    }
    return words::fromUtf8(session::idOf(opened.sheet).hex());
}

void PhoneWorld::signSheet(const QString& id)
{
    student::Desk& desk = *m_phone->desk();
    const record::SheetRecord& record = sheet(id);
    session::SheetMarks marks{
        session::idOf(record.id), record.content.procedures, session::headOf(record.content.head), {}, {}};
    for (const sheet::Skill skill : sheet::allSkills) {
        const bool yes = sheet::isFirstScrubSkill(skill) || skill == sheet::Skill::Sponge;
        marks.marks.push_back({skill, yes ? sheet::Mark::Yes : sheet::Mark::No, {}});
    }
    const Preceptor& preceptor = m_preceptors.front();
    const auto card = need(session::unlockCard(desk.session(), preceptor.card, preceptor.pin, marks.sheet));
    need(session::signWithCard(desk.session(), card, {preceptor.name, "CST"}, {marks}));
    desk.refresh();
}

int PhoneWorld::sheetCount()
{
    return static_cast<int>(m_phone->desk()->record().sheets.size());
}

QString PhoneWorld::lastSheet()
{
    for (const record::SheetRecord& sheet : m_phone->desk()->record().sheets) {
        const QString id = words::fromUtf8(sheet.id.hex());
        if (!m_known.contains(id)) {
            m_known.append(id);
            return id;
        }
    }
    return {};
}

QString PhoneWorld::standingOf(const QString& id)
{
    return words::fromUtf8(record::id(sheet(id).standing));
}

QString PhoneWorld::roleOf(const QString& id)
{
    const record::Content& content = sheet(id).content;
    return words::fromUtf8(role::id(role::classify(content.marks.marks, content.head.canceled, {})));
}

QString PhoneWorld::strengthOf(const QString& id)
{
    return words::fromUtf8(sheet::id(sheet(id).strength));
}

int PhoneWorld::signersOf(const QString& id)
{
    return static_cast<int>(sheet(id).signers.size());
}

int PhoneWorld::handOversOf(const QString& id)
{
    return static_cast<int>(sheet(id).handOversEnded.size());
}

int PhoneWorld::wrongTriesOf(const QString& id)
{
    int tries = 0;
    for (const record::HandOverEnded& ended : sheet(id).handOversEnded) {
        tries += ended.wrongTries;
    }
    return tries;
}

QString PhoneWorld::lastHandOverOf(const QString& id)
{
    constexpr std::int64_t secondsInMinute = 60;
    const auto& ended = sheet(id).handOversEnded;
    if (ended.empty()) {
        return {};
    }
    const record::HandOverEnded& last = ended.back();
    return QStringLiteral("%1 after %2")
        .arg(last.cause == record::HandOverCause::TimedOut ? QStringLiteral("timed out") : QStringLiteral("ended"))
        .arg((last.ended.seconds - last.began.seconds) / secondsInMinute);
}

QString PhoneWorld::categoriesOf(const QString& id)
{
    QStringList list;
    for (const record::Choice& choice : sheet(id).content.choices) {
        list.append(choice.category ? words::fromUtf8(catalogue::id(*choice.category)) : QString());
    }
    return list.join(QLatin1Char(' '));
}

keys::Bytes PhoneWorld::cardCode(int preceptor) const
{
    const keys::Secret code = m_preceptors.at(static_cast<std::size_t>(preceptor)).card.code();
    return {code.view().begin(), code.view().end()};
}

void PhoneWorld::readyCard(int preceptor)
{
    m_share.readyName = QStringLiteral("card.png");
    m_share.ready.clear();
    QBuffer buffer(&m_share.ready);
    buffer.open(QIODevice::WriteOnly);
    pictureOf(cardCode(preceptor)).save(&buffer, "PNG");
}

void PhoneWorld::cameraSeesCard(int preceptor)
{
    QImage nothing(320, 240, QImage::Format_RGB32);
    nothing.fill(Qt::darkGray);
    m_camera.frames = {nothing, nothing, pictureOf(cardCode(preceptor))};
}

void PhoneWorld::cameraIsThere(bool there)
{
    m_camera.present = there;
}

QString PhoneWorld::pinOf(int preceptor) const
{
    return QString::fromStdString(m_preceptors.at(static_cast<std::size_t>(preceptor)).pin);
}

QString PhoneWorld::nameOf(int preceptor) const
{
    return QString::fromStdString(m_preceptors.at(static_cast<std::size_t>(preceptor)).name);
}

QString PhoneWorld::codeOf(int preceptor) const
{
    const keys::Secret text =
        keys::codeText(keys::CodeSort::Card, m_preceptors.at(static_cast<std::size_t>(preceptor)).card.secret.view());
    return QString::fromLatin1(reinterpret_cast<const char*>(text.view().data()), static_cast<qsizetype>(text.size()));
}

bool PhoneWorld::answerOnOwnPhone()
{
    if (m_phone->handOver() == nullptr) {
        return false;
    }
    const auto request = journal::decodeSigningRequest(words::toBytes(m_phone->handOver()->request()));
    if (!request) {
        return false;
    }
    session::SheetMarks marks{
        request.value().sheet, request.value().procedures, request.value().head, {}, "Well done."};
    for (const sheet::Skill skill : sheet::allSkills) {
        marks.marks.push_back({skill, sheet::Mark::Yes, {}});
    }
    const auto answer =
        session::answerRequest(*m_ownPhone, request.value(), {"C. Okoye", "RN"}, marks, m_director->now());
    if (!answer) {
        return false;
    }
    m_share.readyName = QStringLiteral("answer.peelsign");
    m_share.ready = words::toArray(answer.value());
    return true;
}

bool PhoneWorld::instructorAnswers(bool initials)
{
    const auto taken = session::takeIn(*m_director, {{"parcel", words::toBytes(m_share.last)}});
    if (!taken || !taken.value().files.front().used) {
        return false;
    }
    const session::Directory directory(*m_director);
    for (const session::Person& person : directory.people()) {
        if (person.role != journal::Role::Student) {
            continue;
        }
        if (initials) {
            for (const record::SheetRecord& sheet : m_director->recordOf(person.id).sheets) {
                if (sheet.standing == record::SheetStanding::Signed) {
                    need(
                        session::initialSheet(*m_director, {person.id, session::idOf(sheet.id), sheet}, false, {}, {}));
                }
            }
        }
        const auto to = need(session::toStudent(*m_director, person));
        m_share.readyName = QStringLiteral("answer.peelparcel");
        m_share.ready = words::toArray(need(session::makeParcels(*m_director, to)).front());
    }
    return true;
}

session::SheetPlace PhoneWorld::placeAtInstructor(const QString& id)
{
    const session::Directory directory(*m_director);
    for (const session::Person& person : directory.people()) {
        const auto place = session::findSheet(*m_director, person.id, id.toStdString());
        if (place) {
            return place.value();
        }
    }
    qFatal("The instructor does not have this sheet.");
}

bool PhoneWorld::instructorReturns(const QString& id, const QString& question)
{
    return session::returnSheet(*m_director, placeAtInstructor(id), question.toStdString()).ok();
}

bool PhoneWorld::instructorAcceptsReview(const QString& id)
{
    return session::acceptReview(*m_director, placeAtInstructor(id), std::nullopt, "The circulator confirms it.", {})
        .ok();
}

QString PhoneWorld::standingAtInstructor(const QString& id)
{
    return words::fromUtf8(record::id(placeAtInstructor(id).record.standing));
}

void PhoneWorld::restart()
{
    closePhone();
    startPhone();
}

void PhoneWorld::closePhone()
{
    m_phone.reset();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
}

void PhoneWorld::keepCard(int preceptor, const QString& file) const
{
    QFile kept(file);
    if (!kept.open(QIODevice::WriteOnly) || kept.write(words::toArray(cardCode(preceptor))) < 0) {
        qFatal("The card could not be kept.");
    }
}

void PhoneWorld::turnClock(int seconds)
{
    m_offset += seconds;
}

void PhoneWorld::fillStorage(bool full)
{
    std::signal(SIGXFSZ, SIG_IGN);
    rlimit limit{};
    getrlimit(RLIMIT_FSIZE, &limit);
    limit.rlim_cur = full ? 4096 : limit.rlim_max;
    setrlimit(RLIMIT_FSIZE, &limit);
}

int PhoneWorld::journalBytes()
{
    qint64 bytes = 0;
    for (const char* end : {"", "-wal"}) {
        bytes += QFileInfo(QString::fromStdString(m_vaultFile + end)).size();
    }
    return static_cast<int>(bytes);
}

} // namespace peelpack::test
