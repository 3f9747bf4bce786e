#include "tests/qml/support/class_world.h"

#include "core/role/classifier.h"
#include "platform/camera/qr_picture.h"
#include "platform/files/resources.h"
#include "platform/session/acts.h"
#include "platform/session/cards.h"
#include "platform/session/completion.h"
#include "platform/session/exchange.h"
#include "platform/session/intake.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"
#include "sync/carry/frame.h"
#include "tests/qml/support/small_program.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QDir>
#include <QDropEvent>
#include <QFile>
#include <QMimeData>
#include <QQuickWindow>

namespace peelpack::test {
namespace {

constexpr std::int64_t daysToAnswer = 14;

} // namespace

ClassWorld::ClassWorld(QObject* parent)
    : QObject(parent), m_marks((m_folder.path() + QStringLiteral("/marks")).toStdString()),
      m_shelf(files::shippedCatalogue)
{
    need(m_shelf.prepare());
    m_directorFile = (m_folder.path() + QStringLiteral("/director.peelvault")).toStdString();
    auto vault = need(vault::SqliteVault::make(m_directorFile, vault::SecretKind::Passphrase, keys::bytesOf(secret),
                                               m_marks, m_random));
    m_director = beginSmallProgram(std::move(vault.vault), m_random, &m_programCode);
    join(*m_director, QStringLiteral("Bertil Moreau"), journal::Role::Instructor, "instructor");
    session::Session& instructor = beside(m_members.front().name);
    m_card.emplace(newCard(instructor, "A. Ferro", m_random.id(), "482913"));
    m_ownCard.emplace(newCard(instructor, "Bertil Moreau", m_members.front().person, "730518"));
    join(instructor, QStringLiteral("Ines Duarte"), journal::Role::Student, "ines");
    join(instructor, QStringLiteral("Caleb Nwosu"), journal::Role::Student, "caleb");
}

ClassWorld::~ClassWorld()
{
    m_phone.reset();
}

const ClassWorld::Member& ClassWorld::member(const QString& name) const
{
    for (const Member& one : m_members) {
        if (one.name == name) {
            return one;
        }
    }
    qFatal("Nobody has that name.");
}

void ClassWorld::join(session::Session& inviter, const QString& name, journal::Role role, const char* file)
{
    const std::string path = (m_folder.path() + QLatin1Char('/') + QLatin1String(file)).toStdString() + ".peelvault";
    auto made =
        need(vault::SqliteVault::make(path, vault::SecretKind::Passphrase, keys::bytesOf(secret), m_marks, m_random));
    const session::OpenInvitation open =
        need(session::invite(inviter, name.toStdString(), role, {"spring-class"}, std::nullopt, daysToAnswer));
    const keys::Invitation invitation = need(keys::Invitation::fromCode(open.code));
    const keys::InvitationReply reply = need(session::join(*made.vault, invitation, name.toStdString()));
    need(session::grant(inviter, reply));
    auto session = need(session::Session::open(std::move(made.vault), now, m_random));
    const session::Directory directory(inviter);
    const auto to = role == journal::Role::Student ? session::toStudent(inviter, *directory.person(session->person()))
                                                   : session::toColleagues(inviter);
    need(session::takeIn(*session, {{"parcel", need(session::makeParcels(inviter, need(to))).front()}}));
    const keys::Id person = session->person();
    m_members.push_back({name, person, path, std::move(session)});
}

session::UnlockedCard ClassWorld::newCard(session::Session& staff, const std::string& name, const keys::Id& person,
                                          const char* pin)
{
    const keys::SigningCard card = session::newCard(staff);
    keys::SigningKey key = need(keys::cardKey(card, staff.program(), pin));
    journal::Vouch vouch;
    session::nameCard(vouch, card.card, card.epoch, key.verifyKey());
    vouch.person = person;
    vouch.name = name;
    vouch.credential = "CST";
    need(staff.append(staff.programStream(), vouch));
    return {std::move(key), card.card, card.epoch, true};
}

session::Session& ClassWorld::beside(const QString& name)
{
    for (Member& one : m_members) {
        if (one.name == name && one.beside) {
            return *one.beside;
        }
    }
    const Member& member = this->member(name);
    auto vault =
        need(vault::SqliteVault::open(member.vaultFile, keys::bytesOf(secret), m_marks, m_random, now().seconds));
    auto session = need(session::Session::open(std::move(vault), now, m_random));
    for (Member& one : m_members) {
        if (one.name == name) {
            one.beside = std::move(session);
            return *one.beside;
        }
    }
    qFatal("Nobody has that name.");
}

void ClassWorld::hold(const QString& whose)
{
    m_phone.reset();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    const QString name = whose == QLatin1String("instructor") ? m_members.front().name : whose;
    for (Member& one : m_members) {
        if (one.name == name) {
            one.beside.reset(); // a vault is open once
        }
    }
    const bool director = whose == QLatin1String("director");
    if (director) {
        m_director.reset();
    }
    m_phone = std::make_unique<shell::Phone>(shell::Surroundings{director ? m_directorFile : member(name).vaultFile,
                                                                 m_folder.path() + QStringLiteral("/app.ini"), m_marks,
                                                                 now, m_random, m_camera, m_share, m_shelf});
    Q_EMIT phoneChanged();
}

QString ClassWorld::makeSheet(const QString& student, const journal::Draft& draft, const QStringList& no,
                              const session::UnlockedCard& card, const char* signer)
{
    session::Session& phone = beside(student);
    const keys::Id sheet = need(session::openSheet(phone, draft));
    session::SheetMarks marks{sheet, draft.procedures, draft.head, {}, "Good anticipation."};
    for (const sheet::Skill skill : sheet::allSkills) {
        const bool isNo = no.contains(words::fromUtf8(sheet::column(skill)));
        marks.marks.push_back({skill, isNo ? sheet::Mark::No : sheet::Mark::Yes, {}});
    }
    need(session::signWithCard(phone, card, {signer, "CST"}, {marks}));
    const auto found = m_shelf.catalogue().byExactName(draft.procedures.front());
    if (found.size() != 1) {
        qFatal("The catalogue has no \"%s\".", draft.procedures.front().c_str());
    }
    need(phone.append(phone.person(),
                      journal::Logged{sheet, {{0, std::string(catalogue::id(found.front()->categories.front())), 0}}}));
    return QString::fromStdString(keys::hex(sheet.view()));
}

QString ClassWorld::signedSheet(const QString& student, const QString& procedure, const QStringList& no)
{
    journal::Draft draft;
    draft.procedures = {procedure.toStdString()};
    draft.head.date = record::Time{now().seconds, now().zone}.day();
    draft.head.surgeon = "Dr Okafor";
    return makeSheet(student, draft, no, *m_card, "A. Ferro");
}

QString ClassWorld::signedSheetIn(const QString& student, const QString& procedure, const QString& room)
{
    journal::Draft draft;
    draft.procedures = {procedure.toStdString()};
    draft.head.date = record::Time{now().seconds, now().zone}.day();
    draft.head.site = "North Campus";
    draft.head.room = room.toStdString();
    draft.head.start = 450;
    draft.head.end = 540;
    return makeSheet(student, draft, {}, *m_card, "A. Ferro");
}

QString ClassWorld::sheetSignedByInstructor(const QString& student, const QString& procedure)
{
    journal::Draft draft;
    draft.procedures = {procedure.toStdString()};
    draft.head.date = record::Time{now().seconds, now().zone}.day();
    return makeSheet(student, draft, {}, *m_ownCard, "Bertil Moreau");
}

void ClassWorld::askReview(const QString& student, const QString& sheet, int skill, const QString& reason)
{
    session::Session& phone = beside(student);
    const session::SheetPlace place = need(session::findSheet(phone, phone.person(), sheet.toStdString()));
    need(phone.append(phone.person(), journal::ReviewAsked{place.sheet,
                                                           {static_cast<sheet::Skill>(skill), sheet::Mark::Yes, {}},
                                                           reason.toStdString()}));
}

void ClassWorld::readyParcels(const QStringList& students)
{
    m_share.readyNames.clear();
    m_share.readyFiles.clear();
    for (const QString& student : students) {
        session::Session& phone = beside(student);
        m_share.readyNames.append(student + QStringLiteral(".peelparcel"));
        m_share.readyFiles.append(
            words::toArray(need(session::makeParcels(phone, need(session::toStaff(phone)))).front()));
    }
}

void ClassWorld::readyBroken()
{
    m_share.readyNames = {QStringLiteral("holiday.jpg")};
    m_share.readyFiles = {QByteArray(4000, 'x')};
}

void ClassWorld::cameraIsThere(bool there)
{
    m_camera.present = there;
}

bool ClassWorld::cameraSees(const QStringList& pictures)
{
    m_camera.frames.clear();
    for (const QString& picture : pictures) {
        m_camera.frames.emplace_back(picture);
        if (m_camera.frames.back().isNull()) {
            return false;
        }
    }
    return true;
}

QString ClassWorld::pictureOf(const QByteArray& code, const QString& name) const
{
    constexpr int module = 4;
    const QString path = file(name);
    return camera::qrPicture(words::toBytes(code), module).save(path) ? path : QString();
}

QByteArray ClassWorld::lieAbout(const QByteArray& code) const
{
    const keys::Bytes bytes = words::toBytes(code);
    const auto read = carry::readFrame(bytes);
    if (!read) {
        qFatal("This is no code of a parcel.");
    }
    carry::Frame frame = read.value();
    const keys::Bytes piece(frame.piece.size(), 0xEE);
    frame.piece = piece;
    return words::toArray(carry::writeFrame(frame));
}

QString ClassWorld::file(const QString& name) const
{
    return m_folder.path() + QLatin1Char('/') + name;
}

void ClassWorld::readyText(const QString& name, const QString& text)
{
    m_share.readyName = name;
    m_share.ready = text.toUtf8();
}

bool ClassWorld::readyAnswer(const QString& student)
{
    for (auto it = m_share.kept.cbegin(); it != m_share.kept.cend(); ++it) {
        if (it.key().contains(student.toLower().replace(QLatin1Char(' '), QLatin1Char('-')))) {
            m_share.readyName = it.key();
            m_share.ready = it.value();
            return true;
        }
    }
    return false;
}

bool ClassWorld::dropParcels(QObject* window, const QStringList& students, bool asFolder)
{
    auto* target = qobject_cast<QQuickWindow*>(window);
    const QString folder = m_folder.path() + QStringLiteral("/mail");
    if (target == nullptr || !QDir().mkpath(folder)) {
        return false;
    }
    readyParcels(students);
    QList<QUrl> urls;
    for (qsizetype i = 0; i < m_share.readyNames.size(); ++i) {
        QFile file(folder + QLatin1Char('/') + m_share.readyNames[i]);
        if (!file.open(QIODevice::WriteOnly) || file.write(m_share.readyFiles[i]) != m_share.readyFiles[i].size()) {
            return false;
        }
        urls.append(QUrl::fromLocalFile(file.fileName()));
    }
    QMimeData files;
    files.setUrls(asFolder ? QList<QUrl>{QUrl::fromLocalFile(folder)} : urls);
    const QPoint middle(target->width() / 2, target->height() / 2);
    QDragEnterEvent enter(middle, Qt::CopyAction, &files, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(target, &enter);
    QDragMoveEvent move(middle, Qt::CopyAction, &files, Qt::LeftButton, Qt::NoModifier);
    QCoreApplication::sendEvent(target, &move);
    QDropEvent drop(middle, Qt::CopyAction, &files, Qt::LeftButton, Qt::NoModifier);
    return QCoreApplication::sendEvent(target, &drop);
}

QStringList ClassWorld::splitRecord(const QString& student, const QString& procedure, const QString& other)
{
    const auto close = [&] {
        for (Member& one : m_members) {
            if (one.name == student) {
                one.beside.reset();
            }
        }
    };
    QStringList names;
    QByteArrayList parcels;
    const auto keep = [&](const QString& name) {
        readyParcels({student});
        names.append(name);
        parcels.append(m_share.readyFiles);
    };
    close();
    QFile file(QString::fromStdString(member(student).vaultFile));
    const auto reading = file.open(QIODevice::ReadOnly);
    const QByteArray before = reading ? file.readAll() : QByteArray();
    file.close();
    QStringList sheets{signedSheet(student, procedure)};
    keep(QStringLiteral("one.peelparcel"));
    close();
    for (const char* beside : {"-wal", "-shm"}) {
        QFile::remove(file.fileName() + QLatin1String(beside));
    }
    if (!file.open(QIODevice::WriteOnly | QIODevice::Truncate) ||
        file.write(before) != before.size()) { // the same inode
        qFatal("The vault cannot be put back.");
    }
    file.close();
    sheets.append(signedSheet(student, other));
    keep(QStringLiteral("other.peelparcel"));
    m_share.readyNames = names;
    m_share.readyFiles = parcels;
    return sheets;
}

void ClassWorld::initialAtInstructor(const QString& student)
{
    readyParcels({student});
    session::Session& desk = beside(m_members.front().name);
    need(session::takeIn(desk, {{"parcel", words::toBytes(m_share.readyFiles.front())}}));
    const keys::Id person = member(student).person;
    for (const record::SheetRecord& sheet : desk.recordOf(person).sheets) {
        need(session::initialSheet(desk, {person, session::idOf(sheet.id), sheet}, false, {}, {}));
    }
}

void ClassWorld::bringToDirector()
{
    const session::Session& desk = beside(m_members.front().name);
    const auto to = need(session::toColleagues(desk));
    need(session::takeIn(*m_director, {{"parcel", need(session::makeParcels(desk, to)).front()}}));
}

QString ClassWorld::savedText(const QString& name) const
{
    for (auto it = m_share.kept.cbegin(); it != m_share.kept.cend(); ++it) {
        if (it.key().contains(name)) {
            return QString::fromUtf8(it.value());
        }
    }
    return {};
}

bool ClassWorld::isPdf(const QString& name) const
{
    for (auto it = m_share.kept.cbegin(); it != m_share.kept.cend(); ++it) {
        if (it.key().contains(name)) {
            return it.value().startsWith("%PDF-") && it.value().trimmed().endsWith("%%EOF");
        }
    }
    return false;
}

QString ClassWorld::verifiedRecord(const QString& name)
{
    const auto document = evidence::parseJson(savedText(name).toStdString());
    const auto record = document ? evidence::verifyRecord(document.value(), inHand().program())
                                 : base::Result<evidence::CompletionRecord>(document.error());
    return record ? words::fromUtf8(record.value().name + ", exception: " + record.value().exception.value_or("none"))
                  : words::fromUtf8(record.error().sentence);
}

int ClassWorld::provenSheets(const QString& name)
{
    const auto document = evidence::parseJson(savedText(name).toStdString());
    const auto proofs =
        document ? evidence::readSheetProofs(document.value()) : base::Result<evidence::SheetProofs>(document.error());
    const auto record = proofs ? evidence::verifyRecord(proofs.value().recordDocument, inHand().program())
                               : base::Result<evidence::CompletionRecord>(proofs.error());
    if (!record) {
        return -1;
    }
    int proven = 0;
    for (const evidence::SheetProof& proof : proofs.value().proofs) {
        proven += evidence::isProven(record.value(), proof) ? 1 : 0;
    }
    return proven == static_cast<int>(proofs.value().proofs.size()) ? proven : -1;
}

int ClassWorld::decisionsAbout(const QString& student)
{
    return static_cast<int>(session::decisionsAbout(inHand(), member(student).person).size());
}

session::Session& ClassWorld::inHand()
{
    if (m_phone && m_phone->staffDesk() != nullptr) {
        return m_phone->staffDesk()->session();
    }
    if (!m_phone || m_phone->desk() == nullptr) {
        qFatal("The device in hand is locked.");
    }
    return m_phone->desk()->session();
}

record::SheetRecord ClassWorld::recordOf(const QString& student, const QString& sheet)
{
    return need(session::findSheet(inHand(), member(student).person, sheet.toStdString())).record;
}

QString ClassWorld::standingOf(const QString& student, const QString& sheet)
{
    return words::fromUtf8(record::id(recordOf(student, sheet).standing));
}

QString ClassWorld::roleOf(const QString& student, const QString& sheet)
{
    const record::Content content = recordOf(student, sheet).content;
    return words::fromUtf8(role::id(role::classify(content.marks.marks, content.head.canceled, {})));
}

QString ClassWorld::categoryOf(const QString& student, const QString& sheet)
{
    const record::Content content = recordOf(student, sheet).content;
    return content.choices.empty() || !content.choices.front().category
               ? QString()
               : words::fromUtf8(catalogue::id(*content.choices.front().category));
}

QStringList ClassWorld::importedOf(const QString& student)
{
    QStringList lines;
    for (const record::SheetRecord& sheet : inHand().recordOf(member(student).person).sheets) {
        if (sheet.imported) {
            lines.append(words::fromUtf8(sheet.content.head.date.iso() + " " + sheet.content.procedures.front() + " " +
                                         std::string(sheet::id(sheet.imported->said.role)) + " " +
                                         std::string(record::id(sheet.standing)) + ": " + sheet.imported->said.source));
        }
    }
    lines.sort();
    return lines;
}

QString ClassWorld::keyOfImported(const QString& student, int index)
{
    const QString line = importedOf(student).value(index);
    for (const record::SheetRecord& sheet : inHand().recordOf(member(student).person).sheets) {
        if (sheet.imported && line.startsWith(words::fromUtf8(sheet.content.head.date.iso() + " " +
                                                              sheet.content.procedures.front() + " "))) {
            return keyOf(student, words::fromUtf8(sheet.id.hex()));
        }
    }
    return {};
}

int ClassWorld::actsAbout(const QString& student)
{
    session::Session& session = inHand();
    const auto own = session.ownFeed(member(student).person);
    const journal::Feed* feed = own ? session.ledger().feed(own.value()) : nullptr;
    return feed == nullptr ? 0 : static_cast<int>(feed->count());
}

QString ClassWorld::keyOf(const QString& student, const QString& sheet) const
{
    return QString::fromStdString(keys::hex(member(student).person.view())) + QLatin1Char(':') + sheet;
}

} // namespace peelpack::test
