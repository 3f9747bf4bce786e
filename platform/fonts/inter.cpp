#include "platform/fonts/inter.h"

#include <QFont>
#include <QFontDatabase>
#include <QGuiApplication>
#include <QThread>

void initFonts()
{
    Q_INIT_RESOURCE(fonts);
}

namespace peelpack::fonts {

void useInter()
{
    static const bool once = [] {
        initFonts();
        for (const char* cut : {"Regular", "Medium", "SemiBold", "Bold"}) {
            QFontDatabase::addApplicationFont(QStringLiteral(":/peelpack/fonts/Inter-%1.otf").arg(QLatin1String(cut)));
        }
        return true;
    }();
    static_cast<void>(once);
    if (QThread::currentThread() == QCoreApplication::instance()->thread()) {
        QGuiApplication::setFont(QFont(QStringLiteral("Inter")));
    }
}

} // namespace peelpack::fonts
