#include "platform/app/places.h"
#include "platform/app/screens.h"
#include "platform/app/window.h"
#include "platform/camera/device_camera.h"
#include "platform/files/resources.h"
#include "platform/session/system_clock.h"

#include <QGuiApplication>

#include <cstdio>

using namespace peelpack;

namespace {

/// --pictures DIR [NAME]: every screen of the demo as a picture, for looking at it without a phone; only in dresses
/// whose name has NAME in it.
int drawPictures(const QString& folder, const QString& only, student::Shelf& shelf)
{
    std::vector<app::ScreenDress> dresses = app::allDresses();
    std::erase_if(dresses, [&](const app::ScreenDress& dress) { return !dress.name().contains(only); });
    const base::Result<int> drawn = app::drawScreens(folder, dresses, shelf);
    if (!drawn) {
        std::fprintf(stderr, "%s\n", drawn.error().sentence.c_str());
        return 3;
    }
    std::printf("%d pictures in %s\n", drawn.value(), folder.toLocal8Bit().constData());
    return 0;
}

} // namespace

int main(int argc, char* argv[])
{
    const bool pictures = argc >= 3 && qstrcmp(argv[1], "--pictures") == 0;
    if (pictures) { // on no display, and the same everywhere
        qputenv("QT_QPA_PLATFORM", "offscreen");
        qputenv("QT_QUICK_BACKEND", "software");
    }
    QGuiApplication application(argc, argv);
    QGuiApplication::setApplicationName(QStringLiteral("Peelpack"));
    app::dressApplication();
    student::Shelf shelf(files::shippedCatalogue);
    if (pictures) {
        return drawPictures(QString::fromLocal8Bit(argv[2]), QString::fromLocal8Bit(argc > 3 ? argv[3] : ""), shelf);
    }
    keys::SystemRandom random;
    vault::FolderMarkStore marks(vault::FolderMarkStore::usualFolder());
    camera::DeviceCamera camera;
    share::DialogShare share;
    const app::Places places = app::usualPlaces();
    shell::Phone phone({places.vaultFile.toStdString(), places.settingsFile, marks, session::systemClock(), random,
                        camera, share, shelf});
    const app::Window window(phone);
    if (window.window() == nullptr) {
        return 3;
    }
    const auto prepare = [&shelf] {
        if (const base::Result<bool> ready = shelf.prepare(); !ready) {
            std::fprintf(stderr, "%s\n", ready.error().sentence.c_str());
            QCoreApplication::exit(3);
        }
    };
    QObject::connect(window.window(), &QQuickWindow::frameSwapped, &application, prepare,
                     static_cast<Qt::ConnectionType>(Qt::QueuedConnection | Qt::SingleShotConnection));
    return QGuiApplication::exec();
}
