#include "qml/shell/phone.h"

#include "qml/words/bridge.h"
#include "qml/words/words.h"

namespace peelpack::shell {

QStringList Phone::demoCards() const
{
    QStringList list;
    if (m_demo) {
        for (const demo::PhoneDemo::Card& card : m_demo->cards) {
            list.append(words::fromUtf8(card.name + ", " + card.credential) + QStringLiteral(" · ") +
                        tr("PIN %1").arg(words::fromUtf8(card.pin)));
        }
    }
    return list;
}

void Phone::openDemo()
{
    later([this] {
        auto made = demo::makePhoneDemo(m_surroundings.shelf.catalogue(), m_surroundings.clock, m_surroundings.random);
        if (!made) {
            m_error = words::why(made.error());
            return;
        }
        m_demo = std::move(made).value();
        openSession(std::move(m_demo->student));
    });
}

void Phone::openInstructorDemo()
{
    openStaffDemo(false);
}

void Phone::openDirectorDemo()
{
    openStaffDemo(true);
}

void Phone::openStaffDemo(bool asDirector)
{
    later([this, asDirector] {
        auto made =
            demo::makeInstructorDemo(m_surroundings.shelf.catalogue(), m_surroundings.clock, m_surroundings.random);
        if (!made) {
            m_error = words::why(made.error());
            return;
        }
        m_staffDemo = std::move(made).value();
        openSession(std::move(asDirector ? m_staffDemo->director : m_staffDemo->instructor));
    });
}

void Phone::takeInDemoParcels()
{
    if (!m_staffDemo || !m_staff) {
        return;
    }
    QStringList names;
    QByteArrayList files;
    for (const demo::InstructorDemo::Parcel& parcel : m_staffDemo->parcels) {
        names.append(words::fromUtf8(parcel.name));
        files.append(words::toArray(parcel.bytes));
    }
    m_staff->parcels()->takeIn(names, files);
}

void Phone::leaveDemo()
{
    if (demo()) {
        close();
    }
}

QByteArray Phone::demoCard(int index) const
{
    if (!m_demo || index < 0 || index >= static_cast<int>(m_demo->cards.size())) {
        return {};
    }
    const keys::Bytes& code = m_demo->cards[static_cast<std::size_t>(index)].code;
    return words::toArray(code);
}

QString Phone::demoProgramCode() const
{
    return m_staffDemo ? words::fromUtf8(m_staffDemo->programCode) : QString();
}

} // namespace peelpack::shell
