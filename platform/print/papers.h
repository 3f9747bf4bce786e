#pragma once

#include "platform/evidence/completion_record.h"
#include "platform/print/counted_class.h"
#include "platform/print/document.h"
#include "platform/print/pdf.h"

/// The papers of a program.
namespace peelpack::print {

/// Enough digits of a program's id to tell programs apart on paper.
std::string shortProgram(const keys::VerifyKey& program);
/// What a journal's papers say on every page: term and program, and the day of now.
PageFrame frameFor(const session::Session& session, PageSize size);

/// Each student's cases by specialty, as they are logged, with what does not count and why; a student begins a page.
Document caseLog(const CountedClass& counted);

/// One sheet with its marks, signatures and whole history, and a code with the hash of its newest entry. An index into
/// `students`.
Document caseSheet(const CountedClass& counted, std::size_t student, const record::SheetRecord& sheet);

/// Students and targets, with strokes.
Document classBoard(const CountedClass& counted);

/// What an accreditor asks about a whole program, besides the cases.
struct ProgramFacts {
    std::string term;                      ///< may be empty
    std::vector<std::string> splitRecords; ///< a sentence for each feed that forked
    std::size_t revokedDevices = 0;
    std::size_t activePreceptors = 0; ///< with a card or phone in force
};
/// Worked out from a journal.
ProgramFacts factsOf(const session::Session& session);
/// Cases by student and target, sites, preceptors, and what was changed after it was signed, counted.
Document programReport(const CountedClass& counted, const ProgramFacts& facts);

/// A completion record that was verified, and a code with its digest. The paper proves nothing by itself and says so.
Document completionPaper(const evidence::CompletionRecord& record, const evidence::Digest& digest);

/// A code that somebody carries on paper.
struct CarriedCode {
    QByteArray bytes; ///< of the QR code
    QString name;     ///< whose it is; may be empty
    QString typed;    ///< for typing where there is no camera; may be empty
};
/// Signing cards, and invitations into the program, to be cut apart. Both hold secrets.
Document signingCards(const std::vector<CarriedCode>& cards);
Document invitations(const std::vector<CarriedCode>& codes);

/// Empty case sheets for sites where phones are not allowed: filled in and signed with a pen, entered later
/// under the number that stands on it.
Document pocketStubs(std::uint64_t first, std::size_t count);

} // namespace peelpack::print
