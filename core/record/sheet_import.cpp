#include "core/record/sheet_fold.h"

#include <algorithm>
#include <utility>

namespace peelpack::record {

/// A sheet that the student opened, or had attested, stays theirs. Otherwise the import that the first action names
/// holds, so that no later one changes what was initialed; without an action the one with the smallest hash.
void SheetFold::takeImport()
{
    for (std::size_t i = 0; i < m_events.student.size(); ++i) {
        if (counting<Opened>(i) != nullptr || counting<Attested>(i) != nullptr) {
            return;
        }
    }
    const Event* chosen = nullptr;
    std::size_t chosenStep = m_walk.size();
    for (const Event* import : m_events.imports) {
        if (!import->standing.counts() || std::get<Imported>(import->what).again) {
            continue;
        }
        const auto names = [&](const Step& step) { return step.act->about == import->entry; };
        const auto step = static_cast<std::size_t>(std::find_if(m_walk.begin(), m_walk.end(), names) - m_walk.begin());
        if (chosen == nullptr || std::pair(step, import->entry) < std::pair(chosenStep, chosen->entry)) {
            chosen = import;
            chosenStep = step;
        }
    }
    if (chosen != nullptr) {
        const auto& said = std::get<Imported>(chosen->what);
        m_without.import = chosen;
        m_record.imported = {chosen->entry, chosen->writer, chosen->claimed, said};
        m_record.operation = said.operation;
        m_record.content = {said.procedures, said.head, {}, said.choices};
    }
}

} // namespace peelpack::record
