#include "qml/preceptor/hand_over.h"

#include "platform/session/cards.h"
#include "platform/session/program_rules.h"
#include "qml/parts/after_frame.h"
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
    : QObject(parent), m_desk(desk), m_began(began)
{
    for (const QString& id : sheets) {
        if (const record::SheetRecord* record = desk.sheet(id)) {
            m_sheets.emplace_back(*record);
        }
    }
    const session::Directory directory(desk.session());
    const std::string site = m_sheets.empty() ? std::string() : m_sheets.front().marks().head.site;
    for (const session::Preceptor& preceptor : directory.preceptors()) {
        if (session::newestCard(preceptor)) {
            m_people.push_back(preceptor);
        }
    }
    std::stable_partition(m_people.begin(), m_people.end(),
                          [&](const session::Preceptor& preceptor) { return preceptor.site == site; });
    const QJsonObject note{{"sheets", QJsonArray::fromStringList(sheets)},
                           {"seconds", QString::number(began.seconds)},
                           {"zone", began.zone}};
    m_error = desk.keep(noteName, QJsonDocument(note).toJson(QJsonDocument::Compact));
    showMarks();
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

void HandOver::setCanceled(bool canceled)
{
    now().setCanceled(canceled);
    Q_EMIT changed();
}

void HandOver::showMarks()
{
    if (!m_sheets.empty()) {
        m_rows.put(now().rows());
        Q_EMIT changed();
    }
}

void HandOver::setFeedback(const QString& text)
{
    now().setFeedback(text);
    Q_EMIT changed();
}

QStringList HandOver::readBack() const
{
    QStringList lines;
    for (const MarkedSheet& sheet : m_sheets) {
        lines += sheet.readBack(m_desk.today(), student());
    }
    return lines;
}

QString HandOver::policy() const
{
    const std::optional<journal::Policy> policy = session::policyInForce(m_desk.session());
    QStringList counted;
    QStringList confirmed;
    for (const sheet::Strength strength : {sheet::Strength::OwnPhone, sheet::Strength::Card, sheet::Strength::CardNew,
                                           sheet::Strength::Drawn, sheet::Strength::Paper}) {
        const session::Acceptance how = session::acceptance(policy, strength);
        if (how != session::Acceptance::Never) {
            (how == session::Acceptance::OnceConfirmed ? confirmed : counted).append(words::of(strength));
        }
    }
    QString text = tr("What counts here: %1.").arg(words::listed(counted));
    if (!confirmed.isEmpty()) {
        text += QLatin1Char(' ') +
                tr("Only once an instructor has confirmed it with you: %1.").arg(words::listed(confirmed));
    }
    return text;
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

void HandOver::correct(int procedure, const QString& text)
{
    now().correct(procedure, text);
    Q_EMIT changed();
}

void HandOver::mark(int skill, int mark)
{
    now().mark(skill, mark);
    showMarks();
}

void HandOver::reason(int skill, const QString& text)
{
    now().reason(skill, text);
    showMarks();
}

void HandOver::markFirstScrubYes()
{
    now().markFirstScrubYes();
    showMarks();
}

void HandOver::next()
{
    m_error.clear();
    const bool sheetIsDone = (m_step == Performed && now().canceled()) || (m_step == Marking && missing().isEmpty());
    if (sheetIsDone && m_place + 1 < m_sheets.size()) {
        ++m_place;
        m_step = Performed;
    } else if (sheetIsDone) {
        m_step = ReadingBack;
    } else if (m_step == Performed) {
        m_step = Marking;
    } else if (m_step == ReadingBack) {
        m_step = Signing;
    }
    showMarks();
}

void HandOver::back()
{
    m_error.clear();
    switch (m_step) {
    case Marking:
        m_step = Performed;
        break;
    case Performed:
        if (m_place > 0) {
            --m_place;
            m_step = now().canceled() ? Performed : Marking;
        }
        break;
    case ReadingBack:
        m_step = now().canceled() ? Performed : Marking;
        break;
    case Signing:
    case Drawing:
        m_step = m_step == Drawing ? Signing : ReadingBack;
        break;
    case OwnPhone:
    case Declining:
        m_step = Performed;
        break;
    case Signed:
    case Declined:
        break;
    }
    showMarks();
}

void HandOver::go(Step step)
{
    if (m_step == Signed || m_step == Declined || step == Signed || step == Declined) {
        return;
    }
    m_error.clear();
    m_step = step;
    Q_EMIT changed();
}

void HandOver::hold(keys::SigningCard card)
{
    m_error.clear();
    const session::Directory directory(m_desk.session());
    if (card.programStream != m_desk.session().programStream()) {
        m_error = tr("This card belongs to another program.");
    } else {
        m_newCard.clear();
        const session::Preceptor* known = directory.ofCard(card.card);
        m_stranger = known == nullptr;
        m_signer = known == nullptr ? session::SignerName{} : session::SignerName{known->name, known->credential};
        m_card.emplace(std::move(card));
    }
    Q_EMIT changed();
}

void HandOver::takeCard(const QByteArray& code)
{
    base::Result<keys::SigningCard> card = keys::SigningCard::fromCode(words::toBytes(code));
    if (!card) {
        m_error = words::why(card.error());
        Q_EMIT changed();
        return;
    }
    hold(std::move(card).value());
}

void HandOver::typeCard(int person, const QString& code)
{
    if (person < 0 || person >= static_cast<int>(m_people.size())) {
        m_error = tr("Choose your name first.");
        Q_EMIT changed();
        return;
    }
    base::Result<keys::Secret> secret = keys::codeFromText(keys::CodeSort::Card, code.trimmed().toStdString());
    if (!secret) {
        m_error = words::why(secret.error());
        Q_EMIT changed();
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
        m_error = tr("Whose card is it? Your name is missing.");
        Q_EMIT changed();
        return;
    }
    keys::SigningCard card = session::newCard(m_desk.session());
    m_error.clear();
    m_signer = std::move(signer);
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
    m_stranger = false;
    m_error.clear();
    Q_EMIT changed();
}

void HandOver::after(const std::function<void()>& work)
{
    if (m_busy) {
        return;
    }
    m_busy = true;
    m_error.clear();
    Q_EMIT changed();
    parts::afterFrame(this, [this, work] {
        work();
        m_busy = false;
        Q_EMIT changed();
    });
}

void HandOver::finish(QString error, Step step)
{
    m_error = std::move(error);
    if (m_error.isEmpty()) {
        m_step = step;
        m_card.reset();
        m_newCard.clear();
        m_error = m_desk.keep(noteName, {});
        if (step == Signed) {
            Q_EMIT signedNow();
        }
    }
    Q_EMIT changed();
}

void HandOver::sign(const QString& pin)
{
    if (!m_card || m_step != Signing) {
        return;
    }
    if (hasNewCard()) {
        if (const base::Result<bool> strong = keys::checkPin(pin.toStdString()); !strong) {
            m_error = words::why(strong.error());
            Q_EMIT changed();
            return;
        }
    }
    if (m_signer.name.empty()) {
        m_error = tr("Your name is missing: this phone's list does not have this card.");
        Q_EMIT changed();
        return;
    }
    after([this, pin] {
        session::Session& session = m_desk.session();
        const auto unlocked = session::unlockCard(session, *m_card, pin.toStdString(), m_sheets.front().marks().sheet);
        if (!unlocked) {
            finish(words::why(unlocked.error()), Signing);
            m_desk.refresh();
            return;
        }
        std::vector<session::SheetMarks> sheets;
        for (const MarkedSheet& sheet : m_sheets) {
            sheets.push_back(sheet.marks());
        }
        const auto written = session::signWithCard(session, unlocked.value(), m_signer, sheets);
        finish(words::problem(written), Signed);
        m_desk.refresh();
    });
}

void HandOver::signDrawn(const QString& name, const QString& credential, const QByteArray& strokes)
{
    const session::SignerName signer = signerFrom(name, credential);
    if (signer.name.empty() || strokes.isEmpty()) {
        m_error = signer.name.empty() ? tr("Write your name first.") : tr("Draw your signature first.");
        Q_EMIT changed();
        return;
    }
    QString error;
    for (const MarkedSheet& sheet : m_sheets) {
        const auto written =
            session::signWeakly(m_desk.session(), signer, sheet.marks(), words::toBytes(strokes), std::string());
        if (!written) {
            error = words::why(written.error());
            break;
        }
    }
    m_signer = signer;
    finish(error, Signed);
    m_desk.refresh();
}

void HandOver::takeAnswer(const QByteArray& code)
{
    const std::optional<session::SheetPlace> place = placeNow();
    if (!place) {
        return;
    }
    const auto taken = session::takeAnswer(m_desk.session(), *place, words::toBytes(code));
    if (!taken) {
        m_error = words::why(taken.error());
    } else if (m_place + 1 < m_sheets.size()) {
        ++m_place;
        m_error.clear();
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
        m_error = tr("Say why you do not sign; the student sees it.");
        Q_EMIT changed();
        return;
    }
    std::vector<journal::Payload> payloads;
    for (const MarkedSheet& sheet : m_sheets) {
        payloads.emplace_back(journal::Declined{sheet.marks().sheet, why});
    }
    finish(m_desk.write(payloads), Declined);
}

QString HandOver::end(journal::HandOverCause cause)
{
    if (m_step != Signed && m_step != Declined) {
        std::vector<journal::Payload> payloads;
        for (const MarkedSheet& sheet : m_sheets) {
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
