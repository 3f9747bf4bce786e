#include "platform/cli/commands.h"

#include <QCoreApplication>

#include <csignal>

int main(int argc, char** argv)
{
    std::signal(SIGPIPE, SIG_IGN); // a closed pipe is a failed write, not the end of the process
    const QCoreApplication application(argc, argv);
    return peelpack::cli::runCommandLine({argv + 1, argv + argc});
}
