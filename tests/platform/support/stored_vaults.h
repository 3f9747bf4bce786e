#pragma once

#include "platform/vault/vault.h"
#include "tests/sync/support/world.h"

#include <string>

/// The vaults of fixtures/journal, one for each schema step.
namespace peelpack::test {

/// "vault-v1.peelvault"
std::string storedVaultName(int version);
/// The file's bytes; empty when it is not there.
keys::Bytes storedVault(int version);
keys::ByteView storedVaultCode();

/// Whose entries are in it.
World storedVaultWorld();
/// What was put in, and what therefore is in it.
vault::Change storedVaultChange(int version);
vault::Contents storedVaultContents(int version);

} // namespace peelpack::test
