#include "core/base/text.h"
#include "platform/print/papers.h"
#include "platform/print/text.h"

namespace peelpack::print {

Document completionPaper(const evidence::CompletionRecord& record, const evidence::Digest& digest)
{
    Document document{QStringLiteral("Completion record"), {}};
    document.add(Style::Title, text("Completion record: " + record.name));
    const std::string what =
        record.exception ? " is complete by exception under the requirement set " : " has met the requirement set ";
    document.add(Style::Body,
                 text("The director of this program decided on " + record.date.iso() + " that " + record.name + what +
                      record.requirementSet + ". " + std::to_string(record.counted()) + " of " +
                      std::to_string(record.required()) + " cases counted, all of them " + record.level + "."));
    if (record.exception) {
        document.add(Style::Heading, QStringLiteral("Exception"));
        document.add(Style::Body, text(base::counted(record.required() - record.counted(), "case is", "cases are") +
                                       " short. The director's reason: " + *record.exception));
    }
    Table table{{{QStringLiteral("Target of the requirement set"), 8, false},
                 {QStringLiteral("Required"), 2, true},
                 {QStringLiteral("Counted"), 2, true}},
                {}};
    for (const evidence::TargetMet& target : record.targets) {
        table.rows.push_back({text(target.id), QString::number(target.required), QString::number(target.placed)});
    }
    document.blocks.emplace_back(std::move(table));
    document.add(Style::Body, text("It stands for " + base::counted(record.sheets, "case sheet", "case sheets") +
                                   " and shows none of them. Each can be proven alone, from a file that the student "
                                   "keeps."));
    if (record.supersedes) {
        document.add(Style::Body, text("It supersedes the record " + record.supersedes->id + "."));
    }
    const std::string hex = keys::hex(digest.view());
    document.blocks.emplace_back(Code{
        text("record " + record.id + "\nsha256 " + hex).toUtf8(),
        text("This paper proves nothing by itself. The record is a file, signed by the program; whoever has it and "
             "the program's id verifies it with any software for W3C Verifiable Credentials. The code holds the "
             "record's id and the SHA-256 of its canonical form.\n" +
             record.id + "\n" + hex + "\nIssued at " + record.issued + ". Program id " +
             keys::hex(record.program.view()))});
    return document;
}

} // namespace peelpack::print
