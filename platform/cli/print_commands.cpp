#include "platform/cli/commands.h"

#include "core/base/text.h"
#include "platform/cli/answer.h"
#include "platform/cli/bytes_file.h"
#include "platform/cli/output.h"
#include "platform/cli/program_option.h"
#include "platform/cli/record_check.h"
#include "platform/cli/student_choice.h"
#include "platform/cli/vault_access.h"
#include "platform/cli/vault_rows.h"
#include "platform/print/papers.h"
#include "platform/print/pdf.h"
#include "platform/session/system_clock.h"
#include "sync/keys/card.h"
#include "sync/keys/code.h"
#include "sync/keys/invitation.h"
#include "sync/merge/record_content.h"

#include <QFileInfo>

#include <functional>

namespace peelpack::cli {
namespace {

constexpr std::uint64_t usualStubs = 4;
constexpr std::uint64_t mostStubs = 500;
constexpr std::uint64_t mostStubNumber = 99'999'999;

std::vector<OptionSpec> paperOptions()
{
    return {{"out", "FILE", "the PDF; a file that is there already is not overwritten"},
            {"paper", "letter|a4", "the size of the paper; letter when not given"}};
}

std::vector<OptionSpec> withPaperOptions(std::vector<OptionSpec> options)
{
    const std::vector<OptionSpec> paper = paperOptions();
    options.insert(options.begin(), paper.begin(), paper.end());
    return withVaultOptions(std::move(options));
}

base::Result<print::PageSize> pageSize(const Arguments& arguments)
{
    const std::string named = arguments.value("paper").value_or("letter");
    if (named == "letter") {
        return print::PageSize::Letter;
    }
    if (named == "a4") {
        return print::PageSize::A4;
    }
    return base::Error{base::ErrorCode::BadUsage, "--paper is letter or a4."};
}

base::Result<Answer> printed(const Arguments& arguments, const print::Document& document, print::PageFrame frame)
{
    const auto out = arguments.value("out");
    if (!out) {
        return base::Error{base::ErrorCode::BadUsage, "Say with --out where the PDF goes."};
    }
    const base::Result<print::PageSize> size = pageSize(arguments);
    if (!size) {
        return size.error();
    }
    frame.size = size.value();
    Progress progress(false);
    const base::Result<print::Pdf> pdf = print::makePdf(document, frame, [&](std::size_t page, std::size_t pages) {
        progress.show("pages", page, pages);
        return true;
    });
    if (!pdf) {
        return pdf.error();
    }
    const QByteArray& bytes = pdf.value().bytes;
    const base::Result<bool> written = writeNewFile(
        *out, {reinterpret_cast<const std::uint8_t*>(bytes.constData()), static_cast<std::size_t>(bytes.size())});
    if (!written) {
        return written.error();
    }
    Answer answer;
    answer.json = {{"file", *out}, {"pages", pdf.value().pages}};
    answer.text = "Written: " + *out + ", " + base::counted(pdf.value().pages, "page", "pages") +
                  ". Keep it as an education record.\n";
    return answer;
}

/// Of a paper without a vault: dated by this machine's clock.
print::PageFrame frameToday(const std::string& program)
{
    const base::Date day = merge::timeOf(session::systemClock()()).day();
    return {QString::fromStdString(program), QString::fromStdString(day.iso()), {}};
}

/// Opens the vault, counts the chosen students, and prints what `make` makes of them.
using Make = std::function<base::Result<print::Document>(const session::Session&, const print::CountedClass&)>;
base::Result<Answer> printFromVault(const Arguments& arguments, const Make& make)
{
    const base::Result<ChosenVault> chosen = openChosen(arguments);
    if (!chosen) {
        return chosen.error();
    }
    const session::Session& session = chosen.value().session();
    const base::Result<catalogue::Catalogue> catalogue = catalogueFor(arguments, session);
    if (!catalogue) {
        return catalogue.error();
    }
    const auto counted = print::countClass(session, chosen.value().students, catalogue.value());
    if (!counted) {
        return counted.error();
    }
    complainOfNotLogged(counted.value()->cases);
    const base::Result<print::Document> document = make(session, *counted.value());
    if (!document) {
        return document.error();
    }
    return printed(arguments, document.value(), print::frameFor(session, {}));
}

base::Result<Answer> printLog(const Arguments& arguments)
{
    return printFromVault(arguments, [](const session::Session&, const print::CountedClass& counted) {
        return base::Result<print::Document>(print::caseLog(counted));
    });
}

base::Result<Answer> printBoard(const Arguments& arguments)
{
    return printFromVault(arguments, [](const session::Session&, const print::CountedClass& counted) {
        return base::Result<print::Document>(print::classBoard(counted));
    });
}

base::Result<Answer> printSheet(const Arguments& arguments)
{
    return printFromVault(
        arguments,
        [&](const session::Session& session, const print::CountedClass& counted) -> base::Result<print::Document> {
            const base::Result<session::SheetPlace> place = chosenSheet(session, arguments, arguments.operands.front());
            if (!place) {
                return place.error();
            }
            for (std::size_t i = 0; i < counted.students.size(); ++i) {
                if (session::idOf(counted.students[i].record.student) == place.value().student) {
                    return print::caseSheet(counted, i, place.value().record);
                }
            }
            return base::Error{base::ErrorCode::NotFound, "There is no such sheet here."};
        });
}

base::Result<Answer> printReport(const Arguments& arguments)
{
    return printFromVault(
        arguments,
        [](const session::Session& session, const print::CountedClass& counted) -> base::Result<print::Document> {
            if (!session.isStaff()) {
                return base::Error{base::ErrorCode::BadValue,
                                   "Only an instructor or the director prints the program's report."};
            }
            return print::programReport(counted, print::factsOf(session));
        });
}

base::Result<Answer> printRecord(const Arguments& arguments)
{
    const base::Result<keys::VerifyKey> program = programGiven(arguments);
    if (!program) {
        return program.error();
    }
    const base::Result<evidence::Json> document = readEvidence(arguments.operands.front());
    if (!document) {
        return document.error();
    }
    const base::Result<evidence::CompletionRecord> record = evidence::verifyRecord(document.value(), program.value());
    if (!record) {
        return record.error();
    }
    return printed(arguments, print::completionPaper(record.value(), evidence::recordDigest(document.value())),
                   frameToday("Program " + print::shortProgram(program.value())));
}

/// What is to be typed instead of scanning a file's code; empty: nothing. An error when the file is not what it should
/// be.
using TypedCode = base::Result<std::string> (*)(keys::ByteView code);

base::Result<std::string> typedCard(keys::ByteView code)
{
    const base::Result<keys::SigningCard> card = keys::SigningCard::fromCode(code);
    if (!card) {
        return card.error();
    }
    const keys::Secret typed = keys::codeText(keys::CodeSort::Card, card.value().secret.view());
    return std::string(typed.view().begin(), typed.view().end());
}

base::Result<std::string> noTypedInvitation(keys::ByteView code)
{
    const base::Result<keys::Invitation> invitation = keys::Invitation::fromCode(code);
    return invitation ? base::Result<std::string>(std::string()) : invitation.error();
}

/// The files of the operands as codes; with as many --name as there are files, or none: then named as the files are.
base::Result<std::vector<print::CarriedCode>> carriedCodes(const Arguments& arguments, TypedCode typedCode)
{
    const std::vector<std::string>& names = arguments.list("name");
    if (!names.empty() && names.size() != arguments.operands.size()) {
        return base::Error{base::ErrorCode::BadUsage, "Give --name once for each file, in their order, or not at all."};
    }
    std::vector<print::CarriedCode> codes;
    for (std::size_t i = 0; i < arguments.operands.size(); ++i) {
        const base::Result<keys::Secret> file = readSecretFile(arguments.operands[i]);
        if (!file) {
            return file.error();
        }
        const keys::ByteView bytes = file.value().view();
        const base::Result<std::string> toType = typedCode(bytes);
        if (!toType) {
            return base::Error{toType.error().code, arguments.operands[i] + ": " + toType.error().sentence};
        }
        codes.push_back({QByteArray(reinterpret_cast<const char*>(bytes.data()), static_cast<qsizetype>(bytes.size())),
                         names.empty() ? QFileInfo(QString::fromStdString(arguments.operands[i])).completeBaseName()
                                       : QString::fromStdString(names[i]),
                         QString::fromStdString(toType.value())});
    }
    return codes;
}

using SetCodes = print::Document (*)(const std::vector<print::CarriedCode>& codes);
base::Result<Answer> printCodes(const Arguments& arguments, TypedCode typedCode, SetCodes setCodes)
{
    const auto codes = carriedCodes(arguments, typedCode);
    if (!codes) {
        return codes.error();
    }
    return printed(arguments, setCodes(codes.value()), frameToday("Peelpack"));
}

base::Result<Answer> printStubs(const Arguments& arguments)
{
    const auto count = wholeNumber(arguments, "count", 1, mostStubs, usualStubs);
    const auto first = wholeNumber(arguments, "first", 1, mostStubNumber, 1);
    if (const base::Error* error = base::firstError(count, first)) {
        return *error;
    }
    return printed(arguments, print::pocketStubs(first.value(), count.value()), frameToday("Peelpack"));
}

std::vector<OptionSpec> stubOptions()
{
    std::vector<OptionSpec> options = paperOptions();
    options.insert(options.begin(),
                   {{"count", "N", "how many, a page each; 4 when not given"},
                    {"first", "NUMBER", "the number of the first; they go on from there; 1 when not given"}});
    options.push_back({"json", "", "for machines"});
    return options;
}

std::vector<OptionSpec> recordOptions()
{
    std::vector<OptionSpec> options = paperOptions();
    options.insert(options.begin(), programOption());
    options.push_back({"json", "", "for machines"});
    return options;
}

std::vector<OptionSpec> codeOptions(const std::string& nameHelp)
{
    std::vector<OptionSpec> options = paperOptions();
    options.insert(options.begin(), {"name", "TEXT", nameHelp, true});
    options.push_back({"json", "", "for machines"});
    return options;
}

} // namespace

std::vector<Command> printCommands()
{
    return {
        {{"print log",
          "Print the case log as PDF, by specialty; each student begins a page.",
          {},
          withPaperOptions(studentOptions()),
          "peelpack print log --student \"Ines Duarte\" --out log.pdf\n  one student's log"},
         [](const Arguments& arguments) { return give(arguments, printLog(arguments)); }},
        {{"print sheet",
          "Print one case sheet as PDF, with its history and a code to compare it with a journal.",
          {"SHEET"},
          withPaperOptions(studentOptions()),
          "peelpack print sheet 3f2a90c1 --out sheet.pdf\n  marks, signatures, history"},
         [](const Arguments& arguments) { return give(arguments, printSheet(arguments)); }},
        {{"print board",
          "Print the class board as PDF: students and targets with tally strokes.",
          {},
          withPaperOptions(studentOptions()),
          "peelpack print board --class \"Spring class\" --out board.pdf\n  as initialed"},
         [](const Arguments& arguments) { return give(arguments, printBoard(arguments)); }},
        {{"print report",
          "Print the report for an accreditor as PDF: cases by student and target, sites, preceptors, what was "
          "changed.",
          {},
          withPaperOptions(studentOptions()),
          "peelpack print report --out report.pdf\n  the whole program"},
         [](const Arguments& arguments) { return give(arguments, printReport(arguments)); }},
        {{"print record",
          "Print a completion record as PDF, after verifying it.",
          {"RECORD.json"},
          recordOptions(),
          "peelpack print record ines.record.json --program 55c5df15... --out ines.pdf\n  for the files of people"},
         [](const Arguments& arguments) { return give(arguments, printRecord(arguments)); }},
        {{"print cards",
          "Print signing cards as PDF, to be cut apart. Whoever has one and its PIN signs as its preceptor.",
          {"CARD..."},
          codeOptions("whose card it is, once for each, in their order; else as the files are named"),
          "peelpack print cards brandt.card --name \"L. Brandt, CST\" --out cards.pdf\n  to be carried; the PIN is not "
          "on "
          "it"},
         [](const Arguments& arguments) {
             return give(arguments, printCodes(arguments, typedCard, print::signingCards));
         }},
        {{"print invitations",
          "Print invitations as PDF, to be cut apart and given out.",
          {"INVITATION..."},
          codeOptions("who is invited, once for each, in their order; else as the files are named"),
          "peelpack print invitations ines.invitation --name \"Ines Duarte\" --out invitations.pdf\n  for the first "
          "day"},
         [](const Arguments& arguments) {
             return give(arguments, printCodes(arguments, noTypedInvitation, print::invitations));
         }},
        {{"print stubs",
          "Print empty pocket stubs as PDF, for sites where phones are not allowed.",
          {},
          stubOptions(),
          "peelpack print stubs --count 10 --out stubs.pdf\n  to be signed with a pen and entered later"},
         [](const Arguments& arguments) { return give(arguments, printStubs(arguments)); }},
    };
}

} // namespace peelpack::cli
