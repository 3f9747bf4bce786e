#pragma once

#include "core/base/result.h"

#include <cstddef>
#include <functional>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace peelpack::sheet {

/// Reads comma-separated values as RFC 4180 fixes them, strictly and as a stream: bytes go in by pieces of any size,
/// records come out one by one. A UTF-8 byte-order mark at the very start is dropped. Lines end with CRLF or LF; a
/// quote inside an unquoted field, text after a closing quote, a lone CR, a NUL byte, and bytes that are no UTF-8 are
/// refused. A blank line is a record of one empty field. Memory is bounded by the limits, whatever comes in.
class CsvReader {
public:
    struct Limits {
        std::size_t fieldBytes = std::size_t{64} * 1024; ///< one field
        std::size_t fields = 256;                        ///< one record
    };

    /// One record. The views live until the call returns. `line`: where the record starts, from 1.
    using OnRecord = std::function<void(std::size_t line, std::span<const std::string_view> fields)>;

    explicit CsvReader(OnRecord onRecord) : CsvReader(std::move(onRecord), Limits{}) {}
    CsvReader(OnRecord onRecord, Limits limits);

    /// What is wrong, where (line from 1, field of the record from 1) and how to mend it.
    struct Fault {
        std::size_t line = 0;
        std::size_t field = 0;
        std::string reason;
        std::string mend;
    };

    /// Takes the next piece. After a fault nothing more is taken: the first fault is answered again.
    [[nodiscard]] const std::optional<Fault>& feed(std::string_view piece);
    /// The input is over: gives the last record if it had no line end.
    [[nodiscard]] const std::optional<Fault>& finish();

private:
    enum class State { FieldStart, Plain, Quoted, QuoteInQuoted, CarriageReturn };

    void releaseStart();
    void take(std::string_view piece);
    void step(char c);
    void endField();
    void endRecord();
    void append(const char* bytes, std::size_t count);
    void fail(std::string reason, std::string mend);

    OnRecord m_onRecord;
    Limits m_limits;
    State m_state = State::FieldStart;
    std::string m_record;            // all fields of the record, one after another
    std::vector<std::size_t> m_ends; // where each field ends in m_record
    std::vector<std::string_view> m_fields;
    std::size_t m_fieldStart = 0;
    std::size_t m_line = 1;
    std::size_t m_recordLine = 1;
    std::size_t m_quoteLine = 1; // where the quote at hand was opened
    std::string m_start;         // the first three bytes, until it is known whether they are a byte-order mark
    bool m_started = false;
    bool m_recordBegun = false;
    std::optional<Fault> m_fault;
};

/// One field as RFC 4180 writes it: quoted only where it must be.
std::string csvField(std::string_view value);

/// A cell that a spreadsheet would execute (first character one of = + - @ tab CR | or a full-width = + - @) gets an
/// apostrophe before it; so does a cell that already looks defused, so that undefused() gives back exactly what went
/// in.
std::string defused(std::string_view value);
std::string_view undefused(std::string_view value);

} // namespace peelpack::sheet
