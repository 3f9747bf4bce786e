#include "core/sheet/csv.h"

#include "core/base/text.h"

#include <algorithm>
#include <array>
#include <utility>

namespace peelpack::sheet {
namespace {

constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";

bool startsExecutable(std::string_view value)
{
    if (value.empty()) {
        return false;
    }
    constexpr std::string_view single = "=+-@\t\r|";
    if (single.find(value.front()) != std::string_view::npos) {
        return true;
    }
    constexpr std::array<std::string_view, 4> fullWidth{"\xEF\xBC\x9D", "\xEF\xBC\x8B", "\xEF\xBC\x8D", "\xEF\xBC\xA0"};
    for (const std::string_view sign : fullWidth) {
        if (value.substr(0, sign.size()) == sign) {
            return true;
        }
    }
    return false;
}

bool startsExecutableAfterApostrophes(std::string_view value)
{
    const std::size_t first = value.find_first_not_of('\'');
    return first != std::string_view::npos && startsExecutable(value.substr(first));
}

} // namespace

CsvReader::CsvReader(OnRecord onRecord, Limits limits) : m_onRecord(std::move(onRecord)), m_limits(limits) {}

const std::optional<CsvReader::Fault>& CsvReader::feed(std::string_view piece)
{
    if (!m_started) {
        const std::size_t wanted = std::min(byteOrderMark.size() - m_start.size(), piece.size());
        m_start += piece.substr(0, wanted);
        piece.remove_prefix(wanted);
        if (m_start.size() < byteOrderMark.size()) {
            return m_fault;
        }
        releaseStart();
    }
    take(piece);
    return m_fault;
}

void CsvReader::releaseStart()
{
    m_started = true;
    const std::string_view start = m_start;
    if (start.starts_with("\xFF\xFE") || start.starts_with("\xFE\xFF")) {
        fail("the file is UTF-16", "save it as CSV UTF-8");
    }
    take(start.starts_with(byteOrderMark) ? start.substr(byteOrderMark.size()) : start);
}

void CsvReader::take(std::string_view piece)
{
    std::size_t at = 0;
    while (at < piece.size() && !m_fault) {
        // Runs of ordinary characters are taken at once.
        std::size_t end = at;
        if (m_state == State::Plain || m_state == State::FieldStart) {
            while (end < piece.size() && piece[end] != ',' && piece[end] != '\n' && piece[end] != '\r' &&
                   piece[end] != '"' && piece[end] != '\0') {
                ++end;
            }
        } else if (m_state == State::Quoted) {
            while (end < piece.size() && piece[end] != '"' && piece[end] != '\n' && piece[end] != '\0') {
                ++end;
            }
        }
        if (end > at) {
            append(piece.data() + at, end - at);
            if (m_state == State::FieldStart) {
                m_state = State::Plain;
            }
            at = end;
        } else {
            step(piece[at]);
            ++at;
        }
    }
}

const std::optional<CsvReader::Fault>& CsvReader::finish()
{
    if (!m_started) {
        releaseStart();
    }
    if (m_fault) {
        return m_fault;
    }
    if (m_state == State::Quoted) {
        m_line = m_quoteLine;
        fail("a quoted field is never closed", "add the closing quote, or remove the opening one");
    } else if (m_state == State::CarriageReturn) {
        fail("a carriage return stands alone", "end lines with CRLF or LF");
    } else if (m_recordBegun && !m_fault) {
        endField();
        endRecord();
    }
    return m_fault;
}

void CsvReader::append(const char* bytes, std::size_t count)
{
    m_recordBegun = true;
    if (m_record.size() - m_fieldStart + count > m_limits.fieldBytes) {
        fail("a field is longer than " + std::to_string(m_limits.fieldBytes) + " bytes",
             "shorten it, or look for a quote that is never closed");
        return;
    }
    m_record.append(bytes, count);
}

void CsvReader::step(char c)
{
    if (m_fault) {
        return;
    }
    if (c == '\0') {
        fail("there is a NUL byte", "save the file as CSV UTF-8");
        return;
    }
    if (m_state == State::CarriageReturn && c != '\n') {
        fail("a carriage return stands alone", "end lines with CRLF or LF");
        return;
    }
    if (m_state == State::Quoted) {
        if (c == '"') {
            m_state = State::QuoteInQuoted;
        } else {
            m_line += c == '\n' ? 1 : 0;
            append(&c, 1);
        }
        return;
    }
    switch (c) {
    case ',':
        m_recordBegun = true;
        endField();
        m_state = State::FieldStart;
        return;
    case '\n':
        m_recordBegun = true;
        endField();
        endRecord();
        ++m_line;
        m_recordLine = m_line;
        m_state = State::FieldStart;
        return;
    case '\r':
        m_recordBegun = true;
        m_state = State::CarriageReturn;
        return;
    case '"':
        m_recordBegun = true;
        if (m_state == State::QuoteInQuoted) {
            append(&c, 1);
            m_state = State::Quoted;
        } else if (m_state == State::FieldStart) {
            m_state = State::Quoted;
            m_quoteLine = m_line;
        } else {
            fail("there is a quote inside a field that is not quoted", "quote the whole field and double the quote");
        }
        return;
    default:
        break;
    }
    if (m_state == State::QuoteInQuoted) {
        fail("there is text after a closing quote", "double a quote that belongs to the text");
        return;
    }
    append(&c, 1);
    m_state = State::Plain;
}

void CsvReader::endField()
{
    if (m_fault) {
        return;
    }
    const std::string_view field = std::string_view(m_record).substr(m_fieldStart);
    if (const std::size_t bad = base::firstInvalidUtf8(field); bad != std::string_view::npos) {
        const std::string_view after = field.substr(bad);
        m_line -= static_cast<std::size_t>(std::count(after.begin(), after.end(), '\n'));
        fail("the bytes are not UTF-8", "save the file as CSV UTF-8");
        return;
    }
    if (m_ends.size() == m_limits.fields) {
        fail("a row has more than " + base::counted(m_limits.fields, "field", "fields"), "look for a missing line end");
        return;
    }
    m_ends.push_back(m_record.size());
    m_fieldStart = m_record.size();
}

void CsvReader::endRecord()
{
    if (m_fault) {
        return;
    }
    m_fields.clear();
    std::size_t start = 0;
    for (const std::size_t end : m_ends) {
        m_fields.push_back(std::string_view(m_record).substr(start, end - start));
        start = end;
    }
    m_onRecord(m_recordLine, m_fields);
    m_record.clear();
    m_ends.clear();
    m_fieldStart = 0;
    m_recordBegun = false;
}

void CsvReader::fail(std::string reason, std::string mend)
{
    if (!m_fault) {
        m_fault = Fault{m_line, m_ends.size() + 1, std::move(reason), std::move(mend)};
    }
}

std::string csvField(std::string_view value)
{
    if (value.find_first_of(",\"\r\n") == std::string_view::npos) {
        return std::string(value);
    }
    std::string out = "\"";
    for (const char c : value) {
        out += c;
        if (c == '"') {
            out += '"';
        }
    }
    out += '"';
    return out;
}

std::string defused(std::string_view value)
{
    return startsExecutableAfterApostrophes(value) ? '\'' + std::string(value) : std::string(value);
}

std::string_view undefused(std::string_view value)
{
    return value.starts_with('\'') && startsExecutableAfterApostrophes(value) ? value.substr(1) : value;
}

} // namespace peelpack::sheet
