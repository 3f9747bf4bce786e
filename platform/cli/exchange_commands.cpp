#include "platform/cli/commands.h"

#include "core/base/text.h"
#include "platform/cli/answer.h"
#include "platform/cli/bytes_file.h"
#include "platform/cli/code_pictures.h"
#include "platform/cli/vault_access.h"
#include "platform/session/exchange.h"
#include "platform/session/intake.h"
#include "platform/session/sheets.h"
#include "sync/parcel/parcel.h"

#include <QDir>
#include <QFileInfo>

#include <iterator>

namespace peelpack::cli {
namespace {

constexpr std::uint64_t usualSpareCodes = 8;
constexpr std::uint64_t mostSpareCodes = 10'000;

/// What is offered, from files and from pictures of codes.
struct Offers {
    std::vector<session::OfferedFile> files;
    ReadCodes codes;
};

/// The files named, and those of the folders named, by name.
std::vector<std::string> filesOf(const std::vector<std::string>& operands)
{
    std::vector<std::string> paths;
    for (const std::string& operand : operands) {
        const QString name = QString::fromStdString(operand);
        if (!QFileInfo(name).isDir()) {
            paths.push_back(operand);
            continue;
        }
        for (const QString& entry : QDir(name).entryList(QDir::Files, QDir::Name)) {
            paths.push_back(operand + "/" + entry.toStdString());
        }
    }
    return paths;
}

base::Result<Offers> readOffers(const std::vector<std::string>& operands)
{
    Offers offers;
    std::vector<std::string> pictures;
    for (const std::string& path : filesOf(operands)) {
        if (isPicture(path)) {
            pictures.push_back(path);
            continue;
        }
        base::Result<keys::Bytes> bytes = readBytes(path, parcel::mostParcelBytes);
        if (!bytes) {
            return bytes.error();
        }
        offers.files.push_back({path, std::move(bytes).value()});
    }
    base::Result<ReadCodes> codes = readCodes(pictures);
    if (!codes) {
        return codes.error();
    }
    offers.codes = std::move(codes).value();
    std::move(offers.codes.parcels.begin(), offers.codes.parcels.end(), std::back_inserter(offers.files));
    offers.codes.parcels.clear();
    return offers;
}

/// What the pictures of codes did not give; nothing: they gave everything.
std::string missingLines(const ReadCodes& codes)
{
    std::string lines;
    for (const std::string& picture : codes.without) {
        lines += picture + ": there is no readable code of a parcel in it.\n";
    }
    if (codes.startedAnew > 0) {
        lines += "A code did not go with those before it: the reading started anew.\n";
    }
    for (const carry::Progress& progress : codes.unfinished) {
        const std::size_t missing = progress.of - progress.have;
        lines += "Codes of one parcel: " + std::to_string(progress.have) + " of " + std::to_string(progress.of) + "; " +
                 base::counted(missing, "more is", "more are") + " missing, whichever.\n";
    }
    return lines;
}

nlohmann::ordered_json missingJson(const ReadCodes& codes)
{
    nlohmann::ordered_json unfinished = nlohmann::ordered_json::array();
    for (const carry::Progress& progress : codes.unfinished) {
        unfinished.push_back({{"have", progress.have}, {"of", progress.of}});
    }
    return {{"unfinished", unfinished}, {"without", codes.without}, {"startedAnew", codes.startedAnew}};
}

std::string fileLine(const session::FileOutcome& file)
{
    std::string line = file.name + ": ";
    if (!file.used) {
        return line + "not used. " + file.whyNot + "\n";
    }
    line += std::to_string(file.taken) + " new, " + std::to_string(file.known) + " known";
    if (file.waits) {
        line += "; a part waits for what comes before it";
    }
    line += ".\n";
    for (const merge::Finding& finding : file.findings) {
        if (finding.verdict == journal::Verdict::Refused) {
            line += "  Refused: entry " + std::to_string(finding.seq) + " of a record. " +
                    std::string(journal::sentence(finding.reason)) + "\n";
        }
    }
    return line;
}

nlohmann::ordered_json fileJson(const session::FileOutcome& file)
{
    nlohmann::ordered_json findings = nlohmann::ordered_json::array();
    for (const merge::Finding& finding : file.findings) {
        findings.push_back({{"device", keys::hex(finding.feed.device.view())},
                            {"entry", finding.seq},
                            {"verdict", journal::word(finding.verdict)},
                            {"why", journal::sentence(finding.reason)}});
    }
    return {{"file", file.name},   {"used", file.used},   {"whyNot", file.whyNot}, {"new", file.taken},
            {"known", file.known}, {"waits", file.waits}, {"findings", findings}};
}

std::string whose(const session::Directory& directory, const journal::FeedId& feed)
{
    for (const session::Person& person : directory.people()) {
        for (const session::GrantedDevice& device : person.devices) {
            if (device.key == feed.device) {
                return person.name;
            }
        }
    }
    return "somebody who is not granted";
}

base::Result<Answer> take(const Arguments& arguments)
{
    base::Result<Offers> offers = readOffers(arguments.operands);
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!offers || !opened) {
        return offers ? opened.error() : offers.error();
    }
    session::Session& session = *opened.value().session;
    auto [files, codes] = std::move(offers).value();
    const base::Result<session::IntakeReport> report = session::takeIn(session, std::move(files));
    if (!report) {
        return report.error();
    }
    const session::IntakeReport& r = report.value();
    const session::Directory directory(session);
    Answer answer;
    answer.json = {{"new", r.taken}, {"certificates", r.certificates}, {"receipts", r.receipts}, {"saved", r.saved}};
    answer.json["files"] = nlohmann::ordered_json::array();
    answer.json["codes"] = missingJson(codes);
    answer.text += missingLines(codes);
    bool refused = !answer.text.empty();
    for (const session::FileOutcome& file : r.files) {
        answer.json["files"].push_back(fileJson(file));
        answer.text += fileLine(file);
        refused = refused || !file.used;
    }
    answer.json["forks"] = nlohmann::ordered_json::array();
    for (const journal::ForkEvidence& fork : r.forks) {
        answer.json["forks"].push_back({{"device", keys::hex(fork.feed.device.view())},
                                        {"whose", whose(directory, fork.feed)},
                                        {"entry", fork.seq},
                                        {"evidence", keys::hex(journal::toBytes(fork))}});
        answer.text +=
            "The record of " + whose(directory, fork.feed) + " split at entry " + std::to_string(fork.seq) +
            ", often after a restore. Both versions are kept; what comes after the split is aside until admitted.\n";
    }
    answer.json["older"] = nlohmann::ordered_json::array();
    for (const merge::Contradiction& older : r.contradictions) {
        answer.json["older"].push_back({{"device", keys::hex(older.receipt.covered.feed.device.view())},
                                        {"whose", whose(directory, older.receipt.covered.feed)},
                                        {"received", older.receipt.covered.seq + 1},
                                        {"shown", older.shown},
                                        {"rewritten", older.sort == merge::Contradiction::Sort::Rewritten}});
        answer.text +=
            "What was shown of the record of " + whose(directory, older.receipt.covered.feed) + " ends at " +
            std::to_string(older.shown) + ", although " + std::to_string(older.receipt.covered.seq + 1) +
            " entries were received before" +
            (older.sort == merge::Contradiction::Sort::Rewritten ? ", and it differs from them.\n"
                                                                 : ": an older copy, or its end was cut off.\n");
    }
    for (const auto& [stream, reason] : r.withoutReceipt) {
        const session::Person* person = directory.person(stream);
        answer.text += "No receipt for " + (person == nullptr ? std::string("one record") : person->name) + ": " +
                       std::string(journal::sentence(reason)) + "\n";
    }
    if (r.ownRecordSplit) {
        answer.text += session.writeBar().sentence + "\n";
    }
    answer.json["ownRecordSplit"] = r.ownRecordSplit;
    answer.text += !r.saved ? "Nothing new.\n"
                            : "Saved: " + base::counted(r.taken, "new entry", "new entries") + ", " +
                                  base::counted(r.receipts, "receipt", "receipts") + " signed.\n";
    answer.code = refused ? BadUsageOrInput : Done;
    return answer;
}

/// One file, or numbered ones where it takes several.
base::Result<std::vector<std::string>> writeFiles(const std::string& out, const std::vector<keys::Bytes>& parts)
{
    std::vector<std::string> names;
    for (std::size_t i = 0; i < parts.size(); ++i) {
        const std::string name = parts.size() == 1 ? out : out + "." + std::to_string(i + 1);
        if (const base::Result<bool> kept = writeNewFile(name, parts[i]); !kept) {
            return kept.error();
        }
        names.push_back(name);
    }
    return names;
}

base::Result<Answer> send(const Arguments& arguments)
{
    const auto out = arguments.value("out");
    const auto folder = arguments.value("codes");
    const base::Result<std::uint64_t> spare = wholeNumber(arguments, "spare", 0, mostSpareCodes, usualSpareCodes);
    if (!spare) {
        return spare.error();
    }
    if (!out && !folder) {
        return base::Error{base::ErrorCode::BadUsage,
                           "Where shall the parcel go? Give --out FILE, or --codes FOLDER for a camera."};
    }
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!opened) {
        return opened.error();
    }
    const session::Session& session = *opened.value().session;
    base::Result<session::Recipients> to = base::Error{base::ErrorCode::NotFound, {}};
    if (session.role() == journal::Role::Student) {
        to = session::toStaff(session);
    } else if (const auto name = arguments.value("to")) {
        const session::Directory directory(session);
        const base::Result<const session::Person*> person = directory.findPerson(*name);
        if (!person) {
            return person.error();
        }
        if (person.value()->role == journal::Role::Student) {
            to = session::toStudent(session, *person.value());
        } else {
            to = session::Recipients{session::Directory::keysOf(*person.value()), std::nullopt};
        }
    } else {
        to = session::toColleagues(session);
    }
    if (!to) {
        return to.error();
    }
    const base::Result<std::vector<keys::Bytes>> parcels = session::makeParcels(session, to.value());
    if (!parcels) {
        return parcels.error();
    }
    Answer answer;
    answer.json = {{"parcels", nlohmann::ordered_json::array()}, {"recipients", to.value().keys.size()}};
    answer.text = "Sealed to " + base::counted(to.value().keys.size(), "device", "devices") + ".\n";
    if (out) {
        const base::Result<std::vector<std::string>> names = writeFiles(*out, parcels.value());
        if (!names) {
            return names.error();
        }
        answer.json["parcels"] = names.value();
        answer.text += "Written: " + base::listed(names.value(), "and") + "\n";
    }
    if (folder) {
        const bool one = parcels.value().size() == 1; // several are each larger than goes by light
        const base::Result<WrittenCodes> codes =
            writeCodes(*folder, one ? parcels.value().front() : keys::Bytes{}, spare.value());
        if (!codes) {
            return codes.error();
        }
        const WrittenCodes& c = codes.value();
        answer.json["codes"] = {{"folder", c.folder}, {"codes", c.codes}, {"plain", c.plain}};
        answer.text += "Written: " + base::counted(c.codes, "picture", "pictures") + " of codes into " + c.folder +
                       ". Any " + std::to_string(c.plain) + " of them, or few more, are enough to take it in.\n";
    }
    return answer;
}

base::Result<Answer> exportJournal(const Arguments& arguments)
{
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!opened) {
        return opened.error();
    }
    const session::Session& session = *opened.value().session;
    std::optional<keys::Id> student;
    if (session.role() == journal::Role::Student) {
        student = session.person();
    } else if (const auto name = arguments.value("student")) {
        const session::Directory directory(session);
        const base::Result<const session::Person*> person = directory.findPerson(*name, journal::Role::Student);
        if (!person) {
            return person.error();
        }
        student = person.value()->id;
    }
    const base::Result<std::vector<keys::Bytes>> volumes = session::makeExport(session, student);
    if (!volumes) {
        return volumes.error();
    }
    const base::Result<std::vector<std::string>> names = writeFiles(arguments.operands.front(), volumes.value());
    if (!names) {
        return names.error();
    }
    Answer answer;
    answer.json = {{"volumes", names.value()}, {"program", keys::hex(session.program().view())}};
    answer.text =
        "Written: " + base::listed(names.value(), "and") +
        ". These are education records and not sealed: keep them confidential. Anybody can verify them:\n  peelpack "
        "check " +
        names.value().front() + " --program " + keys::hex(session.program().view()) + "\n";
    return answer;
}

} // namespace

std::vector<Command> exchangeCommands()
{
    return {
        {{"take",
          "Take in parcels or the volumes of an export: files, pictures of a parcel's codes, or folders of them. What "
          "is "
          "new is kept together with the receipts for it.",
          {"FILE..."},
          withVaultOptions({}),
          "peelpack take parcels/ --vault instructor.peelvault\n  says what is new, what is known and what was "
          "refused"},
         [](const Arguments& arguments) { return give(arguments, take(arguments)); }},
        {{"send",
          "Make a parcel: a student's for the staff, staff's for one student, a colleague, or all colleagues.",
          {},
          withVaultOptions({{"to", "NAME|ID", "for staff: a student or a colleague; without it all colleagues"},
                            {"out", "FILE", "where the parcel goes"},
                            {"codes", "FOLDER", "as pictures of codes that a camera reads one after another"},
                            {"spare", "N", "codes besides those that are enough, for some that are missed; 8"}}),
          "peelpack send --vault ines.peelvault --out ines.peelparcel\n  sealed to the staff's devices; no one else "
          "can open "
          "it"},
         [](const Arguments& arguments) { return give(arguments, send(arguments)); }},
        {{"export",
          "Write the journal so that anybody can verify it with the program id alone. Not sealed.",
          {"FILE"},
          withVaultOptions({{"student", "NAME|ID", "only what concerns this student"}}),
          "peelpack export spring.export --student \"Ines Duarte\"\n  an education record: keep it confidential"},
         [](const Arguments& arguments) { return give(arguments, exportJournal(arguments)); }},
    };
}

} // namespace peelpack::cli
