#include "platform/cli/secrets.h"

#include <array>
#include <charconv>
#include <fcntl.h>
#include <termios.h>
#include <unistd.h>

namespace peelpack::cli {
namespace {

constexpr std::size_t mostBytes = 256;

/// The terminal, without echo while a secret is typed.
class Terminal {
public:
    explicit Terminal(bool echo) : m_descriptor(::open("/dev/tty", O_RDWR | O_CLOEXEC))
    {
        if (m_descriptor >= 0 && !echo && tcgetattr(m_descriptor, &m_before) == 0) {
            termios silent = m_before;
            silent.c_lflag &= ~static_cast<tcflag_t>(ECHO);
            m_changed = tcsetattr(m_descriptor, TCSAFLUSH, &silent) == 0;
        }
    }
    Terminal(const Terminal&) = delete;
    Terminal& operator=(const Terminal&) = delete;
    Terminal(Terminal&&) = delete;
    Terminal& operator=(Terminal&&) = delete;
    ~Terminal()
    {
        if (m_changed) {
            tcsetattr(m_descriptor, TCSAFLUSH, &m_before);
            say("\n");
        }
        if (m_descriptor >= 0) {
            ::close(m_descriptor);
        }
    }

    [[nodiscard]] int descriptor() const { return m_descriptor; }
    void say(std::string_view text) const
    {
        if (::write(m_descriptor, text.data(), text.size()) < 0) {
            return; // nobody sees the prompt; reading will fail too
        }
    }

private:
    int m_descriptor;
    termios m_before{};
    bool m_changed = false;
};

/// Byte by byte, so that the next reader of the descriptor finds the next line.
bool readByte(int descriptor, char& byte)
{
    return ::read(descriptor, &byte, 1) == 1;
}

} // namespace

OptionSpec secretsOption()
{
    return {"secrets-fd", "N", "read passphrase, PIN and the like from file descriptor N, a line each"};
}

base::Result<Secrets> Secrets::from(const Arguments& arguments)
{
    const std::optional<std::string> given = arguments.value("secrets-fd");
    if (!given) {
        return Secrets(-1);
    }
    int number = -1;
    const auto [end, error] = std::from_chars(given->data(), given->data() + given->size(), number);
    if (error != std::errc() || end != given->data() + given->size() || number < 0 || fcntl(number, F_GETFD) < 0) {
        return base::Error{base::ErrorCode::BadUsage, "--secrets-fd takes the number of an open file descriptor."};
    }
    return Secrets(number);
}

base::Result<keys::Secret> Secrets::readLine(std::string_view prompt, bool echo)
{
    const Terminal terminal(echo);
    int source = m_descriptor;
    if (source < 0) {
        if (terminal.descriptor() < 0) {
            return base::Error{base::ErrorCode::BadInput,
                               "There is no terminal to ask on; give secrets through --secrets-fd."};
        }
        source = terminal.descriptor();
        terminal.say(std::string(prompt) + ": ");
    }
    keys::Secret buffer(mostBytes);
    std::size_t size = 0;
    bool ended = false;
    char byte = 0;
    while (!ended && readByte(source, byte)) {
        ended = byte == '\n';
        if (!ended) {
            if (size == mostBytes) {
                return base::Error{base::ErrorCode::BadInput, "A line of secrets is longer than 256 bytes."};
            }
            buffer.writable()[size++] = static_cast<std::uint8_t>(byte);
        }
    }
    byte = 0;
    if (!ended && size == 0) {
        return base::Error{base::ErrorCode::BadInput, "Missing from --secrets-fd: " + std::string(prompt) + "."};
    }
    if (size > 0 && buffer.view()[size - 1] == '\r') {
        --size;
    }
    return keys::Secret(buffer.view().first(size));
}

base::Result<keys::Secret> Secrets::ask(std::string_view prompt)
{
    return readLine(prompt, false);
}

base::Result<keys::Secret> Secrets::askNew(std::string_view prompt)
{
    base::Result<keys::Secret> first = readLine(prompt, false);
    if (!first || m_descriptor >= 0) {
        return first;
    }
    const base::Result<keys::Secret> second = readLine(std::string(prompt) + ", again", false);
    if (!second) {
        return second.error();
    }
    if (!first.value().equals(second.value().view())) {
        return base::Error{base::ErrorCode::BadInput, "The two differ; try again."};
    }
    return first;
}

base::Result<std::string> Secrets::line(std::string_view prompt)
{
    const base::Result<keys::Secret> read = readLine(prompt, true);
    if (!read) {
        return read.error();
    }
    return std::string(textOf(read.value()));
}

} // namespace peelpack::cli
