#pragma once

#include "core/catalogue/catalogue.h"
#include "platform/demo/demo_marks.h"
#include "platform/demo/journal_setup.h"

#include <memory>

namespace peelpack::demo {

/// How much there is of the invented program.
struct JournalFigures {
    std::size_t staff = 0;
    std::size_t students = 0;
    std::size_t sheets = 0;
    std::size_t entries = 0; ///< that the director holds, branches included
    std::size_t files = 0;
    std::size_t bytes = 0;
};

/// The invented program on real vaults, in a folder of its own: people, cases and what everybody does are the same at
/// each making, keys and ids are not. Its README.txt says who is who and what went wrong. The vaults open on this
/// device with the passphrase: their install marks are in `marks`.
class JournalDemo {
public:
    /// Makes `folder`, which is not there yet, or left over from a making that was interrupted. An error: nothing is
    /// left.
    static base::Result<JournalDemo> make(const std::string& folder, const std::string& marks,
                                          const catalogue::Catalogue& catalogue, const JournalProgress& progress);

    JournalDemo(JournalDemo&&) = default;
    JournalDemo& operator=(JournalDemo&&) = default;
    JournalDemo(const JournalDemo&) = delete;
    JournalDemo& operator=(const JournalDemo&) = delete;
    /// What was not kept goes, marks too.
    ~JournalDemo();

    [[nodiscard]] const JournalFigures& figures() const { return m_figures; }
    /// Gives it the name that it keeps, in the same file system.
    base::Result<bool> keep(const std::string& folder);

private:
    JournalDemo(std::string folder, const std::string& marks)
        : m_folder(std::move(folder)), m_marks(std::make_unique<DemoMarks>(marks))
    {
    }

    std::string m_folder;
    std::unique_ptr<DemoMarks> m_marks; ///< empty: kept, or moved away
    JournalFigures m_figures;
};

} // namespace peelpack::demo
