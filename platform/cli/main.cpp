#include "platform/cli/commands.h"

#include <QCoreApplication>

#include <csignal>
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

} // namespace

int main(int argc, char** argv)
{
    keepMemoryPrivate();
    std::signal(SIGPIPE, SIG_IGN); // a closed pipe is a failed write, not the end of the process
    const QCoreApplication application(argc, argv);
    return peelpack::cli::runCommandLine({argv + 1, argv + argc});
}
