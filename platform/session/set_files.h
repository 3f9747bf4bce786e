#pragma once

#include "platform/session/program_rules.h"

#include <string>
#include <vector>

/// The files of requirement sets: those that ship, and those that this vault keeps, sealed like everything in it, by
/// the digest by which the rules name them.
namespace peelpack::session {

/// No file of a set is larger.
inline constexpr std::size_t mostSetBytes = 1U << 20U;

/// A requirement set as its file says it.
struct SetFile {
    requirement::RequirementSet set;
    std::string text;   ///< to the byte
    keys::Hash digest;  ///< of the text
    bool ships = false; ///< with Peelpack: it is at hand everywhere
};

/// From the bytes of a file, checked as a whole. The error lists all that is wrong with it.
base::Result<SetFile> setFileFrom(std::string text);
/// The shipped ones, in their order; read once.
const std::vector<SetFile>& shippedSetFiles();
/// Those that this vault keeps, in the order in which they came.
std::vector<SetFile> keptSetFiles(const Session& session);

/// Keeps a set in the vault; one that ships or is kept already is left alone.
base::Result<bool> keepSetFile(Session& session, const SetFile& file);
/// The same as part of a change that makes a vault.
void keepSetFile(vault::Change& change, const SetFile& file);

/// What the rules mean by this name: a shipped set or a kept one, with just that digest. NotFound: its file is not at
/// hand.
base::Result<SetFile> setFileNamed(const Session& session, const SetByName& named);

/// Sets that the policy in force or a change of requirements names and whose file is not at hand, each once.
std::vector<SetByName> missingSets(const Session& session);
/// Keeps the file of such a set. BadInput: it is none, or no rule names just this text.
base::Result<SetFile> openMissingSet(Session& session, std::string text);

} // namespace peelpack::session
