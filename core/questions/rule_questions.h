#pragma once

#include "core/questions/sheet_questions.h"
#include "core/role/classifier.h"

#include <map>

namespace peelpack::questions {

/// What a program has said that a sheet can be held against.
struct SheetRules {
    /// Whose signature is expected on a sheet of which role.
    struct Signer {
        std::string credential;
        bool first = false;
        bool second = false;
        bool observation = false;

        [[nodiscard]] bool signs(sheet::Role role) const;
    };
    /// How a preceptor stands with the program.
    struct Standing {
        std::optional<base::Date> oriented; ///< empty: not yet
        bool active = true;
    };
    struct ClinicalDay {
        base::Date date;
        std::string site;
        record::MinuteOfDay start = record::notSaid;
        record::MinuteOfDay end = record::notSaid; ///< not after the start: on the next day
    };

    role::RoleRules roles;                  ///< of the requirement set in force for the student
    std::vector<Signer> signers;            ///< empty: anybody
    std::map<base::Id, Standing> standings; ///< by preceptor; who is not there: nothing was said
    std::vector<ClinicalDay> days;          ///< of the student's classes; empty: nothing was said
};

/// What of a sheet does not fit what the program has said. No signature is refused for it: an instructor looks into it,
/// and who initials the sheet has answered it, so that an initialed sheet raises none. Credentials and sites are
/// compared without case and spaces; a site that is not said differs from none.
std::vector<SheetQuestion> ruleQuestions(const record::SheetRecord& sheet, const SheetRules& rules);

/// The signers that sign for somebody with this credential; null: the list names none.
const SheetRules::Signer* listedSigner(const std::vector<SheetRules::Signer>& signers, std::string_view credential);

} // namespace peelpack::questions
