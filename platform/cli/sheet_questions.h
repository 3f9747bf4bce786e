#pragma once

#include "core/questions/rule_questions.h"
#include "core/questions/sheet_questions.h"
#include "platform/cli/student_choice.h"
#include "platform/session/session.h"

#include <nlohmann/json.hpp>

#include <functional>
#include <set>
#include <string>
#include <vector>

namespace peelpack::cli {

/// The sentences alone.
std::vector<std::string> sentencesOf(const std::vector<questions::SheetQuestion>& asked);

/// A student with what the questions about their sheets need.
struct AskedStudent {
    const record::StudentRecord& record;
    const keys::Id& id;
    record::ShortNames names;
    std::set<base::EntryHash> notTheirs; ///< what a preceptor says is not their signature
    questions::SheetRules rules;

    [[nodiscard]] bool isRepudiated(const record::SheetRecord& sheet) const
    {
        return questions::isRepudiated(sheet, notTheirs);
    }
    /// What there is to check about one of their sheets, in sentences.
    [[nodiscard]] std::vector<std::string> questionsAbout(const record::SheetRecord& sheet,
                                                          const catalogue::Catalogue& catalogue) const;
};
/// The chosen students one after another.
void eachAsked(const ChosenVault& chosen, const std::function<void(const AskedStudent&)>& ask);

/// What clocks and receipts say that does not fit together, about one student's records: adds to both.
void askAboutTimes(const session::Session& session, const keys::Id& student, nlohmann::ordered_json& list,
                   std::string& lines);

} // namespace peelpack::cli
