#include "platform/fonts/inter.h"

#include <QFont>
#include <QFontDatabase>
#include <QGuiApplication>

void initFonts()
{
    Q_INIT_RESOURCE(fonts);
}

namespace peelpack::fonts {

void loadInter()
{
    static const bool once = [] {
        initFonts();
        for (const char* cut : {"Regular", "Medium", "SemiBold", "Bold"}) {
            QFontDatabase::addApplicationFont(QStringLiteral(":/peelpack/fonts/Inter-%1.otf").arg(QLatin1String(cut)));
        }
        return true;
    }();
    static_cast<void>(once);
}

void useInter()
{
    loadInter();
    QGuiApplication::setFont(QFont(QStringLiteral("Inter")));
}

} // namespace peelpack::fonts
