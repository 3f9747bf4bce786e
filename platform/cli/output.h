#pragma once

#include <cstdio>
#include <string>
#include <string_view>

namespace peelpack::cli {

/// Standard output, buffered; control characters but line ends become question marks. It notices when it cannot be
/// written (a full disk, a closed pipe).
class Output {
public:
    Output() = default;
    Output(const Output&) = delete;
    Output& operator=(const Output&) = delete;
    ~Output() { flush(); }

    Output& operator<<(std::string_view text);
    void flush();
    [[nodiscard]] bool failed() const { return m_failed; }

private:
    std::string m_buffer;
    bool m_failed = false;
};

/// Flushes; complains and answers false when something could not be written.
[[nodiscard]] bool written(Output& out);

/// One line on standard error.
void complain(std::string_view sentence);

/// A line on standard error that is overwritten by the next one, at most a few times a second, and only when a person
/// is watching (standard error is a terminal) or `always`.
class Progress {
public:
    explicit Progress(bool always);
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;
    ~Progress();

    void show(std::string_view what, std::size_t done, std::size_t of = 0);

private:
    bool m_on;
    bool m_terminal;
    bool m_shown = false;
    double m_last = 0;
};

} // namespace peelpack::cli
