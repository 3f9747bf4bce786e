#pragma once

#include "platform/app/screens.h"

#include <QObject>
#include <QVariant>

namespace peelpack::app {

/// One walk through screens in one dress after another: waits until a screen stands still, and shows it to the visitor.
/// The first error stays; after it nothing is shown any more.
class ScreenWalk {
public:
    /// The visit must outlive it.
    explicit ScreenWalk(const ScreenVisit& visit) : m_visit(visit) {}
    ScreenWalk(const ScreenWalk&) = delete;
    ScreenWalk& operator=(const ScreenWalk&) = delete;
    ScreenWalk(ScreenWalk&&) = delete;
    ScreenWalk& operator=(ScreenWalk&&) = delete;
    ~ScreenWalk() { QObject::disconnect(m_drawing); }

    /// What follows is in this dress, and on this window, which must outlive it.
    void wear(const ScreenDress& dress, QQuickWindow* on);
    [[nodiscard]] int count() const { return m_count; }
    [[nodiscard]] const QString& error() const { return m_error; }
    void fail(const QString& why);

    /// Until nothing has been drawn for a while.
    void settle();
    void waitUntil(const std::function<bool()>& done);
    void shoot(const char* screen);
    /// A list of choices, as it opens.
    void open(const char* list, bool opened);
    void put(const char* object, const char* property, const QVariant& value);

private:
    [[nodiscard]] QObject* part(const char* name) const;

    const ScreenVisit& m_visit;
    ScreenDress m_dress;
    QQuickWindow* m_on = nullptr;
    QMetaObject::Connection m_drawing;
    int m_drawn = 0; ///< frames of the window
    QString m_error;
    int m_count = 0;
};

} // namespace peelpack::app
