#include "platform/cli/vault_rows.h"

#include "platform/cli/output.h"
#include "platform/cli/student_choice.h"
#include "platform/cli/vault_access.h"
#include "platform/files/requirement_json.h"
#include "platform/session/case_book.h"
#include "platform/session/program_rules.h"

#include <QFile>

#include <set>

namespace peelpack::cli {

bool isVaultFile(const std::string& file)
{
    constexpr std::string_view start = "SQLite format 3";
    QFile opened(QString::fromStdString(file));
    return file != "-" && opened.open(QIODevice::ReadOnly) &&
           opened.read(static_cast<qint64>(start.size())).toStdString() == start;
}

void complainOfNotLogged(const session::CaseBook& book)
{
    for (const std::string& name : book.notLogged) {
        complain("Sheet " + name +
                 ": a procedure that is not in the catalogue is not logged yet and not counted; log it with "
                 "\"sheet log\".");
    }
}

namespace {

/// The sets of these students, named so in the book.
base::Result<bool> takeSets(CaseInput& input, const session::Session& session, const std::vector<keys::Id>& students,
                            const std::vector<std::string>& names)
{
    const base::Date today = session::today(session);
    const auto load = [&](const session::SetByName& named) -> base::Result<bool> {
        if (input.find(named) == nullptr) {
            base::Result<requirement::RequirementSet> set = session::setNamed(session, named);
            if (!set) {
                return set.error();
            }
            input.sets.emplace(std::pair(named.id, named.digest), std::move(set).value());
        }
        return true;
    };
    std::set<const requirement::RequirementSet*> inForce;
    for (std::size_t i = 0; i < students.size(); ++i) {
        session::SetsAround sets = session::setsAround(session, students[i], today);
        if (const base::Result<bool> loaded = load(sets.inForce); !loaded) {
            return loaded.error();
        }
        for (const session::OtherSet& other : sets.others) {
            (void)load(other.set).ok(); // one that is not at hand is named all the same
        }
        inForce.insert(input.find(sets.inForce));
        input.setsAround.emplace(names[i], std::move(sets));
    }
    if (inForce.size() == 1) {
        input.set = **inForce.begin();
        return true;
    }
    base::Result<requirement::RequirementSet> set = session::setOfPolicy(session);
    if (!set) {
        return set.error();
    }
    input.set = std::move(set).value();
    return true;
}

} // namespace

base::Result<CaseInput> readVaultCases(const Arguments& arguments)
{
    const std::string& file = arguments.operands.front();
    // --student is a name here and may name a student that has no sheet yet; the tally looks it up itself.
    Arguments everybody = arguments;
    everybody.values.erase("student");
    const base::Result<ChosenVault> chosen = openChosen(everybody, file);
    if (!chosen) {
        return chosen.error();
    }
    const session::Session& session = chosen.value().session();
    const base::Result<catalogue::Catalogue> catalogue = catalogueFor(arguments, session);
    if (!catalogue) {
        return catalogue.error();
    }
    base::Result<session::CaseBook> book = session::caseBook(session, catalogue.value(), chosen.value().records());
    if (!book) {
        return book.error();
    }
    complainOfNotLogged(book.value());
    const std::vector<std::string> names = book.value().names;
    CaseInput input{file, {}, std::move(book).value().reading, tally::everyStrength, {}, {}};
    if (const std::optional<std::string> named = arguments.value("set")) {
        base::Result<requirement::RequirementSet> set = files::requirementSet(*named);
        if (!set) {
            return set.error();
        }
        input.set = std::move(set).value();
        return input;
    }
    const base::Result<bool> known = takeSets(input, session, chosen.value().students, names);
    return known ? base::Result<CaseInput>(std::move(input)) : known.error();
}

} // namespace peelpack::cli
