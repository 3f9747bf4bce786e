#pragma once

#include "core/record/sheet_record.h"
#include "core/sheet/case_row.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Checks over the signed sheets of all students of a program, and samples of them. What comes out is for an instructor
/// to look into: never an accusation, and nothing is taken out of the count by it.
namespace peelpack::questions {

/// One sheet as one preceptor signed it.
struct Signing {
    std::string signer;  ///< equal for one preceptor: person or key, in a file the folded name; never empty
    std::string name;    ///< of the preceptor, as the sheet says it
    std::string student; ///< name
    std::string sheet;   ///< short name, unique for the student
    base::Date date;
    std::string site; ///< empty: not said
    std::string room; ///< empty: not said
    record::MinuteOfDay start = record::notSaid;
    record::MinuteOfDay end = record::notSaid; ///< before `start`: the next day
    /// Seconds since 1970-01-01T00:00:00Z, as the clock of the signing device claims. Empty: a file does not say it.
    std::optional<std::int64_t> signedAt;
    bool confirmed = false; ///< an instructor confirmed it with the preceptor
    base::EntryHash entry;  ///< the signature in the journal; zero: from a file

    bool operator==(const Signing&) const = default;
};

/// The signatures by card or phone on one sheet, with the head that was signed, or that an instructor put in its place.
/// Drawn and paper signatures are left out: there the student's phone signs, and a name alone says nothing about who
/// did. Empty for a sheet that is withdrawn or void.
std::vector<Signing> signingsOf(const record::SheetRecord& sheet, std::string_view student, std::string_view name);

/// The same of one row of a case-sheet file, where all that is known of a preceptor is the name; several names are
/// separated by ";". Equal for all rows of a sheet.
std::vector<Signing> signingsOf(const sheet::CaseRow& row);

} // namespace peelpack::questions
