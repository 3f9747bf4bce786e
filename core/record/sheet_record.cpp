#include "core/record/sheet_record.h"

#include "core/record/sheet_fold.h"

#include <algorithm>
#include <map>

namespace peelpack::record {

std::string_view id(SheetStanding standing)
{
    switch (standing) {
    case SheetStanding::Open:
        return "open";
    case SheetStanding::Signed:
        return "signed";
    case SheetStanding::Returned:
        return "returned";
    case SheetStanding::Initialed:
        return "initialed";
    case SheetStanding::Amended:
        return "amended";
    case SheetStanding::Withdrawn:
        return "withdrawn";
    case SheetStanding::Void:
        return "void";
    }
    return {};
}

bool SheetRecord::isSigned() const
{
    return std::any_of(signers.begin(), signers.end(), [](const Signer& signer) { return !signer.afterInitial; });
}

std::vector<const Signer*> SheetRecord::contributors() const
{
    std::vector<const Signer*> inEffect;
    std::vector<const Signer*> marking;
    for (const Signer& signer : signers) {
        if (!signer.afterInitial) {
            inEffect.push_back(&signer);
            if (!signer.statement.marks.marks.none()) {
                marking.push_back(&signer);
            }
        }
    }
    return marking.empty() ? inEffect : marking;
}

StudentRecord recordOf(const StudentEvents& events)
{
    std::map<base::Id, SheetEvents> sheets;
    for (const Event& event : events.events) {
        SheetEvents& sheet = sheets[event.sheet];
        (std::holds_alternative<Act>(event.what) ? sheet.acts : sheet.student).push_back(&event);
    }
    StudentRecord record{events.student, events.name, {}};
    record.sheets.reserve(sheets.size());
    for (const auto& [id, sheet] : sheets) {
        record.sheets.push_back(SheetFold(id, sheet).record());
    }
    return record;
}

} // namespace peelpack::record
