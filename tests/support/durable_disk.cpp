#include "tests/support/durable_disk.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <random>
#include <utility>

namespace peelpack::test {

namespace {

constexpr std::size_t sectorSize = 512;

std::string contentOf(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

void rewrite(const std::string& path, const std::string& content)
{
    std::ofstream file;
    file.exceptions(std::ios::failbit | std::ios::badbit);
    file.open(path, std::ios::binary | std::ios::trunc);
    file.write(content.data(), static_cast<std::streamsize>(content.size()));
    file.close();
}

} // namespace

class Luck {
public:
    explicit Luck(std::uint32_t seed) : m_seed(seed), m_engine(seed) {}

    /// 0 to most; nothing and everything are not left to chance.
    std::size_t upTo(std::size_t most)
    {
        switch (m_seed) {
        case keepNothing:
            return 0;
        case keepEverything:
            return most;
        default:
            return m_engine() % (most + 1);
        }
    }

    /// How many of the `length` bytes written at `at` arrived: all, none, or up to the end of one of the file's
    /// sectors.
    std::size_t arrived(std::size_t at, std::size_t length)
    {
        constexpr std::size_t dropped = 0;
        constexpr std::size_t torn = 1;
        const std::size_t fate = this->upTo(2);
        if (fate == dropped) {
            return 0;
        }
        const std::size_t firstEnd = sectorSize - at % sectorSize;
        if (fate != torn) {
            return length;
        }
        if (length <= firstEnd) {
            return this->upTo(1) == 0 ? 0 : length;
        }
        const std::size_t further = (length - firstEnd - 1) / sectorSize;
        return firstEnd + this->upTo(further) * sectorSize;
    }

private:
    std::uint32_t m_seed;
    std::mt19937 m_engine;
};

void DiskFile::wrote(std::size_t offset, std::string bytes)
{
    m_unsynced.push_back({offset, std::move(bytes), false});
}

void DiskFile::truncated(std::size_t size)
{
    m_unsynced.push_back({size, {}, true});
}

void DiskFile::synced()
{
    for (const Change& change : m_unsynced) {
        DiskFile::apply(change, change.bytes.size(), m_durable);
    }
    m_unsynced.clear();
}

std::string DiskFile::afterCrash(Luck& luck) const
{
    std::string content = m_durable;
    for (const Change& change : m_unsynced) {
        if (change.truncates) {
            if (luck.upTo(1) == 1) {
                DiskFile::apply(change, 0, content);
            }
        } else if (const std::size_t length = luck.arrived(change.at, change.bytes.size()); length > 0) {
            DiskFile::apply(change, length, content);
        }
    }
    return content;
}

void DiskFile::apply(const Change& change, std::size_t length, std::string& content)
{
    if (change.truncates) {
        content.resize(change.at);
        return;
    }
    content.resize(std::max(content.size(), change.at + length));
    content.replace(change.at, length, change.bytes, 0, length);
}

std::shared_ptr<DiskFile> DurableDisk::opened(const std::string& path, bool created)
{
    if (created) {
        Name& name = m_names[path];
        name.since.push_back(std::make_shared<DiskFile>(std::string()));
        return name.since.back();
    }
    const Name& name = this->known(path);
    return name.since.empty() ? name.durable : name.since.back();
}

void DurableDisk::aboutToDelete(const std::string& path)
{
    if (std::filesystem::exists(path)) {
        this->known(path);
    }
}

void DurableDisk::deleted(const std::string& path)
{
    m_names[path].since.push_back(nullptr);
}

void DurableDisk::synced(const std::string& path, const std::shared_ptr<DiskFile>& file)
{
    file->synced();
    Name& name = m_names[path];
    const auto here = std::find(name.since.begin(), name.since.end(), file);
    if (here != name.since.end()) {
        name.durable = file;
        name.since.erase(name.since.begin(), std::next(here));
    }
}

void DurableDisk::folderSynced(const std::string& path)
{
    const std::filesystem::path folder = std::filesystem::path(path).parent_path();
    for (auto& [other, name] : m_names) {
        if (std::filesystem::path(other).parent_path() == folder) {
            DurableDisk::settle(name);
        }
    }
}

bool DurableDisk::isUndecided() const
{
    return std::any_of(m_names.begin(), m_names.end(), [](const auto& entry) {
        const Name& name = entry.second;
        return !name.since.empty() || (name.durable && name.durable->hasUnsynced());
    });
}

void DurableDisk::crash(std::uint32_t seed) const
{
    Luck luck(seed);
    for (const auto& [path, name] : m_names) {
        const std::size_t changes = luck.upTo(name.since.size());
        const std::shared_ptr<DiskFile>& file = changes == 0 ? name.durable : name.since[changes - 1];
        if (file) {
            rewrite(path, file->afterCrash(luck));
        } else {
            std::filesystem::remove(path);
        }
    }
}

void DurableDisk::settle(Name& name)
{
    if (!name.since.empty()) {
        name.durable = name.since.back();
        name.since.clear();
    }
}

DurableDisk::Name& DurableDisk::known(const std::string& path)
{
    const auto [entry, isNew] = m_names.try_emplace(path);
    Name& name = entry->second;
    if (isNew) {
        name.durable = std::make_shared<DiskFile>(contentOf(path));
    }
    return name;
}

} // namespace peelpack::test
