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
    case SheetStanding::Imported:
        return "imported";
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
    const auto marks = [](const Signer& signer) {
        return !signer.afterInitial && !signer.statement.marks.marks.none();
    };
    const bool anyMarks = std::any_of(signers.begin(), signers.end(), marks);
    std::vector<const Signer*> found;
    for (const Signer& signer : signers) {
        if (anyMarks ? marks(signer) : !signer.afterInitial) {
            found.push_back(&signer);
        }
    }
    return found;
}

StudentRecord recordOf(StudentEvents events)
{
    constexpr std::size_t fewEvents = 4; // of most sheets: opened, signed, logged
    std::map<base::Id, SheetEvents> sheets;
    for (Event& event : events.events) {
        SheetEvents& sheet = sheets[event.sheet];
        if (sheet.student.empty()) {
            sheet.student.reserve(fewEvents);
        }
        if (std::holds_alternative<Act>(event.what)) {
            sheet.acts.push_back(&event);
        } else if (std::holds_alternative<Imported>(event.what)) {
            sheet.imports.push_back(&event);
        } else {
            sheet.student.push_back(&event);
        }
    }
    StudentRecord record{events.student, std::move(events.name), {}};
    record.sheets.reserve(sheets.size());
    for (const auto& [id, sheet] : sheets) {
        SheetFold(id, sheet, record.sheets.emplace_back()).fold();
    }
    return record;
}

} // namespace peelpack::record
