#include "platform/cli/commands.h"

#include "core/base/text.h"
#include "platform/cli/answer.h"
#include "platform/cli/bytes_file.h"
#include "platform/cli/output.h"
#include "platform/cli/sheet_options.h"
#include "platform/cli/short_id.h"
#include "platform/session/preceptor_vault.h"
#include "platform/session/refusal.h"
#include "platform/session/system_clock.h"

namespace peelpack::cli {
namespace {

constexpr std::size_t mostCodeBytes = std::size_t{64} * 1024;

/// What is signed on one sheet: as the student wrote it, with what the preceptor corrected on the command line.
base::Result<session::SheetMarks> marksOn(const Arguments& arguments, const session::SheetPlace& place)
{
    const base::Result<std::vector<journal::SkillMark>> marks = marksFrom(arguments);
    const base::Result<journal::Head> head = headFrom(arguments, session::headOf(place.record.content.head));
    if (!marks || !head) {
        return marks ? head.error() : marks.error();
    }
    session::SheetMarks sheet{place.sheet, proceduresFrom(arguments, place.record.content.procedures), head.value(),
                              marks.value(), typed(arguments, "feedback")};
    if (const base::Result<bool> clean = screened(arguments, {sheet.feedback}); !clean) {
        return clean.error();
    }
    return sheet;
}

session::SignerName signerFrom(const Arguments& arguments)
{
    return {typed(arguments, "preceptor"), typed(arguments, "credential")};
}

/// The name on the roster where the card is known there; else the one given.
session::SignerName signerOf(const session::Session& session, const keys::Id& card, const Arguments& arguments)
{
    session::SignerName signer = signerFrom(arguments);
    const session::Directory directory(session);
    if (const session::Preceptor* known = directory.ofCard(card); known != nullptr && signer.name.empty()) {
        signer = {known->name, known->credential};
    }
    return signer;
}

std::string readBackText(const session::SheetMarks& sheet, const session::SignerName& signer)
{
    std::string text = "Sheet " + shortId(sheet.sheet) + ". You sign:\n";
    for (const std::string& line : session::readBack(sheet, signer)) {
        text += "  " + line + "\n";
    }
    return text;
}

/// Shows what is signed and asks, unless --yes says that it was read.
base::Result<bool> confirmed(const Arguments& arguments, Secrets& secrets, const std::string& text)
{
    if (!arguments.has("json")) {
        Output out;
        out << text;
        if (!written(out)) {
            return base::Error{base::ErrorCode::CannotWrite, "Cannot show what is signed."};
        }
    }
    if (arguments.has("yes")) {
        return true;
    }
    const base::Result<std::string> word = secrets.line("Sign this? yes or no");
    if (!word) {
        return word.error();
    }
    return word.value() == "yes" ? base::Result<bool>(true)
                                 : base::Error{base::ErrorCode::BadValue, "Nothing was signed."};
}

base::Result<Answer> sign(const Arguments& arguments)
{
    const auto cardFile = arguments.value("card");
    const auto stub = arguments.value("paper-stub");
    const auto strokes = arguments.value("drawn");
    if ((cardFile ? 1 : 0) + (stub ? 1 : 0) + (strokes ? 1 : 0) != 1) {
        return base::Error{base::ErrorCode::BadUsage,
                           "How is it signed? Give --card FILE; or, weaker, --drawn FILE or --paper-stub NUMBER."};
    }
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!opened) {
        return opened.error();
    }
    OpenedVault parts = std::move(opened).value();
    session::Session& session = *parts.session;
    if (session.role() != journal::Role::Student) {
        return base::Error{base::ErrorCode::BadValue,
                           "Sheets are signed on the student's phone, or on the preceptor's own."};
    }
    if (const session::WriteBar bar = session.writeBar(); bar.stands()) {
        return base::Error{base::ErrorCode::BadValue, bar.sentence};
    }
    std::vector<session::SheetMarks> sheets;
    for (const std::string& name : arguments.operands) {
        const base::Result<session::SheetPlace> place = session::findSheet(session, session.person(), name);
        if (!place) {
            return place.error();
        }
        const base::Result<session::SheetMarks> sheet = marksOn(arguments, place.value());
        if (!sheet) {
            return sheet.error();
        }
        sheets.push_back(sheet.value());
    }
    std::vector<journal::Position> written;
    std::string text;
    if (cardFile) {
        const base::Result<keys::Secret> bytes = readSecretFile(*cardFile);
        if (!bytes) {
            return bytes.error();
        }
        const base::Result<keys::SigningCard> card = keys::SigningCard::fromCode(bytes.value().view());
        if (!card) {
            return card.error();
        }
        const session::SignerName signer = signerOf(session, card.value().card, arguments);
        for (const session::SheetMarks& sheet : sheets) {
            text += readBackText(sheet, signer);
        }
        if (const base::Result<bool> agreed = confirmed(arguments, parts.secrets, text); !agreed) {
            return agreed.error();
        }
        const base::Result<keys::Secret> pin = parts.secrets.ask("PIN of the signing card");
        if (!pin) {
            return pin.error();
        }
        const base::Result<session::UnlockedCard> unlocked =
            session::unlockCard(session, card.value(), textOf(pin.value()), sheets.front().sheet);
        if (!unlocked) {
            return unlocked.error();
        }
        base::Result<std::vector<journal::Position>> done =
            session::signWithCard(session, unlocked.value(), signer, sheets);
        if (!done) {
            return done.error();
        }
        written = std::move(done).value();
    } else {
        const session::SignerName signer = signerFrom(arguments);
        for (const session::SheetMarks& sheet : sheets) {
            text += readBackText(sheet, signer);
        }
        if (const base::Result<bool> agreed = confirmed(arguments, parts.secrets, text); !agreed) {
            return agreed.error();
        }
        keys::Bytes drawn;
        if (strokes) {
            base::Result<keys::Bytes> read = readBytes(*strokes, journal::mostStrokeBytes);
            if (!read) {
                return read.error();
            }
            drawn = std::move(read).value();
        }
        for (const session::SheetMarks& sheet : sheets) {
            const base::Result<journal::Position> done =
                session::signWeakly(session, signer, sheet, drawn, stub.value_or(std::string()));
            if (!done) {
                return done.error();
            }
            written.push_back(done.value());
        }
    }
    Answer answer;
    answer.json["signed"] = nlohmann::ordered_json::array();
    for (std::size_t i = 0; i < written.size(); ++i) {
        answer.json["signed"].push_back(
            {{"sheet", shortId(sheets[i].sheet)}, {"entry", keys::hex(written[i].hash.view())}});
    }
    answer.text = "Signed: " + base::counted(written.size(), "sheet", "sheets") + ".\n";
    return answer;
}

base::Result<Answer> offer(const Arguments& arguments)
{
    const auto out = arguments.value("out");
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!out || !opened) {
        return out ? opened.error()
                   : base::Error{base::ErrorCode::BadUsage, "Where shall the request go? Give --out FILE."};
    }
    const session::Session& session = *opened.value().session;
    const base::Result<session::SheetPlace> place =
        session::findSheet(session, session.person(), arguments.operands.front());
    if (!place) {
        return place.error();
    }
    const base::Result<journal::SigningRequest> request = session::signingRequest(session, place.value());
    if (!request) {
        return request.error();
    }
    const auto code = journal::encode(request.value());
    if (!code) {
        return session::refused(code.reason());
    }
    if (const base::Result<bool> kept = writeNewFile(*out, code.value()); !kept) {
        return kept.error();
    }
    Answer answer;
    answer.json = {{"request", *out}};
    answer.text = "The request is in " + *out + "; show it to the preceptor's own phone.\n";
    return answer;
}

base::Result<Answer> takeSigned(const Arguments& arguments)
{
    const base::Result<keys::Bytes> code = readBytes(arguments.operands[1], mostCodeBytes);
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!code || !opened) {
        return code ? opened.error() : code.error();
    }
    session::Session& session = *opened.value().session;
    const base::Result<session::SheetPlace> place =
        session::findSheet(session, session.person(), arguments.operands.front());
    if (!place) {
        return place.error();
    }
    const base::Result<journal::Position> taken = session::takeAnswer(session, place.value(), code.value());
    if (!taken) {
        return taken.error();
    }
    Answer answer;
    answer.json = {{"sheet", shortId(place.value().sheet)}, {"entry", keys::hex(taken.value().hash.view())}};
    answer.text = "Signed on the preceptor's own phone.\n";
    return answer;
}

/// The vault of a preceptor's own phone, and its code when it was made just now.
struct PhoneVault {
    std::unique_ptr<session::PreceptorVault> vault;
    std::string newCode;
};

base::Result<PhoneVault> phoneVault(const Arguments& arguments, Secrets& secrets)
{
    const base::Result<std::string> file = vaultFile(arguments);
    base::Result<OldOrNewVault> opened =
        file ? unlockOrMakeVault(file.value(), arguments.has("pin"), secrets) : file.error();
    if (!opened) {
        return opened.error();
    }
    OldOrNewVault parts = std::move(opened).value();
    auto own = session::PreceptorVault::open(std::move(parts.vault), session::systemClock());
    if (!own) {
        return own.error();
    }
    for (const std::string& damage : own.value()->damage()) {
        complain(damage);
    }
    return PhoneVault{std::move(own).value(), std::move(parts.codeText)};
}

base::Result<Answer> phone(const Arguments& arguments)
{
    base::Result<Secrets> secrets = Secrets::from(arguments);
    if (!secrets) {
        return secrets.error();
    }
    Secrets source = std::move(secrets).value();
    const auto vault = phoneVault(arguments, source);
    if (!vault) {
        return vault.error();
    }
    const std::string& code = vault.value().newCode;
    const std::string key = keys::hex(vault.value().vault->key().view());
    Answer answer;
    answer.json = {{"key", key}, {"signed", nlohmann::ordered_json::array()}};
    if (!code.empty()) {
        answer.json["vaultCode"] = code;
    }
    answer.text = vaultCodeLines(code) + "This phone's signing key, for an instructor to vouch for:\n  " + key + "\n";
    for (const session::SignedHere& kept : vault.value().vault->signedHere()) {
        const std::string day = kept.statement.head.date.iso();
        answer.json["signed"].push_back({{"sheet", shortId(kept.statement.sheet)},
                                         {"student", kept.student},
                                         {"date", day},
                                         {"procedures", kept.statement.procedures}});
        answer.text += "  signed  " + shortId(kept.statement.sheet) + "  " + day + "  " + kept.student + "  " +
                       base::listed(kept.statement.procedures, "and") + "\n";
    }
    return answer;
}

base::Result<Answer> signRequest(const Arguments& arguments)
{
    const auto out = arguments.value("out");
    base::Result<Secrets> secrets = Secrets::from(arguments);
    const base::Result<keys::Bytes> code = readBytes(arguments.operands.front(), mostCodeBytes);
    if (!out || !secrets || !code) {
        return !out ? base::Error{base::ErrorCode::BadUsage, "Where shall the answer go? Give --out FILE."}
                    : (secrets ? code.error() : secrets.error());
    }
    const auto request = journal::decodeSigningRequest(code.value());
    if (!request) {
        return session::refused(request.reason(), base::ErrorCode::BadInput);
    }
    Secrets source = std::move(secrets).value();
    const auto vault = phoneVault(arguments, source);
    if (!vault) {
        return vault.error();
    }
    const std::string& vaultCode = vault.value().newCode;
    session::PreceptorVault& own = *vault.value().vault;
    const base::Result<std::vector<journal::SkillMark>> marks = marksFrom(arguments);
    const base::Result<journal::Head> head = headFrom(arguments, request.value().head);
    if (!marks || !head) {
        return marks ? head.error() : marks.error();
    }
    const session::SheetMarks sheet{request.value().sheet, proceduresFrom(arguments, request.value().procedures),
                                    head.value(), marks.value(), typed(arguments, "feedback")};
    if (const base::Result<bool> clean = screened(arguments, {sheet.feedback}); !clean) {
        return clean.error();
    }
    const session::SignerName named = signerFrom(arguments);
    const session::SignerName signer = named.name.empty() ? own.owner() : named;
    const std::string text =
        vaultCodeLines(vaultCode) + "Student: " + request.value().studentName + "\n" + readBackText(sheet, signer);
    if (const base::Result<bool> agreed = confirmed(arguments, source, text); !agreed) {
        return agreed.error();
    }
    const base::Result<keys::Bytes> reply = own.sign(request.value(), signer, sheet);
    if (!reply) {
        return reply.error();
    }
    if (const base::Result<bool> kept = writeNewFile(*out, reply.value()); !kept) {
        return kept.error();
    }
    Answer answer;
    answer.json = {{"answer", *out}};
    if (!vaultCode.empty()) {
        answer.json["vaultCode"] = vaultCode;
    }
    answer.text = "Signed; the answer is in " + *out + ". Show it to the student's phone.\n";
    return answer;
}

std::vector<OptionSpec> signingOptions(std::vector<OptionSpec> options)
{
    for (const std::vector<OptionSpec>& more : {markOptions(), headOptions()}) {
        options.insert(options.end(), more.begin(), more.end());
    }
    options.push_back({"feedback", "TEXT", "the preceptor's feedback"});
    options.push_back({"preceptor", "NAME", "who signs (a known card says it)"});
    options.push_back({"credential", "TEXT", "such as CST or RN"});
    options.push_back(checkedOption());
    options.push_back({"yes", "", "what is signed was read; do not ask again"});
    return withVaultOptions(std::move(options));
}

} // namespace

std::vector<Command> signCommands()
{
    return {
        {{"sheet sign",
          "Have a preceptor mark and sign sheets on the student's phone; several of one sitting with one card and PIN. "
          "Secrets: the vault's passphrase, yes, the card's PIN.",
          {"SHEET..."},
          signingOptions({{"card", "FILE", "the signing card's code"},
                          {"drawn", "FILE", "a drawn signature's strokes (weak: an instructor must confirm it)"},
                          {"paper-stub", "NUMBER", "a stub signed in pen (weak: an instructor must confirm it)"}}),
          "peelpack sheet sign 3f2a90c1 --card brandt.card --marks YYYYYNNNNA\n  reads back what is signed, asks, then "
          "asks for the PIN"},
         [](const Arguments& arguments) { return give(arguments, sign(arguments)); }},
        {{"sheet offer",
          "Make the code that a preceptor's own phone signs.",
          {"SHEET"},
          withVaultOptions({{"out", "FILE", "where the request goes"}}),
          "peelpack sheet offer 3f2a90c1 --out request.code\n  then on the preceptor's phone: preceptor sign"},
         [](const Arguments& arguments) { return give(arguments, offer(arguments)); }},
        {{"sheet accept",
          "Take in what the preceptor's own phone signed.",
          {"SHEET", "ANSWER"},
          withVaultOptions({}),
          "peelpack sheet accept 3f2a90c1 answer.code\n  the sheet is signed (own-phone)"},
         [](const Arguments& arguments) { return give(arguments, takeSigned(arguments)); }},
        {{"preceptor phone",
          "Show the signing key of a preceptor's own phone and what it signed; makes its vault when it is not there.",
          {},
          withVaultOptions({{"pin", "", "a PIN instead of a passphrase (weaker)"}}),
          "peelpack preceptor phone --vault brandt.peelvault\n  an instructor vouches for the key: preceptor vouch "
          "--key"},
         [](const Arguments& arguments) { return give(arguments, phone(arguments)); }},
        {{"preceptor sign",
          "Mark and sign a student's request on the preceptor's own phone. Secrets: passphrase, yes.",
          {"REQUEST"},
          signingOptions({{"out", "FILE", "where the answer goes"}}),
          "peelpack preceptor sign request.code --vault brandt.peelvault --marks YYYYYNNNNA --preceptor \"L. Brandt\" "
          "--out "
          "answer.code\n  reads back what is signed and asks"},
         [](const Arguments& arguments) { return give(arguments, signRequest(arguments)); }},
    };
}

} // namespace peelpack::cli
