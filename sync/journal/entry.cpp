#include "sync/journal/entry.h"

#include "sync/journal/fork.h"
#include "sync/journal/statement.h"
#include "sync/keys/card.h"
#include "sync/keys/hash.h"
#include "sync/keys/little_endian.h"

namespace peelpack::journal {

using keys::littleEndian;

Checked<EntryParts> takeApart(keys::ByteView entry)
{
    if (entry.size() > mostEntryBytes) {
        return Reason::TooLarge;
    }
    if (entry.size() < leastEntryBytes) {
        return Reason::TooShort;
    }
    EntryParts parts;
    parts.body = entry.first(entry.size() - keys::Signature::size);
    parts.signature = *keys::Signature::from(entry.last(keys::Signature::size));
    keys::Reader reader(parts.body);
    if (reader.number<std::uint8_t>() != entryVersion) {
        return Reason::UnknownVersion;
    }
    parts.context.time.seconds = reader.number<std::int64_t>();
    parts.context.time.zone = reader.number<std::int16_t>();
    const auto cites = reader.number<std::uint8_t>();
    if (cites > 1) {
        return Reason::BadBoolean;
    }
    if (cites == 1) {
        Position position;
        position.feed.device = reader.fixed<keys::VerifyKey>();
        position.feed.stream = reader.fixed<keys::Id>();
        position.seq = reader.number<std::uint32_t>();
        position.hash = reader.fixed<keys::Hash>();
        parts.context.cites = position;
    }
    parts.kind = reader.number<std::uint16_t>();
    const auto length = reader.number<std::uint32_t>();
    if (reader.failed() || length > reader.left()) {
        return Reason::TooShort;
    }
    if (length < reader.left()) {
        return Reason::LeftOver;
    }
    if (parts.context.time.zone < -farthestZone || parts.context.time.zone > farthestZone) {
        return Reason::BadNumber;
    }
    parts.payload = reader.view(length);
    return parts;
}

keys::Hash entryHash(const keys::VerifyKey& program, const Place& place, keys::ByteView body)
{
    // In one piece: handing over each of them would cost a fifth of the hash.
    std::array<std::uint8_t, keys::VerifyKey::size + keys::VerifyKey::size + keys::Id::size + sizeof(place.seq) +
                                 keys::Hash::size + keys::Signature::size>
        before{};
    const auto seq = littleEndian(place.seq);
    auto at = before.begin();
    for (const keys::ByteView piece :
         {program.view(), place.feed.device.view(), place.feed.stream.view(), keys::ByteView(seq),
          place.previous.hash.view(), place.previous.signature.view()}) {
        at = std::copy(piece.begin(), piece.end(), at);
    }
    return keys::hash("peelpack.entry.1", {before, body});
}

keys::Bytes headStatement(const FeedId& feed, std::uint32_t seq, const keys::Hash& hash)
{
    keys::Bytes statement;
    keys::append(statement, keys::bytesOf("peelpack head 1\n"));
    keys::append(statement, feed.device.view());
    keys::append(statement, feed.stream.view());
    keys::append(statement, littleEndian(seq));
    keys::append(statement, hash.view());
    return statement;
}

bool verifyHead(const FeedId& feed, std::uint32_t seq, const Link& link)
{
    return keys::verify(feed.device, headStatement(feed, seq, link.hash), link.signature);
}

Checked<SignedEntry> writeRawEntry(const keys::VerifyKey& program, const Place& place, const EntryContext& context,
                                   std::uint16_t kind, keys::ByteView payload, const keys::SigningKey& key)
{
    if (key.verifyKey() != place.feed.device) {
        return Reason::BadSignature;
    }
    SignedEntry entry;
    entry.bytes.push_back(entryVersion);
    keys::append(entry.bytes, littleEndian(context.time.seconds));
    keys::append(entry.bytes, littleEndian(context.time.zone));
    entry.bytes.push_back(context.cites ? 1 : 0);
    if (context.cites) {
        keys::append(entry.bytes, context.cites->feed.device.view());
        keys::append(entry.bytes, context.cites->feed.stream.view());
        keys::append(entry.bytes, littleEndian(context.cites->seq));
        keys::append(entry.bytes, context.cites->hash.view());
    }
    keys::append(entry.bytes, littleEndian(kind));
    keys::append(entry.bytes, littleEndian(static_cast<std::uint32_t>(payload.size())));
    keys::append(entry.bytes, payload);
    entry.link.hash = entryHash(program, place, entry.bytes);
    entry.link.signature = key.sign(headStatement(place.feed, place.seq, entry.link.hash));
    keys::append(entry.bytes, entry.link.signature.view());
    const auto readBack = takeApart(entry.bytes);
    if (!readBack) {
        return readBack.reason();
    }
    return entry;
}

Checked<SignedEntry> writeEntry(const keys::VerifyKey& program, const Place& place, const EntryContext& context,
                                const Payload& payload, const keys::SigningKey& key)
{
    keys::UsableKeys usable;
    return writeEntry(program, place, context, payload, key, usable);
}

Checked<SignedEntry> writeEntry(const keys::VerifyKey& program, const Place& place, const EntryContext& context,
                                const Payload& payload, const keys::SigningKey& key, keys::UsableKeys& usable)
{
    const auto bytes = encode(payload);
    if (!bytes) {
        return bytes.reason();
    }
    const std::uint16_t kind = std::visit(
        []<class T>(const T& /*value*/) -> std::uint16_t {
            if constexpr (std::is_same_v<T, Unread>) {
                return 0;
            } else {
                return static_cast<std::uint16_t>(T::kind);
            }
        },
        payload);
    if (const Reason fault = placeFault(program, place.feed, kind, payload, usable); fault != Reason::None) {
        return fault;
    }
    return writeRawEntry(program, place, context, kind, bytes.value(), key);
}

Reason placeFault(const keys::VerifyKey& program, const FeedId& feed, std::uint16_t kind, const Payload& payload,
                  keys::UsableKeys& usable)
{
    const bool inProgram = feed.stream == keys::programStream(program);
    if (!(inProgram ? belongsInProgramStream(kind) : belongsInStudentStream(kind))) {
        return Reason::WrongStream;
    }
    if (const auto* grant = std::get_if<Grant>(&payload)) {
        const bool student = grant->role == Role::Student;
        if (student == inProgram || (student && grant->person != feed.stream)) {
            return Reason::WrongStream;
        }
    }
    if (const auto* revoke = std::get_if<Revoke>(&payload)) {
        const bool fits = revoke->target == KeyKind::Card ? inProgram : revoke->feed.stream == feed.stream;
        return fits ? Reason::None : Reason::WrongStream;
    }
    if (const auto* admit = std::get_if<Admit>(&payload)) {
        return admit->entry.feed.stream == feed.stream ? Reason::None : Reason::WrongStream;
    }
    if (const auto* complete = std::get_if<Complete>(&payload)) {
        return complete->studentHead.feed.stream == feed.stream ? Reason::None : Reason::WrongStream;
    }
    if (const auto* complete = std::get_if<CompleteByException>(&payload)) {
        return complete->studentHead.feed.stream == feed.stream ? Reason::None : Reason::WrongStream;
    }
    if (const auto* attestation = std::get_if<Attestation>(&payload)) {
        return checkAttestation(*attestation, program, feed, usable).reason();
    }
    if (const auto* found = std::get_if<ForkFound>(&payload)) {
        return holds(found->evidence) ? Reason::None : Reason::BadEvidence;
    }
    return Reason::None;
}

} // namespace peelpack::journal
