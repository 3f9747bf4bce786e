#include "platform/cli/vault_access.h"

#include "platform/cli/output.h"
#include "platform/files/text_file.h"
#include "platform/session/completion.h"
#include "platform/session/system_clock.h"
#include "sync/keys/code.h"

#include <QFile>

#include <cstdlib>

namespace peelpack::cli {

std::vector<OptionSpec> withVaultOptions(std::vector<OptionSpec> options)
{
    options.push_back({"vault", "FILE", "whose vault; without it the one of the variable PEELPACK_VAULT"});
    options.push_back(secretsOption());
    options.push_back({"json", "", "for machines"});
    return options;
}

base::Result<keys::SigningKey> askProgramKey(Secrets& secrets, const keys::VerifyKey& program)
{
    const base::Result<keys::Secret> typedCode = secrets.ask("Program code");
    if (!typedCode) {
        return typedCode.error();
    }
    return session::programKeyFromCode(program, textOf(typedCode.value()));
}

keys::RandomSource& systemRandom()
{
    static keys::SystemRandom random;
    return random;
}

vault::MarkStore& installMarks()
{
    static vault::FolderMarkStore marks(vault::FolderMarkStore::usualFolder());
    return marks;
}

base::Result<std::string> vaultFile(const Arguments& arguments)
{
    if (const std::optional<std::string> file = arguments.value("vault")) {
        return *file;
    }
    if (const char* file = std::getenv("PEELPACK_VAULT"); file != nullptr && *file != '\0') {
        return std::string(file);
    }
    return base::Error{base::ErrorCode::BadUsage, "Which vault? Name it with --vault FILE."};
}

base::Result<OpenedVault> openVault(const Arguments& arguments)
{
    const base::Result<std::string> file = vaultFile(arguments);
    if (!file) {
        return file.error();
    }
    return openVault(arguments, file.value());
}

base::Result<OpenedVault> openVault(const Arguments& arguments, const std::string& file)
{
    base::Result<Secrets> secrets = Secrets::from(arguments);
    if (!secrets) {
        return secrets.error();
    }
    OpenedVault opened{std::move(secrets).value(), nullptr};
    auto vault = unlockVault(file, opened.secrets);
    if (!vault) {
        return vault.error();
    }
    auto session = session::Session::open(std::move(vault).value(), session::systemClock(), systemRandom());
    if (!session) {
        return session.error();
    }
    opened.session = std::move(session).value();
    for (const std::string& damage : opened.session->damage()) {
        complain(damage);
    }
    return opened;
}

base::Result<NewVault> makeVault(const std::string& file, bool pin, Secrets& secrets)
{
    const base::Result<keys::Secret> secret =
        secrets.askNew(pin ? "New PIN of the vault (weaker than a passphrase)" : "New passphrase of the vault");
    if (!secret) {
        return secret.error();
    }
    auto made = vault::SqliteVault::make(file, pin ? vault::SecretKind::Pin : vault::SecretKind::Passphrase,
                                         secret.value().view(), installMarks(), systemRandom());
    if (!made) {
        return vault::asError(made.error());
    }
    vault::MadeVault parts = std::move(made).value();
    return NewVault{std::move(parts.vault), keys::codeText(keys::CodeSort::Vault, parts.code.view())};
}

base::Result<std::unique_ptr<vault::SqliteVault>> unlockVault(const std::string& file, Secrets& secrets)
{
    const base::Result<keys::Secret> secret = secrets.ask("Passphrase or PIN of the vault");
    if (!secret) {
        return secret.error();
    }
    auto vault = vault::SqliteVault::open(file, secret.value().view(), installMarks(), systemRandom(),
                                          session::systemClock()().seconds);
    if (!vault) {
        return vault::asError(vault.error());
    }
    return std::move(vault).value();
}

base::Result<OldOrNewVault> unlockOrMakeVault(const std::string& file, bool pin, Secrets& secrets)
{
    if (QFile::exists(QString::fromStdString(file))) {
        base::Result<std::unique_ptr<vault::SqliteVault>> vault = unlockVault(file, secrets);
        return vault ? base::Result<OldOrNewVault>(OldOrNewVault{std::move(vault).value(), {}}) : vault.error();
    }
    base::Result<NewVault> made = makeVault(file, pin, secrets);
    if (!made) {
        return made.error();
    }
    NewVault parts = std::move(made).value();
    return OldOrNewVault{std::move(parts.vault), std::string(textOf(parts.codeText))};
}

std::string vaultCodeLines(std::string_view code)
{
    return code.empty() ? std::string()
                        : "Vault code, shown only now. It opens this vault when the passphrase is lost: keep it on "
                          "paper.\n  " +
                              std::string(code) + "\n";
}

std::string typed(const Arguments& arguments, const std::string& option)
{
    return files::normalized(arguments.value(option).value_or(std::string()));
}

base::Result<std::string> requiredReason(const Arguments& arguments)
{
    std::string reason = typed(arguments, "reason");
    if (reason.empty()) {
        return base::Error{base::ErrorCode::BadUsage, "Why? Give --reason; it stays in the journal."};
    }
    return reason;
}

base::Result<std::optional<base::Date>> dateOption(const Arguments& arguments, const std::string& option)
{
    const std::optional<std::string> text = arguments.value(option);
    if (!text) {
        return std::optional<base::Date>();
    }
    const std::optional<base::Date> date = base::Date::fromIso(*text);
    if (!date) {
        return base::Error{base::ErrorCode::BadUsage, "--" + option + " takes a date such as 2026-03-12."};
    }
    return date;
}

} // namespace peelpack::cli
