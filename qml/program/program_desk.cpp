#include "qml/program/program_desk.h"

#include "qml/words/bridge.h"

namespace peelpack::program {

QString ProgramDesk::write(const std::function<QString()>& act)
{
    if (!m_pending.writeNow()) {
        return m_pending.error();
    }
    QString problem = act();
    if (problem.isEmpty()) {
        m_desk.refresh();
        Q_EMIT written();
    }
    return problem;
}

QString digitsOf(const keys::Id& id)
{
    return QString::fromStdString(keys::hex(id.view()));
}

keys::Id idFrom(const QString& digits)
{
    return keys::Id::from(words::toBytes(QByteArray::fromHex(digits.toLatin1()))).value_or(keys::Id{});
}

void wipe(QString& text)
{
    text.fill(QLatin1Char('0'));
    text.clear();
}

void wipe(QByteArray& bytes)
{
    bytes.fill('\0');
    bytes.clear();
}

} // namespace peelpack::program
