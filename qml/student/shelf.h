#pragma once

#include "core/catalogue/search.h"

#include <functional>
#include <optional>

namespace peelpack::student {

/// The procedures that can be searched; made once, shared by every page. Reading and indexing them takes longer than a
/// window needs to appear, so they are made when first asked for, or with prepare() when there is time.
class Shelf {
public:
    using Read = std::function<base::Result<catalogue::Catalogue>()>;
    explicit Shelf(Read read) : m_read(std::move(read)) {}
    Shelf(const Shelf&) = delete;
    Shelf& operator=(const Shelf&) = delete;
    Shelf(Shelf&&) = delete;
    Shelf& operator=(Shelf&&) = delete;
    ~Shelf() = default;

    /// The error with which reading ended; then there are no procedures.
    base::Result<bool> prepare();
    const catalogue::Catalogue& catalogue();
    catalogue::Search& search();

private:
    Read m_read;
    std::optional<base::Result<catalogue::Catalogue>> m_made;
    catalogue::Catalogue m_empty;
    std::optional<catalogue::Search> m_search;
};

} // namespace peelpack::student
