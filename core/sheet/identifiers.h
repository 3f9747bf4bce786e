#pragma once

#include <cstddef>
#include <cstdint>
#include <string_view>
#include <vector>

namespace peelpack::sheet {

/// Things that can point at a patient and do not belong on a sheet. After the identifiers listed in the HIPAA Privacy
/// Rule's safe-harbor method, 45 CFR 164.514(b)(2): record numbers, dates about a person, ages over 89, telephone
/// numbers, e-mail addresses, social security numbers, names.
enum class IdentifierKind : std::uint8_t { RecordNumber, Date, AgeOver89, Phone, Email, SocialSecurity, Name };

struct IdentifierHit {
    IdentifierKind kind;
    std::size_t offset; ///< bytes from the start of the text
    std::size_t length; ///< bytes
    bool operator==(const IdentifierHit&) const = default;
};

/// "a record number", "a date", ...
std::string_view inWords(IdentifierKind kind);

/// What in a free text looks like a patient identifier, in order, not overlapping. It cannot know: it misses some and
/// suspects some wrongly, so callers warn and never change the text.
std::vector<IdentifierHit> findIdentifiers(std::string_view text);

} // namespace peelpack::sheet
