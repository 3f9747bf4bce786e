#pragma once

#include <QString>
#include <QVariant>

#include <functional>

namespace peelpack::app {

/// The walk through the screens, as those see it who go a part of it.
class ScreenWalk {
public:
    ScreenWalk() = default;
    ScreenWalk(const ScreenWalk&) = delete;
    ScreenWalk& operator=(const ScreenWalk&) = delete;
    ScreenWalk(ScreenWalk&&) = delete;
    ScreenWalk& operator=(ScreenWalk&&) = delete;
    virtual ~ScreenWalk() = default;

    /// Has what is on the window now looked at, under this name.
    virtual void shoot(const char* screen) = 0;
    /// Sets a property of what is on the window.
    virtual void put(const char* object, const char* property, const QVariant& value) = 0;
    virtual void waitUntil(const std::function<bool()>& done) = 0;
    /// Ends the walk.
    virtual void fail(const QString& why) = 0;
};

} // namespace peelpack::app
