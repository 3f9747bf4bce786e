#pragma once

#include "core/catalogue/category.h"

#include <string>
#include <vector>

namespace peelpack::catalogue {

/// One operative procedure of the catalogue.
struct Procedure {
    std::string id;                     ///< stable, in files
    std::string name;                   ///< as people say it
    std::vector<std::string> synonyms;  ///< other full wordings
    std::vector<std::string> shorthand; ///< abbreviations and clipped speech
    CategoryList categories;            ///< usual order; never empty
    bool countsOftenNotNeeded = false;  ///< facilities' policies often call for no counts (common practice, no source)
    std::vector<std::string> sources;   ///< "icd9:51.23", "mesh:D017081", "ccsr:HEP001"; may be empty

    [[nodiscard]] bool isDiagnosticEndoscopy() const { return categories.contains(Category::DiagnosticEndoscopy); }
    [[nodiscard]] bool isVaginalDelivery() const { return categories.contains(Category::LaborDelivery); }
    bool operator==(const Procedure&) const = default;
};

} // namespace peelpack::catalogue
