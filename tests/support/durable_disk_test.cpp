#include "tests/support/catch.h"
#include "tests/support/fault_vfs.h"
#include "tests/support/temporary_folder.h"

#include <sqlite3.h>

#include <filesystem>
#include <fstream>
#include <iterator>
#include <set>
#include <string>
#include <vector>

using namespace peelpack::test;

namespace {

using Sort = Operation::Sort;

constexpr std::uint32_t seeds = 60;

/// A file as SQLite opens one, with the codes it gets.
class File {
public:
    explicit File(const std::string& path, int kind = SQLITE_OPEN_MAIN_DB)
        : m_memory(static_cast<std::size_t>(File::vfs()->szOsFile)), m_path(path)
    {
        m_opened = File::vfs()->xOpen(File::vfs(), m_path.c_str(), this->file(),
                                      SQLITE_OPEN_READWRITE | SQLITE_OPEN_CREATE | kind, nullptr);
    }
    ~File()
    {
        if (this->file()->pMethods != nullptr) {
            this->file()->pMethods->xClose(this->file());
        }
    }
    File(const File&) = delete;
    File& operator=(const File&) = delete;

    [[nodiscard]] int opened() const { return m_opened; }
    int write(sqlite3_int64 offset, const std::string& bytes)
    {
        return this->file()->pMethods->xWrite(this->file(), bytes.data(), static_cast<int>(bytes.size()), offset);
    }
    int readFirst()
    {
        char first = 0;
        return this->file()->pMethods->xRead(this->file(), &first, 1, 0);
    }
    int truncate(sqlite3_int64 size) { return this->file()->pMethods->xTruncate(this->file(), size); }
    int sync() { return this->file()->pMethods->xSync(this->file(), SQLITE_SYNC_NORMAL); }

    static int remove(const std::string& path, bool syncFolder)
    {
        return File::vfs()->xDelete(File::vfs(), path.c_str(), syncFolder ? 1 : 0);
    }

private:
    static sqlite3_vfs* vfs() { return sqlite3_vfs_find(nullptr); }
    sqlite3_file* file() { return reinterpret_cast<sqlite3_file*>(m_memory.data()); }

    std::vector<char> m_memory;
    std::string m_path; ///< the real VFS keeps a pointer to it
    int m_opened = SQLITE_ERROR;
};

std::string contentOf(const std::string& path)
{
    if (!std::filesystem::exists(path)) {
        return "no file";
    }
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), std::istreambuf_iterator<char>()};
}

/// What crashes with many seeds leave of a file.
std::set<std::string> outcomes(const FaultVfs& vfs, const std::string& path)
{
    std::set<std::string> contents;
    for (std::uint32_t seed = 0; seed < seeds; ++seed) {
        vfs.disk().crash(seed);
        contents.insert(contentOf(path));
    }
    return contents;
}

std::string outcome(const FaultVfs& vfs, const std::string& path, std::uint32_t seed)
{
    vfs.disk().crash(seed);
    return contentOf(path);
}

} // namespace

TEST_CASE("operations are counted by sort, reads and later openings are not")
{
    const TemporaryFolder folder;
    const std::string path = folder.path() / "file";
    const FaultVfs vfs;
    {
        File file(path);
        REQUIRE(file.write(0, "words") == SQLITE_OK);
        REQUIRE(file.readFirst() == SQLITE_OK);
        REQUIRE(file.truncate(2) == SQLITE_OK);
        REQUIRE(file.sync() == SQLITE_OK);
    }
    REQUIRE(File(path).opened() == SQLITE_OK);
    REQUIRE(File::remove(path, false) == SQLITE_OK);

    std::string counted;
    for (const Operation& operation : vfs.operations()) {
        counted +=
            std::string(nameOf(operation.sort)) + ' ' + operation.file + ' ' + std::to_string(operation.bytes) + '\n';
    }
    REQUIRE(counted == "create file 0\nwrite file 5\ntruncate file 2\nsync file 0\ndelete file 0\n");
}

TEST_CASE("synced bytes stay; later writes and truncations are there or not")
{
    const TemporaryFolder folder;
    const std::string path = folder.path() / "file";
    const FaultVfs vfs;
    {
        File file(path);
        file.write(0, "old");
        file.sync();
    }
    REQUIRE_FALSE(vfs.disk().isUndecided());
    REQUIRE(outcomes(vfs, path) == std::set<std::string>{"old"});
    {
        File file(path);
        file.truncate(1);
        file.write(2, "x");
    }
    REQUIRE(vfs.disk().isUndecided());
    REQUIRE(outcomes(vfs, path) == std::set<std::string>{"old", "o", "olx", std::string("o\0x", 3)});
    REQUIRE(outcome(vfs, path, keepNothing) == "old");
    REQUIRE(outcome(vfs, path, keepEverything) == std::string("o\0x", 3));
}

TEST_CASE("a write is torn where a sector of the file ends")
{
    const TemporaryFolder folder;
    const std::string path = folder.path() / "file";
    const FaultVfs vfs;
    {
        File file(path);
        file.sync();
        file.write(500, std::string(1500, 'x'));
    }
    std::set<std::size_t> sizes;
    for (const std::string& content : outcomes(vfs, path)) {
        sizes.insert(content.size());
    }
    REQUIRE(sizes == std::set<std::size_t>{0, 512, 1024, 1536, 2000});
}

TEST_CASE("a new file's name is on the disk from its sync, a deletion from a sync of the folder")
{
    const TemporaryFolder folder;
    const std::string database = folder.path() / "file";
    const std::string journal = folder.path() / "file-journal";
    const FaultVfs vfs;
    REQUIRE(File(database).opened() == SQLITE_OK);
    REQUIRE(outcomes(vfs, database) == std::set<std::string>{"no file", ""});
    File(database).sync();
    REQUIRE(outcomes(vfs, database) == std::set<std::string>{""});

    File::remove(database, false);
    REQUIRE(outcomes(vfs, database) == std::set<std::string>{"no file", ""});
    REQUIRE(outcome(vfs, database, keepNothing).empty());

    SECTION("the deletion's own")
    {
        File(journal).sync();
        File::remove(journal, true);
        REQUIRE(outcomes(vfs, journal) == std::set<std::string>{"no file"});
        REQUIRE(outcomes(vfs, database) == std::set<std::string>{"no file"});
    }
    SECTION("that of a new journal, with its first sync only")
    {
        {
            File again(database);
            again.write(0, "new");
            again.sync();
            File file(journal, SQLITE_OPEN_MAIN_JOURNAL);
            File::remove(database, false);
            file.sync();
            REQUIRE(File(database).opened() == SQLITE_OK);
            file.sync();
        }
        REQUIRE(outcomes(vfs, database) == std::set<std::string>{"no file", ""});
    }
}

TEST_CASE("a file that was there before is known from its opening or deletion on, and can come back")
{
    const TemporaryFolder folder;
    const std::string path = folder.path() / "file";
    std::ofstream(path) << "old";
    FaultVfs vfs;
    File::remove(path, false);
    {
        File file(path);
        file.write(0, "new");
    }
    REQUIRE(outcomes(vfs, path) == std::set<std::string>{"old", "no file", "", "new"});
    vfs.crash(keepNothing);
    REQUIRE(contentOf(path) == "old");
    REQUIRE_FALSE(vfs.disk().isUndecided());
}

TEST_CASE("after a stop nothing works until it is cleared")
{
    const TemporaryFolder folder;
    const std::string path = folder.path() / "file";
    FaultVfs vfs;
    {
        File file(path);
        file.write(0, "01234567");
        file.sync();

        SECTION("before a write")
        {
            vfs.arm(Fault::StopBefore, 2);
            REQUIRE(file.write(0, "a") == SQLITE_OK);
            REQUIRE_FALSE(vfs.hasStruck());
            REQUIRE(file.write(1, "bcde") == SQLITE_IOERR);
        }
        SECTION("after a write")
        {
            vfs.arm(Fault::StopAfter, 1);
            REQUIRE(file.write(0, "a") == SQLITE_OK);
        }
        SECTION("within a write")
        {
            vfs.arm(Fault::ShortWrite, 1);
            REQUIRE(file.write(0, "abcd") == SQLITE_IOERR);
            REQUIRE(contentOf(path) == "ab234567");
        }
        SECTION("at what should be a short write and is a sync")
        {
            vfs.arm(Fault::ShortWrite, 1);
            REQUIRE(file.sync() == SQLITE_IOERR);
        }
        REQUIRE(vfs.hasStruck());
        REQUIRE(file.write(0, "z") == SQLITE_IOERR);
        REQUIRE(file.readFirst() == SQLITE_IOERR);
        REQUIRE(file.truncate(0) == SQLITE_IOERR);
        REQUIRE(file.sync() == SQLITE_IOERR);
        REQUIRE(File(path).opened() == SQLITE_IOERR);
        REQUIRE(File::remove(path, false) == SQLITE_IOERR);
        vfs.clear();
        REQUIRE(file.readFirst() == SQLITE_OK);
        REQUIRE(file.write(7, "z") == SQLITE_OK);
    }
    vfs.crash(keepNothing);
    REQUIRE(contentOf(path) == "01234567");
}

TEST_CASE("an operation that fails once leaves nothing behind and says what failed")
{
    const TemporaryFolder folder;
    const std::string path = folder.path() / "file";
    FaultVfs vfs;
    vfs.arm(Fault::FailOnce, 1);
    REQUIRE(File(path).opened() == SQLITE_CANTOPEN);
    REQUIRE(contentOf(path) == "no file");
    {
        File file(path);
        vfs.arm(Fault::FailOnce, 1);
        REQUIRE(file.write(0, "words") == SQLITE_IOERR_WRITE);
        REQUIRE(contentOf(path).empty());
        REQUIRE(file.write(0, "words") == SQLITE_OK);
        vfs.arm(Fault::FailOnce, 1);
        REQUIRE(file.truncate(0) == SQLITE_IOERR_TRUNCATE);
        REQUIRE(contentOf(path) == "words");
        vfs.arm(Fault::FailOnce, 1);
        REQUIRE(file.sync() == SQLITE_IOERR_FSYNC);
    }
    REQUIRE(outcome(vfs, path, keepNothing) == "no file");
    REQUIRE(outcome(vfs, path, keepEverything) == "words");
    vfs.arm(Fault::FailOnce, 1);
    REQUIRE(File::remove(path, false) == SQLITE_IOERR_DELETE);
    REQUIRE(contentOf(path) == "words");
}

TEST_CASE("a full disk refuses what makes a file longer until there is room again")
{
    const TemporaryFolder folder;
    const std::string path = folder.path() / "file";
    FaultVfs vfs;
    {
        File file(path);
        file.write(0, "words");
        vfs.arm(Fault::DiskFull, 1);
        REQUIRE(file.write(0, "W") == SQLITE_FULL);
        REQUIRE(file.write(0, "W") == SQLITE_OK);
        REQUIRE(file.write(4, "s!") == SQLITE_FULL);
        REQUIRE(file.sync() == SQLITE_OK);
        vfs.clear();
        REQUIRE(file.write(5, "!") == SQLITE_OK);
    }
    REQUIRE(outcome(vfs, path, keepNothing) == "Words");
    REQUIRE(outcome(vfs, path, keepEverything) == "Words!");
}

TEST_CASE("the faults are gone with the object")
{
    const TemporaryFolder folder;
    {
        FaultVfs vfs;
        REQUIRE(std::string(sqlite3_vfs_find(nullptr)->zName) == "fault");
        vfs.arm(Fault::StopBefore, 1);
    }
    REQUIRE(std::string(sqlite3_vfs_find(nullptr)->zName) == "unix");
    REQUIRE(File((folder.path() / "file").string()).opened() == SQLITE_OK);
}
