#include "platform/session/set_files.h"

#include "platform/files/requirement_json.h"
#include "platform/files/resources.h"
#include "sync/keys/hash.h"

#include <algorithm>

namespace peelpack::session {
namespace {

constexpr const char* listNote = "requirement sets"; ///< the digests of those kept, one after another

std::string noteOf(const keys::Hash& digest)
{
    return "requirement set " + keys::hex(digest.view());
}

keys::Bytes bytesOf(const std::string& text)
{
    const keys::ByteView bytes = keys::bytesOf(text);
    return {bytes.begin(), bytes.end()};
}

std::vector<keys::Hash> digestsKept(const Session& session)
{
    std::vector<keys::Hash> digests;
    const keys::Bytes list = session.note(listNote).value_or(keys::Bytes{});
    for (std::size_t at = 0; at + keys::Hash::size <= list.size(); at += keys::Hash::size) {
        digests.push_back(*keys::Hash::from(keys::ByteView(list).subspan(at, keys::Hash::size)));
    }
    return digests;
}

/// Empty: nothing of that digest is kept, or it is not what it was.
std::optional<SetFile> keptSetFile(const Session& session, const keys::Hash& digest)
{
    const std::optional<keys::Bytes> note = session.note(noteOf(digest));
    if (!note) {
        return std::nullopt;
    }
    base::Result<SetFile> file = setFileFrom({note->begin(), note->end()});
    return file && file.value().digest == digest ? std::optional(std::move(file).value()) : std::nullopt;
}

/// Every set that a rule names: the policy in force, then the changes.
std::vector<SetByName> namedSets(const Session& session)
{
    std::vector<SetByName> names;
    const auto add = [&](const std::string& id, const keys::Hash& digest) {
        SetByName named{id, digest, {}, {}, {}};
        if (std::none_of(names.begin(), names.end(), [&](const SetByName& one) { return one.isSameSet(named); })) {
            names.push_back(std::move(named));
        }
    };
    if (const std::optional<journal::Policy> policy = policyInForce(session)) {
        add(policy->requirementSet, policy->setDigest);
    }
    for (const journal::RequirementsChange& change : requirementChanges(session)) {
        add(change.requirementSet, change.setDigest);
    }
    return names;
}

} // namespace

base::Result<SetFile> setFileFrom(std::string text)
{
    if (text.size() > mostSetBytes) {
        return base::Error{base::ErrorCode::BadInput, "The requirement set is larger than 1 MiB; check that it is the "
                                                      "right file."};
    }
    base::Result<requirement::RequirementSet> set = files::requirementSetFromJson(text);
    if (!set) {
        return set.error();
    }
    const keys::Hash digest = keys::hash({}, {keys::bytesOf(text)});
    return SetFile{std::move(set).value(), std::move(text), digest, false};
}

const std::vector<SetFile>& shippedSetFiles()
{
    static const std::vector<SetFile> shipped = [] {
        std::vector<SetFile> found;
        for (const std::string& id : files::shippedSetIds()) {
            base::Result<std::string> text = files::shippedText("requirements/" + id + ".json");
            base::Result<SetFile> read = text ? setFileFrom(std::move(text).value()) : text.error();
            if (read) {
                found.push_back(std::move(read).value());
                found.back().ships = true;
            }
        }
        return found;
    }();
    return shipped;
}

std::vector<SetFile> keptSetFiles(const Session& session)
{
    std::vector<SetFile> found;
    for (const keys::Hash& digest : digestsKept(session)) {
        if (std::optional<SetFile> file = keptSetFile(session, digest)) {
            found.push_back(std::move(*file));
        }
    }
    return found;
}

base::Result<bool> keepSetFile(Session& session, const SetFile& file)
{
    if (file.ships || keptSetFile(session, file.digest)) {
        return true;
    }
    if (const base::Result<bool> kept = session.setNote(noteOf(file.digest), bytesOf(file.text)); !kept) {
        return kept.error();
    }
    const std::vector<keys::Hash> before = digestsKept(session);
    if (std::find(before.begin(), before.end(), file.digest) != before.end()) {
        return true;
    }
    keys::Bytes list = session.note(listNote).value_or(keys::Bytes{});
    keys::append(list, file.digest.view());
    return session.setNote(listNote, std::move(list));
}

void keepSetFile(vault::Change& change, const SetFile& file)
{
    if (!file.ships) {
        change.notes[noteOf(file.digest)] = bytesOf(file.text);
        change.notes[listNote] = keys::Bytes(file.digest.bytes.begin(), file.digest.bytes.end());
    }
}

base::Result<SetFile> setFileNamed(const Session& session, const SetByName& named)
{
    const std::vector<SetFile>& shipped = shippedSetFiles();
    const auto found = std::find_if(shipped.begin(), shipped.end(), [&](const SetFile& file) {
        return file.set.id == named.id && (!named.digest || file.digest == *named.digest);
    });
    if (found != shipped.end()) {
        return *found;
    }
    if (named.digest) {
        if (std::optional<SetFile> kept = keptSetFile(session, *named.digest)) {
            return std::move(*kept);
        }
    }
    return base::Error{base::ErrorCode::NotFound, "The requirement set " + named.id +
                                                      " is not one that ships with Peelpack, and its file is not at "
                                                      "hand here. Ask the director for the file and open it."};
}

std::vector<SetByName> missingSets(const Session& session)
{
    std::vector<SetByName> names = namedSets(session);
    std::erase_if(names, [&](const SetByName& named) { return setFileNamed(session, named).ok(); });
    return names;
}

base::Result<SetFile> openMissingSet(Session& session, std::string text)
{
    base::Result<SetFile> file = setFileFrom(std::move(text));
    if (!file) {
        return file;
    }
    const std::vector<SetByName> names = namedSets(session);
    if (std::none_of(names.begin(), names.end(),
                     [&](const SetByName& named) { return named.digest == file.value().digest; })) {
        return base::Error{base::ErrorCode::BadInput, "The rules name no set that is just this file, to the byte. Ask "
                                                      "the director for the file that was put in force."};
    }
    if (const base::Result<bool> kept = keepSetFile(session, file.value()); !kept) {
        return kept.error();
    }
    return file;
}

} // namespace peelpack::session
