#include "qml/program/program_pages.h"

#include "platform/session/exchange.h"
#include "qml/words/bridge.h"

#include <algorithm>

namespace peelpack::program {

ProgramPages::ProgramPages(instructor::StaffDesk& desk, instructor::PendingActs& pending, QObject* parent)
    : QObject(parent), m_desk(desk, pending), m_rules(m_desk), m_requirements(m_desk), m_days(m_desk), m_sites(m_desk),
      m_signers(m_desk), m_procedures(m_desk), m_people(m_desk), m_inviting(m_desk), m_classInviting(m_desk),
      m_granting(m_desk), m_preceptors(m_desk), m_vouching(m_desk), m_cardMaking(m_desk), m_paperToCut(m_desk)
{
    connect(&desk, &instructor::StaffDesk::changed, this, &ProgramPages::changed);
}

QString ProgramPages::programId()
{
    constexpr qsizetype group = 8;
    const QString digits = QString::fromStdString(keys::hex(m_desk.session().program().view()));
    QStringList groups;
    for (qsizetype at = 0; at < digits.size(); at += group) {
        groups.append(digits.mid(at, group));
    }
    return groups.join(QLatin1Char(' '));
}

int ProgramPages::nextDirector()
{
    std::uint32_t highest = 1;
    for (const auto& [device, holder] : m_desk.session().authority().holders()) {
        if (holder.role == journal::Role::Director) {
            highest = std::max(highest, holder.epoch);
        }
    }
    return static_cast<int>(highest) + 1;
}

QVariantList ProgramPages::wholeRecord()
{
    QVariantList files;
    const auto volumes = session::makeExport(m_desk.session(), std::nullopt);
    m_error = words::problem(volumes);
    if (volumes) {
        for (const keys::Bytes& volume : volumes.value()) {
            files.append(words::toArray(volume));
        }
    }
    Q_EMIT changed();
    return files;
}

} // namespace peelpack::program
