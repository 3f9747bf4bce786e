#pragma once

#include "platform/vault/install_mark.h"

#include <mutex>
#include <vector>

namespace peelpack::demo {

/// The install marks of this user, and which of them were made here: they go again when the making fails. Safe on every
/// thread.
class DemoMarks final : public vault::MarkStore {
public:
    explicit DemoMarks(std::string folder) : m_store(std::move(folder)) {}

    vault::Result<std::optional<keys::Secret>> find(const keys::Id& vault, const std::string& file) override;
    vault::Result<keys::Secret> make(const keys::Id& vault, const std::string& file,
                                     keys::RandomSource& random) override;
    void forgetAll();

private:
    std::mutex m_mutex;
    vault::FolderMarkStore m_store;
    std::vector<keys::Id> m_made;
};

} // namespace peelpack::demo
