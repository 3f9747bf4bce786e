#include "tests/support/fault_vfs.h"

#include <cstdlib>
#include <filesystem>
#include <iostream>
#include <system_error>

namespace peelpack::test {

namespace {

using Sort = Operation::Sort;
using Lock = std::lock_guard<std::mutex>;

int failureOf(Sort sort)
{
    switch (sort) {
    case Sort::Create:
        return SQLITE_CANTOPEN;
    case Sort::Write:
        return SQLITE_IOERR_WRITE;
    case Sort::Sync:
        return SQLITE_IOERR_FSYNC;
    case Sort::Truncate:
        return SQLITE_IOERR_TRUNCATE;
    case Sort::Delete:
        return SQLITE_IOERR_DELETE;
    }
    return SQLITE_IOERR;
}

/// The unix VFS syncs the folder with the first sync of a journal that it was allowed to create.
bool syncsFolder(int flags)
{
    constexpr int journals = SQLITE_OPEN_MAIN_JOURNAL | SQLITE_OPEN_SUPER_JOURNAL | SQLITE_OPEN_WAL;
    return (flags & SQLITE_OPEN_CREATE) != 0 && (flags & journals) != 0;
}

} // namespace

/// What SQLite holds for an open file; the real VFS's own follows it in memory.
struct FaultVfs::OpenFile {
    struct State {
        FaultVfs* vfs;
        std::string path;               ///< empty for a temporary file
        std::shared_ptr<DiskFile> disk; ///< null for a temporary file, which no crash leaves
        bool syncsFolder;
    };
    sqlite3_file base;
    State* state;

    static State& stateOf(sqlite3_file* file) { return *reinterpret_cast<OpenFile*>(file)->state; }
    static sqlite3_file* realOf(sqlite3_file* file)
    {
        return reinterpret_cast<sqlite3_file*>(reinterpret_cast<OpenFile*>(file) + 1);
    }
};

/// The functions that SQLite calls.
struct FaultVfs::Methods {
    static FaultVfs& of(sqlite3_vfs* vfs) { return *static_cast<FaultVfs*>(vfs->pAppData); }

    static int codeOf(Ruling ruling, Sort sort)
    {
        switch (ruling) {
        case Ruling::Perform:
            return SQLITE_OK;
        case Ruling::Fail:
            return failureOf(sort);
        case Ruling::Full:
            return SQLITE_FULL;
        case Ruling::Shorten:
        case Ruling::Stop:
            break;
        }
        return SQLITE_IOERR;
    }

    static int open(sqlite3_vfs* vfs, sqlite3_filename name, sqlite3_file* file, int flags, int* outFlags)
    {
        FaultVfs& self = Methods::of(vfs);
        const Lock lock(self.m_mutex);
        file->pMethods = nullptr;
        if (self.m_stopped) {
            return SQLITE_IOERR;
        }
        const bool temporary = name == nullptr || (flags & SQLITE_OPEN_DELETEONCLOSE) != 0;
        const std::string path = temporary ? std::string() : std::string(name);
        std::error_code unreadable;
        const bool creates =
            (flags & SQLITE_OPEN_CREATE) != 0 && (temporary || !std::filesystem::exists(path, unreadable));
        if (creates) {
            const Ruling ruling = self.rule(Sort::Create, path, 0, false);
            if (ruling != Ruling::Perform) {
                return Methods::codeOf(ruling, Sort::Create);
            }
        }
        sqlite3_file* real = OpenFile::realOf(file);
        real->pMethods = nullptr;
        const int code = self.m_real->xOpen(self.m_real, name, real, flags, outFlags);
        if (code != SQLITE_OK) {
            if (real->pMethods != nullptr) {
                real->pMethods->xClose(real);
            }
            return code;
        }
        auto state = std::make_unique<OpenFile::State>(OpenFile::State{&self, path, nullptr, syncsFolder(flags)});
        if (!temporary) {
            state->disk = self.m_disk.opened(path, creates);
        }
        reinterpret_cast<OpenFile*>(file)->state = state.release();
        file->pMethods = &Methods::ofFiles;
        ++self.m_openFiles;
        return SQLITE_OK;
    }

    static int remove(sqlite3_vfs* vfs, const char* name, int syncFolder)
    {
        FaultVfs& self = Methods::of(vfs);
        const Lock lock(self.m_mutex);
        const Ruling ruling = self.rule(Sort::Delete, name, 0, false);
        if (ruling != Ruling::Perform) {
            return Methods::codeOf(ruling, Sort::Delete);
        }
        self.m_disk.aboutToDelete(name);
        const int code = self.m_real->xDelete(self.m_real, name, 0);
        if (code == SQLITE_OK) {
            self.m_disk.deleted(name);
            if ((syncFolder & 1) != 0) {
                self.m_disk.folderSynced(name);
            }
        }
        return code;
    }

    static int access(sqlite3_vfs* vfs, const char* name, int flags, int* result)
    {
        const FaultVfs& self = Methods::of(vfs);
        return self.hasStopped() ? SQLITE_IOERR : self.m_real->xAccess(self.m_real, name, flags, result);
    }

    static int close(sqlite3_file* file)
    {
        const std::unique_ptr<OpenFile::State> state(&OpenFile::stateOf(file));
        const Lock lock(state->vfs->m_mutex);
        sqlite3_file* real = OpenFile::realOf(file);
        --state->vfs->m_openFiles;
        file->pMethods = nullptr;
        return real->pMethods->xClose(real);
    }

    static int write(sqlite3_file* file, const void* bytes, int length, sqlite3_int64 offset)
    {
        const OpenFile::State& state = OpenFile::stateOf(file);
        FaultVfs& self = *state.vfs;
        const Lock lock(self.m_mutex);
        sqlite3_file* real = OpenFile::realOf(file);
        sqlite3_int64 size = 0;
        if (const int code = real->pMethods->xFileSize(real, &size); code != SQLITE_OK) {
            return code;
        }
        const Ruling ruling = self.rule(Sort::Write, state.path, length, offset + length > size);
        const int written = ruling == Ruling::Perform ? length : ruling == Ruling::Shorten ? length / 2 : 0;
        if (written > 0) {
            const int code = real->pMethods->xWrite(real, bytes, written, offset);
            if (code != SQLITE_OK) {
                return code;
            }
            if (state.disk) {
                state.disk->wrote(static_cast<std::size_t>(offset),
                                  std::string(static_cast<const char*>(bytes), static_cast<std::size_t>(written)));
            }
        }
        return Methods::codeOf(ruling, Sort::Write);
    }

    static int truncate(sqlite3_file* file, sqlite3_int64 size)
    {
        const OpenFile::State& state = OpenFile::stateOf(file);
        const Lock lock(state.vfs->m_mutex);
        const Ruling ruling = state.vfs->rule(Sort::Truncate, state.path, size, false);
        if (ruling != Ruling::Perform) {
            return Methods::codeOf(ruling, Sort::Truncate);
        }
        sqlite3_file* real = OpenFile::realOf(file);
        const int code = real->pMethods->xTruncate(real, size);
        if (code == SQLITE_OK && state.disk) {
            state.disk->truncated(static_cast<std::size_t>(size));
        }
        return code;
    }

    static int sync(sqlite3_file* file, int /*flags*/)
    {
        OpenFile::State& state = OpenFile::stateOf(file);
        FaultVfs& self = *state.vfs;
        const Lock lock(self.m_mutex);
        const Ruling ruling = self.rule(Sort::Sync, state.path, 0, false);
        if (ruling == Ruling::Perform && state.disk) {
            self.m_disk.synced(state.path, state.disk);
            if (state.syncsFolder) {
                self.m_disk.folderSynced(state.path);
                state.syncsFolder = false;
            }
        }
        return Methods::codeOf(ruling, Sort::Sync);
    }

    /// Passes a method on unless the power is gone.
    template <auto method, typename... Args>
    static int unlessStopped(sqlite3_file* file, Args... args)
    {
        if (OpenFile::stateOf(file).vfs->hasStopped()) {
            return SQLITE_IOERR;
        }
        return Methods::always<method>(file, args...);
    }

    template <auto method, typename... Args>
    static auto forward(sqlite3_vfs* vfs, Args... args)
    {
        sqlite3_vfs* real = Methods::of(vfs).m_real;
        return (real->*method)(real, args...);
    }

    template <auto method, typename... Args>
    static int always(sqlite3_file* file, Args... args)
    {
        sqlite3_file* real = OpenFile::realOf(file);
        return (real->pMethods->*method)(real, args...);
    }

    static const sqlite3_io_methods ofFiles;
    static sqlite3_vfs table(FaultVfs& self);
};

const sqlite3_io_methods FaultVfs::Methods::ofFiles = [] {
    using Io = sqlite3_io_methods;
    Io methods{};
    methods.iVersion = 1;
    methods.xClose = &Methods::close;
    methods.xRead = &Methods::unlessStopped<&Io::xRead>;
    methods.xWrite = &Methods::write;
    methods.xTruncate = &Methods::truncate;
    methods.xSync = &Methods::sync;
    methods.xFileSize = &Methods::unlessStopped<&Io::xFileSize>;
    methods.xLock = &Methods::unlessStopped<&Io::xLock>;
    methods.xUnlock = &Methods::always<&Io::xUnlock>;
    methods.xCheckReservedLock = &Methods::unlessStopped<&Io::xCheckReservedLock>;
    methods.xFileControl = &Methods::always<&Io::xFileControl>;
    methods.xSectorSize = &Methods::always<&Io::xSectorSize>;
    methods.xDeviceCharacteristics = &Methods::always<&Io::xDeviceCharacteristics>;
    return methods;
}();

sqlite3_vfs FaultVfs::Methods::table(FaultVfs& self)
{
    using Vfs = sqlite3_vfs;
    Vfs vfs{};
    vfs.iVersion = 2;
    vfs.szOsFile = static_cast<int>(sizeof(OpenFile)) + self.m_real->szOsFile;
    vfs.mxPathname = self.m_real->mxPathname;
    vfs.zName = "fault";
    vfs.pAppData = &self;
    vfs.xOpen = &Methods::open;
    vfs.xDelete = &Methods::remove;
    vfs.xAccess = &Methods::access;
    vfs.xFullPathname = &Methods::forward<&Vfs::xFullPathname>;
    vfs.xDlOpen = &Methods::forward<&Vfs::xDlOpen>;
    vfs.xDlError = &Methods::forward<&Vfs::xDlError>;
    vfs.xDlSym = &Methods::forward<&Vfs::xDlSym>;
    vfs.xDlClose = &Methods::forward<&Vfs::xDlClose>;
    vfs.xRandomness = &Methods::forward<&Vfs::xRandomness>;
    vfs.xSleep = &Methods::forward<&Vfs::xSleep>;
    vfs.xCurrentTime = &Methods::forward<&Vfs::xCurrentTime>;
    vfs.xGetLastError = &Methods::forward<&Vfs::xGetLastError>;
    vfs.xCurrentTimeInt64 = &Methods::forward<&Vfs::xCurrentTimeInt64>;
    return vfs;
}

FaultVfs::FaultVfs() : m_real(sqlite3_vfs_find("unix")), m_vfs(Methods::table(*this))
{
    if (sqlite3_vfs_find(m_vfs.zName) != nullptr || sqlite3_vfs_register(&m_vfs, 1) != SQLITE_OK) {
        std::cerr << "FaultVfs: there is one already, or SQLite does not take it\n";
        std::abort();
    }
}

FaultVfs::~FaultVfs()
{
    this->requireClosed("destroyed");
    sqlite3_vfs_unregister(&m_vfs);
}

void FaultVfs::arm(Fault fault, std::size_t at)
{
    const Lock lock(m_mutex);
    m_fault = fault;
    m_at = at;
    m_stopped = false;
    m_full = false;
    m_operations.clear();
}

std::vector<Operation> FaultVfs::operations() const
{
    const Lock lock(m_mutex);
    return m_operations;
}

bool FaultVfs::hasStruck() const
{
    const Lock lock(m_mutex);
    return m_fault != Fault::None && m_at > 0 && m_operations.size() >= m_at;
}

const DurableDisk& FaultVfs::disk() const
{
    this->requireClosed("asked for its disk");
    return m_disk;
}

void FaultVfs::crash(std::uint32_t seed)
{
    this->disk().crash(seed);
    this->clear();
    m_disk = DurableDisk();
}

FaultVfs::Ruling FaultVfs::rule(Operation::Sort sort, const std::string& path, std::int64_t bytes, bool grows)
{
    if (m_stopped) {
        return Ruling::Stop;
    }
    m_operations.push_back({sort, std::filesystem::path(path).filename().string(), bytes});
    const bool isWrite = sort == Sort::Write;
    if (m_operations.size() != m_at) {
        return m_full && isWrite && grows ? Ruling::Full : Ruling::Perform;
    }
    switch (m_fault) {
    case Fault::None:
        break;
    case Fault::StopBefore:
        m_stopped = true;
        return Ruling::Stop;
    case Fault::StopAfter:
        m_stopped = true;
        break;
    case Fault::ShortWrite:
        m_stopped = true;
        return isWrite ? Ruling::Shorten : Ruling::Stop;
    case Fault::FailOnce:
        return Ruling::Fail;
    case Fault::DiskFull:
        m_full = true;
        return isWrite ? Ruling::Full : Ruling::Perform;
    }
    return Ruling::Perform;
}

bool FaultVfs::hasStopped() const
{
    const Lock lock(m_mutex);
    return m_stopped;
}

void FaultVfs::requireClosed(const char* what) const
{
    const Lock lock(m_mutex);
    if (m_openFiles > 0) {
        std::cerr << "FaultVfs " << what << " with " << m_openFiles << " files open\n";
        std::abort();
    }
}

} // namespace peelpack::test
