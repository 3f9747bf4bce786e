#include "qml/preceptor/signing_phone.h"

#include "qml/parts/after_frame.h"
#include "qml/preceptor/code_words.h"
#include "qml/words/bridge.h"
#include "sync/merge/record_content.h"

namespace peelpack::preceptor {
namespace {

constexpr qsizetype mostName = 80;
constexpr qsizetype mostCredential = 40;
constexpr qsizetype keyGroup = 4;

MarkedSheet markedAs(const journal::Statement& statement)
{
    MarkedSheet sheet(journal::SigningRequest{.program = statement.program,
                                              .student = statement.student,
                                              .studentName = {},
                                              .operation = statement.operation,
                                              .sheet = statement.sheet,
                                              .procedures = statement.procedures,
                                              .head = statement.head,
                                              .locale = statement.locale,
                                              .wording = statement.wording,
                                              .meaning = statement.meaning});
    for (const journal::SkillMark& mark : statement.marks) {
        sheet.reason(static_cast<int>(mark.skill), words::fromUtf8(mark.reason));
        sheet.mark(static_cast<int>(mark.skill), static_cast<int>(mark.mark));
    }
    sheet.setFeedback(words::fromUtf8(statement.feedback));
    return sheet;
}

} // namespace

SigningPhone::SigningPhone(std::unique_ptr<session::PreceptorVault> vault, CheckSecret check, QObject* parent)
    : QObject(parent), m_vault(std::move(vault)), m_check(std::move(check)),
      m_place(m_vault->owner().name.empty() ? Naming : AtHome)
{
    listSigned();
}

SigningPhone::~SigningPhone() = default;

QString SigningPhone::name() const
{
    return words::fromUtf8(m_vault->owner().name);
}

QString SigningPhone::credential() const
{
    return words::fromUtf8(m_vault->owner().credential);
}

QString SigningPhone::who() const
{
    return credential().isEmpty() ? name() : name() + QStringLiteral(", ") + credential();
}

QString SigningPhone::keyText() const
{
    const QString digits = QString::fromLatin1(keyCode());
    QStringList groups;
    for (qsizetype at = 0; at < digits.size(); at += keyGroup) {
        groups.append(digits.mid(at, keyGroup));
    }
    return groups.join(QLatin1Char(' '));
}

QByteArray SigningPhone::keyCode() const
{
    return QByteArray::fromStdString(keys::hex(m_vault->key().view()));
}

base::Date SigningPhone::today() const
{
    return merge::timeOf(m_vault->now()).day();
}

void SigningPhone::listSigned()
{
    std::vector<SignedRow> rows;
    const auto& all = m_vault->signedHere();
    for (auto kept = all.rbegin(); kept != all.rend(); ++kept) {
        const journal::Statement& statement = kept->statement;
        QStringList detail{words::day(statement.head.date, today()), words::fromUtf8(kept->student)};
        if (!statement.head.site.empty()) {
            detail.append(words::fromUtf8(statement.head.site));
        }
        const QString when = words::moment({statement.time.seconds, statement.time.zone}, today());
        const int marked = static_cast<int>(statement.marks.size());
        rows.push_back({words::listed(statement.procedures), detail.join(QStringLiteral(" · ")),
                        statement.head.canceled
                            ? tr("Signed %1: canceled before incision").arg(when)
                            : tr("Signed %1, %2").arg(when, tr("%n skill(s) marked", nullptr, marked))});
    }
    m_rows.put(std::move(rows));
}

const session::SignedHere* SigningPhone::shown() const
{
    const auto& all = m_vault->signedHere();
    return m_shown < 0 || m_shown >= static_cast<int>(all.size())
               ? nullptr
               : &all[all.size() - 1 - static_cast<std::size_t>(m_shown)];
}

QString SigningPhone::shownTitle() const
{
    return shown() == nullptr ? QString() : words::listed(shown()->statement.procedures);
}

QStringList SigningPhone::shownLines() const
{
    return shown() == nullptr ? QStringList()
                              : markedAs(shown()->statement).readBack(today(), words::fromUtf8(shown()->student));
}

QByteArray SigningPhone::answer() const
{
    return shown() == nullptr ? QByteArray() : words::toArray(shown()->answer);
}

void SigningPhone::introduce(const QString& name, const QString& credential)
{
    const session::SignerName owner{words::line(name, mostName), words::line(credential, mostCredential)};
    if (owner.name.empty()) {
        m_error = tr("Write your name as it stands under what you sign.");
    } else {
        m_error = words::problem(m_vault->setOwner(owner));
    }
    if (m_error.isEmpty() && m_place == Naming) {
        m_place = AtHome;
    }
    Q_EMIT changed();
}

void SigningPhone::read(const QByteArray& code)
{
    if (m_place != AtHome) {
        return;
    }
    auto request = journal::decodeSigningRequest(words::toBytes(code));
    if (!request) {
        m_error = whyNoRequest(request.reason());
        Q_EMIT changed();
        return;
    }
    std::optional<journal::Time> before;
    for (const session::SignedHere& kept : m_vault->signedHere()) {
        if (kept.statement.sheet == request.value().sheet && kept.statement.student == request.value().student) {
            before = kept.statement.time;
        }
    }
    m_error.clear();
    m_sheet = std::make_unique<OwnSheet>(std::move(request).value(), today(), before);
    Q_EMIT sheetChanged();
    m_place = AtSheet;
    Q_EMIT changed();
}

void SigningPhone::sign(const QString& secret)
{
    if (m_busy || m_place != AtSheet || m_sheet->step() != Sitting::Signing) {
        return;
    }
    m_busy = true;
    m_sheet->tell({});
    Q_EMIT changed();
    parts::afterFrame(this, [this, secret] {
        m_busy = false;
        QString problem = m_check(secret);
        if (problem.isEmpty()) {
            const auto done = m_vault->sign(m_sheet->request(), m_vault->owner(), m_sheet->marked());
            problem = words::problem(done);
        }
        if (!problem.isEmpty()) {
            m_sheet->tell(problem);
            Q_EMIT changed();
            return;
        }
        listSigned();
        show(0);
    });
}

void SigningPhone::show(int row)
{
    m_shown = row;
    m_place = AtAnswer;
    Q_EMIT changed();
    letSheetGo();
}

void SigningPhone::goHome()
{
    m_error.clear();
    if (m_place != Naming) {
        m_place = AtHome;
    }
    Q_EMIT changed();
    letSheetGo();
}

void SigningPhone::letSheetGo()
{
    if (m_sheet) {
        m_sheet.release()->deleteLater();
    }
}

void SigningPhone::speakAnew()
{
    listSigned();
    Q_EMIT changed();
}

} // namespace peelpack::preceptor
