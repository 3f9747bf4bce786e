#include "platform/cli/commands.h"

#include "core/base/text.h"
#include "platform/cli/answer.h"
#include "platform/cli/ended_devices.h"
#include "platform/cli/output.h"
#include "platform/cli/policy_words.h"
#include "platform/cli/rule_words.h"
#include "platform/cli/short_id.h"
#include "platform/cli/vault_access.h"
#include "platform/session/directory.h"
#include "platform/session/program_rules.h"
#include "platform/session/rule_writing.h"
#include "platform/session/setup.h"
#include "platform/session/system_clock.h"
#include "sync/keys/code.h"

namespace peelpack::cli {
namespace {

/// Shows a new program code and has it typed back, so that it is known to be on paper before anything depends on it.
base::Result<bool> showAndCheck(const keys::Secret& code, Secrets& secrets)
{
    Output out;
    out << "Program code, shown only now. Whoever has it can name the director: write it on paper and lock it away.\n"
        << "  " << textOf(keys::codeText(keys::CodeSort::Program, code.view())) << "\n";
    if (!written(out)) {
        return base::Error{base::ErrorCode::CannotWrite, "Cannot show the program code."};
    }
    const base::Result<keys::Secret> typedBack = secrets.ask("Type the program code back");
    if (!typedBack) {
        return typedBack.error();
    }
    return session::checkTypedBack(code, textOf(typedBack.value()));
}

base::Result<Answer> makeProgram(const Arguments& arguments)
{
    const base::Result<std::string> file = vaultFile(arguments);
    const base::Result<session::Rules> rules = rulesFrom(arguments);
    base::Result<Secrets> secrets = Secrets::from(arguments);
    if (const base::Error* error = base::firstError(file, rules, secrets)) {
        return *error;
    }
    const std::string name = typed(arguments, "name");
    if (name.empty()) {
        return base::Error{base::ErrorCode::BadUsage, "Who is the director? Give --name."};
    }
    Secrets source = std::move(secrets).value();
    const keys::Secret code = systemRandom().secret(keys::codeSecretBytes);
    if (const base::Result<bool> kept = showAndCheck(code, source); !kept) {
        return kept.error();
    }
    base::Result<NewVault> vault = makeVault(file.value(), arguments.has("pin"), source);
    if (!vault) {
        return vault.error();
    }
    const base::Result<keys::SigningKey> key = keys::programKey(code.view());
    if (!key) {
        return key.error();
    }
    const base::Result<bool> begun = session::beginProgram(*vault.value().vault, key.value(), name, rules.value(),
                                                           session::systemClock(), systemRandom());
    if (!begun) {
        return begun.error();
    }
    const std::string id = keys::hex(key.value().verifyKey().view());
    Answer answer;
    answer.json = {{"program", id}, {"vaultCode", textOf(vault.value().codeText)}};
    answer.text = vaultCodeLines(textOf(vault.value().codeText)) +
                  "The program is set up. Its id, which anybody may know:\n  " + id +
                  "\nNext: peelpack enroll invite\n";
    return answer;
}

base::Result<Answer> takeOver(const Arguments& arguments)
{
    const base::Result<std::string> file = vaultFile(arguments);
    base::Result<Secrets> secrets = Secrets::from(arguments);
    const std::string name = typed(arguments, "name");
    if (!file || !secrets) {
        return file ? secrets.error() : file.error();
    }
    std::uint32_t epoch = 2;
    if (const auto given = arguments.value("epoch")) {
        epoch = static_cast<std::uint32_t>(std::strtoul(given->c_str(), nullptr, 10));
    }
    if (name.empty() || epoch < 2) {
        return base::Error{base::ErrorCode::BadUsage, "Give --name, and --epoch when this is not the second director."};
    }
    Secrets source = std::move(secrets).value();
    const base::Result<keys::Secret> text = source.ask("Program code");
    if (!text) {
        return text.error();
    }
    const base::Result<keys::Secret> code = keys::codeFromText(keys::CodeSort::Program, textOf(text.value()));
    if (!code) {
        return code.error();
    }
    const base::Result<keys::SigningKey> key = keys::programKey(code.value().view());
    base::Result<NewVault> vault = makeVault(file.value(), arguments.has("pin"), source);
    if (!key || !vault) {
        return key ? vault.error() : key.error();
    }
    const base::Result<bool> done =
        session::takeOverProgram(*vault.value().vault, key.value(), epoch, systemRandom().id(), name);
    if (!done) {
        return done.error();
    }
    Answer answer;
    const std::string id = keys::hex(key.value().verifyKey().view());
    answer.json = {{"program", id}, {"epoch", epoch}, {"vaultCode", textOf(vault.value().codeText)}};
    answer.text = vaultCodeLines(textOf(vault.value().codeText)) +
                  "You are the program's director now. Check that this is the program's id:\n  " + id +
                  "\nNext: take in a colleague's parcel, then send yours.\n";
    return answer;
}

base::Result<Answer> endDirector(const Arguments& arguments)
{
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!opened) {
        return opened.error();
    }
    session::Session& session = *opened.value().session;
    const session::Directory directory(session);
    const base::Result<const session::Person*> person =
        directory.findPerson(arguments.operands.front(), journal::Role::Director);
    if (!person) {
        return person.error();
    }
    OpenedVault parts = std::move(opened).value(); // the session stays where it is
    const base::Result<keys::SigningKey> key = askProgramKey(parts.secrets, session.program());
    if (!key) {
        return key.error();
    }
    const session::Person director = *person.value();
    const auto ended = session::endDirector(session, key.value(), director);
    if (!ended) {
        return ended.error();
    }
    Answer answer = endedDevices(director.name, ended.value());
    answer.text += "The others hear of it with your next parcels.\n";
    return answer;
}

base::Result<Answer> changeRules(const Arguments& arguments)
{
    const base::Result<session::Rules> rules = rulesFrom(arguments);
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!rules || !opened) {
        return rules ? opened.error() : rules.error();
    }
    const session::Rules& r = rules.value();
    if (const auto changed = session::changeRules(*opened.value().session, r); !changed) {
        return changed.error();
    }
    Answer answer;
    answer.json = {{"requirementSet", r.requirementSet}, {"counted", wordsOfCounted(r.counted)}};
    answer.text = "From now on the set " + r.requirementSet +
                  " is in force; signatures that count: " + base::listed(wordsOfCounted(r.counted), "and") + ".\n";
    return answer;
}

nlohmann::ordered_json personJson(const session::Person& person)
{
    nlohmann::ordered_json devices = nlohmann::ordered_json::array();
    for (const session::GrantedDevice& device : person.devices) {
        devices.push_back({{"key", keys::hex(device.key.view())}, {"revoked", device.revoked}});
    }
    return {{"id", keys::hex(person.id.view())},
            {"name", person.name},
            {"role", session::word(person.role)},
            {"scopes", person.scopes},
            {"devices", devices}};
}

std::string personLine(const session::Person& person)
{
    const auto revoked = std::count_if(person.devices.begin(), person.devices.end(),
                                       [](const session::GrantedDevice& device) { return device.revoked; });
    std::string line = "  " + shortId(person.id) + "  " + std::string(session::word(person.role)) + "  " + person.name;
    if (!person.scopes.empty()) {
        line += "  (" + base::listed(person.scopes, "and") + ")";
    }
    line += "  " + base::counted(person.devices.size(), "device", "devices");
    return line + (revoked > 0 ? ", " + std::to_string(revoked) + " of them ended\n" : "\n");
}

std::string keyWords(const session::SigningKeyOf& key)
{
    const std::string what = key.kind == journal::KeyKind::Device
                                 ? "own phone"
                                 : "card " + shortId(key.card) + " no. " + std::to_string(key.epoch);
    return what + (key.revoked ? " (revoked)" : "");
}

base::Result<Answer> showProgram(const Arguments& arguments)
{
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!opened) {
        return opened.error();
    }
    const session::Session& session = *opened.value().session;
    const session::Directory directory(session);
    Answer answer;
    const std::string id = keys::hex(session.program().view());
    answer.json = {
        {"program", id}, {"you", keys::hex(session.person().view())}, {"role", session::word(session.role())}};
    answer.text = "Program " + id + "\n";
    if (const std::optional<journal::Policy> policy = session::policyInForce(session)) {
        const std::vector<std::string> counted = wordsOfCounted(policy->counted);
        answer.json["rules"] = {{"requirementSet", policy->requirementSet},
                                {"term", policy->term},
                                {"firstDay", policy->firstDay.iso()},
                                {"lastDay", policy->lastDay.iso()},
                                {"counted", counted}};
        answer.text += "Requirement set in force: " + policy->requirementSet +
                       "; signatures that count: " + base::listed(counted, "and") + ".\n";
    } else {
        answer.text += "The rules in force are not known here yet; take in a parcel.\n";
    }
    addRules(session, answer.json, answer.text);
    answer.json["people"] = nlohmann::ordered_json::array();
    answer.text += "People:\n";
    for (const session::Person& person : directory.people()) {
        answer.json["people"].push_back(personJson(person));
        answer.text += personLine(person);
    }
    answer.json["preceptors"] = nlohmann::ordered_json::array();
    answer.text += directory.preceptors().empty() ? "" : "Preceptors:\n";
    for (const session::Preceptor& preceptor : directory.preceptors()) {
        nlohmann::ordered_json keys = nlohmann::ordered_json::array();
        std::vector<std::string> words;
        for (const session::SigningKeyOf& key : preceptor.keys) {
            words.push_back(keyWords(key));
            keys.push_back({{"kind", key.kind == journal::KeyKind::Card ? "card" : "own-phone"},
                            {"card", keys::hex(key.card.view())},
                            {"epoch", key.epoch},
                            {"revoked", key.revoked}});
        }
        const auto standing = session::standingOf(session, preceptor.id);
        answer.json["preceptors"].push_back({{"id", keys::hex(preceptor.id.view())},
                                             {"name", preceptor.name},
                                             {"credential", preceptor.credential},
                                             {"site", preceptor.site},
                                             {"keys", keys},
                                             {"standing", standingJson(standing)}});
        answer.text += "  " + shortId(preceptor.id) + "  " + preceptor.name + "  " + preceptor.credential + "  " +
                       preceptor.site + "  " + base::listed(words, "and") +
                       (standing ? "  " + standingText(standing) : "") + "\n";
    }
    return answer;
}

} // namespace

std::vector<Command> programCommands()
{
    const std::vector<OptionSpec> rules = ruleOptions();
    const auto with = [](std::vector<OptionSpec> first, const std::vector<OptionSpec>& rest) {
        first.insert(first.end(), rest.begin(), rest.end());
        return first;
    };
    return {
        {{"program new",
          "Set up a program and the director's vault. Secrets asked for: the program code typed back, a new "
          "passphrase.",
          {},
          withVaultOptions(
              with({{"name", "NAME", "the director"}, {"pin", "", "a PIN instead of a passphrase (weaker)"}}, rules)),
          "peelpack program new --vault director.peelvault --name \"A. Director\" --set spread10\n  shows the program "
          "code and the vault code, once"},
         [](const Arguments& arguments) { return give(arguments, makeProgram(arguments)); }},
        {{"program takeover",
          "Become the program's director with the program code, in a new vault. Secrets: program code, a new "
          "passphrase.",
          {},
          withVaultOptions({{"name", "NAME", "the new director"},
                            {"epoch", "N", "the how-manieth director of the program (2)"},
                            {"pin", "", "a PIN instead of a passphrase (weaker)"}}),
          "peelpack program takeover --vault new.peelvault --name \"B. Director\"\n  the old director's device keeps "
          "its "
          "rights until it is ended"},
         [](const Arguments& arguments) { return give(arguments, takeOver(arguments)); }},
        {{"program end",
          "End another director's devices, once their parcel was taken in. Secrets: passphrase, program code.",
          {"NAME|ID"},
          withVaultOptions({}),
          "peelpack program end \"A. Director\"\n  what was received from them stays good, what comes later is not "
          "counted"},
         [](const Arguments& arguments) { return give(arguments, endDirector(arguments)); }},
        {{"program rules",
          "Put other rules in force, as the director.",
          {},
          withVaultOptions(rules),
          "peelpack program rules --set cap15 --counted own-phone,card\n  from here on cap15 is in force"},
         [](const Arguments& arguments) { return give(arguments, changeRules(arguments)); }},
        {{"program show",
          "The rules in force, the people and their devices, the preceptors and their cards.",
          {},
          withVaultOptions({}),
          "peelpack program show --vault director.peelvault\n  lists who is who"},
         [](const Arguments& arguments) { return give(arguments, showProgram(arguments)); }},
    };
}

} // namespace peelpack::cli
