#include "platform/session/session.h"
#include "tests/bench/journal_rows.h"

namespace peelpack::bench {

VaultFile::VaultFile(const Folder& folder, const std::string& name)
    : file((folder / name).string()), marks((folder / "marks").string())
{
    vault::MadeVault made = must(vault::SqliteVault::make(file, vault::SecretKind::Passphrase,
                                                          keys::bytesOf("four odd words here"), marks, random),
                                 "vault");
    vault = std::move(made.vault);
    code = std::move(made.code);
}

void VaultFile::save(const std::vector<vault::Change>& changes) const
{
    for (const vault::Change& change : changes) {
        must(vault->save(change), "save");
    }
}

std::unique_ptr<vault::SqliteVault> VaultFile::open()
{
    return must(vault::SqliteVault::openWithCode(file, code.view(), marks, random), "open");
}

vault::Change belongingTo(const keys::VerifyKey& program, const keys::Id& person, journal::Role role)
{
    vault::Change change;
    change.notes[session::notes::program] = keys::Bytes(program.bytes.begin(), program.bytes.end());
    change.notes[session::notes::person] = keys::Bytes(person.bytes.begin(), person.bytes.end());
    change.notes[session::notes::role] = keys::Bytes{static_cast<std::uint8_t>(role)};
    return change;
}

} // namespace peelpack::bench
