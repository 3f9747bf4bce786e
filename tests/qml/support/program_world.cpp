#include "tests/qml/support/program_world.h"

#include "platform/session/cards.h"
#include "platform/session/exchange.h"
#include "platform/session/intake.h"
#include "platform/session/program_catalogue.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"
#include "sync/merge/record_content.h"
#include "tests/qml/support/small_program.h"

#include <QCoreApplication>
#include <QFile>

#include <algorithm>

namespace peelpack::test {
namespace {

QStringList inLines(const std::vector<journal::ClinicalDay>& days)
{
    QStringList lines;
    for (const journal::ClinicalDay& day : days) {
        lines.append(words::fromUtf8(day.date.iso() + " " + day.site + " " + std::to_string(day.start) + " " +
                                     std::to_string(day.end)));
    }
    return lines;
}

} // namespace

ProgramWorld::ProgramWorld(QObject* parent)
    : QObject(parent), m_studentMarks((m_folder.path() + QStringLiteral("/student-marks")).toStdString()),
      m_shelf(files::shippedCatalogue)
{
    need(m_shelf.prepare());
    startPhone();
}

ProgramWorld::~ProgramWorld()
{
    m_phone.reset();
}

std::string ProgramWorld::vaultFile() const
{
    return (m_folder.path() + QStringLiteral("/device-%1.peelvault").arg(m_device)).toStdString();
}

void ProgramWorld::startPhone()
{
    m_phone.reset();
    QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
    m_marks = std::make_unique<vault::FolderMarkStore>(
        (m_folder.path() + QStringLiteral("/marks-%1").arg(m_device)).toStdString());
    m_phone = std::make_unique<shell::Phone>(
        shell::Surroundings{vaultFile(), m_folder.path() + QStringLiteral("/app-%1.ini").arg(m_device), *m_marks, now,
                            m_random, m_camera, m_share, m_shelf});
    Q_EMIT phoneChanged();
}

void ProgramWorld::setUp()
{
    auto made = need(vault::SqliteVault::make(vaultFile(), vault::SecretKind::Passphrase, keys::bytesOf(secret),
                                              *m_marks, m_random));
    session::Rules rules = need(session::rulesOfShippedSet(files::usualSetId));
    rules.lastDay = base::Date::fromDays(60'000);
    rules.counted = session::countsAllButNewCards;
    const keys::Secret code = m_random.secret(keys::codeSecretBytes);
    need(session::beginProgram(*made.vault, need(keys::programKey(code.view())), "Nora Stone", rules, now, m_random));
    m_programCode = words::shown(keys::codeText(keys::CodeSort::Program, code.view()));
    made.vault.reset();
    startPhone();
}

void ProgramWorld::takeNewDevice()
{
    ++m_device;
    startPhone();
}

bool ProgramWorld::vaultIsThere() const
{
    return QFile::exists(QString::fromStdString(vaultFile()));
}

QString ProgramWorld::programCode() const
{
    return m_programCode;
}

QString ProgramWorld::otherCode()
{
    return words::shown(keys::codeText(keys::CodeSort::Program, m_random.secret(keys::codeSecretBytes).view()));
}

QString ProgramWorld::studentJoins(const QString& name)
{
    const std::string file = (m_folder.path() + QStringLiteral("/student.peelvault")).toStdString();
    auto made = need(
        vault::SqliteVault::make(file, vault::SecretKind::Passphrase, keys::bytesOf(secret), m_studentMarks, m_random));
    const keys::Invitation invitation = need(keys::Invitation::fromCode(words::toBytes(m_share.last)));
    const keys::InvitationReply reply = need(session::join(*made.vault, invitation, name.toStdString()));
    m_student = need(session::Session::open(std::move(made.vault), now, m_random));
    m_reply = words::toArray(reply.code());
    m_share.readyName = QStringLiteral("answer.peelreply");
    m_share.ready = m_reply;
    return QString::fromStdString(keys::comparisonDigits(invitation, reply));
}

QString ProgramWorld::replyAsText()
{
    return words::codeAsText(m_reply);
}

bool ProgramWorld::studentTakesIn()
{
    const auto report = need(session::takeIn(*m_student, {{"parcel", words::toBytes(m_share.last)}}));
    return report.saved && session::Directory(*m_student).person(m_student->person()) != nullptr;
}

void ProgramWorld::studentHasNewCardSign(const QString& preceptor)
{
    journal::Draft draft;
    draft.procedures = {"Appendectomy"};
    draft.head.date = merge::timeOf(now()).day();
    const keys::Id sheet = need(session::openSheet(*m_student, draft));
    session::SheetMarks marks{sheet, draft.procedures, draft.head, {}, {}};
    for (const sheet::Skill skill : sheet::allSkills) {
        marks.marks.push_back({skill, sheet::Mark::Yes, {}});
    }
    const keys::SigningCard card = session::newCard(*m_student);
    keys::SigningKey key = need(keys::cardKey(card, m_student->program(), "482913"));
    const session::UnlockedCard unlocked{std::move(key), card.card, card.epoch, false};
    need(session::signWithCard(*m_student, unlocked, {preceptor.toStdString(), "CST"}, {marks}));
    m_share.readyNames = {QStringLiteral("ines.peelparcel")};
    m_share.readyFiles = {
        words::toArray(need(session::makeParcels(*m_student, need(session::toStaff(*m_student)))).front())};
}

void ProgramWorld::readySaved()
{
    m_share.readyNames = {m_share.lastName};
    m_share.readyFiles = {m_share.last};
    m_share.readyName = m_share.lastName;
    m_share.ready = m_share.last;
}

void ProgramWorld::readyText(const QString& name, const QString& text)
{
    m_share.readyName = name;
    m_share.ready = text.toUtf8();
}

session::Session& ProgramWorld::inHand()
{
    if (!m_phone || m_phone->staffDesk() == nullptr) {
        qFatal("The device in hand is locked.");
    }
    return m_phone->staffDesk()->session();
}

QString ProgramWorld::setInForce()
{
    const auto policy = session::policyInForce(inHand());
    return policy ? words::fromUtf8(policy->requirementSet) : QString();
}

QString ProgramWorld::setOn(const QString& className, const QString& day)
{
    return words::fromUtf8(session::namedSet(inHand(), std::vector{className.toStdString()},
                                             base::Date::fromIso(day.toStdString()).value())
                               .id);
}

QStringList ProgramWorld::daysOf(const QString& className)
{
    return inLines(session::clinicalDays(inHand(), className.toStdString()));
}

QStringList ProgramWorld::daysOfStudent() const
{
    return inLines(session::clinicalDaysOf(*m_student, m_student->person()));
}

QString ProgramWorld::ownProcedures()
{
    return QString::fromStdString(session::overlayInForce(inHand()));
}

QString ProgramWorld::foundByStudent(const QString& text) const
{
    student::Shelf shelf(files::shippedCatalogue);
    shelf.layOver(session::overlayInForce(*m_student));
    const std::vector<catalogue::Hit> hits = shelf.search().find(text.toStdString(), 1);
    return hits.empty() ? QString() : QString::fromStdString(hits.front().procedure->name);
}

int ProgramWorld::phonesAt(const QString& site)
{
    for (const journal::Site& one : session::sites(inHand())) {
        if (one.name == site.toStdString()) {
            return static_cast<int>(one.phones);
        }
    }
    return -1;
}

int ProgramWorld::rolesOf(const QString& credential)
{
    for (const journal::MaySign& one : session::whoMaySign(inHand())) {
        if (one.credential == credential.toStdString()) {
            return one.roles;
        }
    }
    return -1;
}

QString ProgramWorld::standingOf(const QString& preceptor)
{
    const session::Directory directory(inHand());
    const auto standing = session::standingOf(inHand(), need(directory.findPreceptor(preceptor.toStdString()))->id);
    if (!standing) {
        return {};
    }
    const std::string oriented = standing->oriented ? standing->oriented->iso() : "not oriented";
    return words::fromUtf8(oriented + (standing->active ? " active" : ""));
}

int ProgramWorld::peopleCount()
{
    return static_cast<int>(session::Directory(inHand()).people().size());
}

QString ProgramWorld::strengthOfSheet()
{
    const record::StudentRecord record = inHand().recordOf(m_student->person());
    return record.sheets.size() == 1 ? words::fromUtf8(sheet::id(record.sheets.front().strength)) : QString();
}

bool ProgramWorld::cardIsVouched(const QByteArray& code, const QString& pin, const QString& name)
{
    const keys::SigningCard card = need(keys::SigningCard::fromCode(words::toBytes(code)));
    const keys::SigningKey key = need(keys::cardKey(card, inHand().program(), pin.toStdString()));
    const session::Directory directory(inHand());
    const session::Preceptor* owner = directory.ofCard(card.card);
    return owner != nullptr && owner->name == name.toStdString() &&
           std::any_of(owner->keys.begin(), owner->keys.end(), [&](const session::SigningKeyOf& one) {
               return one.key == key.verifyKey() && one.epoch == card.epoch && !one.revoked;
           });
}

int ProgramWorld::goodKeysOf(const QString& preceptor)
{
    const session::Directory directory(inHand());
    const session::Preceptor* found = need(directory.findPreceptor(preceptor.toStdString()));
    return static_cast<int>(std::count_if(found->keys.begin(), found->keys.end(),
                                          [](const session::SigningKeyOf& key) { return !key.revoked; }));
}

int ProgramWorld::goodDevicesOf(const QString& person)
{
    const session::Directory directory(inHand());
    const session::Person* found = need(directory.findPerson(person.toStdString()));
    return static_cast<int>(std::count_if(found->devices.begin(), found->devices.end(),
                                          [](const session::GrantedDevice& device) { return !device.revoked; }));
}

} // namespace peelpack::test
