#pragma once

#include <QObject>

#include <functional>

namespace peelpack::parts {

/// Does long work once a frame can have said that something goes on; not when `context` is gone by then.
void afterFrame(QObject* context, const std::function<void()>& work);

} // namespace peelpack::parts
