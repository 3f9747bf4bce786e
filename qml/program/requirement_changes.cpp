#include "qml/program/requirement_changes.h"

#include "platform/session/program_rules.h"
#include "qml/words/bridge.h"
#include "qml/words/rules.h"

#include <algorithm>

namespace peelpack::program {
namespace {

constexpr qsizetype mostReason = 400;

} // namespace

RequirementChanges::RequirementChanges(ProgramDesk& desk, QObject* parent) : QObject(parent), m_desk(desk)
{
    connect(&desk, &ProgramDesk::written, this, &RequirementChanges::read);
}

bool RequirementChanges::mayChange()
{
    return session::mayWriteRule(m_desk.session(), journal::Kind::RequirementsChange);
}

void RequirementChanges::read()
{
    const base::Date today = m_desk.today();
    std::vector<journal::RequirementsChange> changes = session::requirementChanges(m_desk.session());
    std::stable_sort(changes.begin(), changes.end(), [](const auto& a, const auto& b) { return a.from < b.from; });
    m_coming.clear();
    m_soFar.clear();
    for (const journal::RequirementsChange& change : changes) {
        if (change.from > today) {
            m_coming.append(words::of(change, today));
        } else {
            m_soFar.prepend(words::of(change, today));
        }
    }
    m_sets.read();
    Q_EMIT changed();
}

void RequirementChanges::beginDraft()
{
    m_classes = session::everyClass(m_desk.session());
    m_classes.insert(m_classes.begin(), std::string());
    m_names.clear();
    for (const std::string& name : m_classes) {
        m_names.append(words::ofClass(name));
    }
    m_ofClass = -1;
    m_from.clear();
    m_reason.clear();
    m_told.reset();
    m_error.clear();
    m_done.clear();
    m_sets.offer(session::keptSetFiles(m_desk.session()));
    m_sets.choose({});
    Q_EMIT changed();
}

void RequirementChanges::choose(const QString& set)
{
    m_sets.choose(set);
    Q_EMIT changed();
}

void RequirementChanges::openSet(const QByteArray& file)
{
    m_sets.open(file);
    Q_EMIT changed();
}

void RequirementChanges::setOfClass(int index)
{
    if (index >= 0 && index < static_cast<int>(m_classes.size())) {
        m_ofClass = index;
        Q_EMIT changed();
    }
}

void RequirementChanges::setFrom(const QString& day)
{
    if (day != m_from) {
        m_from = day;
        Q_EMIT changed();
    }
}

void RequirementChanges::setReason(const QString& reason)
{
    if (reason != m_reason) {
        m_reason = reason;
        Q_EMIT changed();
    }
}

base::Result<session::ToldChange> RequirementChanges::told() const
{
    const auto incomplete = [](const QString& sentence) {
        return base::Error{base::ErrorCode::BadInput, sentence.toStdString()};
    };
    if (m_ofClass < 0) {
        return incomplete(tr("Choose the class, or every class."));
    }
    const auto from = base::Date::fromIso(m_from.trimmed().toStdString());
    if (!from) {
        return incomplete(tr("Say the first day as year, month, day: 2027-01-11."));
    }
    const session::SetFile* file = m_sets.chosenFile();
    if (file == nullptr) {
        return incomplete(tr("Choose the requirement set."));
    }
    const std::string reason = words::line(m_reason, mostReason);
    if (reason.empty()) {
        return incomplete(tr("Say why; everybody in the program sees it."));
    }
    return session::ToldChange{
        m_classes[static_cast<std::size_t>(m_ofClass)], *from, file->set.id, file->digest, reason,
        file->ships ? std::string() : file->text};
}

QString RequirementChanges::line() const
{
    return m_told ? words::of(journal::RequirementsChange{{},
                                                          m_told->className,
                                                          m_told->from,
                                                          m_told->requirementSet,
                                                          m_told->setDigest,
                                                          m_told->reason},
                              m_desk.today())
                  : QString();
}

QStringList RequirementChanges::targets() const
{
    const SetRow* set = m_sets.chosen();
    return set == nullptr ? QStringList() : set->asks;
}

void RequirementChanges::readBack()
{
    const base::Result<session::ToldChange> change = told();
    m_error = words::problem(change);
    m_told = change ? std::optional(change.value()) : std::nullopt;
    Q_EMIT changed();
}

void RequirementChanges::backToDraft()
{
    m_told.reset();
    m_error.clear();
    Q_EMIT changed();
}

bool RequirementChanges::sign()
{
    if (!m_told) {
        return false;
    }
    m_error = m_desk.write([&] { return words::problem(session::changeRequirements(m_desk.session(), *m_told)); });
    if (m_error.isEmpty()) {
        m_told.reset();
        m_done = tr("Signed. It reaches the others with your next parcels.");
    }
    Q_EMIT changed();
    return m_error.isEmpty();
}

} // namespace peelpack::program
