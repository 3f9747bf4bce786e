#include "platform/cli/student_choice.h"

#include <algorithm>

namespace peelpack::cli {

std::vector<OptionSpec> studentOptions()
{
    return {{"student", "NAME|ID", "only this student"}, {"class", "NAME", "only students of this class"}};
}

base::Result<std::vector<keys::Id>> chosenStudents(const session::Session& session, const Arguments& arguments)
{
    if (session.role() == journal::Role::Student) {
        return std::vector<keys::Id>{session.person()};
    }
    const session::Directory directory(session);
    if (const auto name = arguments.value("student")) {
        const base::Result<const session::Person*> found = directory.findPerson(*name, journal::Role::Student);
        if (!found) {
            return found.error();
        }
        return std::vector<keys::Id>{found.value()->id};
    }
    const auto inClass = arguments.value("class");
    std::vector<keys::Id> students;
    for (const session::Person& person : directory.people()) {
        const bool wanted =
            person.role == journal::Role::Student &&
            (!inClass || std::find(person.scopes.begin(), person.scopes.end(), *inClass) != person.scopes.end());
        if (wanted) {
            students.push_back(person.id);
        }
    }
    return students;
}

base::Result<session::SheetPlace> chosenSheet(const session::Session& session, const Arguments& arguments,
                                              const std::string& shortName)
{
    const base::Result<std::vector<keys::Id>> students = chosenStudents(session, arguments);
    if (!students) {
        return students.error();
    }
    base::Result<session::SheetPlace> found =
        base::Error{base::ErrorCode::NotFound, "There is no sheet " + shortName + " here."};
    for (const keys::Id& student : students.value()) {
        base::Result<session::SheetPlace> place = session::findSheet(session, student, shortName);
        if (place && found) {
            return base::Error{base::ErrorCode::BadValue,
                               "Several sheets begin with " + shortName + "; give more digits, or --student."};
        }
        if (place || place.error().code != base::ErrorCode::NotFound) {
            found = std::move(place);
        }
    }
    return found;
}

std::string nameOf(const session::Session& session, const record::StudentRecord& student)
{
    if (!student.name.empty()) {
        return student.name;
    }
    const auto own = session.person() == session::idOf(student.student) ? session.note(session::notes::name)
                                                                        : std::optional<keys::Bytes>();
    return own && !own->empty() ? std::string(own->begin(), own->end()) : student.student.hex(8);
}

} // namespace peelpack::cli
