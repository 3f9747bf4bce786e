#include "platform/cli/commands.h"

#include "core/base/text.h"
#include "platform/cli/answer.h"
#include "platform/cli/vault_access.h"
#include "sync/keys/code.h"

namespace peelpack::cli {
namespace {

/// A vault without its journal, and where further secrets come from.
struct VaultAlone {
    Secrets secrets;
    std::unique_ptr<vault::SqliteVault> vault;
};

base::Result<std::unique_ptr<vault::SqliteVault>> openWithCode(const std::string& file, Secrets& secrets)
{
    const base::Result<keys::Secret> text = secrets.ask("Vault code");
    if (!text) {
        return text.error();
    }
    const base::Result<keys::Secret> code = keys::codeFromText(keys::CodeSort::Vault, textOf(text.value()));
    if (!code) {
        return code.error();
    }
    auto vault = vault::SqliteVault::openWithCode(file, code.value().view(), installMarks(), systemRandom());
    if (!vault) {
        return vault::asError(vault.error());
    }
    return std::move(vault).value();
}

/// With the vault code where --code says so, else with the passphrase or PIN.
base::Result<VaultAlone> openAlone(const Arguments& arguments)
{
    base::Result<Secrets> secrets = Secrets::from(arguments);
    if (!secrets) {
        return secrets.error();
    }
    const base::Result<std::string> file = vaultFile(arguments);
    if (!file) {
        return file.error();
    }
    VaultAlone opened{std::move(secrets).value(), nullptr};
    auto vault =
        arguments.has("code") ? openWithCode(file.value(), opened.secrets) : unlockVault(file.value(), opened.secrets);
    if (!vault) {
        return vault.error();
    }
    opened.vault = std::move(vault).value();
    return opened;
}

base::Result<Answer> changeSecret(const Arguments& arguments)
{
    base::Result<VaultAlone> opened = openAlone(arguments);
    if (!opened) {
        return opened.error();
    }
    VaultAlone parts = std::move(opened).value();
    const bool pin = arguments.has("pin");
    const base::Result<keys::Secret> secret =
        parts.secrets.askNew(pin ? "New PIN of the vault (weaker than a passphrase)" : "New passphrase of the vault");
    if (!secret) {
        return secret.error();
    }
    const vault::Result<bool> changed =
        parts.vault->changeSecret(pin ? vault::SecretKind::Pin : vault::SecretKind::Passphrase, secret.value().view());
    if (!changed) {
        return vault::asError(changed.error());
    }
    const bool signs = parts.vault->device().ok();
    Answer answer;
    answer.json = {{"changed", true}, {"signs", signs}};
    answer.text = signs
                      ? "Changed. The cases in it stay as they are.\n"
                      : "Changed. This vault is a copy and cannot sign: ask your instructor for an invitation and join "
                        "again with it (enroll join); your history is kept.\n";
    return answer;
}

base::Result<Answer> changeCode(const Arguments& arguments)
{
    base::Result<VaultAlone> opened = openAlone(arguments);
    if (!opened) {
        return opened.error();
    }
    VaultAlone parts = std::move(opened).value();
    const vault::Result<keys::Secret> code = parts.vault->changeCode();
    if (!code) {
        return vault::asError(code.error());
    }
    const keys::Secret text = keys::codeText(keys::CodeSort::Vault, code.value().view());
    Answer answer;
    answer.json = {{"vaultCode", textOf(text)}};
    answer.text =
        "New vault code, shown only now; the old one opens nothing any more:\n  " + std::string(textOf(text)) + "\n";
    return answer;
}

} // namespace

std::vector<Command> vaultCommands()
{
    const OptionSpec code{"code", "", "open with the vault code instead of the passphrase or PIN"};
    return {
        {{"vault secret",
          "Change the passphrase or PIN of a vault; with --code also when it is forgotten, or on a copy. Secrets: the "
          "old "
          "one or the vault code, the new one.",
          {},
          withVaultOptions({code, {"pin", "", "a PIN instead of a passphrase (weaker)"}}),
          "peelpack vault secret --code --vault ines.peelvault\n  asks for the vault code, then for a new passphrase"},
         [](const Arguments& arguments) { return give(arguments, changeSecret(arguments)); }},
        {{"vault code",
          "Make a new vault code; the old one opens nothing any more. Secret: the passphrase.",
          {},
          withVaultOptions({code}),
          "peelpack vault code --vault ines.peelvault\n  when the paper with the old one is lost"},
         [](const Arguments& arguments) { return give(arguments, changeCode(arguments)); }},
    };
}

} // namespace peelpack::cli
