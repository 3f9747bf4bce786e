#include "platform/cli/commands.h"

#include "core/base/text.h"
#include "platform/cli/answer.h"
#include "platform/cli/bytes_file.h"
#include "platform/cli/case_file.h"
#include "platform/cli/record_check.h"
#include "platform/cli/sheet_options.h"
#include "platform/cli/vault_access.h"
#include "platform/evidence/file_text.h"
#include "platform/files/text_file.h"
#include "platform/session/completion.h"
#include "platform/session/set_files.h"

#include <QFile>

namespace peelpack::cli {
namespace {

/// A director's open vault, a student in it, and how they stand.
struct Deciding {
    OpenedVault opened;
    session::Person student;
    session::CompletionState state;
};

base::Result<Deciding> openForDecision(const Arguments& arguments)
{
    const std::optional<std::string> setFile = arguments.value("set");
    const base::Result<std::string> setText =
        setFile ? files::readWholeFile(*setFile, session::mostSetBytes) : base::Result<std::string>(std::string());
    base::Result<OpenedVault> opened = openVault(arguments);
    if (const base::Error* error = base::firstError(setText, opened)) {
        return *error;
    }
    const session::Session& session = *opened.value().session;
    if (session.role() != journal::Role::Director) {
        return base::Error{base::ErrorCode::BadValue, "Only the director decides who has met the requirements."};
    }
    const base::Result<catalogue::Catalogue> catalogue = catalogueFor(arguments, session);
    if (!catalogue) {
        return catalogue.error();
    }
    const session::Directory directory(session);
    const base::Result<const session::Person*> student =
        directory.findPerson(arguments.operands.front(), journal::Role::Student);
    if (!student) {
        return student.error();
    }
    base::Result<session::CompletionState> state =
        session::completionState(session, catalogue.value(), student.value()->id, setText.value());
    if (!state) {
        return state.error();
    }
    session::Person person = *student.value();
    return Deciding{std::move(opened).value(), std::move(person), std::move(state).value()};
}

Answer notComplete(const session::CompletionState& state)
{
    Answer answer;
    answer.json = {{"complete", false}, {"required", state.required}, {"counted", state.counted}};
    answer.text = "Not complete: " + std::to_string(state.counted) + " of " + std::to_string(state.required) +
                  " initialed cases count under the set in force. Nothing was written.\n";
    for (const evidence::TargetMet& target : state.targets) {
        if (target.placed < target.required) {
            answer.text += "  " + target.id + ": " + std::to_string(target.required - target.placed) + " short\n";
        }
    }
    answer.code = AnswerIsNo;
    return answer;
}

base::Result<Answer> complete(const Arguments& arguments)
{
    base::Result<Deciding> deciding = openForDecision(arguments);
    if (!deciding) {
        return deciding.error();
    }
    const session::CompletionState& state = deciding.value().state;
    if (!state.complete()) {
        return notComplete(state);
    }
    const base::Result<journal::Position> written =
        session::decideCompletion(*deciding.value().opened.session, state, {});
    if (!written) {
        return written.error();
    }
    Answer answer;
    answer.json = {{"complete", true}, {"requirementSet", state.requirementSet}};
    answer.text = "Complete under " + state.requirementSet + ", as initialed.\n";
    return answer;
}

/// The earlier record of --supersedes, verified; empty without that option.
base::Result<std::optional<evidence::Superseded>>
supersededFrom(const Arguments& arguments, const keys::VerifyKey& program, const keys::Id& student)
{
    const std::optional<std::string> file = arguments.value("supersedes");
    if (!file) {
        return std::optional<evidence::Superseded>();
    }
    const base::Result<evidence::Json> document = readEvidence(*file);
    if (!document) {
        return document.error();
    }
    const base::Result<evidence::CompletionRecord> record = evidence::verifyRecord(document.value(), program);
    if (!record) {
        return base::Error{record.error().code, *file + ": " + record.error().sentence};
    }
    if (record.value().student != student) {
        return base::Error{base::ErrorCode::BadValue, *file + " is the record of another student."};
    }
    return std::optional(evidence::Superseded{record.value().id, evidence::recordDigest(document.value())});
}

base::Result<bool> writeDocument(const std::string& file, const evidence::Json& document)
{
    const std::string text = evidence::fileText(document);
    return writeNewFile(file, keys::bytesOf(text));
}

/// Both files or neither.
base::Result<bool> writeBoth(const std::string& recordFile, const std::string& proofsFile,
                             const session::MadeRecord& made)
{
    base::Result<bool> written = writeDocument(recordFile, made.record);
    if (!written) {
        return written;
    }
    written = writeDocument(proofsFile, made.proofs);
    if (!written) {
        QFile::remove(QString::fromStdString(recordFile));
    }
    return written;
}

base::Result<Answer> makeRecord(const Arguments& arguments)
{
    const auto recordFile = arguments.value("out");
    const auto proofsFile = arguments.value("proofs");
    if (!recordFile || !proofsFile || *recordFile == *proofsFile) {
        return base::Error{base::ErrorCode::BadUsage,
                           "Where shall they go? Give --out FILE for the record and --proofs FILE for its sheets."};
    }
    for (const std::string& file : {*recordFile, *proofsFile}) {
        if (QFile::exists(QString::fromStdString(file))) {
            return base::Error{base::ErrorCode::CannotWrite, "There is a file " + file + " already; name another."};
        }
    }
    const std::string exception(base::trimmed(typed(arguments, "exception")));
    if (arguments.has("exception") && exception.empty()) {
        return base::Error{base::ErrorCode::BadUsage, "An exception needs its reason: --exception REASON."};
    }
    if (const base::Result<bool> clean = screened(arguments, {exception}); !clean) {
        return clean.error();
    }
    base::Result<Deciding> deciding = openForDecision(arguments);
    if (!deciding) {
        return deciding.error();
    }
    const auto& [opened, student, state] = deciding.value();
    if (!state.complete() && exception.empty()) {
        Answer answer = notComplete(state);
        answer.text += "With a reason that both record and journal show: --exception REASON\n";
        return answer;
    }
    session::Session& session = *opened.session;
    const auto superseded = supersededFrom(arguments, session.program(), student.id);
    if (!superseded) {
        return superseded.error();
    }
    Secrets secrets = opened.secrets;
    const base::Result<keys::SigningKey> key = askProgramKey(secrets, session.program());
    if (!key) {
        return key.error();
    }
    const base::Result<session::MadeRecord> made =
        session::makeRecord(session, key.value(), student, state, exception, superseded.value());
    if (!made) {
        return made.error();
    }
    if (const base::Result<bool> written = writeBoth(*recordFile, *proofsFile, made.value()); !written) {
        return written.error();
    }
    const evidence::Json& record = made.value().record;
    Answer answer;
    answer.json = {{"complete", true},
                   {"record", record.at("id")},
                   {"digest", keys::hex(evidence::recordDigest(record).view())},
                   {"files", {*recordFile, *proofsFile}},
                   {"supersedes", record.contains("supersedes") ? record["supersedes"] : evidence::Json(nullptr)}};
    answer.text = "The record, for whoever asks: " + *recordFile +
                  "\nProofs of its sheets, for the student alone to keep: " + *proofsFile +
                  "\nThey are education records. Anybody who has the program's id can verify them:\n  peelpack check " +
                  *recordFile + " --program " + keys::hex(session.program().view()) + "\n";
    if (record.contains("supersedes")) {
        answer.text += "It says that it supersedes the record before it.\n";
    }
    return answer;
}

base::Result<Answer> proveSheet(const Arguments& arguments)
{
    const std::string& file = arguments.operands.front();
    const auto out = arguments.value("out");
    if (!out) {
        return base::Error{base::ErrorCode::BadUsage, "Where shall the proof go? Give --out FILE."};
    }
    const base::Result<evidence::Json> document = readEvidence(file);
    if (!document) {
        return document.error();
    }
    const base::Result<evidence::Json> proof = evidence::proofOfOne(document.value(), arguments.operands.back());
    if (!proof) {
        return base::Error{proof.error().code, file + ": " + proof.error().sentence};
    }
    if (const base::Result<bool> written = writeDocument(*out, proof.value()); !written) {
        return written.error();
    }
    Answer answer;
    answer.json = {{"sheet", proof.value().at("sheets").at(0).at("sheet").at("sheet")}, {"file", *out}};
    answer.text = "Proof of one sheet, with the record: " + *out + "\nNo other sheet can be read or guessed from it.\n";
    return answer;
}

} // namespace

std::vector<Command> recordCommands()
{
    const OptionSpec set{"set", "FILE", "the file of the requirement set in force, when it is not a shipped one"};
    return {
        {{"complete",
          "Say that a student has met the requirements, as the director; only when the tally of initialed cases "
          "is complete.",
          {"NAME|ID"},
          withVaultOptions({set, catalogueOption()}),
          "peelpack complete \"Ines Duarte\"\n  exit 1 and nothing written while it is short"},
         [](const Arguments& arguments) { return give(arguments, complete(arguments)); }},
        {{"record make",
          "Issue the completion record of a student, as the director, for outsiders to verify. Secrets: the vault's, "
          "then the program code.",
          {"NAME|ID"},
          withVaultOptions({{"out", "FILE", "where the record goes"},
                            {"proofs", "FILE", "where the proofs of its sheets go, which the student keeps"},
                            {"exception", "REASON", "although cases are short; the reason is in record and journal"},
                            {"supersedes", "FILE", "an earlier record that was made with another vault"},
                            set,
                            checkedOption(),
                            catalogueOption()}),
          "peelpack record make \"Ines Duarte\" --out ines.record.json --proofs ines.proofs.json\n  exit 1 and nothing "
          "written while it is short"},
         [](const Arguments& arguments) { return give(arguments, makeRecord(arguments)); }},
        {{"record prove",
          "Prove one sheet of a completion record without showing the others.",
          {"PROOFS", "SHEET"},
          {{"out", "FILE", "where the proof goes"}, {"json", "", "for machines"}},
          "peelpack record prove ines.proofs.json 3f2a90c1 --out one-sheet.json\n  holds the record and that sheet"},
         [](const Arguments& arguments) { return give(arguments, proveSheet(arguments)); }},
    };
}

} // namespace peelpack::cli
