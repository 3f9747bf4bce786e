#include "platform/cli/bytes_file.h"

#include "platform/files/text_file.h"

#include <cerrno>
#include <cstdio>
#include <cstring>
#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

namespace peelpack::cli {
namespace {

/// An open file that closes itself.
class Descriptor {
public:
    Descriptor(const std::string& file, int flags)
        : m_number(::open(file.c_str(), flags | O_CLOEXEC, S_IRUSR | S_IWUSR))
    {
    }
    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;
    Descriptor(Descriptor&&) = delete;
    Descriptor& operator=(Descriptor&&) = delete;
    ~Descriptor()
    {
        if (m_number >= 0) {
            ::close(m_number);
        }
    }
    [[nodiscard]] int number() const { return m_number; }

private:
    int m_number;
};

base::Error cannot(base::ErrorCode code, const char* verb, const std::string& file)
{
    return {code, "Cannot " + std::string(verb) + " " + file + ": " + std::strerror(errno) + "."};
}

bool writeAll(int descriptor, keys::ByteView bytes)
{
    while (!bytes.empty()) {
        const ssize_t written = ::write(descriptor, bytes.data(), bytes.size());
        if (written <= 0) {
            return false;
        }
        bytes = bytes.subspan(static_cast<std::size_t>(written));
    }
    return ::fsync(descriptor) == 0;
}

} // namespace

base::Result<keys::Bytes> readBytes(const std::string& file, std::size_t most)
{
    const base::Result<std::string> text = files::readWholeFile(file, most);
    if (!text) {
        return text.error();
    }
    return keys::Bytes(text.value().begin(), text.value().end());
}

base::Result<keys::Secret> readSecretFile(const std::string& file)
{
    constexpr std::size_t most = 4096;
    const Descriptor opened(file, O_RDONLY);
    if (opened.number() < 0) {
        return cannot(base::ErrorCode::CannotRead, "read", file);
    }
    keys::Secret buffer(most);
    std::size_t size = 0;
    while (size < most) {
        const ssize_t got = ::read(opened.number(), buffer.writable().data() + size, most - size);
        if (got < 0) {
            return cannot(base::ErrorCode::CannotRead, "read", file);
        }
        if (got == 0) {
            return keys::Secret(buffer.view().first(size));
        }
        size += static_cast<std::size_t>(got);
    }
    return base::Error{base::ErrorCode::BadInput, file + " is no code of Peelpack: it is too large."};
}

base::Result<bool> writeNewFile(const std::string& file, keys::ByteView bytes)
{
    const std::string unfinished = file + ".new";
    ::unlink(unfinished.c_str()); // left behind by a run that was interrupted
    const Descriptor made(unfinished, O_WRONLY | O_CREAT | O_EXCL);
    const bool written = made.number() >= 0 && writeAll(made.number(), bytes);
    if (!written) {
        const base::Error error = cannot(base::ErrorCode::CannotWrite, "write", file);
        ::unlink(unfinished.c_str());
        return error;
    }
    // A link, unlike a rename, does not replace a file that is there.
    const bool named = ::link(unfinished.c_str(), file.c_str()) == 0;
    const base::Error taken = errno == EEXIST ? base::Error{base::ErrorCode::CannotWrite,
                                                            "There is a file " + file + " already; name another."}
                                              : cannot(base::ErrorCode::CannotWrite, "write", file);
    ::unlink(unfinished.c_str());
    return named ? base::Result<bool>(true) : taken;
}

} // namespace peelpack::cli
