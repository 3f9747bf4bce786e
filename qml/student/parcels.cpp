#include "qml/student/parcels.h"

#include "platform/session/exchange.h"
#include "platform/session/intake.h"
#include "qml/words/bridge.h"
#include "qml/words/sentences.h"
#include "qml/words/words.h"
#include "sync/merge/record_content.h"

#include <algorithm>

namespace peelpack::student {

Parcels::Parcels(Desk& desk, QObject* parent) : QObject(parent), m_desk(desk)
{
    connect(&desk, &Desk::changed, this, &Parcels::refresh);
    connect(&m_reading, &light::CodeReading::came, this,
            [this](const QByteArray& parcel) { takeIn(tr("the codes"), parcel); });
    refresh();
}

void Parcels::refresh()
{
    session::Session& session = m_desk.session();
    const std::size_t only = session::onlyHere(session);
    m_onlyHere =
        only == 0 ? QString()
                  : tr("%n change(s) are only on this phone, and would be lost with it. Send them to your instructor.",
                       nullptr, static_cast<int>(only));
    m_with.clear();
    std::optional<record::Time> latest;
    for (const trust::ReceiptRecord& receipt : session.authority().receipts()) {
        const trust::Holder* holder = session.authority().holder(receipt.covered.feed.device);
        const bool mine =
            receipt.covered.feed.stream == session.person() && holder != nullptr && holder->person == session.person();
        if (mine && (!latest || receipt.time.seconds > latest->seconds)) {
            latest = merge::timeOf(receipt.time);
        }
    }
    if (latest) {
        m_with = tr("With your instructor up to %1.").arg(words::moment(*latest, m_desk.today()));
    }
    Q_EMIT changed();
}

QString Parcels::suggestedName() const
{
    QString name;
    for (const QChar letter : m_desk.name().toLower()) {
        name += letter.isLetterOrNumber() ? letter : QLatin1Char('-');
    }
    return name + QLatin1Char('-') + words::fromUtf8(m_desk.today().iso()) + QStringLiteral(".peelparcel");
}

QByteArray Parcels::pack()
{
    m_error.clear();
    const base::Result<session::Recipients> to = session::toStaff(m_desk.session());
    if (!to) {
        m_error = words::why(to.error());
        Q_EMIT changed();
        return {};
    }
    const base::Result<std::vector<keys::Bytes>> made = session::makeParcels(m_desk.session(), to.value());
    if (!made || made.value().size() != 1) {
        m_error = made ? tr("Your record is too large for one parcel.") : words::why(made.error());
        Q_EMIT changed();
        return {};
    }
    return words::toArray(made.value().front());
}

bool Parcels::packAsCodes()
{
    const QByteArray parcel = pack();
    if (m_error.isEmpty() && !m_codes.lay(words::toBytes(parcel))) {
        m_error = tr("Your record is too large for codes by now: send it as a file.");
        Q_EMIT changed();
    }
    return m_error.isEmpty();
}

void Parcels::takeIn(const QString& name, const QByteArray& bytes)
{
    m_report.clear();
    m_error.clear();
    const auto taken = session::takeIn(m_desk.session(), {{name.toStdString(), words::toBytes(bytes)}});
    if (!taken) {
        m_error = words::why(taken.error());
        Q_EMIT changed();
        return;
    }
    const session::IntakeReport& report = taken.value();
    for (const session::FileOutcome& file : report.files) {
        if (!file.used) {
            m_report.append(tr("Cannot use %1: %2").arg(name, words::said(file.whyNot)));
        } else if (file.waits) {
            m_report.append(tr(
                "The file is kept: something that came before it is missing. It is tried again with the next file."));
        }
        const auto refused = std::count_if(file.findings.begin(), file.findings.end(), [](const auto& finding) {
            return finding.verdict == journal::Verdict::Refused;
        });
        if (refused > 0) {
            m_report.append(tr("%n item(s) cannot be used.", nullptr, static_cast<int>(refused)));
        }
    }
    if (report.taken > 0) {
        m_report.append(tr("%n new item(s) taken in.", nullptr, static_cast<int>(report.taken)));
    } else if (report.files.size() == 1 && report.files.front().used && !report.files.front().waits) {
        m_report.append(tr("Nothing new: you have it already."));
    }
    if (report.ownRecordSplit) {
        m_report.append(
            tr("Two versions of this phone's record exist, often after a restore. This phone signs nothing more: ask "
               "your instructor for a new invitation and join again. What you have stays."));
    }
    m_desk.refresh();
    Q_EMIT changed();
}

} // namespace peelpack::student
