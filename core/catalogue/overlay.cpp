#include "core/catalogue/overlay.h"

#include <algorithm>

namespace peelpack::catalogue {

std::vector<OverlayRow> overlayRows(const Catalogue& shipped, const Catalogue& laid)
{
    std::vector<OverlayRow> rows;
    for (const Procedure& procedure : laid.procedures()) {
        const Procedure* before = shipped.byId(procedure.id);
        if (before == nullptr || *before != procedure) {
            rows.push_back({&procedure, before});
        }
    }
    return rows;
}

base::Result<Catalogue> checkedOverlay(const Catalogue& shipped, std::string_view table)
{
    base::Result<Catalogue> laid = shipped.withOverlay(table);
    if (!laid) {
        return laid;
    }
    for (const OverlayRow& row : overlayRows(shipped, laid.value())) {
        std::vector<std::string> wordings = row.procedure->synonyms;
        wordings.insert(wordings.begin(), row.procedure->name);
        for (const std::string& wording : wordings) {
            const std::vector<const Procedure*> found = laid.value().byExactName(wording);
            const auto other =
                std::find_if(found.begin(), found.end(), [&](const Procedure* one) { return one != row.procedure; });
            if (other != found.end()) {
                return base::Error{base::ErrorCode::BadInput, "\"" + row.procedure->id + "\" cannot be called \"" +
                                                                  wording + "\": \"" + (*other)->id +
                                                                  "\" is called so too; choose other words."};
            }
        }
    }
    return laid;
}

} // namespace peelpack::catalogue
