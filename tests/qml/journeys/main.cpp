#include "platform/app/window.h"
#include "tests/qml/support/class_world.h"
#include "tests/qml/support/phone_world.h"
#include "tests/qml/support/program_world.h"

#include <QQmlEngine>
#include <QtQml/qqmlextensionplugin.h>
#include <QtQuickTest>

#include <cstdio>
#include <cstdlib>

namespace {

/// A warning of a screen is an error: it would be a page that does not work.
void failOnWarnings(QtMsgType type, const QMessageLogContext&, const QString& message)
{
    std::fprintf(stderr, "%s\n", qPrintable(message));
    const bool harmless =
        message.contains(QLatin1String("propagateSizeHints")) || message.contains(QLatin1String("XDG_RUNTIME_DIR"));
    if (type == QtFatalMsg || (type == QtWarningMsg && !harmless)) {
        std::fprintf(stderr, "A warning ends the test.\n");
        std::fflush(stderr);
        std::_Exit(1);
    }
}

class Setup : public QObject {
    Q_OBJECT

public Q_SLOTS:
    void applicationAvailable()
    {
        qInstallMessageHandler(failOnWarnings);
        peelpack::app::dressApplication();
    }
    void qmlEngineAvailable(QQmlEngine* engine)
    {
        engine->addImportPath(QStringLiteral("qrc:/qt/qml"));
        qmlRegisterType<peelpack::test::PhoneWorld>("Peelpack.Test", 1, 0, "PhoneWorld");
        qmlRegisterType<peelpack::test::ClassWorld>("Peelpack.Test", 1, 0, "ClassWorld");
        qmlRegisterType<peelpack::test::ProgramWorld>("Peelpack.Test", 1, 0, "ProgramWorld");
    }
};

} // namespace

QUICK_TEST_MAIN_WITH_SETUP(journeys, Setup)

#include "main.moc"
