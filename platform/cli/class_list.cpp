#include "platform/cli/class_list.h"

#include "core/base/text.h"
#include "core/sheet/csv.h"
#include "platform/files/text_file.h"

#include <QString>

#include <algorithm>
#include <optional>
#include <set>

namespace peelpack::cli {
namespace {

/// Takes the records of a class list; the first thing that is wrong ends it.
class ListReader {
public:
    explicit ListReader(const std::string& file) : m_file(file) {}

    void take(std::size_t line, std::span<const std::string_view> fields)
    {
        if (m_wrong || (fields.size() == 1 && fields.front().empty())) {
            return;
        }
        if (m_name == none) {
            takeHeader(line, fields);
            return;
        }
        const ListedStudent student{cell(fields, m_name), cell(fields, m_class)};
        if (student.name.empty() || student.className.empty()) {
            fail(line, std::string(student.name.empty() ? "the name" : "the class") + " is missing; fill it in.");
        } else if (!m_names.insert(student.name).second) {
            fail(line, "this name stands twice; tell the two apart, by an initial for instance.");
        } else {
            m_students.push_back(student);
        }
    }

    [[nodiscard]] const std::optional<base::Error>& wrong() const { return m_wrong; }
    void fail(std::size_t line, const std::string& sentence)
    {
        m_wrong = base::Error{base::ErrorCode::BadInput, m_file + ", line " + std::to_string(line) + ": " + sentence};
    }
    [[nodiscard]] base::Result<std::vector<ListedStudent>> result() &&
    {
        if (m_wrong) {
            return *m_wrong;
        }
        if (m_students.empty()) {
            return base::Error{base::ErrorCode::BadInput, m_file + ": nobody stands in this list."};
        }
        return std::move(m_students);
    }

private:
    static constexpr std::size_t none = SIZE_MAX;

    static std::string cell(std::span<const std::string_view> fields, std::size_t column)
    {
        const std::string_view plain = column < fields.size() ? sheet::undefused(fields[column]) : std::string_view();
        return QString::fromStdString(files::normalized(plain)).simplified().toStdString();
    }

    void takeHeader(std::size_t line, std::span<const std::string_view> fields)
    {
        for (std::size_t i = 0; i < fields.size(); ++i) {
            const std::string title = cell(fields, i);
            m_name = title == "name" ? i : m_name;
            m_class = title == "class" ? i : m_class;
        }
        if (m_name == none || m_class == none) {
            fail(line, "the list needs a header row with the columns name and class.");
        }
    }

    const std::string& m_file;
    std::size_t m_name = none;
    std::size_t m_class = none;
    std::vector<ListedStudent> m_students;
    std::set<std::string> m_names;
    std::optional<base::Error> m_wrong;
};

} // namespace

base::Result<std::vector<ListedStudent>> readClassList(const std::string& file)
{
    ListReader list(file);
    sheet::CsvReader csv([&](std::size_t line, std::span<const std::string_view> fields) { list.take(line, fields); });
    std::optional<sheet::CsvReader::Fault> fault;
    const base::Result<std::size_t> read = files::readPieces(file, [&](std::string_view piece) {
        fault = csv.feed(piece);
        return !fault && !list.wrong();
    });
    if (!read) {
        return read.error();
    }
    if (!fault && !list.wrong()) {
        fault = csv.finish();
    }
    if (fault) {
        list.fail(fault->line, fault->reason + "; " + fault->mend + ".");
    }
    return std::move(list).result();
}

std::vector<std::string> invitationNames(const std::vector<ListedStudent>& students)
{
    std::vector<std::string> names;
    std::set<std::string> used;
    for (const ListedStudent& student : students) {
        QString safe;
        for (const QChar letter : QString::fromStdString(student.name)) {
            const bool plain = letter.isLetterOrNumber() || QStringLiteral(" ,'-").contains(letter);
            safe += plain ? letter : QLatin1Char('-');
        }
        std::string name = safe.toStdString();
        for (std::size_t more = 2; !used.insert(name).second; ++more) {
            name = safe.toStdString() + "-" + std::to_string(more);
        }
        names.push_back(name + ".invitation");
    }
    return names;
}

} // namespace peelpack::cli
