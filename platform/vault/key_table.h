#pragma once

#include "platform/vault/database.h"
#include "platform/vault/slot.h"

/// What a vault's file says before anything is unlocked: its id, what wraps its data key, and the wrong tries.
namespace peelpack::vault {

/// Damaged when it is not there.
Result<keys::Id> vaultId(const Database& database);

/// The slot of the vault code, or the one of the passphrase or PIN. Damaged when there is none.
Result<Slot> slotFor(const Database& database, bool code);
/// Within a transaction.
Result<bool> writeSlot(const Database& database, const Slot& slot);

Result<WrongTries> wrongTries(const Database& database);
/// In a transaction of its own.
Result<bool> writeTries(Database& database, const WrongTries& tries);

} // namespace peelpack::vault
