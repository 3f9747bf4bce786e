#include "platform/cli/output.h"

#include <algorithm>
#include <chrono>
#include <unistd.h>

namespace peelpack::cli {
namespace {

constexpr std::size_t bufferBytes = 1U << 16U;
constexpr double secondsBetween = 0.3;

double now()
{
    return std::chrono::duration<double>(std::chrono::steady_clock::now().time_since_epoch()).count();
}

/// Control characters of a file's texts would steer the terminal; a question mark stands for each.
bool steersTerminal(char c)
{
    return (static_cast<unsigned char>(c) < 0x20 && c != '\n') || c == 0x7F;
}

} // namespace

Output& Output::operator<<(std::string_view text)
{
    const std::size_t start = m_buffer.size();
    m_buffer += text;
    std::replace_if(m_buffer.begin() + static_cast<std::ptrdiff_t>(start), m_buffer.end(), steersTerminal, '?');
    if (m_buffer.size() >= bufferBytes) {
        flush();
    }
    return *this;
}

void Output::flush()
{
    const bool written =
        std::fwrite(m_buffer.data(), 1, m_buffer.size(), stdout) == m_buffer.size() && std::fflush(stdout) == 0;
    m_failed = m_failed || !written;
    m_buffer.clear();
}

void complain(std::string_view sentence)
{
    std::string shown(sentence);
    std::replace_if(shown.begin(), shown.end(), steersTerminal, '?');
    std::fprintf(stderr, "peelpack: %s\n", shown.c_str());
}

bool written(Output& out)
{
    out.flush();
    if (out.failed()) {
        complain("Cannot write standard output.");
    }
    return !out.failed();
}

Progress::Progress(bool always)
    : m_on(always || isatty(STDERR_FILENO) != 0), m_terminal(isatty(STDERR_FILENO) != 0), m_last(now())
{
}

Progress::~Progress()
{
    if (m_shown && m_terminal) {
        std::fprintf(stderr, "\r\033[K");
    }
}

void Progress::show(std::string_view what, std::size_t done, std::size_t of)
{
    if (!m_on || now() - m_last < secondsBetween) {
        return;
    }
    m_last = now();
    m_shown = true;
    const std::string total = of > 0 ? " of " + std::to_string(of) : std::string();
    std::fprintf(stderr, m_terminal ? "\r\033[K%.*s %zu%s" : "%.*s %zu%s\n", static_cast<int>(what.size()), what.data(),
                 done, total.c_str());
    std::fflush(stderr);
}

} // namespace peelpack::cli
