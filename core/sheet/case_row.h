#pragma once

#include "core/base/date.h"
#include "core/catalogue/category.h"
#include "core/sheet/marks.h"
#include "core/sheet/role.h"

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace peelpack::sheet {

/// With what a sheet was signed, strongest first; None: nobody has signed.
enum class Strength : std::uint8_t { None, OwnPhone, Card, CardNew, Drawn, Paper };

/// The id in files: "", "own-phone", "card", "card-new", "drawn", "paper".
std::string_view id(Strength strength);
/// Empty when no strength has that id.
std::optional<Strength> strengthFromId(std::string_view id);

/// One procedure of one case sheet, as one row of a case-sheet file. Rows with the same student and sheet id are the
/// procedures of one sheet and carry the same marks and date.
struct CaseRow {
    std::string sheet; ///< id, unique for the student; never empty
    base::Date date;
    std::string student;                ///< never empty
    std::string procedure;              ///< as performed; never empty
    catalogue::CategoryList categories; ///< the logged one first; empty: as the catalogue files the procedure
    Marks marks;
    std::string operation; ///< same text on two sheets of a student: one operation; empty: the sheet is one
    std::optional<std::uint32_t> onePathology; ///< same number in one sheet: joined to one case
    std::string surgeon;
    std::string site;
    std::string room;
    std::string start; ///< time of day, "07:30", 24 hours; empty: not said
    std::string end;
    std::string preceptor;
    std::string credential;
    std::string feedback;
    bool canceled = false; ///< before incision
    Strength attested = Strength::None;
    std::optional<base::Date> initialed; ///< empty: not yet
    std::optional<Role> importedRole;    ///< set on rows from a paper log, which carry no marks

    bool operator==(const CaseRow&) const = default;
};

} // namespace peelpack::sheet
