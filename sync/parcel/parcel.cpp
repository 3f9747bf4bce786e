#include "sync/parcel/parcel.h"

#include "sync/keys/hash.h"
#include "sync/parcel/volume.h"

#include <algorithm>
#include <sodium.h>

namespace peelpack::parcel {
namespace {

using journal::Checked;
using journal::Reason;

constexpr std::string_view tag = "peelpack parcel 1\n";
constexpr std::size_t slotBytes = 48;
constexpr std::size_t chunkBytes = std::size_t{64} * 1024;
constexpr std::size_t chunkOverhead = crypto_secretstream_xchacha20poly1305_ABYTES;
constexpr std::size_t streamHeaderBytes = crypto_secretstream_xchacha20poly1305_HEADERBYTES;
constexpr std::size_t fileKeyBytes = 32;
constexpr std::array<std::uint8_t, keys::aeadNonceBytes> zeroNonce{};

/// Bytes before the slots: tag, ephemeral key, number of slots.
constexpr std::size_t slotsAt = tag.size() + keys::SealKey::size + 1;

keys::Secret wrapKey(const keys::SealKey& ephemeral, const keys::SealKey& recipient, const keys::Secret& shared)
{
    return keys::keyedHash("peelpack.slots.1", {ephemeral.view(), recipient.view()}, shared.view());
}

keys::Hash commitment(const keys::Secret& fileKey)
{
    return keys::authenticator("peelpack.commt.1", {}, fileKey.view());
}

keys::Hash headerMac(const keys::Secret& fileKey, keys::ByteView header)
{
    const keys::Secret macKey = keys::keyedHash("peelpack.mackey1", {}, fileKey.view());
    return keys::authenticator("peelpack.headr.1", {header}, macKey.view());
}

/// The state of libsodium's secretstream, wiped when it goes.
class Stream {
public:
    Stream(const keys::Secret& fileKey, keys::ByteView header)
    {
        const keys::Secret streamKey = keys::keyedHash("peelpack.stream1", {}, fileKey.view());
        // Pushing starts from the same state as pulling; init_push would only draw a header from the system itself.
        crypto_secretstream_xchacha20poly1305_init_pull(&m_state, header.data(), streamKey.view().data());
    }
    Stream(const Stream&) = delete;
    Stream& operator=(const Stream&) = delete;
    Stream(Stream&&) = delete;
    Stream& operator=(Stream&&) = delete;
    ~Stream() { sodium_memzero(&m_state, sizeof(m_state)); }

    void push(keys::Bytes& target, keys::ByteView piece, bool last)
    {
        const std::size_t at = target.size();
        target.resize(at + piece.size() + chunkOverhead);
        crypto_secretstream_xchacha20poly1305_push(&m_state, target.data() + at, nullptr, piece.data(), piece.size(),
                                                   nullptr, 0, tagOf(last));
    }

    /// False when the chunk does not fit here.
    bool pull(keys::Bytes& target, keys::ByteView chunk, bool last)
    {
        const std::size_t at = target.size();
        target.resize(at + chunk.size() - chunkOverhead);
        std::uint8_t chunkTag = 0;
        return crypto_secretstream_xchacha20poly1305_pull(&m_state, target.data() + at, nullptr, &chunkTag,
                                                          chunk.data(), chunk.size(), nullptr, 0) == 0 &&
               chunkTag == tagOf(last);
    }

private:
    static std::uint8_t tagOf(bool last)
    {
        return last ? std::uint8_t{crypto_secretstream_xchacha20poly1305_TAG_FINAL}
                    : std::uint8_t{crypto_secretstream_xchacha20poly1305_TAG_MESSAGE};
    }

    crypto_secretstream_xchacha20poly1305_state m_state{};
};

/// The file key from the slot that this key opens; an empty secret when none does.
keys::Secret unwrap(keys::ByteView slots, const keys::SealKey& ephemeral, const keys::OpeningKey& key)
{
    const auto shared = key.agree(ephemeral);
    if (!shared) {
        return keys::Secret();
    }
    const keys::Secret wrapping = wrapKey(ephemeral, key.sealKey(), shared.value());
    for (; !slots.empty(); slots = slots.subspan(slotBytes)) {
        auto fileKey = keys::aeadOpen(wrapping.view(), zeroNonce, keys::bytesOf(tag), slots.first(slotBytes));
        if (fileKey) {
            return std::move(fileKey).value();
        }
    }
    return keys::Secret();
}

Checked<keys::Bytes> openChunks(keys::ByteView chunks, const keys::Secret& fileKey, keys::ByteView streamHeader)
{
    Stream stream(fileKey, streamHeader);
    keys::Bytes volume;
    volume.reserve(chunks.size());
    while (true) {
        const bool last = chunks.size() <= chunkBytes + chunkOverhead;
        const std::size_t size = last ? chunks.size() : chunkBytes + chunkOverhead;
        if (size <= chunkOverhead || !stream.pull(volume, chunks.first(size), last)) {
            return Reason::ChunkDamaged;
        }
        chunks = chunks.subspan(size);
        if (last) {
            return volume;
        }
    }
}

} // namespace

Checked<keys::Bytes> seal(keys::ByteView volume, std::span<const keys::SealKey> recipients, keys::RandomSource& random)
{
    if (volume.size() > mostVolumeBytes) {
        return Reason::TooLarge;
    }
    if (volume.empty() || recipients.empty()) {
        return Reason::TooFew;
    }
    if (recipients.size() > mostRecipients) {
        return Reason::TooMany;
    }
    const keys::Secret fileKey = random.secret(fileKeyBytes);
    const keys::Secret ephemeralSeed = random.secret(keys::OpeningKey::seedBytes);
    std::array<std::uint8_t, streamHeaderBytes> streamHeader{};
    random.fill(streamHeader);
    const auto ephemeral = keys::OpeningKey::fromSeed(ephemeralSeed.view());
    if (!ephemeral) {
        return Reason::UnusableKey;
    }
    const keys::SealKey& ephemeralKey = ephemeral.value().sealKey();

    keys::Bytes parcel;
    parcel.reserve(volume.size() + volume.size() / chunkBytes * chunkOverhead + chunkBytes);
    keys::append(parcel, keys::bytesOf(tag));
    keys::append(parcel, ephemeralKey.view());
    parcel.push_back(static_cast<std::uint8_t>(recipients.size()));
    for (const keys::SealKey& recipient : recipients) {
        const auto shared = ephemeral.value().agree(recipient);
        if (!shared) {
            return Reason::UnusableKey;
        }
        const keys::Secret wrapping = wrapKey(ephemeralKey, recipient, shared.value());
        const auto slot = keys::aeadSeal(wrapping.view(), zeroNonce, keys::bytesOf(tag), fileKey.view());
        if (!slot) {
            return Reason::UnusableKey;
        }
        keys::append(parcel, slot.value());
    }
    keys::append(parcel, commitment(fileKey).view());
    keys::append(parcel, streamHeader);
    keys::append(parcel, headerMac(fileKey, parcel).view());

    Stream stream(fileKey, streamHeader);
    while (true) {
        const bool last = volume.size() <= chunkBytes;
        const keys::ByteView piece = last ? volume : volume.first(chunkBytes);
        stream.push(parcel, piece, last);
        volume = volume.subspan(piece.size());
        if (last) {
            return parcel;
        }
    }
}

bool isParcel(keys::ByteView bytes)
{
    return keys::startsWith(bytes, tag);
}

Checked<keys::Bytes> open(keys::ByteView parcel, const keys::OpeningKey& key)
{
    if (parcel.size() > mostParcelBytes) {
        return Reason::TooLarge;
    }
    if (!isParcel(parcel)) {
        return Reason::NotOurs;
    }
    if (parcel.size() < slotsAt) {
        return Reason::TooShort;
    }
    const std::size_t slots = parcel[slotsAt - 1];
    if (slots == 0 || slots > mostRecipients) {
        return slots == 0 ? Reason::TooFew : Reason::TooMany;
    }
    const std::size_t commitmentAt = slotsAt + slots * slotBytes;
    const std::size_t streamHeaderAt = commitmentAt + keys::Hash::size;
    const std::size_t macAt = streamHeaderAt + streamHeaderBytes;
    const std::size_t chunksAt = macAt + keys::Hash::size;
    if (parcel.size() <= chunksAt + chunkOverhead) {
        return Reason::TooShort;
    }
    const keys::SealKey ephemeral = *keys::SealKey::from(parcel.subspan(tag.size(), keys::SealKey::size));
    const keys::Secret fileKey = unwrap(parcel.subspan(slotsAt, slots * slotBytes), ephemeral, key);
    if (fileKey.empty()) {
        return Reason::NotForThisDevice;
    }
    if (!keys::sameHash(*keys::Hash::from(parcel.subspan(commitmentAt, keys::Hash::size)), commitment(fileKey))) {
        return Reason::NotCommitted;
    }
    if (!keys::sameHash(*keys::Hash::from(parcel.subspan(macAt, keys::Hash::size)),
                        headerMac(fileKey, parcel.first(macAt)))) {
        return Reason::HeaderDamaged;
    }
    return openChunks(parcel.subspan(chunksAt), fileKey, parcel.subspan(streamHeaderAt, streamHeaderBytes));
}

} // namespace peelpack::parcel
