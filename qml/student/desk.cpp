#include "qml/student/desk.h"

#include "platform/session/program_catalogue.h"
#include "platform/session/program_rules.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"
#include "sync/merge/record_content.h"

#include <QTimer>

#include <algorithm>

namespace peelpack::student {

std::optional<std::size_t> Desk::Counted::candidateOf(std::string_view sheetName, std::uint32_t row) const
{
    for (std::size_t i = 0; i < tally.candidates.size(); ++i) {
        if (tally.candidates[i].sheet->id == sheetName && tally.candidates[i].row == row) {
            return i;
        }
    }
    return std::nullopt;
}

Desk::Desk(std::unique_ptr<session::Session> session, Shelf& shelf, QObject* parent)
    : QObject(parent), m_session(std::move(session)), m_shelf(shelf)
{
    refresh();
}

std::vector<const record::SheetRecord*> Desk::latestFirst() const
{
    std::vector<const record::SheetRecord*> sheets;
    sheets.reserve(m_record.sheets.size());
    for (const record::SheetRecord& sheet : m_record.sheets) {
        sheets.push_back(&sheet);
    }
    std::stable_sort(sheets.begin(), sheets.end(),
                     [](const auto* a, const auto* b) { return a->content.head.date > b->content.head.date; });
    return sheets;
}

const record::SheetRecord* Desk::sheet(const QString& id) const
{
    const std::string wanted = id.toStdString();
    const auto found = std::find_if(m_record.sheets.begin(), m_record.sheets.end(),
                                    [&](const record::SheetRecord& sheet) { return sheet.id.hex() == wanted; });
    return found == m_record.sheets.end() ? nullptr : &*found;
}

const std::string& Desk::shortName(const record::SheetRecord& sheet) const
{
    return m_names.sheets.at(sheet.id);
}

base::Date Desk::today() const
{
    return merge::timeOf(m_session->now()).day();
}

QString Desk::name() const
{
    if (!m_record.name.empty()) {
        return words::fromUtf8(m_record.name);
    }
    const auto own = m_session->note(session::notes::name);
    return own ? QString::fromUtf8(words::toArray(*own)) : tr("Student");
}

const base::Result<requirement::RequirementSet>& Desk::setInForce() const
{
    if (!m_set) {
        m_set.emplace(session::setInForce(*m_session, m_session->person(), today()));
    }
    return *m_set;
}

role::RoleRules Desk::roleRules() const
{
    return setInForce() ? role::RoleRules{setInForce().value().notApplicable} : role::RoleRules{};
}

const Desk::Counted* Desk::counted()
{
    if (m_countTried) {
        return m_counted ? &*m_counted : nullptr;
    }
    m_countTried = true;
    if (!setInForce()) {
        m_countError = words::why(setInForce().error());
        return nullptr;
    }
    base::Result<session::CaseBook> cases = session::caseBook(*m_session, m_shelf.catalogue(), m_record);
    if (!cases) {
        m_countError = words::why(cases.error());
        return nullptr;
    }
    m_counted.emplace(Counted{setInForce().value(), std::move(cases).value(), {}});
    tally::Tallier tallier(m_counted->set, tally::Level::Recorded, tally::everyStrength);
    m_counted->tally = m_counted->cases.tally(tallier, 0);
    return &*m_counted;
}

QString Desk::write(const std::vector<journal::Payload>& payloads)
{
    std::vector<session::Writing> writings;
    writings.reserve(payloads.size());
    for (const journal::Payload& payload : payloads) {
        writings.push_back({m_session->person(), payload});
    }
    const auto written = m_session->append(writings);
    if (!written) {
        return words::why(written.error());
    }
    refresh();
    return {};
}

void Desk::refresh()
{
    if (m_shelf.layOver(session::overlayInForce(*m_session))) {
        QTimer::singleShot(0, this, [this] { (void)m_shelf.prepare(); }); // once the page is there
    }
    m_record = m_session->recordOf(m_session->person());
    m_names = record::shortNames(m_record);
    m_counted.reset();
    m_set.reset();
    m_countTried = false;
    m_countError.clear();
    Q_EMIT changed();
}

QByteArray Desk::kept(const char* name) const
{
    const auto value = m_session->note(name);
    return value ? words::toArray(*value) : QByteArray();
}

QString Desk::keep(const char* name, const QByteArray& value)
{
    std::optional<keys::Bytes> bytes = value.isEmpty() ? std::nullopt : std::optional(words::toBytes(value));
    const base::Result<bool> done = m_session->setNote(name, std::move(bytes));
    return words::problem(done);
}

} // namespace peelpack::student
