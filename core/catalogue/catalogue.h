#pragma once

#include "core/base/result.h"
#include "core/catalogue/procedure.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <unordered_map>
#include <vector>

namespace peelpack::catalogue {

/// The procedures a program knows: the shipped ones, with a program's own table laid over them.
///
/// Table format: tab-separated UTF-8 with a header row `id name synonyms shorthand categories flags sources`; lists
/// inside a cell are separated by `|`; flags are `diagnostic-endoscopy`, `vaginal-delivery`, `counts-often-not-needed`.
/// An overlay has the same header; a row with a known id changes that procedure: an empty cell keeps what is there, a
/// cell `-` empties it. A row with a new id adds a procedure.
class Catalogue {
public:
    Catalogue() = default;

    /// A whole table. The error names the line, the column and the mend.
    static base::Result<Catalogue> fromTsv(std::string_view text);

    /// This catalogue with a program's table laid over it. The error names the line, the column and the mend.
    [[nodiscard]] base::Result<Catalogue> withOverlay(std::string_view text) const;

    [[nodiscard]] const std::vector<Procedure>& procedures() const { return m_procedures; }
    /// Null when there is none.
    [[nodiscard]] const Procedure* byId(std::string_view id) const;
    /// The procedures whose id, name or synonym is this text after folding case and spaces. Never fuzzy. Usually one;
    /// empty when there is none; several when the wording is shared. Order of the catalogue.
    [[nodiscard]] std::vector<const Procedure*> byExactName(std::string_view text) const;

    /// The procedures of which this text is a shorthand, after folding; for suggestions only.
    [[nodiscard]] std::vector<const Procedure*> byShorthand(std::string_view text) const;

private:
    using PlacesByText = std::unordered_map<std::string, std::vector<std::size_t>>;

    [[nodiscard]] std::vector<const Procedure*> lookUp(const PlacesByText& places, std::string_view text) const;
    base::Result<Catalogue> readRows(std::string_view text, bool overlay);
    void index();

    std::vector<Procedure> m_procedures;
    std::unordered_map<std::string, std::size_t> m_byId;
    PlacesByText m_byFoldedName;
    PlacesByText m_byFoldedShorthand;
};

} // namespace peelpack::catalogue
