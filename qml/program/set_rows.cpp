#include "qml/program/set_rows.h"

#include "platform/files/requirement_json.h"
#include "platform/files/resources.h"
#include "qml/instructor/rules_in_force.h"
#include "qml/words/words.h"

#include <algorithm>

namespace peelpack::program {

void SetRows::read(const QString& chosen)
{
    std::vector<SetRow> sets;
    for (const std::string& id : files::shippedSetIds()) {
        if (const base::Result<requirement::RequirementSet> set = files::requirementSet(id)) {
            const QString name = words::fromUtf8(id);
            sets.push_back(
                {name, words::fromUtf8(set.value().title), instructor::targetLines(set.value()), name == chosen});
        }
    }
    put(std::move(sets));
}

void SetRows::choose(const QString& id)
{
    std::vector<SetRow> sets = rows();
    for (SetRow& row : sets) {
        row.chosen = row.id == id;
    }
    put(std::move(sets));
}

const SetRow* SetRows::chosen() const
{
    const auto found = std::find_if(rows().begin(), rows().end(), [](const SetRow& row) { return row.chosen; });
    return found == rows().end() ? nullptr : &*found;
}

} // namespace peelpack::program
