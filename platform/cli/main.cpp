#include "platform/cli/commands.h"

#include <QCoreApplication>
#include <QGuiApplication>

#include <csignal>
#include <memory>
#include <string_view>
#include <sys/prctl.h>
#include <sys/resource.h>

namespace {

/// Nothing of this process ends up in a core file, and no other process of the user reads its memory.
void keepMemoryPrivate()
{
    const rlimit none{0, 0};
    setrlimit(RLIMIT_CORE, &none);
    prctl(PR_SET_DUMPABLE, 0);
}

/// Printing needs fonts, though no display; the other commands start faster without them.
std::unique_ptr<QCoreApplication> applicationFor(int& argc, char** argv)
{
    if (argc > 1 && std::string_view(argv[1]) == "print") {
        qputenv("QT_QPA_PLATFORM", "offscreen");
        qInstallMessageHandler([](QtMsgType, const QMessageLogContext&, const QString&) {}); // of displays, not of ours
        return std::make_unique<QGuiApplication>(argc, argv);
    }
    return std::make_unique<QCoreApplication>(argc, argv);
}

} // namespace

int main(int argc, char** argv)
{
    keepMemoryPrivate();
    std::signal(SIGPIPE, SIG_IGN); // a closed pipe is a failed write, not the end of the process
    const std::unique_ptr<QCoreApplication> application = applicationFor(argc, argv);
    return peelpack::cli::runCommandLine({argv + 1, argv + argc});
}
