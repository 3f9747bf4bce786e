#pragma once

#include "core/base/result.h"
#include "qml/student/desk.h"

#include <QQuickWindow>
#include <QSize>
#include <QString>

#include <functional>
#include <vector>

namespace peelpack::app {

/// How the screens are drawn.
struct ScreenDress {
    QSize size;
    bool dark = false;
    int textPercent = 100;
    QString language = QStringLiteral("en");
    /// "phone-390x844-light-100-en"
    [[nodiscard]] QString name() const;
};

/// Phone upright and across, tablet, and two desks for the instructor; light and dark; text at 100 and 200 %; English
/// and Spanish.
std::vector<ScreenDress> allDresses();

/// What is done at a screen, which is on `window`; false ends the walk.
using ScreenVisit = std::function<bool(const ScreenDress& dress, const QString& screen, QQuickWindow& window)>;

/// Goes through every screen of the demo in each dress. Needs a QGuiApplication; no display is needed with the
/// offscreen platform. Answers the number of screens.
base::Result<int> walkScreens(const std::vector<ScreenDress>& dresses, student::Shelf& shelf, const ScreenVisit& visit);

/// Walks, and draws each screen into FOLDER/<dress>/<screen>.png.
base::Result<int> drawScreens(const QString& folder, const std::vector<ScreenDress>& dresses, student::Shelf& shelf);

} // namespace peelpack::app
