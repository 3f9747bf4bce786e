#include "tests/platform/support/vault_place.h"
#include "tests/sync/support/catch.h"

#include <algorithm>

// What lies on the disk says nothing of anybody, and none of the keys.
namespace peelpack::test {
namespace {

/// Keeps a copy of everything that was drawn.
class RecordingRandom final : public keys::RandomSource {
public:
    void fill(std::span<std::uint8_t> bytes) override
    {
        m_random.fill(bytes);
        drawn.emplace_back(bytes.begin(), bytes.end());
    }

    std::vector<keys::Bytes> drawn;

private:
    SeededRandom m_random{41};
};

bool holds(const keys::Bytes& bytes, keys::ByteView needle)
{
    return std::search(bytes.begin(), bytes.end(), needle.begin(), needle.end()) != bytes.end();
}

keys::Bytes utf16(const std::string& ascii, bool bigEndian)
{
    keys::Bytes wide;
    for (const char letter : ascii) {
        const auto byte = static_cast<std::uint8_t>(letter);
        wide.push_back(bigEndian ? 0 : byte);
        wide.push_back(bigEndian ? byte : 0);
    }
    return wide;
}

std::map<std::string, keys::Bytes> filesUnder(const std::filesystem::path& folder)
{
    std::map<std::string, keys::Bytes> files;
    for (const auto& item : std::filesystem::recursive_directory_iterator(folder)) {
        if (item.is_regular_file()) {
            files[item.path().filename().string()] = readFile(item.path().string());
        }
    }
    return files;
}

const std::vector<std::string> texts{"Invented Director",
                                     "Invented Name",
                                     "Invented Preceptor",
                                     "Invented Surgeon",
                                     "Laparoscopic cholecystectomy",
                                     "cholecyst",
                                     "held by the second assistant",
                                     "Calm and ahead of the surgeon.",
                                     "North Pavilion",
                                     "Class of 2027",
                                     "I scrubbed with this student",
                                     "Entered twice by mistake.",
                                     "four odd words here",
                                     "Name in a setting"};

void checkNothingShows(const std::map<std::string, keys::Bytes>& files, const RecordingRandom& random,
                       keys::ByteView code)
{
    constexpr std::size_t keyBytes = 32;
    for (const auto& [name, bytes] : files) {
        for (const std::string& text : texts) {
            INFO(text << " in " << name);
            CHECK_FALSE(holds(bytes, keys::bytesOf(text)));
            CHECK_FALSE(holds(bytes, utf16(text, false)));
            CHECK_FALSE(holds(bytes, utf16(text, true)));
        }
        INFO(name);
        CHECK_FALSE(holds(bytes, code));
        // Install mark, data key, and two seeds of every set of device keys: only the mark lies in its own file.
        const auto keysThere = std::count_if(random.drawn.begin(), random.drawn.end(), [&](const keys::Bytes& drawn) {
            return drawn.size() == keyBytes && holds(bytes, drawn);
        });
        CHECK(keysThere == (name.ends_with(".mark") ? 1 : 0));
    }
}

} // namespace

TEST_CASE("The vault, its log of changes and the marks hold no text, no key and no seed in plain", "[vault]")
{
    const TemporaryFolder folder;
    const std::string file = (folder.path() / "v.peelvault").string();
    vault::FolderMarkStore marks((folder.path() / "marks").string());
    RecordingRandom random;
    auto made = vault::SqliteVault::make(file, vault::SecretKind::Passphrase, passphrase(), marks, random);
    REQUIRE(made.ok());
    vault::MadeVault parts = std::move(made).value();
    World world;
    world.setUp();
    world.sheet(world.student, world.studentId, idOf(0x51));
    world.append(world.student, world.studentId, journal::Withdrawn{idOf(0x51), "Entered twice by mistake."});
    vault::Change change = changeOf(world.all);
    const std::string setting = "Name in a setting";
    change.notes["name"] = keys::Bytes(setting.begin(), setting.end());
    change.hold = {volumeOf(world.all)};
    save(*parts.vault, change);
    REQUIRE(parts.vault->changeSecret(vault::SecretKind::Passphrase, keys::bytesOf("another odd sentence")).ok());
    REQUIRE(parts.vault->renewDevice().ok());

    auto files = filesUnder(folder.path());
    REQUIRE(files.size() == 3);
    REQUIRE(files.at("v.peelvault-wal").size() > 10'000);
    CHECK(holds(files.at("v.peelvault"), parts.vault->id().view())); // the search finds what is there
    checkNothingShows(files, random, parts.code.view());
    const auto keysDrawn = std::count_if(random.drawn.begin(), random.drawn.end(),
                                         [](const keys::Bytes& drawn) { return drawn.size() == 32; });
    CHECK(keysDrawn == 6);
    parts.vault.reset();
    files = filesUnder(folder.path());
    CHECK(files.size() == 2);
    checkNothingShows(files, random, parts.code.view());
    // In what was saved all of it was there.
    const keys::Bytes& volume = change.hold.front();
    for (const std::string text : {"Invented Surgeon", "Entered twice by mistake.", "North Pavilion"}) {
        CHECK(holds(volume, keys::bytesOf(text)));
    }
}

} // namespace peelpack::test
