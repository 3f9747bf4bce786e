#include "sync/journal/fork.h"

#include "sync/journal/entry.h"
#include "sync/keys/little_endian.h"

#include <algorithm>

namespace peelpack::journal {
namespace {

constexpr std::array<std::uint8_t, 4> evidenceMark{'P', 'P', 'F', 1};

} // namespace

ForkEvidence evidence(const FeedId& feed, std::uint32_t seq, const Link& one, const Link& other)
{
    return {feed, seq, std::min(one, other), std::max(one, other)};
}

bool holds(const ForkEvidence& evidence)
{
    return evidence.first < evidence.second && verifyHead(evidence.feed, evidence.seq, evidence.first) &&
           verifyHead(evidence.feed, evidence.seq, evidence.second);
}

keys::Bytes toBytes(const ForkEvidence& evidence)
{
    keys::Bytes bytes(evidenceMark.begin(), evidenceMark.end());
    keys::append(bytes, evidence.feed.device.view());
    keys::append(bytes, evidence.feed.stream.view());
    keys::append(bytes, keys::littleEndian(evidence.seq));
    for (const Link& link : {evidence.first, evidence.second}) {
        keys::append(bytes, link.hash.view());
        keys::append(bytes, link.signature.view());
    }
    return bytes;
}

Checked<ForkEvidence> evidenceFromBytes(keys::ByteView bytes)
{
    if (bytes.size() != evidenceBytes || !std::equal(evidenceMark.begin(), evidenceMark.end(), bytes.begin())) {
        return Reason::NotOurs;
    }
    keys::Reader reader(bytes.subspan(evidenceMark.size()));
    ForkEvidence evidence;
    evidence.feed.device = reader.fixed<keys::VerifyKey>();
    evidence.feed.stream = reader.fixed<keys::Id>();
    evidence.seq = reader.number<std::uint32_t>();
    for (Link* link : {&evidence.first, &evidence.second}) {
        link->hash = reader.fixed<keys::Hash>();
        link->signature = reader.fixed<keys::Signature>();
    }
    if (!holds(evidence)) {
        return Reason::BadEvidence;
    }
    return evidence;
}

} // namespace peelpack::journal
