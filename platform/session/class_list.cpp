#include "platform/session/class_list.h"

#include "platform/files/text_file.h"

#include <QString>

#include <set>

namespace peelpack::session {

/// Takes the records of a class list.
class ClassListReader::Rows {
public:
    void take(std::size_t line, std::span<const std::string_view> fields)
    {
        if (m_useless || (fields.size() == 1 && fields.front().empty())) {
            return;
        }
        if (m_name == none) {
            takeHeader(line, fields);
            return;
        }
        const ListedStudent student{cell(fields, m_name), cell(fields, m_class)};
        if (student.name.empty() || student.className.empty()) {
            refuse(line,
                   student.name.empty() ? "the name is missing; fill it in." : "the class is missing; fill it in.");
        } else if (!m_names.insert(student.name).second) {
            refuse(line, "this name stands twice; tell the two apart, by an initial for instance.");
        } else {
            m_list.students.push_back(student);
        }
    }

    void refuse(std::size_t line, std::string sentence) { m_list.refused.push_back({line, std::move(sentence)}); }
    [[nodiscard]] bool useless() const { return m_useless; }
    ClassList& list() { return m_list; }

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
            m_useless = true;
            refuse(line, "the list needs a header row with the columns name and class.");
        }
    }

    std::size_t m_name = none;
    std::size_t m_class = none;
    bool m_useless = false;
    ClassList m_list;
    std::set<std::string> m_names;
};

ClassListReader::ClassListReader()
    : m_rows(std::make_unique<Rows>()),
      m_csv([rows = m_rows.get()](std::size_t line, std::span<const std::string_view> fields) {
          rows->take(line, fields);
      })
{
}

ClassListReader::~ClassListReader() = default;

bool ClassListReader::feed(std::string_view piece)
{
    if (!m_broken) {
        if (const auto fault = m_csv.feed(piece)) {
            m_broken = true;
            m_rows->refuse(fault->line, fault->reason + "; " + fault->mend + ".");
        }
    }
    return !m_broken && !m_rows->useless();
}

ClassList ClassListReader::finish()
{
    if (!m_broken && !m_rows->useless()) {
        if (const auto fault = m_csv.finish()) {
            m_rows->refuse(fault->line, fault->reason + "; " + fault->mend + ".");
        }
    }
    ClassList& list = m_rows->list();
    if (list.students.empty() && list.refused.empty()) {
        m_rows->refuse(1, "nobody stands in this list.");
    }
    return std::move(list);
}

ClassList classListFrom(std::string_view text)
{
    ClassListReader reader;
    reader.feed(text);
    return reader.finish();
}

std::vector<std::string> invitationNames(const std::vector<std::string>& people)
{
    std::vector<std::string> names;
    std::set<std::string> used;
    for (const std::string& person : people) {
        QString safe;
        for (const QChar letter : QString::fromStdString(person)) {
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

} // namespace peelpack::session
