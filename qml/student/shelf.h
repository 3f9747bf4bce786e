#pragma once

#include "core/catalogue/search.h"

#include <functional>
#include <memory>
#include <optional>
#include <string>

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
    /// From now on with this table of a program over the shipped catalogue; empty: without. What catalogue() and
    /// search() gave before is gone when it is another one. True: it is, and prepare() should come before somebody
    /// types.
    bool layOver(std::string table);
    /// The table does not fit the shipped catalogue, which stays as it is.
    bool misfits();

    /// As shipped, without any program's table.
    const catalogue::Catalogue& shipped();
    const catalogue::Catalogue& catalogue() { return *shared(); }
    /// The same for another thread: it stays when another table is laid over, as long as the shelf does.
    const std::shared_ptr<const catalogue::Catalogue>& shared();
    catalogue::Search& search();

private:
    Read m_read;
    std::optional<base::Result<catalogue::Catalogue>> m_shipped;
    catalogue::Catalogue m_empty;
    std::string m_table;
    std::shared_ptr<const catalogue::Catalogue> m_laid; ///< null: not made yet
    bool m_misfits = false;
    std::optional<catalogue::Search> m_search; ///< over m_laid
};

} // namespace peelpack::student
