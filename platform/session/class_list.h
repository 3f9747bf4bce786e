#pragma once

#include "core/base/result.h"
#include "core/sheet/csv.h"

#include <memory>
#include <string>
#include <string_view>
#include <vector>

namespace peelpack::session {

/// A student of a class list.
struct ListedStudent {
    std::string name;
    std::string className;
};

/// A line of a class list that cannot be used, and the mend in a sentence.
struct RefusedLine {
    std::size_t line = 0; ///< the first is 1
    std::string sentence;
};

struct ClassList {
    std::vector<ListedStudent> students;
    std::vector<RefusedLine> refused; ///< in their order; the students of the other lines are good
};

/// Reads a class list piece by piece: CSV (RFC 4180, UTF-8) with a header row that names the columns `name` and
/// `class`, in any order; other columns are passed over. Refused is a line where a cell is empty or a name stands a
/// second time. A list without the columns, or a file that is no CSV, is refused as a whole.
class ClassListReader {
public:
    ClassListReader();
    ClassListReader(const ClassListReader&) = delete;
    ClassListReader& operator=(const ClassListReader&) = delete;
    ClassListReader(ClassListReader&&) = delete;
    ClassListReader& operator=(ClassListReader&&) = delete;
    ~ClassListReader();

    /// False: nothing that follows can be used.
    bool feed(std::string_view piece);
    /// Once, after the last piece. Nobody at all in it is a refused line, too.
    [[nodiscard]] ClassList finish();

private:
    class Rows;
    std::unique_ptr<Rows> m_rows;
    sheet::CsvReader m_csv;
    bool m_broken = false;
};

/// A whole list that is in memory.
ClassList classListFrom(std::string_view text);

/// A file name for each that says the name, each once, without what means something in a path: "Ines
/// Duarte.invitation".
std::vector<std::string> invitationNames(const std::vector<std::string>& people);

} // namespace peelpack::session
