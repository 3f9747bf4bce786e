#include "tests/platform/support/stored_vaults.h"

#include "tests/platform/support/filled_vault.h"

#include <fstream>
#include <iterator>

namespace peelpack::test {

std::string storedVaultName(int version)
{
    return "vault-v" + std::to_string(version) + ".peelvault";
}

keys::Bytes storedVault(int version)
{
    std::ifstream input(std::string(PEELPACK_FIXTURES) + "/journal/" + storedVaultName(version), std::ios::binary);
    return {std::istreambuf_iterator<char>(input), std::istreambuf_iterator<char>()};
}

keys::ByteView storedVaultCode()
{
    static const keys::Bytes code = keys::fromHex("4a020135d4717418c0b8892eb2998c0d").value();
    return code;
}

World storedVaultWorld()
{
    return busyWorld(5);
}

vault::Change storedVaultChange(int version)
{
    vault::Change change = changeOf(storedVaultWorld().all);
    change.notes = {{"program", keys::Bytes(32, 1)}, {"role", keys::Bytes{4}}};
    if (version > 1) {
        change.hold = {keys::Bytes(300, 3), keys::Bytes(200, 4)};
    }
    return change;
}

vault::Contents storedVaultContents(int version)
{
    const vault::Change change = storedVaultChange(version);
    vault::Contents contents{change.certificates, change.entries, {}, {}, {}};
    for (const auto& [name, value] : change.notes) {
        contents.notes.emplace(name, value.value());
    }
    for (const keys::Bytes& volume : change.hold) {
        contents.held.push_back({contents.held.size() + 1, volume});
    }
    return contents;
}

} // namespace peelpack::test
