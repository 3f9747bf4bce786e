#include "qml/student/missing_sets.h"

#include "platform/session/set_files.h"
#include "qml/words/sentences.h"
#include "qml/words/words.h"

namespace peelpack::student {

MissingSets::MissingSets(session::Session& session, std::function<void()> counted, QObject* parent)
    : QObject(parent), m_session(session), m_counted(std::move(counted))
{
    read();
}

void MissingSets::read()
{
    QStringList missing;
    for (const session::SetByName& named : session::missingSets(m_session)) {
        missing.append(tr("The program's rules name the requirement set %1, which does not ship with Peelpack, and its "
                          "file is not at hand here: nothing is counted under it. Ask the director for the file and "
                          "open it.")
                           .arg(words::fromUtf8(named.id)));
    }
    if (missing != m_missing) {
        m_missing = missing;
        m_faults.clear();
        Q_EMIT changed();
    }
}

void MissingSets::open(const QByteArray& file)
{
    const auto opened = session::openMissingSet(m_session, file.toStdString());
    m_faults = opened ? QStringList() : words::saidInLines(opened.error().sentence);
    m_done = opened ? tr("Kept on this device: %1.").arg(words::fromUtf8(opened.value().set.title)) : QString();
    Q_EMIT changed();
    if (opened) {
        read();
        m_counted();
    }
}

} // namespace peelpack::student
