#include "platform/vault/slot.h"

#include "sync/keys/code.h"
#include "sync/keys/hash.h"
#include "sync/keys/password.h"
#include "sync/keys/seal.h"

#include <array>

namespace peelpack::vault {
namespace {

using Kind = std::array<std::uint8_t, 1>;

Kind kindByte(SlotKind kind)
{
    return {static_cast<std::uint8_t>(kind)};
}

keys::Id checkOfMark(const keys::Id& vault, const keys::Secret& mark)
{
    return keys::shortHash("peelpack.markck1", {vault.view(), mark.view()});
}

keys::Hash commitmentTo(const keys::Id& vault, const keys::Secret& wrappingKey)
{
    return keys::authenticator("peelpack.slotcm1", {vault.view()}, wrappingKey.view());
}

keys::Bytes associatedData(const keys::Id& vault, SlotKind kind)
{
    keys::Bytes bytes(vault.bytes.begin(), vault.bytes.end());
    bytes.push_back(kindByte(kind)[0]);
    return bytes;
}

/// Fills what depends on the wrapping key.
void wrap(Slot& slot, const keys::Id& vault, const keys::Secret& wrappingKey, const keys::Secret& dataKey,
          keys::RandomSource& random)
{
    slot.commitment = commitmentTo(vault, wrappingKey);
    slot.sealed.resize(keys::aeadNonceBytes);
    random.fill(slot.sealed);
    keys::append(
        slot.sealed,
        keys::aeadSeal(wrappingKey.view(), slot.sealed, associatedData(vault, slot.kind), dataKey.view()).value());
    slot.checksum = slot.rightChecksum(vault);
}

const VaultError damagedSlot{Fault::Damaged, "What opens the vault is damaged; use the vault code, or a copy of the "
                                             "file."};

Result<keys::Secret> unwrap(const Slot& slot, const keys::Id& vault, const keys::Secret& wrappingKey,
                            const char* wrongSecret)
{
    if (!keys::sameHash(commitmentTo(vault, wrappingKey), slot.commitment)) {
        return VaultError{Fault::WrongSecret, wrongSecret};
    }
    const keys::ByteView sealed(slot.sealed);
    auto dataKey = keys::aeadOpen(wrappingKey.view(), sealed.first(keys::aeadNonceBytes),
                                  associatedData(vault, slot.kind), sealed.subspan(keys::aeadNonceBytes));
    if (!dataKey) {
        return damagedSlot;
    }
    return std::move(dataKey).value();
}

Result<keys::Secret> wrappingKeyOf(const keys::Id& vault, keys::ByteView secret, keys::ByteView salt,
                                   const keys::Secret& mark)
{
    const base::Result<keys::Secret> stretched = keys::stretch(secret, salt, keys::standardCost);
    if (!stretched) {
        return VaultError{Fault::CannotRead, stretched.error().sentence};
    }
    return keys::keyedHash("peelpack.slotky1", {vault.view(), mark.view()}, stretched.value().view());
}

bool undamaged(const Slot& slot, const keys::Id& vault)
{
    return slot.checksum == slot.rightChecksum(vault) && slot.sealed.size() > keys::aeadNonceBytes;
}

} // namespace

keys::Id Slot::rightChecksum(const keys::Id& vault) const
{
    return keys::shortHash("peelpack.slotok1",
                           {vault.view(), kindByte(kind), salt, markCheck.view(), commitment.view(), sealed});
}

Result<Slot> wrapUnderSecret(SecretKind kind, const keys::Id& vault, keys::ByteView secret, const keys::Secret& mark,
                             const keys::Secret& dataKey, keys::RandomSource& random)
{
    Slot slot;
    slot.kind = kind == SecretKind::Pin ? SlotKind::Pin : SlotKind::Passphrase;
    slot.salt.resize(keys::passwordSaltBytes);
    random.fill(slot.salt);
    slot.markCheck = checkOfMark(vault, mark);
    const Result<keys::Secret> key = wrappingKeyOf(vault, secret, slot.salt, mark);
    if (!key) {
        return key.error();
    }
    wrap(slot, vault, key.value(), dataKey, random);
    return slot;
}

Slot wrapUnderCode(const keys::Id& vault, keys::ByteView code, const keys::Secret& dataKey, keys::RandomSource& random)
{
    Slot slot;
    slot.kind = SlotKind::VaultCode;
    slot.salt.assign(keys::passwordSaltBytes, 0);
    wrap(slot, vault, keys::vaultCodeKey(code, vault).value(), dataKey, random);
    return slot;
}

Result<keys::Secret> unwrapWithSecret(const Slot& slot, const keys::Id& vault, keys::ByteView secret,
                                      const keys::Secret& mark)
{
    if (!undamaged(slot, vault)) {
        return damagedSlot;
    }
    if (checkOfMark(vault, mark) != slot.markCheck) {
        return VaultError{Fault::MarkMissing, "This vault is a copy, or was moved here from another device: it opens "
                                              "with its vault code only, and cannot sign until it is set up anew."};
    }
    const Result<keys::Secret> key = wrappingKeyOf(vault, secret, slot.salt, mark);
    if (!key) {
        return key.error();
    }
    return unwrap(slot, vault, key.value(),
                  slot.kind == SlotKind::Pin ? "That is not the PIN." : "That is not the passphrase.");
}

Result<keys::Secret> unwrapWithCode(const Slot& slot, const keys::Id& vault, keys::ByteView code)
{
    if (!undamaged(slot, vault)) {
        return VaultError{Fault::Damaged,
                          "The part that the vault code opens is damaged; use the passphrase or PIN, or "
                          "a copy of the file."};
    }
    const base::Result<keys::Secret> key = keys::vaultCodeKey(code, vault);
    if (!key) {
        return VaultError{Fault::WrongSecret, key.error().sentence};
    }
    return unwrap(slot, vault, key.value(), "That is the code of another vault.");
}

} // namespace peelpack::vault
