#include "qml/light/code_reading.h"

#include "qml/words/bridge.h"

namespace peelpack::light {

int CodeReading::have() const
{
    return m_collector.progress() ? static_cast<int>(m_collector.progress()->have) : 0;
}

int CodeReading::of() const
{
    return m_collector.progress() ? static_cast<int>(m_collector.progress()->of) : 0;
}

QString CodeReading::progress() const
{
    return of() == 0 ? QString() : tr("%1 of %n code(s)", nullptr, of()).arg(have());
}

QString CodeReading::missing() const
{
    if (of() == 0) {
        return tr("Hold the camera so that the whole code is in the picture. It may begin anywhere.");
    }
    return tr("%n code(s) are missing, whichever: keep the camera on them.", nullptr, of() - have());
}

QString CodeReading::remark() const
{
    switch (m_remark) {
    case Remark::NoCode:
        return tr("This is another sort of code, not one of a parcel.");
    case Remark::Newer:
        return tr("These codes were made by a newer Peelpack; update this one, or ask for the file.");
    case Remark::StartedAnew:
        return tr("A code did not go with those before it. The reading starts anew: keep the camera on the codes.");
    case Remark::None:
        break;
    }
    return {};
}

void CodeReading::begin()
{
    m_remark = Remark::None;
    m_collector.forgetComplete();
    Q_EMIT changed();
}

void CodeReading::read(const QByteArray& code)
{
    const carry::Offered offered = m_collector.offer(words::toBytes(code));
    switch (offered.sort) {
    case carry::Offered::Sort::Unusable:
        // A misread one comes again, and is worth no words.
        if (offered.reason == journal::Reason::NotOurs) {
            m_remark = Remark::NoCode;
        } else if (offered.reason == journal::Reason::UnknownVersion) {
            m_remark = Remark::Newer;
        }
        break;
    case carry::Offered::Sort::StartedAnew:
        m_remark = Remark::StartedAnew;
        break;
    case carry::Offered::Sort::Known:
        break;
    case carry::Offered::Sort::Taken:
        if (m_remark != Remark::StartedAnew || have() > 1) {
            m_remark = Remark::None;
        }
        Q_EMIT took();
        break;
    case carry::Offered::Sort::Complete:
        m_remark = Remark::None;
        Q_EMIT took();
        break;
    }
    Q_EMIT changed();
    if (offered.sort == carry::Offered::Sort::Complete) {
        Q_EMIT came(words::toArray(offered.parcel));
    }
}

} // namespace peelpack::light
