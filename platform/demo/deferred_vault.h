#pragma once

#include "platform/vault/sqlite_vault.h"

namespace peelpack::demo {

/// A vault's file that is written seldom: what is saved waits in memory until flush(), many changes in one transaction.
/// Only where nothing is lost when the making ends early.
class DeferredVault final : public vault::Vault {
public:
    explicit DeferredVault(std::unique_ptr<vault::SqliteVault> file) : m_file(std::move(file)) {}

    [[nodiscard]] const keys::Id& id() const override { return m_file->id(); }
    vault::Result<vault::Contents> contents() override;
    vault::Result<bool> save(const vault::Change& change) override;
    vault::Result<const keys::DeviceKey*> device() override { return m_file->device(); }
    vault::Result<bool> renewDevice() override { return m_file->renewDevice(); }

    /// Writes what waits.
    vault::Result<bool> flush();

private:
    std::unique_ptr<vault::SqliteVault> m_file;
    vault::Change m_waiting;
};

} // namespace peelpack::demo
