#pragma once

#include <cstddef>
#include <cstdint>
#include <map>
#include <memory>
#include <string>
#include <vector>

namespace peelpack::test {

/// Seeds of a crash with a fixed meaning: what was not synced is all lost (the worst disk), or all there (the process
/// was killed, the machine ran on). Any other seed decides change by change.
constexpr std::uint32_t keepNothing = 0;
constexpr std::uint32_t keepEverything = 1;

/// The luck of one crash: the same seed asked the same questions answers alike everywhere.
class Luck;

/// One file's bytes as a power loss would leave them: those synced for certain, and what was changed since.
class DiskFile {
public:
    explicit DiskFile(std::string durable) : m_durable(std::move(durable)) {}

    void wrote(std::size_t offset, std::string bytes);
    void truncated(std::size_t size);
    void synced();

    [[nodiscard]] bool hasUnsynced() const { return !m_unsynced.empty(); }
    /// Each unsynced change is there, or not, or (a write) its first sectors are. A gap before a write that is there
    /// reads as zeros.
    [[nodiscard]] std::string afterCrash(Luck& luck) const;

private:
    struct Change {
        std::size_t at = 0;
        std::string bytes;
        bool truncates = false; ///< to `at` bytes, and `bytes` is empty
    };
    static void apply(const Change& change, std::size_t length, std::string& content);

    std::string m_durable;
    std::vector<Change> m_unsynced;
};

/// What of the files that were opened or deleted would outlast a power loss: their bytes, and their names in the
/// folder. Paths are absolute. Told of every change by FaultVfs.
class DurableDisk {
public:
    /// A file that was opened; `created` says that it was not there before. What an unknown file holds is durable.
    std::shared_ptr<DiskFile> opened(const std::string& path, bool created);
    /// Call before the deletion, so that a file not seen so far can still be read.
    void aboutToDelete(const std::string& path);
    void deleted(const std::string& path);
    /// The bytes of `file` and, if it was new, its name under `path` are on the disk.
    void synced(const std::string& path, const std::shared_ptr<DiskFile>& file);
    /// All that was created and deleted in the folder of `path` is on the disk.
    void folderSynced(const std::string& path);

    /// Whether seeds can differ in what a crash leaves.
    [[nodiscard]] bool isUndecided() const;
    /// Rewrites the files in the folder as the power loss left them. No such file may be open. Can be done again with
    /// another seed. Throws std::ios_base::failure or std::filesystem::filesystem_error when the folder does not let
    /// it.
    void crash(std::uint32_t seed) const;

private:
    /// What a name stands for; null means no file.
    struct Name {
        std::shared_ptr<DiskFile> durable;
        std::vector<std::shared_ptr<DiskFile>> since; ///< creations and deletions not on the disk, in order
    };
    static void settle(Name& name);
    Name& known(const std::string& path);

    std::map<std::string, Name> m_names;
};

} // namespace peelpack::test
