#include "tests/platform/support/clone_places.h"

#include "tests/sync/support/catch.h"

#include <filesystem>

namespace peelpack::test {
namespace {

/// All that a vault is, apart from its mark.
struct Stored {
    vault::Contents contents;
    keys::Bytes signing;
    keys::Bytes opening;
    std::uint64_t keysOpenUnder = 0; ///< the mark
    std::uint64_t nextHeld = 1;
};

class StoredVault final : public vault::Vault {
public:
    StoredVault(Stored& stored, std::uint64_t mark, keys::RandomSource& random)
        : m_stored(stored), m_mark(mark), m_random(random)
    {
    }

    [[nodiscard]] const keys::Id& id() const override { return m_id; }
    vault::Result<vault::Contents> contents() override { return m_stored.contents; }

    vault::Result<bool> save(const vault::Change& change) override
    {
        vault::Contents& all = m_stored.contents;
        all.certificates.insert(all.certificates.end(), change.certificates.begin(), change.certificates.end());
        all.entries.insert(all.entries.end(), change.entries.begin(), change.entries.end());
        for (const auto& [name, value] : change.notes) {
            all.notes.erase(name);
            if (value) {
                all.notes[name] = *value;
            }
        }
        std::erase_if(all.held, [&](const vault::HeldVolume& held) {
            return std::find(change.release.begin(), change.release.end(), held.number) != change.release.end();
        });
        for (const keys::Bytes& volume : change.hold) {
            all.held.push_back({m_stored.nextHeld++, volume});
        }
        return true;
    }

    vault::Result<const keys::DeviceKey*> device() override
    {
        if (m_stored.keysOpenUnder != m_mark) {
            return vault::VaultError{vault::Fault::MarkMissing, "A copy."};
        }
        if (!m_device) {
            m_device.emplace(keys::deviceKey({keys::Secret(m_stored.signing), keys::Secret(m_stored.opening)}).value());
        }
        return &*m_device;
    }

    vault::Result<bool> renewDevice() override
    {
        const keys::DeviceSeeds seeds = keys::newDeviceSeeds(m_random);
        m_stored.signing.assign(seeds.signing.view().begin(), seeds.signing.view().end());
        m_stored.opening.assign(seeds.opening.view().begin(), seeds.opening.view().end());
        m_stored.keysOpenUnder = m_mark;
        m_device.reset();
        return true;
    }

private:
    Stored& m_stored;
    std::uint64_t m_mark;
    keys::RandomSource& m_random;
    keys::Id m_id = idOf(9);
    std::optional<keys::DeviceKey> m_device;
};

class ModelPlaces final : public Places {
public:
    ModelPlaces(std::size_t count, const vault::Change& start, keys::RandomSource& random)
    {
        for (std::size_t i = 0; i < count; ++i) {
            m_places.push_back(std::make_unique<One>(random, ++m_lastMark));
        }
        m_places[0]->setUpAnew();
        REQUIRE(m_places[0]->open()->save(start).ok());
    }

    Place& at(std::size_t number) override { return *m_places[number]; }
    void backUp(std::size_t number) override
    {
        m_backups.emplace_back(m_places[number]->stored, m_places[number]->mark);
    }
    [[nodiscard]] std::size_t backups() const override { return m_backups.size(); }
    void restore(std::size_t backup, std::size_t number, bool withMark) override
    {
        m_places[number]->stored = m_backups[backup].first;
        m_places[number]->mark = withMark ? m_backups[backup].second : ++m_lastMark;
    }

private:
    struct One final : Place {
        One(keys::RandomSource& source, std::uint64_t first) : mark(first), random(source) {}
        std::unique_ptr<vault::Vault> open() override { return std::make_unique<StoredVault>(stored, mark, random); }
        void setUpAnew() override { REQUIRE(open()->renewDevice().ok()); }

        Stored stored;
        std::uint64_t mark;
        keys::RandomSource& random;
    };

    std::uint64_t m_lastMark = 0;
    std::vector<std::unique_ptr<One>> m_places;
    std::vector<std::pair<Stored, std::uint64_t>> m_backups;
};

/// Marks of a folder; or, on a machine that was cloned as a whole, the one that was cloned along.
class CarriedMarks final : public vault::MarkStore {
public:
    explicit CarriedMarks(const std::string& folder) : m_own(folder) {}

    vault::Result<std::optional<keys::Secret>> find(const keys::Id& vault, const std::string& file) override
    {
        return carried.empty() ? m_own.find(vault, file) : std::optional(keys::Secret(carried));
    }
    vault::Result<keys::Secret> make(const keys::Id& vault, const std::string& file,
                                     keys::RandomSource& random) override
    {
        carried.clear();
        return m_own.make(vault, file, random);
    }

    keys::Bytes carried;

private:
    vault::FolderMarkStore m_own;
};

class FilePlaces final : public Places {
public:
    FilePlaces(std::size_t count, const vault::Change& start, keys::RandomSource& random) : m_random(random)
    {
        for (std::size_t i = 0; i < count; ++i) {
            m_places.push_back(std::make_unique<One>(*this, m_folder.path() / std::to_string(i)));
        }
        One& first = *m_places[0];
        auto made =
            vault::SqliteVault::make(first.file, vault::SecretKind::Passphrase, passphrase(), first.marks, random);
        REQUIRE(made.ok());
        vault::MadeVault parts = std::move(made).value();
        m_code = std::move(parts.code);
        parts.vault.reset();
        REQUIRE(first.open()->save(start).ok());
    }

    Place& at(std::size_t number) override { return *m_places[number]; }
    void backUp(std::size_t number) override
    {
        One& from = *m_places[number];
        Backup backup{readFile(from.file), {}};
        auto mark = from.marks.find(from.openFile()->id(), from.file);
        REQUIRE(mark.ok());
        if (mark.value()) {
            backup.mark.assign(mark.value()->view().begin(), mark.value()->view().end());
        }
        m_backups.push_back(std::move(backup));
    }
    [[nodiscard]] std::size_t backups() const override { return m_backups.size(); }
    void restore(std::size_t backup, std::size_t number, bool withMark) override
    {
        One& to = *m_places[number];
        to.marks.carried.clear();
        if (withMark) {
            to.marks.carried = m_backups[backup].mark;
        } else {
            // As most programs restore: the old file goes, a new one comes.
            std::filesystem::remove(to.file);
        }
        writeFile(to.file, m_backups[backup].bytes);
    }

private:
    struct One final : Place {
        One(FilePlaces& places, const std::filesystem::path& folder)
            : all(places), file((folder / "v.peelvault").string()), marks((folder / "marks").string())
        {
            std::filesystem::create_directories(folder);
        }
        std::unique_ptr<vault::SqliteVault> openFile()
        {
            auto opened = vault::SqliteVault::openWithCode(file, all.m_code.view(), marks, all.m_random);
            INFO((opened ? "" : opened.error().sentence));
            REQUIRE(opened.ok());
            return std::move(opened).value();
        }
        std::unique_ptr<vault::Vault> open() override { return openFile(); }
        void setUpAnew() override
        {
            const auto vault = openFile();
            REQUIRE(vault->changeSecret(vault::SecretKind::Passphrase, passphrase()).ok());
            REQUIRE(vault->renewDevice().ok());
        }

        FilePlaces& all;
        std::string file;
        CarriedMarks marks;
    };
    struct Backup {
        keys::Bytes bytes;
        keys::Bytes mark; ///< empty: there was none
    };

    TemporaryFolder m_folder;
    keys::RandomSource& m_random;
    keys::Secret m_code;
    std::vector<std::unique_ptr<One>> m_places;
    std::vector<Backup> m_backups;
};

} // namespace

std::unique_ptr<Places> modelPlaces(std::size_t count, const vault::Change& start, keys::RandomSource& random)
{
    return std::make_unique<ModelPlaces>(count, start, random);
}

std::unique_ptr<Places> filePlaces(std::size_t count, const vault::Change& start, keys::RandomSource& random)
{
    return std::make_unique<FilePlaces>(count, start, random);
}

} // namespace peelpack::test
