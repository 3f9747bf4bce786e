#define CATCH_CONFIG_RUNNER
#include "tests/sync/support/catch.h"

#include <QCoreApplication>

int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    return Catch::Session().run(argc, argv);
}
