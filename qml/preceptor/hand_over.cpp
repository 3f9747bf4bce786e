#include "qml/preceptor/hand_over.h"

#include "platform/session/cards.h"
#include "platform/session/program_rules.h"
#include "platform/session/sheet_rules.h"
#include "qml/parts/after_frame.h"
#include "qml/preceptor/code_words.h"
#include "qml/preceptor/signer_words.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"
#include "sync/keys/code.h"
#include "sync/keys/password.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>

#include <algorithm>

namespace peelpack::preceptor {
namespace {

constexpr const char* noteName = "app.handover";
constexpr qsizetype mostReason = 200;
constexpr qsizetype mostName = 80;
constexpr qsizetype mostCredential = 40;

session::SignerName signerFrom(const QString& name, const QString& credential)
{
    return {words::line(name, mostName), words::line(credential, mostCredential)};
}

} // namespace

HandOver::HandOver(student::Desk& desk, const QStringList& sheets, journal::Time began, QObject* parent)
    : Sitting(parent), m_desk(desk), m_began(began)
{
    std::vector<MarkedSheet> marked;
    for (const QString& id : sheets) {
        if (const record::SheetRecord* record = desk.sheet(id)) {
            marked.emplace_back(*record);
        }
    }
    const session::Directory directory(desk.session());
    const std::string site = marked.empty() ? std::string() : marked.front().marks().head.site;
    for (const session::Preceptor& preceptor : directory.preceptors()) {
        if (session::newestCard(preceptor)) {
            m_people.push_back(preceptor);
        }
    }
    std::stable_partition(m_people.begin(), m_people.end(),
                          [&](const session::Preceptor& preceptor) { return preceptor.site == site; });
    begin(std::move(marked));
    setError(keepBegun());
}

QString HandOver::keepBegun() const
{
    QStringList ids;
    for (const MarkedSheet& sheet : sheets()) {
        ids.append(sheet.id());
    }
    const QJsonObject note{{"sheets", QJsonArray::fromStringList(ids)},
                           {"seconds", QString::number(m_began.seconds)},
                           {"zone", m_began.zone}};
    return m_desk.keep(noteName, QJsonDocument(note).toJson(QJsonDocument::Compact));
}

std::optional<HandOver::Begun> HandOver::begun(const student::Desk& desk)
{
    const QJsonObject note = QJsonDocument::fromJson(desk.kept(noteName)).object();
    Begun found;
    for (const QJsonValue id : note["sheets"].toArray()) {
        if (desk.sheet(id.toString()) != nullptr) {
            found.sheets.append(id.toString());
        }
    }
    if (found.sheets.isEmpty()) {
        return std::nullopt;
    }
    found.at = {note["seconds"].toString().toLongLong(), static_cast<std::int16_t>(note["zone"].toInt())};
    return found;
}

QString HandOver::beforehand() const
{
    return rulesInWords(m_desk.session());
}

QString HandOver::listed() const
{
    return m_known ? inWords(session::maySign(m_desk.session(), *m_known), words::fromUtf8(m_known->credential))
                   : listedAs(words::fromUtf8(m_signer.credential));
}

QString HandOver::listedAs(const QString& credential) const
{
    const std::string typed = words::line(credential, mostCredential);
    return inWords(session::maySign(m_desk.session(), typed, std::nullopt), words::fromUtf8(typed));
}

QString HandOver::wordOn(sheet::Strength strength, const QString& usual) const
{
    return session::acceptance(session::policyInForce(m_desk.session()), strength) == session::Acceptance::Never
               ? tr("Does not count here, by your program's rules.")
               : usual;
}

QString HandOver::ownPhoneWord() const
{
    return wordOn(sheet::Strength::OwnPhone, tr("The strongest way, when an instructor knows your phone."));
}

QString HandOver::newCardWord() const
{
    return wordOn(sheet::Strength::Card, tr("It counts once an instructor vouches for it."));
}

QString HandOver::drawnWord() const
{
    return wordOn(sheet::Strength::Drawn,
                  tr("The weakest way: it counts only once an instructor has asked you about it."));
}

QStringList HandOver::people() const
{
    QStringList list;
    for (const session::Preceptor& preceptor : m_people) {
        list.append(words::fromUtf8(preceptor.name) + QStringLiteral(", ") + words::fromUtf8(preceptor.credential));
    }
    return list;
}

QString HandOver::signer() const
{
    if (m_signer.name.empty()) {
        return {};
    }
    return words::fromUtf8(m_signer.credential.empty() ? m_signer.name : m_signer.name + ", " + m_signer.credential);
}

std::optional<session::SheetPlace> HandOver::placeNow() const
{
    const record::SheetRecord* record = m_desk.sheet(now().id());
    return record == nullptr
               ? std::nullopt
               : std::optional(session::SheetPlace{m_desk.session().person(), now().marks().sheet, *record});
}

QByteArray HandOver::request() const
{
    const std::optional<session::SheetPlace> place = placeNow();
    if (!place) {
        return {};
    }
    const auto request = session::signingRequest(m_desk.session(), *place);
    if (!request) {
        return {};
    }
    const auto code = journal::encode(request.value());
    return code ? words::toArray(code.value()) : QByteArray();
}

void HandOver::go(Step to)
{
    if (step() == Signed || step() == Declined || to == Signed || to == Declined) {
        return;
    }
    setError({});
    if (to == OwnPhone) {
        goToFirstSheet(); // there each is marked and signed on its own
    }
    setStep(to);
    Q_EMIT changed();
}

void HandOver::hold(keys::SigningCard card)
{
    setError({});
    const session::Directory directory(m_desk.session());
    if (card.programStream != m_desk.session().programStream()) {
        setError(tr("This card belongs to another program."));
    } else {
        m_newCard.clear();
        const session::Preceptor* known = directory.ofCard(card.card);
        m_stranger = known == nullptr;
        m_known = known == nullptr ? std::nullopt : std::optional(*known);
        m_signer = known == nullptr ? session::SignerName{} : session::SignerName{known->name, known->credential};
        m_card.emplace(std::move(card));
    }
    Q_EMIT changed();
}

void HandOver::takeCard(const QByteArray& code)
{
    base::Result<keys::SigningCard> card = keys::SigningCard::fromCode(words::toBytes(code));
    if (!card) {
        fail(words::why(card.error()));
        return;
    }
    hold(std::move(card).value());
}

void HandOver::typeCard(int person, const QString& code)
{
    if (person < 0 || person >= static_cast<int>(m_people.size())) {
        fail(tr("Choose your name first."));
        return;
    }
    base::Result<keys::Secret> secret = keys::codeFromText(keys::CodeSort::Card, code.trimmed().toStdString());
    if (!secret) {
        fail(words::why(secret.error()));
        return;
    }
    const std::optional<session::SigningKeyOf> key = session::newestCard(m_people[static_cast<std::size_t>(person)]);
    keys::SigningCard card;
    card.programStream = m_desk.session().programStream();
    card.card = key->card;
    card.epoch = key->epoch;
    card.secret = std::move(secret).value();
    hold(std::move(card));
}

void HandOver::introduce(const QString& name, const QString& credential)
{
    m_signer = signerFrom(name, credential);
    Q_EMIT changed();
}

void HandOver::makeCard(const QString& name, const QString& credential)
{
    session::SignerName signer = signerFrom(name, credential);
    if (signer.name.empty()) {
        fail(tr("Whose card is it? Your name is missing."));
        return;
    }
    keys::SigningCard card = session::newCard(m_desk.session());
    setError({});
    m_signer = std::move(signer);
    m_known.reset();
    m_stranger = false;
    m_newCard = words::toArray(card.code().view());
    m_card.emplace(std::move(card));
    Q_EMIT changed();
}

void HandOver::dropCard()
{
    m_card.reset();
    m_newCard.clear();
    m_signer = {};
    m_known.reset();
    m_stranger = false;
    setError({});
    Q_EMIT changed();
}

void HandOver::after(const std::function<void()>& work)
{
    if (m_busy) {
        return;
    }
    m_busy = true;
    setError({});
    Q_EMIT changed();
    parts::afterFrame(this, [this, work] {
        work();
        m_busy = false;
        Q_EMIT changed();
    });
}

void HandOver::finish(QString problem, Step to)
{
    setError(std::move(problem));
    if (error().isEmpty()) {
        setStep(to);
        m_card.reset();
        m_newCard.clear();
        setError(m_desk.keep(noteName, {}));
        if (to == Signed) {
            Q_EMIT signedNow();
        }
    }
    Q_EMIT changed();
}

void HandOver::sign(const QString& pin)
{
    if (!m_card || step() != Signing) {
        return;
    }
    if (hasNewCard()) {
        if (const base::Result<bool> strong = keys::checkPin(pin.toStdString()); !strong) {
            fail(words::why(strong.error()));
            return;
        }
    }
    if (m_signer.name.empty()) {
        fail(tr("Your name is missing: this phone's list does not have this card."));
        return;
    }
    after([this, pin] {
        session::Session& session = m_desk.session();
        const auto unlocked = session::unlockCard(session, *m_card, pin.toStdString(), sheets().front().marks().sheet);
        if (!unlocked) {
            finish(words::why(unlocked.error()), Signing);
            m_desk.refresh();
            return;
        }
        std::vector<session::SheetMarks> marked;
        for (const MarkedSheet& sheet : sheets()) {
            marked.push_back(sheet.marks());
        }
        const auto written = session::signWithCard(session, unlocked.value(), m_signer, marked);
        finish(words::problem(written), Signed);
        m_desk.refresh();
    });
}

void HandOver::signDrawn(const QString& name, const QString& credential, const QByteArray& strokes)
{
    const session::SignerName signer = signerFrom(name, credential);
    if (signer.name.empty() || strokes.isEmpty()) {
        fail(signer.name.empty() ? tr("Write your name first.") : tr("Draw your signature first."));
        return;
    }
    QString problem;
    for (const MarkedSheet& sheet : sheets()) {
        const auto written =
            session::signWeakly(m_desk.session(), signer, sheet.marks(), words::toBytes(strokes), std::string());
        if (!written) {
            problem = words::why(written.error());
            break;
        }
    }
    m_signer = signer;
    finish(problem, Signed);
    m_desk.refresh();
}

void HandOver::takeAnswer(const QByteArray& code)
{
    const std::optional<session::SheetPlace> place = placeNow();
    if (!place) {
        return;
    }
    const keys::Bytes answer = words::toBytes(code);
    const auto checked = session::checkAnswer(m_desk.session(), *place, answer);
    if (checked && !checked.value()) {
        fail(whyNoAnswer(checked.value().reason()));
        return;
    }
    const auto taken = session::takeAnswer(m_desk.session(), *place, answer);
    if (!taken) {
        fail(words::why(taken.error()));
        return;
    }
    const journal::Statement said = journal::statementOf(answer).value();
    m_signer = {said.signer.name, said.signer.credential};
    m_awaitsVouch = m_desk.session().authority().strengthOf(said) == sheet::Strength::None;
    if (total() > 1) {
        dropSheet();
        setError(keepBegun());
    } else {
        finish({}, Signed);
    }
    m_desk.refresh();
    Q_EMIT changed();
}

void HandOver::decline(const QString& reason)
{
    const std::string why = words::line(reason, mostReason);
    if (why.empty()) {
        fail(tr("Say why you do not sign; the student sees it."));
        return;
    }
    std::vector<journal::Payload> payloads;
    for (const MarkedSheet& sheet : sheets()) {
        payloads.emplace_back(journal::Declined{sheet.marks().sheet, why});
    }
    finish(m_desk.write(payloads), Declined);
}

QString HandOver::end(journal::HandOverCause cause)
{
    if (isUnfinished()) {
        std::vector<journal::Payload> payloads;
        for (const MarkedSheet& sheet : sheets()) {
            payloads.emplace_back(
                journal::HandOverEnded{sheet.marks().sheet, m_began, m_desk.session().now(), 0, cause});
        }
        if (const QString failed = m_desk.write(payloads); !failed.isEmpty()) {
            return failed;
        }
    }
    return m_desk.keep(noteName, {});
}

} // namespace peelpack::preceptor
