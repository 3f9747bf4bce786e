#include "platform/cli/student_choice.h"

#include "platform/session/checks.h"

namespace peelpack::cli {

std::vector<OptionSpec> studentOptions()
{
    return {{"student", "NAME|ID", "only this student"}, {"class", "NAME", "only students of this class"}};
}

base::Result<std::vector<keys::Id>> chosenStudents(const session::Session& session, const Arguments& arguments)
{
    const auto name = arguments.value("student");
    if (name && session.role() != journal::Role::Student) {
        const session::Directory directory(session);
        const base::Result<const session::Person*> found = directory.findPerson(*name, journal::Role::Student);
        if (!found) {
            return found.error();
        }
        return std::vector<keys::Id>{found.value()->id};
    }
    return session::studentsOf(session, arguments.value("class"));
}

namespace {

base::Result<ChosenVault> chosenIn(base::Result<OpenedVault> opened, const Arguments& arguments)
{
    if (!opened) {
        return opened.error();
    }
    base::Result<std::vector<keys::Id>> students = chosenStudents(*opened.value().session, arguments);
    if (!students) {
        return students.error();
    }
    return ChosenVault{std::move(opened).value(), std::move(students).value()};
}

} // namespace

base::Result<ChosenVault> openChosen(const Arguments& arguments)
{
    return chosenIn(openVault(arguments), arguments);
}

base::Result<ChosenVault> openChosen(const Arguments& arguments, const std::string& file)
{
    return chosenIn(openVault(arguments, file), arguments);
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

} // namespace peelpack::cli
