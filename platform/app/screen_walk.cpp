#include "platform/app/screen_walk.h"

#include <QGuiApplication>
#include <QThread>

namespace peelpack::app {

void ScreenWalk::wear(const ScreenDress& dress, QQuickWindow* on)
{
    m_dress = dress;
    m_on = on;
    QObject::disconnect(m_drawing);
    m_drawing = QObject::connect(on, &QQuickWindow::frameSwapped, on, [this] { ++m_drawn; });
}

void ScreenWalk::fail(const QString& why)
{
    if (m_error.isEmpty()) {
        m_error = why;
    }
}

void ScreenWalk::settle()
{
    constexpr int mostRounds = 10;
    constexpr int quietRounds = 3; // what was changed is drawn in the second at the latest
    constexpr int roundMs = 15;
    int quiet = 0;
    for (int i = 0; i < mostRounds && quiet < quietRounds; ++i) {
        const int before = m_drawn;
        QGuiApplication::processEvents();
        // There is no event loop around it that would do so, and a page that is gone must not be found again.
        QCoreApplication::sendPostedEvents(nullptr, QEvent::DeferredDelete);
        QThread::msleep(roundMs);
        quiet = m_drawn == before ? quiet + 1 : 0;
    }
}

void ScreenWalk::waitUntil(const std::function<bool()>& done)
{
    constexpr int mostRounds = 600;
    constexpr int roundMs = 20;
    for (int i = 0; i < mostRounds && !done(); ++i) {
        QGuiApplication::processEvents();
        QThread::msleep(roundMs);
    }
    settle();
}

void ScreenWalk::shoot(const char* screen)
{
    settle();
    if (m_error.isEmpty() && !m_visit(m_dress, QString::fromLatin1(screen), *m_on)) {
        fail(QStringLiteral("Stopped at %1.").arg(QString::fromLatin1(screen)));
    }
    ++m_count;
}

QObject* ScreenWalk::part(const char* name) const
{
    return m_on->findChild<QObject*>(QString::fromLatin1(name));
}

void ScreenWalk::open(const char* list, bool opened)
{
    const QObject* found = part(list);
    auto* popup = found == nullptr ? nullptr : found->property("popup").value<QObject*>();
    if (popup == nullptr || !QMetaObject::invokeMethod(popup, opened ? "open" : "close")) {
        fail(QStringLiteral("There is no list %1 on the screen.").arg(QString::fromLatin1(list)));
    }
    settle();
}

void ScreenWalk::put(const char* object, const char* property, const QVariant& value)
{
    QObject* found = part(object);
    if (found == nullptr || !found->setProperty(property, value)) {
        fail(QStringLiteral("There is no %1 on the screen.").arg(QString::fromLatin1(object)));
    }
    settle();
}

} // namespace peelpack::app
