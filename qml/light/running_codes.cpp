#include "qml/light/running_codes.h"

#include "qml/words/bridge.h"

#include <array>

namespace peelpack::light {
namespace {

/// Codes a second. A camera of 30 pictures a second sees each of 8 at least three times; 2 stay below the three changes
/// a second that WCAG 2.2 allows to anything that flashes (success criterion 2.3.1).
constexpr std::array paces{2, 5, 8};
constexpr std::size_t calmPace = 0;
constexpr std::size_t usualPace = 1;
constexpr int msInSecond = 1000;

/// Codes before it pauses: three times as many as are enough, and half a minute's more.
int patience(int count)
{
    constexpr int rounds = 3;
    constexpr int besides = 150;
    return rounds * count + besides;
}

} // namespace

RunningCodes::RunningCodes(QObject* parent) : QObject(parent), m_pace(usualPace)
{
    connect(&m_timer, &QTimer::timeout, this, &RunningCodes::showNext);
    setPace(usualPace);
}

bool RunningCodes::lay(keys::Bytes parcel)
{
    end();
    auto source = carry::FrameSource::of(std::move(parcel));
    if (!source) {
        return false;
    }
    m_source.emplace(std::move(source).value());
    Q_EMIT changed();
    return true;
}

void RunningCodes::end()
{
    m_timer.stop();
    m_source.reset();
    m_number = 0;
    Q_EMIT changed();
}

QByteArray RunningCodes::code() const
{
    return m_source ? words::toArray(m_source->frame(m_number)) : QByteArray();
}

QString RunningCodes::place() const
{
    return m_number < count() ? tr("Code %1 of %2").arg(m_number + 1).arg(count())
                              : tr("Spare code %1").arg(m_number - count() + 1);
}

QString RunningCodes::enough() const
{
    return tr("Any %n code(s) are enough: one that is missed does not matter.", nullptr, count());
}

QString RunningCodes::pace() const
{
    return tr("%1 codes a second").arg(paces[m_pace]);
}

bool RunningCodes::canBeSlower() const
{
    return m_pace > 0;
}

bool RunningCodes::canBeFaster() const
{
    return m_pace + 1 < paces.size();
}

void RunningCodes::begin(bool calm)
{
    setPace(calm ? calmPace : usualPace);
    if (!calm) {
        run();
    }
}

void RunningCodes::run()
{
    if (m_source) {
        m_left = patience(count());
        m_timer.start();
        Q_EMIT changed();
    }
}

void RunningCodes::pause()
{
    m_timer.stop();
    Q_EMIT changed();
}

void RunningCodes::step()
{
    if (m_source) {
        ++m_number; // after the last there is the first again
        Q_EMIT changed();
    }
}

void RunningCodes::slower()
{
    if (canBeSlower()) {
        setPace(m_pace - 1);
    }
}

void RunningCodes::faster()
{
    if (canBeFaster()) {
        setPace(m_pace + 1);
    }
}

void RunningCodes::setPace(std::size_t pace)
{
    m_pace = pace;
    m_left = patience(count());
    m_timer.setInterval(msInSecond / paces[pace]);
    Q_EMIT changed();
}

void RunningCodes::showNext()
{
    if (--m_left <= 0) {
        pause();
        return;
    }
    step();
    Q_EMIT shown();
}

} // namespace peelpack::light
