#include "tests/qml/support/class_world.h"

#include "core/role/classifier.h"
#include "platform/files/resources.h"
#include "platform/session/cards.h"
#include "platform/session/exchange.h"
#include "platform/session/intake.h"
#include "platform/vault/memory_vault.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"
#include "tests/qml/support/small_program.h"

#include <QCoreApplication>
#include <QDateTime>

namespace peelpack::test {
namespace {

constexpr std::int64_t daysToAnswer = 14;

} // namespace

ClassWorld::ClassWorld(QObject* parent)
    : QObject(parent), m_marks((m_folder.path() + QStringLiteral("/marks")).toStdString()),
      m_shelf(files::shippedCatalogue)
{
    need(m_shelf.prepare());
    m_director = beginSmallProgram(std::make_unique<vault::MemoryVault>(m_random), m_random);
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
    const Member& one = member(name);
    m_phone =
        std::make_unique<shell::Phone>(shell::Surroundings{one.vaultFile, m_folder.path() + QStringLiteral("/app.ini"),
                                                           m_marks, now, m_random, m_camera, m_share, m_shelf});
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
