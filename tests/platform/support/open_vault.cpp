#include "platform/vault/sqlite_vault.h"

#include <QCoreApplication>

#include <cstdio>

/// Another process: opens the vault of the first argument with the code of the second, in hexadecimal, and says on
/// standard output how that went.
int main(int argc, char** argv)
{
    const QCoreApplication application(argc, argv);
    if (argc != 3) {
        return 2;
    }
    const auto code = peelpack::keys::fromHex(argv[2]);
    peelpack::vault::FolderMarkStore marks("no such folder");
    peelpack::keys::SystemRandom random;
    const auto opened =
        peelpack::vault::SqliteVault::openWithCode(argv[1], code.value_or(peelpack::keys::Bytes{}), marks, random);
    std::puts(opened ? "opened" : opened.error().sentence.c_str());
    return opened ? 0 : 1;
}
