#include "qml/shell/idle_watch.h"

#include <QCoreApplication>
#include <QEvent>

namespace peelpack::shell {
namespace {

constexpr int beatMs = 1000;
constexpr std::int64_t secondsInMinute = 60;
constexpr std::int64_t msInSecond = 1000;

} // namespace

IdleWatch::IdleWatch(session::Clock clock, QObject* parent) : QObject(parent), m_clock(std::move(clock))
{
    m_beat.setInterval(beatMs);
    connect(&m_beat, &QTimer::timeout, this, &IdleWatch::onBeat);
    QCoreApplication::instance()->installEventFilter(this);
}

void IdleWatch::watch(int minutes)
{
    m_limit = minutes * secondsInMinute;
    touched();
    m_beat.start();
}

void IdleWatch::stillInUse()
{
    if (m_beat.isActive() && !isOver()) {
        touched();
    }
}

void IdleWatch::touched()
{
    m_since.start();
    m_touched = m_clock().seconds;
}

bool IdleWatch::isOver() const
{
    return m_clock().seconds - m_touched >= m_limit || m_since.elapsed() >= m_limit * msInSecond;
}

void IdleWatch::onBeat()
{
    if (m_beat.isActive() && isOver()) {
        stop();
        Q_EMIT idle();
    }
}

bool IdleWatch::eventFilter(QObject* watched, QEvent* event)
{
    if (m_beat.isActive() && (event->type() == QEvent::MouseButtonPress || event->type() == QEvent::TouchBegin ||
                              event->type() == QEvent::KeyPress)) {
        if (isOver()) { // the phone slept, and this touch woke it: it is the first of somebody else
            QMetaObject::invokeMethod(this, &IdleWatch::onBeat, Qt::QueuedConnection);
            return true;
        }
        touched();
    }
    return QObject::eventFilter(watched, event);
}

} // namespace peelpack::shell
