#pragma once

#include "sync/journal/program_fields.h"
#include "sync/journal/rule_fields.h"
#include "sync/journal/sheet_fields.h"

#include <sstream>

/// Structures to bytes and back. Included by the few files that know payloads from inside; everybody else includes
/// payload.h.
namespace peelpack::journal {

/// The bytes, starting with the byte-order byte. Not checked: whoever calls reads them back.
template <class T>
keys::Bytes encodeFields(const T& value)
{
    std::ostringstream stream;
    {
        OutputArchive archive(stream, OutputArchive::Options::LittleEndian());
        archive(value);
    }
    const std::string written = std::move(stream).str();
    return {written.begin(), written.end()};
}

template <class T>
Checked<T> decodeFields(keys::ByteView bytes)
{
    InputArchive archive(bytes);
    T value;
    archive(value);
    if (const Reason reason = archive.finish(); reason != Reason::None) {
        return reason;
    }
    return value;
}

/// Skills ascending and different; a reason only with N/A. None if so.
Reason marksFault(const std::vector<SkillMark>& marks);

} // namespace peelpack::journal
