#pragma once

#include "platform/cli/secrets.h"
#include "platform/session/session.h"
#include "platform/vault/sqlite_vault.h"

#include <memory>
#include <vector>

namespace peelpack::cli {

/// --vault, --secrets-fd, --json and what a command has besides.
std::vector<OptionSpec> withVaultOptions(std::vector<OptionSpec> options);

/// An unlocked vault with its journal.
struct OpenedVault {
    Secrets secrets;
    std::unique_ptr<session::Session> session;
};

/// Opens the vault of --vault, or of PEELPACK_VAULT, and asks for its passphrase or PIN (the first secret). The error
/// names no person. What is damaged in it is said on standard error.
base::Result<OpenedVault> openVault(const Arguments& arguments);
base::Result<OpenedVault> openVault(const Arguments& arguments, const std::string& file);
/// The file of --vault or PEELPACK_VAULT.
base::Result<std::string> vaultFile(const Arguments& arguments);

/// Makes a vault in that file and asks for its new passphrase, or PIN with --pin. Says the vault code on standard
/// output through `shown`.
struct NewVault {
    std::unique_ptr<vault::SqliteVault> vault;
    keys::Secret codeText;
};
base::Result<NewVault> makeVault(const std::string& file, bool pin, Secrets& secrets);

/// Asks for the passphrase or PIN of the vault in that file, and opens it.
base::Result<std::unique_ptr<vault::SqliteVault>> unlockVault(const std::string& file, Secrets& secrets);

/// The vault in that file; where there is none, a new one and the text of its code, which is empty for an old one.
struct OldOrNewVault {
    std::unique_ptr<vault::SqliteVault> vault;
    std::string codeText;
};
base::Result<OldOrNewVault> unlockOrMakeVault(const std::string& file, bool pin, Secrets& secrets);

/// The lines that show a new vault's code, once; none when there is no code.
std::string vaultCodeLines(std::string_view code);

/// Asks for the program code and makes the program key of it, when it is this program's.
base::Result<keys::SigningKey> askProgramKey(Secrets& secrets, const keys::VerifyKey& program);

keys::RandomSource& systemRandom();
/// The install marks of this user.
vault::MarkStore& installMarks();

/// The text of --reason. BadUsage when it is missing.
base::Result<std::string> requiredReason(const Arguments& arguments);

/// Texts as people typed them, in Unicode normalization form C.
std::string typed(const Arguments& arguments, const std::string& option);
/// A date of an option; empty when the option is not there. BadUsage: it is none.
base::Result<std::optional<base::Date>> dateOption(const Arguments& arguments, const std::string& option);

} // namespace peelpack::cli
