#include "sync/journal/decoded.h"

#include <algorithm>

namespace peelpack::journal {

Decoded decode(const FeedId& feed, std::uint32_t seq, const KeptEntry& kept)
{
    const auto parts = takeApart(kept.bytes);
    auto payload = readPayload(kept.kind, parts.value().payload);
    return {{feed, seq, kept.link.hash}, parts.value().context, kept.kind, std::move(payload).value(), kept.link};
}

Decoded decodeWithoutPayload(const FeedId& feed, std::uint32_t seq, const KeptEntry& kept)
{
    const auto parts = takeApart(kept.bytes);
    return {{feed, seq, kept.link.hash}, parts.value().context, kept.kind, Unread{}, kept.link};
}

Checked<Statement> statementIn(const KeptEntry& attestation)
{
    return decodeStatement(statementBytes(takeApart(attestation.bytes).value().payload));
}

std::function<bool(std::uint16_t)> ofKind(std::initializer_list<Kind> kinds)
{
    return [wanted = std::vector<Kind>(kinds)](std::uint16_t kind) {
        return std::find(wanted.begin(), wanted.end(), static_cast<Kind>(kind)) != wanted.end();
    };
}

void eachTrunkEntry(const Feed& feed, std::uint32_t limit, const std::function<bool(std::uint16_t)>& wanted,
                    const std::function<void(Decoded&&)>& onEntry)
{
    const std::uint32_t end = std::min(limit, feed.count());
    for (std::uint32_t seq = 0; seq < end; ++seq) {
        const KeptEntry& kept = feed.trunk().entries[seq];
        if (!wanted || wanted(kept.kind)) {
            onEntry(decode(feed.id(), seq, kept));
        }
    }
}

void eachEntry(const Feed& feed, const std::function<bool(std::uint16_t)>& wanted,
               const std::function<void(Decoded&&)>& onEntry)
{
    feed.eachSegment([&](std::uint32_t from, const Segment& segment) {
        for (std::uint32_t i = 0; i < segment.entries.size(); ++i) {
            if (!wanted || wanted(segment.entries[i].kind)) {
                onEntry(decode(feed.id(), from + i, segment.entries[i]));
            }
        }
    });
}

} // namespace peelpack::journal
