#include "qml/evidence/aside.h"

#include "platform/session/aside.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"

namespace peelpack::evidence_pages {
namespace {

constexpr qsizetype mostReason = 400; ///< letters

QString whyInWords(journal::Reason reason)
{
    switch (reason) {
    case journal::Reason::PastFork:
        return Aside::tr("It came after the record split.");
    case journal::Reason::Revoked:
        return Aside::tr("It comes from a device that was ended.");
    case journal::Reason::CardRevoked:
        return Aside::tr("It was signed with a card or phone that was ended.");
    case journal::Reason::UnknownSigner:
        return Aside::tr("Nobody has vouched for the preceptor's card or phone.");
    case journal::Reason::NoGrant:
        return Aside::tr("Nobody has admitted this device to the program.");
    case journal::Reason::NewerKind:
        return Aside::tr("It was made by a newer Peelpack.");
    default:
        return words::fromUtf8(journal::sentence(reason));
    }
}

} // namespace

Aside::Aside(instructor::StaffDesk& desk, instructor::PendingActs& pending, QObject* parent)
    : QObject(parent), m_desk(desk), m_pending(pending)
{
}

void Aside::read()
{
    std::vector<AsideRow> rows;
    m_entries.clear();
    const std::vector<session::AsideEntry> entries = session::asideEntries(m_desk.session());
    for (const session::AsideEntry& entry : entries) {
        if (rows.size() == mostRows) {
            break;
        }
        const instructor::Student* student = m_desk.student(entry.student);
        const QString whose = student == nullptr ? Aside::tr("one record") : words::fromUtf8(student->person.name);
        rows.push_back({whose + QStringLiteral(": ") + instructor::entryInWords(entry.payload),
                        words::moment({entry.time.seconds, entry.time.zone}, m_desk.today()), whyInWords(entry.why),
                        entry.admissible});
        m_entries.push_back(entry.entry);
    }
    m_more = static_cast<int>(entries.size() - rows.size());
    m_rows.put(std::move(rows));
    std::vector<instructor::SplitRow> splits;
    for (const auto& [id, feed] : m_desk.session().ledger().feeds()) {
        for (const journal::ForkEvidence& fork : feed.evidence()) {
            splits.push_back(instructor::splitInWords(m_desk, fork));
        }
    }
    m_splits.put(std::move(splits));
    Q_EMIT changed();
}

bool Aside::admit(int row, const QString& reason)
{
    m_done.clear();
    m_error.clear();
    const auto at = static_cast<std::size_t>(row);
    const bool written = m_pending.writeNow();
    if (!written || row < 0 || at >= m_entries.size()) {
        m_error = written ? tr("There is no such entry here.") : m_pending.error();
        Q_EMIT changed();
        return false;
    }
    const auto made = session::admitting(m_desk.session(), m_entries[at], words::line(reason, mostReason));
    m_error = made ? m_desk.write({made.value()}) : words::why(made.error());
    if (m_error.isEmpty()) {
        m_done = tr("Admitted: it counts from now on.");
    }
    read();
    return m_error.isEmpty();
}

} // namespace peelpack::evidence_pages
