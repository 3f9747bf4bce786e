#include "qml/evidence/confirming.h"

#include "platform/session/acts.h"
#include "platform/session/repudiations.h"
#include "platform/session/samples.h"
#include "qml/instructor/check_words.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"

#include <algorithm>
#include <array>

namespace peelpack::evidence_pages {
namespace {

constexpr std::array howMany{5, 10, 20, 50};
constexpr qsizetype mostReason = 400; ///< letters

} // namespace

Confirming::Confirming(instructor::StaffDesk& desk, instructor::PendingActs& pending, QObject* parent)
    : QObject(parent), m_desk(desk), m_pending(pending), m_checks(desk)
{
    connect(&desk, &instructor::StaffDesk::changed, this, &Confirming::read);
    connect(&pending, &instructor::PendingActs::changed, this, &Confirming::read);
}

QStringList Confirming::classes() const
{
    return QStringList{tr("All students")} + m_desk.classes();
}

void Confirming::setOfClass(int ofClass)
{
    m_ofClass = std::clamp(ofClass, 0, static_cast<int>(classes().size()) - 1);
    Q_EMIT changed();
}

QStringList Confirming::counts()
{
    QStringList texts;
    for (const int count : howMany) {
        texts.append(tr("%n sheet(s)", nullptr, count));
    }
    return texts;
}

void Confirming::setCount(int count)
{
    m_count = std::clamp(count, 0, static_cast<int>(howMany.size()) - 1);
    Q_EMIT changed();
}

bool Confirming::refuse(const QString& why)
{
    m_error = why;
    Q_EMIT changed();
    return false;
}

void Confirming::draw(const QString& number)
{
    if (!m_pending.writeNow()) {
        refuse(m_pending.error());
        return;
    }
    session::SampleWish wish;
    wish.count = static_cast<std::size_t>(howMany.at(static_cast<std::size_t>(m_count)));
    if (!number.trimmed().isEmpty()) {
        bool isNumber = false;
        wish.seed = number.trimmed().toULongLong(&isNumber);
        if (!isNumber) {
            refuse(tr("The number of an earlier drawing has digits only. Leave it empty to draw new ones."));
            return;
        }
    }
    const std::string ofClass = m_ofClass > 0 ? classes().value(m_ofClass).toStdString() : std::string();
    std::vector<keys::Id> students;
    for (const instructor::Student& student : m_desk.students()) {
        if (student.isIn(ofClass)) {
            students.push_back(student.person.id);
        }
    }
    const auto drawn = session::drawSample(m_desk.session(), students, wish);
    if (!drawn) {
        refuse(words::why(drawn.error()));
        return;
    }
    m_error.clear();
    m_drawn = drawn.value().sample.signings;
    m_summary = drawn.value().sample.of == 0
                    ? tr("No signed sheet is left to confirm.")
                    : tr("%n sheet(s)", nullptr, static_cast<int>(drawn.value().sample.sheets)) + QLatin1Char(' ') +
                          tr("of %1 that are not confirmed yet. Number of this drawing: %2")
                              .arg(drawn.value().sample.of)
                              .arg(drawn.value().seed);
    static_cast<void>(m_checks.shared()); // everybody's sheets are read then
    read();
}

std::optional<Confirming::Found> Confirming::find(const base::EntryHash& entry) const
{
    for (const instructor::Student& student : m_desk.students()) {
        for (const record::SheetRecord& sheet : student.record.sheets) {
            for (const record::Signer& signer : sheet.signers) {
                if (signer.entry == entry) {
                    return Found{{student.person.id, sheet.id}, &sheet, &signer};
                }
            }
        }
    }
    return std::nullopt;
}

void Confirming::read()
{
    std::vector<ConfirmRow> rows;
    const questions::Signing* before = nullptr;
    for (const questions::Signing& signing : m_drawn) {
        ConfirmRow row;
        row.preceptor =
            before == nullptr || before->signer != signing.signer ? words::fromUtf8(signing.name) : QString();
        before = &signing;
        row.title = words::fromUtf8(signing.student);
        row.open = false;
        if (const auto found = find(signing.entry)) {
            row.title += QStringLiteral(", ") + words::listed(found->sheet->content.procedures);
            row.words = instructor::headInWords(found->sheet->content.head, m_desk.today());
            row.key = found->key.text();
            const instructor::Student* student = m_desk.student(found->key.student);
            if (m_pending.concerns(found->key)) {
                row.state = tr("Decided a moment ago: undo it to change your mind.");
            } else if (student->notTheirs.contains(signing.entry)) {
                row.state = tr("says: not mine");
            } else if (found->signer->confirmed) {
                row.state = tr("confirmed with the preceptor");
            } else {
                row.open = true;
            }
        }
        rows.push_back(std::move(row));
    }
    m_rows.put(std::move(rows));
    readDenied();
    Q_EMIT changed();
}

void Confirming::readDenied()
{
    std::vector<ConfirmRow> rows;
    for (const instructor::Student& student : m_desk.students()) {
        if (student.notTheirs.empty()) {
            continue;
        }
        for (const record::SheetRecord& sheet : student.record.sheets) {
            for (const record::Signer& signer : sheet.signers) {
                if (student.notTheirs.contains(signer.entry)) {
                    rows.push_back({words::fromUtf8(signer.statement.name),
                                    words::fromUtf8(student.person.name) + QStringLiteral(", ") +
                                        words::listed(sheet.content.procedures),
                                    instructor::headInWords(sheet.content.head, m_desk.today()),
                                    instructor::standingInWords(sheet),
                                    instructor::SheetKey{student.person.id, sheet.id}.text(), false});
                }
            }
        }
    }
    m_denied.put(std::move(rows));
}

bool Confirming::decide(base::Result<session::Writing> made, const instructor::SheetKey& key, const QString& what)
{
    if (!made) {
        return refuse(words::why(made.error()));
    }
    m_error.clear();
    return m_pending.decide({std::move(made).value()}, {key}, what) || refuse(m_pending.error());
}

std::optional<Confirming::Found> Confirming::drawnAt(int row)
{
    if (!m_pending.writeNow()) {
        refuse(m_pending.error());
        return std::nullopt;
    }
    const auto at = static_cast<std::size_t>(row);
    auto found = row >= 0 && at < m_drawn.size() ? find(m_drawn[at].entry) : std::nullopt;
    if (!found) {
        refuse(tr("There is no such sheet here."));
    }
    return found;
}

bool Confirming::confirm(int row, const QString& how)
{
    const auto found = drawnAt(row);
    if (!found) {
        return false;
    }
    const session::SheetPlace place{found->key.student, session::idOf(found->key.sheet), *found->sheet};
    return decide(
        session::initialing(m_desk.session(), place, true, words::line(how, mostReason), m_checks.shared()), found->key,
        tr("Confirmed with the preceptor, and initialed: %1").arg(m_rows.rows()[static_cast<std::size_t>(row)].title));
}

bool Confirming::deny(int row)
{
    const auto found = drawnAt(row);
    if (!found) {
        return false;
    }
    const auto at = static_cast<std::size_t>(row);
    return decide(session::sayingNotTheirs(m_desk.session(), found->key.student, m_drawn[at].entry), found->key,
                  tr("Kept that it is not theirs: %1").arg(m_rows.rows()[at].title));
}

} // namespace peelpack::evidence_pages
