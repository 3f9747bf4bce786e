#pragma once

#include "core/questions/sheet_questions.h"
#include "platform/session/program_rules.h"
#include "platform/session/shared_sheets.h"
#include "qml/instructor/staff_desk.h"

namespace peelpack::instructor {

/// What there is to check about the sheets on the desk, for the list and for the sheet.
class Checks {
public:
    explicit Checks(StaffDesk& desk) : m_desk(desk) {}

    [[nodiscard]] static bool waits(const Student& student, const record::SheetRecord& sheet);
    [[nodiscard]] std::vector<questions::SheetQuestion> questionsOf(const Student& student,
                                                                    const record::SheetRecord& sheet) const;
    /// Everybody who attested it is the person at the desk.
    [[nodiscard]] bool isOwn(const record::SheetRecord& sheet) const;
    /// Its signature counts only once it was confirmed with the preceptor, or never.
    [[nodiscard]] session::Acceptance acceptance(const record::SheetRecord& sheet);
    /// Sheets of other students that seem to be of the same operation. Empty until everybody was read.
    [[nodiscard]] std::vector<SheetKey> sharedWith(const SheetKey& key);
    /// For a decision: what was not read yet is read first.
    [[nodiscard]] const session::SharedSheets& shared();
    /// Another student has a first scrub on the same operation.
    [[nodiscard]] bool isSecondFirstScrub(const SheetKey& key, const record::SheetRecord& sheet);
    /// The log differs from what was signed, or is filed where the catalogue does not file it, or nowhere.
    [[nodiscard]] bool differs(const record::SheetRecord& sheet) const;
    /// Nothing about it is asked, and initialing it needs no word.
    [[nodiscard]] bool isPlain(const Student& student, const record::SheetRecord& sheet);

private:
    void forgetWhatChanged();
    void readShared();
    void readEverybody();

    StaffDesk& m_desk;
    std::uint64_t m_stamp = 0;                     ///< of the desk, when what follows was worked out
    std::optional<session::SharedSheets> m_shared; ///< empty until everybody was read
    std::optional<std::optional<journal::Policy>> m_policy;
};

/// Where each procedure may be filed, the usual one first; every one for a procedure that the catalogue lacks.
catalogue::CategoryList categoriesFor(const catalogue::Catalogue& catalogue, const std::string& procedure);
/// As logged, or as it will count while nothing is logged; empty when nobody knows.
std::optional<catalogue::Category> filedUnder(const catalogue::Catalogue& catalogue, const record::Content& content,
                                              std::size_t procedure);
role::Outcome outcomeOf(const Student& student, const record::Content& content);
/// The same of a sheet, which may be from a paper log.
role::Outcome outcomeOf(const Student& student, const record::SheetRecord& sheet);

} // namespace peelpack::instructor
