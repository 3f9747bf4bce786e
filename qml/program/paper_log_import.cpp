#include "qml/program/paper_log_import.h"

#include "core/sheet/identifiers.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"

#include <algorithm>
#include <map>

namespace peelpack::program {
namespace {

constexpr std::size_t mostShown = 100; ///< refusals, and warnings, on the page

QString joined(const QStringList& parts)
{
    return parts.join(QStringLiteral(" · "));
}

QString procedures(const session::PaperSheet& sheet)
{
    return words::listed(sheet.procedures);
}

QString roleOf(const session::PaperSheet& sheet)
{
    return words::of(role::classify(sheet.role, sheet.head.canceled));
}

QString lineOf(const session::PaperSheet& sheet, base::Date today)
{
    QStringList filed;
    for (const journal::Choice& choice : sheet.choices) {
        if (const auto category = catalogue::categoryFromId(choice.category)) {
            filed.append(words::of(*category));
        }
    }
    filed.removeDuplicates();
    return joined({words::day(sheet.head.date, today), procedures(sheet), roleOf(sheet), words::listed(filed)});
}

QString lineOf(const sheet::Finding& finding)
{
    const QString reason = words::said(finding.reason);
    const QString mend = words::said(finding.mend);
    const QString said =
        PaperLogImport::tr("%1; %2.").arg(reason.endsWith(QLatin1Char('.')) ? reason.chopped(1) : reason, mend);
    return finding.column.empty() ? PaperLogImport::tr("Line %1: %2").arg(finding.line).arg(said)
                                  : PaperLogImport::tr("Line %1, column %2: %3")
                                        .arg(QString::number(finding.line), words::fromUtf8(finding.column), said);
}

QStringList linesOf(const std::vector<sheet::Finding>& findings, std::size_t more)
{
    QStringList lines;
    for (std::size_t i = 0; i < findings.size() && i < mostShown; ++i) {
        lines.append(lineOf(findings[i]));
    }
    if (findings.size() + more > mostShown) {
        lines.append(PaperLogImport::tr("and %n more", nullptr, static_cast<int>(findings.size() + more - mostShown)));
    }
    return lines;
}

ImportRow rowOf(const session::ImportFor& planned, base::Date today)
{
    ImportRow row{words::fromUtf8(planned.student.name), {}, {}};
    std::map<sheet::Role, int> roles;
    base::Date first = planned.sheets.front().sheet.head.date;
    base::Date last = first;
    for (const session::PaperLogSheet& one : planned.sheets) {
        row.sheets.append(lineOf(one.sheet, today));
        ++roles[one.sheet.role];
        first = std::min(first, one.sheet.head.date);
        last = std::max(last, one.sheet.head.date);
    }
    QStringList parts{PaperLogImport::tr("%n sheet(s)", nullptr, static_cast<int>(planned.sheets.size()))};
    for (const auto& [role, count] : roles) {
        parts.append(QStringLiteral("%1: %2").arg(words::of(role::classify(role, false))).arg(count));
    }
    parts.append(first == last ? words::day(first, today)
                               : PaperLogImport::tr("%1 to %2").arg(words::day(first, today), words::day(last, today)));
    row.summary = joined(parts);
    return row;
}

} // namespace

std::string PaperLogImport::sourceText() const
{
    return words::line(m_source, qsizetype{session::mostSource});
}

void PaperLogImport::setSource(const QString& source)
{
    if (source != m_source) {
        m_source = source;
        m_error.clear();
        Q_EMIT changed();
    }
}

void PaperLogImport::setOwner(int index)
{
    if (index >= 0 && index < static_cast<int>(m_owners.size()) && index != m_owner) {
        m_owner = index;
        readFile();
    }
}

void PaperLogImport::setChecked(bool checked)
{
    if (checked != m_checked) {
        m_checked = checked;
        readFile();
    }
}

void PaperLogImport::begin()
{
    m_owners = {tr("By name")};
    m_ids.clear();
    const session::Directory directory(m_desk.session());
    for (const session::Person& person : directory.people()) {
        if (person.role == journal::Role::Student) {
            m_owners.append(words::fromUtf8(person.name));
            m_ids.push_back(person.id);
        }
    }
    m_owner = 0;
    m_source.clear();
    forget();
}

bool PaperLogImport::ready()
{
    const std::string source = sourceText();
    const std::vector<sheet::IdentifierHit> hits = sheet::findIdentifiers(source);
    m_error.clear();
    if (source.empty()) {
        m_error = tr("Say first where the rows come from: it stays with each sheet.");
    } else if (!hits.empty()) {
        m_error = tr("Where the rows come from looks like %1. No patient identifiers belong here; say it otherwise.")
                      .arg(words::of(hits.front().kind));
    }
    Q_EMIT changed();
    return m_error.isEmpty();
}

void PaperLogImport::open(const QString& name, const QByteArray& csv)
{
    forget();
    if (ready()) {
        m_file = name;
        m_csv = csv;
        readFile();
    }
}

void PaperLogImport::readFile()
{
    m_plan = {};
    m_error.clear();
    if (!m_file.isEmpty()) {
        const std::string source = sourceText();
        base::Result<session::PaperLog> log = session::paperLogFrom(
            {m_csv.constData(), static_cast<std::size_t>(m_csv.size())}, m_desk.staff().catalogue(), source, m_checked);
        m_error = words::problem(log);
        if (log) {
            const keys::Id* only = m_owner > 0 ? &m_ids[static_cast<std::size_t>(m_owner) - 1] : nullptr;
            m_plan = session::planImport(m_desk.session(), std::move(log).value(), source, only);
        }
    }
    show(m_plan.report);
}

void PaperLogImport::show(const sheet::ReadReport& report)
{
    const base::Date today = m_desk.today();
    std::vector<ImportRow> rows;
    m_alreadyHere.clear();
    for (const session::ImportFor& planned : m_plan.students) {
        if (!planned.sheets.empty()) {
            rows.push_back(rowOf(planned, today));
        }
        for (const session::PaperLogSheet& one : planned.alreadyHere) {
            m_alreadyHere.append(joined({words::fromUtf8(planned.student.name), words::day(one.sheet.head.date, today),
                                         procedures(one.sheet)}));
        }
    }
    m_students.put(std::move(rows));
    m_refused = linesOf(report.refused, 0);
    m_warnings = linesOf(report.warnings, report.moreWarnings);
    m_refusedLine =
        report.refused.empty()
            ? QString()
            : tr("Refused: %1 of %n row(s)", nullptr, static_cast<int>(report.rows)).arg(report.refused.size());
    if (m_error.isEmpty() && !m_file.isEmpty() && m_plan.sheets() == 0) {
        m_error = !m_alreadyHere.isEmpty() ? tr("Nothing in this file is new: what can be imported is here already.")
                  : report.refused.empty() ? tr("No row stands in this file. Choose another one.")
                                           : tr("Nothing in this file can be imported as it is.");
    }
    Q_EMIT changed();
}

void PaperLogImport::importThem()
{
    const std::string source = sourceText();
    QStringList report;
    QString failed;
    int count = 0;
    const QString barred = m_desk.write([&] {
        for (const session::ImportFor& planned : m_plan.students) {
            if (planned.sheets.empty()) {
                continue;
            }
            const auto made = session::importSheets(m_desk.session(), planned, source);
            const QString name = words::fromUtf8(planned.student.name);
            if (!made) {
                failed = tr("%1: %2 Nothing of this student was imported, nor of those after; choose the file again.")
                             .arg(name, words::why(made.error()));
                break;
            }
            const auto imported = static_cast<int>(made.value().size());
            count += imported;
            report.append(tr("%1: %n sheet(s) imported", nullptr, imported).arg(name));
        }
        return QString();
    });
    const QString problem = barred.isEmpty() ? failed : barred;
    const QString refused = m_refusedLine;
    const QStringList refusals = m_refused;
    const auto left = static_cast<int>(m_alreadyHere.size());
    forget();
    m_error = problem;
    report.prepend(count == 0 ? tr("Nothing was imported.")
                              : tr("Imported, not attested: %n sheet(s). Each counts once an instructor has initialed "
                                   "it; they wait under Check.",
                                   nullptr, count));
    if (left > 0) {
        report.append(tr("Left out, here already: %n sheet(s)", nullptr, left));
    }
    m_report = report;
    m_refusedLine = refused;
    m_refused = refusals;
    Q_EMIT changed();
}

void PaperLogImport::forget()
{
    m_file.clear();
    m_csv.clear();
    m_checked = false;
    m_report.clear();
    readFile();
}

} // namespace peelpack::program
