#include "platform/vault/install_mark.h"

#include "platform/files/text_file.h"
#include "platform/vault/folder_sync.h"
#include "sync/keys/hash.h"
#include "sync/keys/little_endian.h"

#include <QDir>
#include <QFile>
#include <QString>

#include <cstdlib>
#include <fcntl.h>
#include <sys/stat.h>

namespace peelpack::vault {
namespace {

/// Tells a file from one that was made later and got the freed inode number, as a restored backup does. Without
/// opening it: closing it again would let go of the lock of this process. Empty where the system cannot tell.
keys::Bytes generationOf(const std::string& file)
{
#ifdef __linux__
    keys::Bytes memory(sizeof(file_handle) + MAX_HANDLE_SZ);
    auto* head = reinterpret_cast<file_handle*>(memory.data());
    head->handle_bytes = MAX_HANDLE_SZ;
    int mount = 0;
    if (name_to_handle_at(AT_FDCWD, file.c_str(), head, &mount, 0) == 0) {
        return {head->f_handle, head->f_handle + head->handle_bytes};
    }
#endif
    return {};
}

keys::Secret boundMark(keys::ByteView stored, const std::string& file)
{
    struct stat info = {};
    const std::uint64_t inode = stat(file.c_str(), &info) == 0 ? info.st_ino : 0;
    constexpr std::size_t mostMachineId = 128;
    const base::Result<std::string> machine = files::readWholeFile("/etc/machine-id", mostMachineId);
    return keys::keyedHash("peelpack.instmk1",
                           {keys::bytesOf(machine ? std::string_view(machine.value()) : std::string_view()),
                            keys::littleEndian(inode), generationOf(file)},
                           stored);
}

} // namespace

std::string FolderMarkStore::usualFolder()
{
    const char* state = std::getenv("XDG_STATE_HOME");
    const std::string base =
        state != nullptr && *state == '/' ? std::string(state) : QDir::homePath().toStdString() + "/.local/state";
    return base + "/peelpack/marks";
}

std::string FolderMarkStore::path(const keys::Id& vault) const
{
    return m_folder + "/" + keys::hex(vault.view()) + ".mark";
}

Result<std::optional<keys::Secret>> FolderMarkStore::find(const keys::Id& vault, const std::string& file)
{
    QFile stored(QString::fromStdString(path(vault)));
    if (!stored.exists()) {
        return std::optional<keys::Secret>();
    }
    keys::Secret bytes(markBytes);
    if (!stored.open(QIODevice::ReadOnly | QIODevice::Unbuffered)) {
        return VaultError{Fault::CannotRead, "Cannot read the install mark in " + m_folder + "."};
    }
    const bool whole =
        stored.size() == static_cast<qint64>(markBytes) &&
        stored.read(reinterpret_cast<char*>(bytes.writable().data()), markBytes) == static_cast<qint64>(markBytes);
    if (!whole) {
        return std::optional<keys::Secret>();
    }
    return std::optional(boundMark(bytes.view(), file));
}

Result<keys::Secret> FolderMarkStore::make(const keys::Id& vault, const std::string& file, keys::RandomSource& random)
{
    const keys::Secret bytes = random.secret(markBytes);
    const std::string_view text(reinterpret_cast<const char*>(bytes.view().data()), bytes.size());
    const bool made = QDir().mkpath(QString::fromStdString(m_folder)) &&
                      QFile::setPermissions(QString::fromStdString(m_folder),
                                            QFileDevice::ReadOwner | QFileDevice::WriteOwner | QFileDevice::ExeOwner) &&
                      files::writeWholeFile(path(vault), text).ok();
    if (!made) {
        return VaultError{Fault::CannotWrite, "Cannot write the install mark in " + m_folder + "."};
    }
    QFile::setPermissions(QString::fromStdString(path(vault)), QFileDevice::ReadOwner | QFileDevice::WriteOwner);
    syncFolderOf(path(vault));
    return boundMark(bytes.view(), file);
}

void FolderMarkStore::remove(const keys::Id& vault)
{
    QFile::remove(QString::fromStdString(path(vault)));
}

} // namespace peelpack::vault
