#include "qml/preceptor/hand_over.h"

#include "core/sheet/identifiers.h"
#include "platform/files/text_file.h"
#include "qml/words/words.h"
#include "sync/keys/code.h"
#include "sync/keys/password.h"
#include "sync/trust/policy.h"

#include <QJsonArray>
#include <QJsonDocument>
#include <QJsonObject>
#include <QTimer>

#include <algorithm>

namespace peelpack::preceptor {
namespace {

constexpr const char* noteName = "app.handover";
constexpr qsizetype mostReason = 200;
constexpr qsizetype mostFeedback = 500;
constexpr int frameMs = 40; ///< long enough for one frame to say that something goes on

std::string utf8(const QString& text, qsizetype most)
{
    return files::normalized(text.simplified().left(most).toStdString());
}

QString helpFor(sheet::Skill skill)
{
    switch (skill) {
    case sheet::Skill::Verify:
        return HandOver::tr("against the preference card");
    case sheet::Skill::Counts:
        return HandOver::tr("with the circulator");
    case sheet::Skill::Technique:
        return HandOver::tr("a break that was seen and mended is Yes");
    default:
        return {};
    }
}

keys::Bytes bytesOf(const QByteArray& data)
{
    return {data.begin(), data.end()};
}

QByteArray arrayOf(keys::ByteView data)
{
    return {reinterpret_cast<const char*>(data.data()), static_cast<qsizetype>(data.size())};
}

} // namespace

HandOver::HandOver(student::Desk& desk, const QStringList& sheets, journal::Time began, QObject* parent)
    : QObject(parent), m_desk(desk), m_began(began)
{
    for (const QString& id : sheets) {
        const record::SheetRecord* record = desk.sheet(id);
        if (record == nullptr) {
            continue;
        }
        Paper paper;
        paper.id = id;
        paper.marks.sheet = session::idOf(record->id);
        const record::Content& content = record->content;
        paper.marks.procedures = content.procedures;
        paper.marks.head = session::headOf(content.head);
        paper.before = content.marks.marks;
        paper.reasons = QStringList(static_cast<qsizetype>(sheet::skillCount));
        m_sheets.push_back(std::move(paper));
    }
    const session::Directory directory(desk.session());
    const std::string site = m_sheets.empty() ? std::string() : m_sheets.front().marks.head.site;
    for (const session::Preceptor& preceptor : directory.preceptors()) {
        const bool hasCard = std::any_of(preceptor.keys.begin(), preceptor.keys.end(), [](const auto& key) {
            return key.kind == journal::KeyKind::Card && !key.revoked;
        });
        if (hasCard) {
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

QString HandOver::title() const
{
    return words::listed(procedures());
}

QString HandOver::head() const
{
    const journal::Head& head = now().head;
    QStringList parts{words::day(head.date, m_desk.today())};
    for (const std::string* part : {&head.surgeon, &head.site, &head.room}) {
        if (!part->empty()) {
            parts.append(words::fromUtf8(*part));
        }
    }
    const QString start = words::minute(head.start);
    if (!start.isEmpty()) {
        const QString end = words::minute(head.end);
        parts.append(end.isEmpty() ? start : tr("%1 to %2").arg(start, end));
    }
    return parts.join(QStringLiteral(" · "));
}

QStringList HandOver::procedures() const
{
    QStringList list;
    for (const std::string& procedure : now().procedures) {
        list.append(words::fromUtf8(procedure));
    }
    return list;
}

void HandOver::setCanceled(bool canceled)
{
    now().head.canceled = canceled;
    Q_EMIT changed();
}

sheet::Mark HandOver::markOf(sheet::Skill skill) const
{
    const auto& marks = now().marks;
    const auto found = std::find_if(marks.begin(), marks.end(), [&](const auto& mark) { return mark.skill == skill; });
    return found == marks.end() ? sheet::Mark::Unmarked : found->mark;
}

void HandOver::showMarks()
{
    if (m_sheets.empty()) {
        return;
    }
    std::vector<MarkingRow> rows;
    for (const sheet::Skill skill : sheet::allSkills) {
        MarkingRow row;
        row.skill = static_cast<int>(skill);
        row.label = words::of(skill);
        row.help = helpFor(skill);
        row.firstScrub = sheet::isFirstScrubSkill(skill);
        row.mark = static_cast<int>(markOf(skill));
        row.reason = paper().reasons[row.skill];
        row.asksWhy = row.mark == static_cast<int>(sheet::Mark::NotApplicable) && row.firstScrub &&
                      row.reason.simplified().isEmpty();
        const sheet::Mark before = paper().before.of(skill);
        if (before != sheet::Mark::Unmarked) {
            row.before = tr("marked already: %1").arg(words::of(before));
        }
        rows.push_back(row);
    }
    m_rows.put(std::move(rows));
    Q_EMIT changed();
}

int HandOver::open() const
{
    return static_cast<int>(sheet::skillCount - now().marks.size());
}

QString HandOver::missing() const
{
    if (now().head.canceled) {
        return {};
    }
    if (now().marks.empty()) {
        return tr("Mark what you saw.");
    }
    for (const MarkingRow& row : m_rows.rows()) {
        if (row.asksWhy) {
            return tr("Say why \"%1\" is N/A.").arg(row.label);
        }
    }
    return {};
}

QString HandOver::feedback() const
{
    return words::fromUtf8(now().feedback);
}

void HandOver::setFeedback(const QString& text)
{
    now().feedback = utf8(text, mostFeedback);
    Q_EMIT changed();
}

QString HandOver::feedbackWarning() const
{
    const auto hits = sheet::findIdentifiers(now().feedback);
    return hits.empty() ? QString()
                        : tr("This looks like %1. No patient names, numbers, ages or birth dates belong here.")
                              .arg(words::fromUtf8(sheet::inWords(hits.front().kind)));
}

QStringList HandOver::readBack() const
{
    QStringList lines;
    for (const Paper& paper : m_sheets) {
        QStringList procedures;
        for (const std::string& procedure : paper.marks.procedures) {
            procedures.append(words::fromUtf8(procedure));
        }
        lines.append(tr("%1: %2 for %3")
                         .arg(words::day(paper.marks.head.date, m_desk.today()), words::listed(procedures), student()));
        if (paper.marks.head.canceled) {
            lines.append(tr("The case was canceled before incision."));
        }
        QStringList byMark[4];
        for (const sheet::Skill skill : sheet::allSkills) {
            sheet::Mark mark = sheet::Mark::Unmarked;
            std::string why;
            for (const journal::SkillMark& made : paper.marks.marks) {
                if (made.skill == skill) {
                    mark = made.mark;
                    why = made.reason;
                }
            }
            QString label = words::of(skill);
            if (!why.empty()) {
                label += QStringLiteral(" (") + words::fromUtf8(why) + QStringLiteral(")");
            }
            byMark[static_cast<std::size_t>(mark)].append(label);
        }
        if (!paper.marks.head.canceled || !paper.marks.marks.empty()) {
            const std::pair<sheet::Mark, QString> groups[]{{sheet::Mark::Yes, tr("Yes: %1")},
                                                           {sheet::Mark::No, tr("No: %1")},
                                                           {sheet::Mark::NotApplicable, tr("N/A: %1")},
                                                           {sheet::Mark::Unmarked, tr("You did not see: %1")}};
            for (const auto& [mark, form] : groups) {
                const QStringList& labels = byMark[static_cast<std::size_t>(mark)];
                if (!labels.isEmpty()) {
                    lines.append(form.arg(words::listed(labels)));
                }
            }
        }
        if (!paper.marks.feedback.empty()) {
            lines.append(tr("Feedback: %1").arg(words::fromUtf8(paper.marks.feedback)));
        }
    }
    return lines;
}

QString HandOver::policy() const
{
    const auto inForce = trust::policyInForce(m_desk.session().authority(), m_desk.session().ledger().feeds());
    QStringList counted;
    QStringList confirmed;
    for (const sheet::Strength strength : {sheet::Strength::OwnPhone, sheet::Strength::Card, sheet::Strength::CardNew,
                                           sheet::Strength::Drawn, sheet::Strength::Paper}) {
        const bool usual = strength == sheet::Strength::OwnPhone || strength == sheet::Strength::Card;
        if (inForce ? trust::counts(inForce->policy, strength) : usual) {
            const bool weak = strength == sheet::Strength::Drawn || strength == sheet::Strength::Paper;
            (weak ? confirmed : counted).append(words::of(strength));
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

QByteArray HandOver::request() const
{
    const record::SheetRecord* record = m_desk.sheet(paper().id);
    if (record == nullptr) {
        return {};
    }
    const session::Session& session = m_desk.session();
    const auto request = session::signingRequest(session, {session.person(), session::idOf(record->id), *record});
    if (!request) {
        return {};
    }
    const auto code = journal::encode(request.value());
    return code ? arrayOf(code.value()) : QByteArray();
}

void HandOver::correct(int procedure, const QString& text)
{
    auto& procedures = now().procedures;
    const std::string line = utf8(text, 120);
    if (procedure >= 0 && procedure < static_cast<int>(procedures.size()) && !line.empty()) {
        procedures[static_cast<std::size_t>(procedure)] = line;
        Q_EMIT changed();
    }
}

void HandOver::setMark(sheet::Skill skill, sheet::Mark mark)
{
    auto& marks = now().marks;
    marks.erase(std::remove_if(marks.begin(), marks.end(), [&](const auto& old) { return old.skill == skill; }),
                marks.end());
    if (mark != sheet::Mark::Unmarked) {
        const std::string why = mark == sheet::Mark::NotApplicable
                                    ? utf8(paper().reasons[static_cast<int>(skill)], mostReason)
                                    : std::string();
        const auto place = std::find_if(marks.begin(), marks.end(), [&](const auto& old) { return old.skill > skill; });
        marks.insert(place, {skill, mark, why});
    }
}

void HandOver::mark(int skill, int mark)
{
    if (skill >= 0 && skill < static_cast<int>(sheet::skillCount) && mark >= 0 && mark <= 3) {
        setMark(static_cast<sheet::Skill>(skill), static_cast<sheet::Mark>(mark));
        showMarks();
    }
}

void HandOver::reason(int skill, const QString& text)
{
    if (skill >= 0 && skill < static_cast<int>(sheet::skillCount)) {
        m_sheets[m_place].reasons[skill] = text.left(mostReason);
        setMark(static_cast<sheet::Skill>(skill), markOf(static_cast<sheet::Skill>(skill)));
        showMarks();
    }
}

void HandOver::markFirstScrubYes()
{
    for (const sheet::Skill skill : sheet::allSkills) {
        if (sheet::isFirstScrubSkill(skill)) {
            setMark(skill, sheet::Mark::Yes);
        }
    }
    showMarks();
}

void HandOver::next()
{
    m_error.clear();
    if (m_step == Performed) {
        m_step = now().head.canceled ? (m_place + 1 < m_sheets.size() ? Performed : ReadingBack) : Marking;
        if (now().head.canceled && m_place + 1 < m_sheets.size()) {
            ++m_place;
        }
    } else if (m_step == Marking && missing().isEmpty()) {
        const bool more = m_place + 1 < m_sheets.size();
        m_step = more ? Performed : ReadingBack;
        m_place += more ? 1U : 0U;
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
            m_step = now().head.canceled ? Performed : Marking;
        }
        break;
    case ReadingBack:
        m_step = now().head.canceled ? Performed : Marking;
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
    const keys::Bytes bytes = bytesOf(code);
    base::Result<keys::SigningCard> card = keys::SigningCard::fromCode(bytes);
    if (!card) {
        m_error = words::fromUtf8(card.error().sentence);
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
        m_error = words::fromUtf8(secret.error().sentence);
        Q_EMIT changed();
        return;
    }
    keys::SigningCard card;
    card.programStream = m_desk.session().programStream();
    for (const session::SigningKeyOf& key : m_people[static_cast<std::size_t>(person)].keys) {
        if (key.kind == journal::KeyKind::Card && !key.revoked && key.epoch >= card.epoch) {
            card.card = key.card;
            card.epoch = key.epoch;
        }
    }
    card.secret = std::move(secret).value();
    hold(std::move(card));
}

void HandOver::introduce(const QString& name, const QString& credential)
{
    m_signer = {utf8(name, 80), utf8(credential, 40)};
    Q_EMIT changed();
}

void HandOver::makeCard(const QString& name, const QString& credential)
{
    session::SignerName signer{utf8(name, 80), utf8(credential, 40)};
    if (signer.name.empty()) {
        m_error = tr("Whose card is it? Your name is missing.");
        Q_EMIT changed();
        return;
    }
    keys::SigningCard card;
    card.programStream = m_desk.session().programStream();
    card.card = m_desk.session().random().id();
    card.epoch = 1;
    card.secret = m_desk.session().random().secret(keys::SigningCard::secretBytes);
    m_error.clear();
    m_signer = std::move(signer);
    m_stranger = false;
    m_newCard = arrayOf(card.code().view());
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
    QTimer::singleShot(frameMs, this, [this, work] {
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
            m_error = words::fromUtf8(strong.error().sentence);
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
        const auto unlocked = session::unlockCard(session, *m_card, pin.toStdString(), m_sheets.front().marks.sheet);
        if (!unlocked) {
            finish(words::fromUtf8(unlocked.error().sentence), Signing);
            m_desk.refresh();
            return;
        }
        std::vector<session::SheetMarks> sheets;
        for (const Paper& paper : m_sheets) {
            sheets.push_back(paper.marks);
        }
        const auto written = session::signWithCard(session, unlocked.value(), m_signer, sheets);
        finish(written ? QString() : words::fromUtf8(written.error().sentence), Signed);
        m_desk.refresh();
    });
}

void HandOver::signDrawn(const QString& name, const QString& credential, const QByteArray& strokes)
{
    const session::SignerName signer{utf8(name, 80), utf8(credential, 40)};
    if (signer.name.empty() || strokes.isEmpty()) {
        m_error = signer.name.empty() ? tr("Write your name first.") : tr("Draw your signature first.");
        Q_EMIT changed();
        return;
    }
    QString error;
    for (const Paper& paper : m_sheets) {
        const auto written =
            session::signWeakly(m_desk.session(), signer, paper.marks, bytesOf(strokes), std::string());
        if (!written) {
            error = words::fromUtf8(written.error().sentence);
            break;
        }
    }
    m_signer = signer;
    finish(error, Signed);
    m_desk.refresh();
}

void HandOver::takeAnswer(const QByteArray& code)
{
    const record::SheetRecord* record = m_desk.sheet(paper().id);
    if (record == nullptr) {
        return;
    }
    session::Session& session = m_desk.session();
    const keys::Bytes bytes = bytesOf(code);
    const auto taken = session::takeAnswer(session, {session.person(), session::idOf(record->id), *record}, bytes);
    if (!taken) {
        m_error = words::fromUtf8(taken.error().sentence);
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
    const std::string why = utf8(reason, mostReason);
    if (why.empty()) {
        m_error = tr("Say why you do not sign; the student sees it.");
        Q_EMIT changed();
        return;
    }
    std::vector<journal::Payload> payloads;
    for (const Paper& paper : m_sheets) {
        payloads.emplace_back(journal::Declined{paper.marks.sheet, why});
    }
    finish(m_desk.write(payloads), Declined);
}

QString HandOver::end(journal::HandOverCause cause)
{
    if (m_step != Signed && m_step != Declined) {
        std::vector<journal::Payload> payloads;
        for (const Paper& paper : m_sheets) {
            payloads.emplace_back(journal::HandOverEnded{paper.marks.sheet, m_began, m_desk.session().now(), 0, cause});
        }
        if (const QString failed = m_desk.write(payloads); !failed.isEmpty()) {
            return failed;
        }
    }
    return m_desk.keep(noteName, {});
}

} // namespace peelpack::preceptor
