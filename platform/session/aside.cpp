#include "platform/session/aside.h"

#include "core/base/text.h"

#include <algorithm>

namespace peelpack::session {
namespace {

base::Error bad(std::string sentence)
{
    return {base::ErrorCode::BadValue, std::move(sentence)};
}

/// A feed that a student writes about themself.
bool isOwn(const journal::FeedId& feed, const trust::Holder* writer)
{
    return writer != nullptr && writer->role == journal::Role::Student && writer->person == feed.stream;
}

} // namespace

std::vector<AsideEntry> asideEntries(const Session& session)
{
    std::vector<AsideEntry> found;
    for (const auto& [id, feed] : session.ledger().feeds()) {
        if (id.stream == session.programStream()) {
            continue;
        }
        const trust::Holder* writer = session.authority().holder(id.device);
        const bool own = isOwn(id, writer);
        journal::eachEntry(feed, nullptr, [&](journal::Decoded&& entry) {
            const trust::Judgment judgment = session.authority().judge(entry);
            if (judgment.standing == trust::Judgment::Standing::Aside) {
                found.push_back({entry.position, judgment.reason, entry.position.feed.stream,
                                 writer == nullptr ? std::string() : writer->name, entry.context.time,
                                 std::move(entry.payload), own});
            }
        });
    }
    std::sort(found.begin(), found.end(), [](const AsideEntry& a, const AsideEntry& b) { return a.entry < b.entry; });
    return found;
}

base::Result<Writing> admitting(const Session& session, const journal::Position& entry, std::string reason)
{
    if (!session.isStaff()) {
        return bad("Only an instructor or the director can admit an entry.");
    }
    if (base::trimmed(reason).empty()) {
        return bad("This needs a reason; it stays beside the sheet for good.");
    }
    const journal::Feed* feed = session.ledger().feed(entry.feed);
    const journal::KeptEntry* kept = feed == nullptr ? nullptr : feed->find(entry.seq, entry.hash);
    if (kept == nullptr) {
        return base::Error{base::ErrorCode::NotFound, "There is no such entry here."};
    }
    const trust::Judgment judgment = session.authority().judge(journal::decode(entry.feed, entry.seq, *kept));
    if (judgment.standing == trust::Judgment::Standing::Counts) {
        return bad("This entry counts already.");
    }
    const trust::Holder* writer = session.authority().holder(entry.feed.device);
    if (judgment.standing == trust::Judgment::Standing::Refused || !isOwn(entry.feed, writer)) {
        return bad("Only what a student's own device wrote can be admitted; anything else is written again by whoever "
                   "may.");
    }
    return Writing{entry.feed.stream, journal::Admit{entry, std::move(reason)}};
}

base::Result<journal::Position> admitEntry(Session& session, const journal::Position& entry, std::string reason)
{
    const base::Result<Writing> made = admitting(session, entry, std::move(reason));
    return made ? session.append(made.value().stream, made.value().payload)
                : base::Result<journal::Position>(made.error());
}

} // namespace peelpack::session
