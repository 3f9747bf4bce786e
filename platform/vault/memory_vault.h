#pragma once

#include "platform/vault/vault.h"
#include "sync/keys/random.h"

namespace peelpack::vault {

/// A vault in memory, for tests: it keeps the same contract, and forgets everything with the process.
class MemoryVault final : public Vault {
public:
    explicit MemoryVault(keys::RandomSource& random);

    [[nodiscard]] const keys::Id& id() const override { return m_id; }
    Result<Contents> contents() override { return m_contents; }
    Result<bool> save(const Change& change) override;
    Result<const keys::DeviceKey*> device() override { return &m_device; }
    Result<bool> renewDevice() override;

private:
    keys::RandomSource& m_random;
    keys::Id m_id;
    keys::DeviceKey m_device;
    Contents m_contents;
    std::uint64_t m_nextHeld = 1;
};

} // namespace peelpack::vault
