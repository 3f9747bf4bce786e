#include "platform/print/completions.h"

#include "platform/print/text.h"
#include "sync/merge/record_content.h"

namespace peelpack::print {

QString decisionText(const session::CompletionDecision& decision)
{
    const std::string decided = ", decided on " + merge::timeOf(decision.time).day().iso() + " by " + decision.by + ".";
    if (decision.exception.empty()) {
        return text("Complete under " + decision.requirementSet + decided);
    }
    return text("Complete by exception under " + decision.requirementSet + ", " + std::to_string(decision.counted) +
                " of " + std::to_string(decision.required) + " cases" + decided + " Reason: " + decision.exception);
}

void addDecisions(Document& document, const CountedClass& counted)
{
    Table table{{{QStringLiteral("Student"), 2, false}, {QStringLiteral("What the director decided"), 6, false}}, {}};
    for (const CountedStudent& student : counted.students) {
        if (student.decision) {
            table.rows.push_back({text(student.name), decisionText(*student.decision)});
        }
    }
    if (!table.rows.empty()) {
        document.add(Style::Heading, QStringLiteral("Completions"));
        document.blocks.emplace_back(std::move(table));
    }
}

} // namespace peelpack::print
