#pragma once

#include "core/questions/signing.h"

namespace peelpack::questions {

/// What is not worth a question. Common practice, no source.
struct Plausible {
    /// Sheets of one day that one preceptor signs. A room of short cases, such as cataracts, comes close to it.
    std::size_t sheetsInADay = 12;
    /// Seconds between two signatures for operations at different sites. A sitting at the end of the week may hold
    /// sheets of two sites; who signs them with the preceptor at hand reads each of them first.
    std::int64_t secondsBetweenSites = 60;
};

/// What is asked about a card or phone.
enum class SignerQuestionKind : std::uint8_t {
    Overlap,        ///< operations that overlap in time, at different sites or in different rooms of one site
    ManyInADay,     ///< more sheets of one day than are plausible
    SignedTogether, ///< signed within seconds, for operations at different sites
};

/// "overlap", "many-in-a-day", "signed-together".
std::string_view id(SignerQuestionKind kind);

/// Something about one preceptor's signatures that an instructor should check with the preceptor.
struct SignerQuestion {
    SignerQuestionKind kind = SignerQuestionKind::Overlap;
    std::string name;            ///< of the preceptor
    std::vector<Signing> sheets; ///< at least two, by date, student and sheet
    std::string sentence;        ///< to the instructor, a question

    bool operator==(const SignerQuestion&) const = default;
};

/// The questions over all signings of a program: by first day, name and kind, the same in whatever order the signings
/// come. A question of which every sheet was confirmed with the preceptor is not asked any more. Sites and rooms are
/// compared without case and spaces; what is not said differs from nothing, and an operation whose start or end is not
/// said overlaps with none. A sheet signed twice by one preceptor is one sheet, the later signing counts. Time:
/// n log n.
std::vector<SignerQuestion> signerQuestions(std::vector<Signing> signings, const Plausible& plausible);

} // namespace peelpack::questions
