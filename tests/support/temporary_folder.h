#pragma once

#include <filesystem>

namespace peelpack::test {

/// An empty folder, in memory where the system has such a place, that is gone with the object. Throws
/// std::runtime_error when it cannot be made.
class TemporaryFolder {
public:
    TemporaryFolder();
    /// Below a folder that is there.
    explicit TemporaryFolder(const std::filesystem::path& parent);
    ~TemporaryFolder();
    TemporaryFolder(const TemporaryFolder&) = delete;
    TemporaryFolder& operator=(const TemporaryFolder&) = delete;

    [[nodiscard]] const std::filesystem::path& path() const { return m_path; }

private:
    std::filesystem::path m_path;
};

} // namespace peelpack::test
