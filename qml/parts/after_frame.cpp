#include "qml/parts/after_frame.h"

#include <QTimer>

namespace peelpack::parts {

void afterFrame(QObject* context, const std::function<void()>& work)
{
    constexpr int frameMs = 40;
    QTimer::singleShot(frameMs, context, work);
}

} // namespace peelpack::parts
