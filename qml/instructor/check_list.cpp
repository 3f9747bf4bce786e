#include "qml/instructor/check_list.h"

#include "core/base/text.h"
#include "platform/session/acts.h"
#include "platform/session/sheets.h"
#include "qml/instructor/check_words.h"
#include "qml/student/sheet_row.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"

#include <algorithm>
#include <tuple>

namespace peelpack::instructor {
namespace {

bool contains(const record::SheetRecord& sheet, const std::string& student, const std::string& wanted)
{
    std::string all = student;
    for (const std::string& procedure : sheet.content.procedures) {
        all += " " + procedure;
    }
    const record::Head& head = sheet.content.head;
    all += " " + head.surgeon + " " + head.site + " " + head.room;
    for (const record::Signer& signer : sheet.signers) {
        all += " " + signer.statement.name;
    }
    return base::foldCaseAndSpaces(all).find(wanted) != std::string::npos;
}

/// A sheet that waits, with what it is sorted by.
struct Found {
    const Student* student = nullptr;
    const record::SheetRecord* sheet = nullptr;
    std::vector<questions::SheetQuestion> asked;
};

} // namespace

CheckList::CheckList(StaffDesk& desk, Checks& checks, PendingActs& pending, QObject* parent)
    : QObject(parent), m_desk(desk), m_checks(checks), m_pending(pending)
{
    connect(&desk, &StaffDesk::changed, this, &CheckList::onDesk);
    connect(&pending, &PendingActs::changed, this, &CheckList::read);
    connect(&pending, &PendingActs::cameBack, this, &CheckList::show);
    read();
}

QStringList CheckList::groups()
{
    return {tr("All that wait"), tr("Something to check"), tr("Mark reviews"), tr("Weak signatures"),
            tr("Nothing stands out")};
}

QStringList CheckList::orders()
{
    return {tr("By student"), tr("By day and room")};
}

void CheckList::readClasses()
{
    m_classes = QStringList{tr("All classes")} + m_desk.classes();
    m_ofClass = std::min(m_ofClass, static_cast<int>(m_classes.size()) - 1);
}

bool CheckList::wasSeen(const SheetKey& key, const record::SheetRecord& sheet) const
{
    const auto seen = m_seen.find(key);
    return seen != m_seen.end() && seen->second == sheet.history.size();
}

bool CheckList::fits(const Student& student, const record::SheetRecord& sheet,
                     const std::vector<questions::SheetQuestion>& asked, bool plain) const
{
    using Kind = questions::SheetQuestionKind;
    const auto has = [&](Kind kind) {
        return std::any_of(asked.begin(), asked.end(), [&](const auto& question) { return question.kind == kind; });
    };
    const std::string wanted = base::foldCaseAndSpaces(m_text.toStdString());
    if (!wanted.empty() && !contains(sheet, student.person.name, wanted)) {
        return false;
    }
    switch (m_group) {
    case Asked:
        return !plain;
    case Reviews:
        return has(Kind::ReviewAsked);
    case Weak:
        return has(Kind::WeakSignature);
    case Plain:
        return plain;
    default:
        return true;
    }
}

WaitingRow CheckList::rowOf(const Student& student, const record::SheetRecord& sheet,
                            const std::vector<questions::SheetQuestion>& asked) const
{
    const SheetKey key{student.person.id, sheet.id};
    const role::Outcome outcome = outcomeOf(student, sheet);
    WaitingRow row;
    row.key = key.text();
    row.student = words::fromUtf8(student.person.name);
    row.title = words::listed(sheet.content.procedures);
    row.detail = headInWords(sheet.content.head, m_desk.today());
    row.standing = standingInWords(sheet);
    row.role = words::of(outcome);
    row.roleCounts = outcome == role::Outcome::First || outcome == role::Outcome::Second;
    if (const auto filed = filedUnder(m_desk.catalogue(), sheet.content, 0)) {
        row.specialty = words::of(*filed);
    }
    row.seal = student::sealOf(sheet);
    if (sheet.imported && asked.empty()) {
        row.remark = tr("From %1").arg(words::fromUtf8(sheet.imported->said.source));
    }
    if (!asked.empty()) {
        row.remark = inWords(asked.front());
        row.grave = isGrave(asked.front().kind);
        if (asked.size() > 1) {
            row.remark += QLatin1Char(' ') + tr("And %n more.", nullptr, static_cast<int>(asked.size()) - 1);
        }
    }
    row.looked = wasSeen(key, sheet) && m_checks.isPlain(student, sheet);
    return row;
}

void CheckList::read()
{
    readClasses();
    const std::string ofClass = m_ofClass > 0 ? m_classes.value(m_ofClass).toStdString() : std::string();
    std::vector<Found> waiting;
    m_looked = 0;
    int all = 0;
    for (const Student& student : m_desk.students()) {
        if (!student.isIn(ofClass)) {
            continue;
        }
        for (const record::SheetRecord& sheet : student.record.sheets) {
            const SheetKey key{student.person.id, sheet.id};
            if (!Checks::waits(student, sheet) || m_pending.concerns(key)) {
                continue;
            }
            ++all;
            std::vector<questions::SheetQuestion> asked = m_checks.questionsOf(student, sheet);
            const bool seen = wasSeen(key, sheet);
            const bool plain = (seen || m_group == Asked || m_group == Plain) && m_checks.isPlain(student, sheet);
            m_looked += seen && plain ? 1 : 0;
            if (fits(student, sheet, asked, plain)) {
                waiting.push_back({&student, &sheet, std::move(asked)});
            }
        }
    }
    std::stable_sort(waiting.begin(), waiting.end(), [&](const Found& a, const Found& b) {
        const record::Head& one = a.sheet->content.head;
        const record::Head& other = b.sheet->content.head;
        return m_order == 0 ? std::tie(a.student->person.name, one.date) < std::tie(b.student->person.name, other.date)
                            : std::tie(one.date, one.site, one.room) < std::tie(other.date, other.site, other.room);
    });
    std::vector<WaitingRow> rows;
    rows.reserve(waiting.size());
    for (const Found& found : waiting) {
        rows.push_back(rowOf(*found.student, *found.sheet, found.asked));
    }
    m_all = all;
    m_stamp = m_desk.stamp();
    summarize();
    m_rows.put(std::move(rows));
    m_at = -1;
    for (std::size_t i = 0; i < m_rows.rows().size(); ++i) {
        if (m_rows.rows()[i].key == m_current) {
            m_at = static_cast<int>(i);
        }
    }
    Q_EMIT changed();
}

void CheckList::summarize()
{
    const auto read = static_cast<int>(m_desk.foldedCount());
    const auto people = static_cast<int>(m_desk.students().size());
    m_summary = read < people ? tr("Reading: %1 of %n student(s)", nullptr, people).arg(read)
                : m_all == 0  ? tr("No sheet waits")
                              : tr("%n sheet(s) wait", nullptr, m_all);
}

void CheckList::onDesk()
{
    const bool allRead = m_desk.foldedCount() == m_desk.students().size();
    if (allRead && m_stamp != m_desk.stamp()) {
        read();
        return;
    }
    summarize();
    Q_EMIT changed();
}

void CheckList::askAboutPreceptors()
{
    std::vector<questions::Signing> signings;
    for (const Student& listed : m_desk.students()) {
        const Student& student = *m_desk.student(listed.person.id);
        for (const record::SheetRecord& sheet : student.record.sheets) {
            for (questions::Signing& signing :
                 questions::signingsOf(sheet, student.person.name, student.names.sheets.at(sheet.id))) {
                signings.push_back(std::move(signing));
            }
        }
    }
    m_aboutPreceptors.clear();
    for (const questions::SignerQuestion& question : questions::signerQuestions(std::move(signings), {})) {
        m_aboutPreceptors.append(inWords(question, m_desk.today()));
    }
    if (m_aboutPreceptors.isEmpty()) {
        m_aboutPreceptors.append(tr("Nothing stands out about the preceptors' signatures."));
    }
    Q_EMIT changed();
}

void CheckList::setText(const QString& text)
{
    m_text = text;
    read();
}

void CheckList::setGroup(int group)
{
    m_group = std::clamp(group, 0, static_cast<int>(Plain));
    read();
}

void CheckList::setOrder(int order)
{
    m_order = std::clamp(order, 0, 1);
    read();
}

void CheckList::setOfClass(int ofClass)
{
    m_ofClass = std::clamp(ofClass, 0, static_cast<int>(m_classes.size()) - 1);
    read();
}

QString CheckList::place() const
{
    return m_at < 0 ? QString() : tr("Sheet %1 of %2").arg(m_at + 1).arg(m_rows.rowCount());
}

void CheckList::noteSeen()
{
    const auto key = SheetKey::fromText(m_current);
    const record::SheetRecord* sheet = key ? m_desk.sheet(*key) : nullptr;
    if (sheet != nullptr) {
        m_seen[*key] = sheet->history.size();
    }
}

void CheckList::show(const QString& key)
{
    m_error.clear();
    m_current = key;
    noteSeen();
    read();
}

bool CheckList::step(int by)
{
    const auto& rows = m_rows.rows();
    const int next = m_at < 0 && by > 0 ? 0 : m_at + by;
    if (next < 0 || next >= static_cast<int>(rows.size())) {
        return false;
    }
    show(QString(rows[static_cast<std::size_t>(next)].key)); // a copy: the rows are made anew
    return true;
}

void CheckList::moveOn(int from)
{
    const auto& rows = m_rows.rows();
    show(rows.empty()
             ? QString()
             : QString(rows[static_cast<std::size_t>(std::clamp(from, 0, static_cast<int>(rows.size()) - 1))].key));
}

bool CheckList::initialLooked()
{
    std::vector<session::Writing> writings;
    std::set<SheetKey> sheets;
    m_error.clear();
    for (const Student& student : m_desk.students()) {
        for (const record::SheetRecord& sheet : student.record.sheets) {
            const SheetKey key{student.person.id, sheet.id};
            if (m_pending.concerns(key) || !wasSeen(key, sheet) || !m_checks.isPlain(student, sheet)) {
                continue;
            }
            base::Result<session::Writing> made = session::initialing(
                m_desk.session(), {key.student, session::idOf(sheet.id), sheet}, false, {}, m_checks.shared());
            if (!made) {
                m_error = words::why(made.error());
                Q_EMIT changed();
                return false;
            }
            writings.push_back(std::move(made).value());
            sheets.insert(key);
        }
    }
    if (writings.empty()) {
        return false;
    }
    const auto count = static_cast<int>(writings.size());
    const bool held =
        m_pending.decide(std::move(writings), std::move(sheets), tr("%n sheet(s) initialed", nullptr, count));
    if (held && m_at < 0) {
        leave();
    }
    return held;
}

} // namespace peelpack::instructor
