#pragma once

#include "platform/vault/sqlite_vault.h"
#include "tests/bench/bench_program.h"
#include "tests/bench/rounds.h"

#include <filesystem>
#include <memory>
#include <optional>
#include <string>

/// The rows of the journal's benchmark. Each prints its lines.
namespace peelpack::bench {

using Folder = std::filesystem::path;

/// Taking in against the bare verification of the same signatures.
void takeInRows();
/// Opening, hashing and folding a file against the bare decryption of as many bytes.
void openRow(const Folder& folder);
/// Keeping one signed sheet against two signatures, one verification and one bare commit.
void appendRow(const Folder& folder);
/// A closed file against the bytes that were signed, and a file of SQLCipher beside it.
void sqlcipherRows(const Folder& folder);

/// The answer of something that cannot fail here; ends the program when it does.
template <class Answer>
auto must(Answer answer, const char* what)
{
    if (!answer) {
        std::fprintf(stderr, "It failed: %s\n", what);
        std::exit(1);
    }
    return std::move(answer).value();
}

/// A vault in a new file of a folder, with what opens it again.
struct VaultFile {
    VaultFile(const Folder& folder, const std::string& name);

    void save(const std::vector<vault::Change>& changes) const;
    /// Opens it with its code, so that no password is stretched.
    std::unique_ptr<vault::SqliteVault> open();
    void close() { vault.reset(); }
    [[nodiscard]] double bytes() const { return static_cast<double>(std::filesystem::file_size(file)); }

    std::string file;
    vault::FolderMarkStore marks;
    keys::SystemRandom random;
    std::unique_ptr<vault::SqliteVault> vault;
    keys::Secret code;
};

/// The notes that make a vault that of a person of a program.
vault::Change belongingTo(const keys::VerifyKey& program, const keys::Id& person, journal::Role role);

} // namespace peelpack::bench
