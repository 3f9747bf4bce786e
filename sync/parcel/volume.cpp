#include "sync/parcel/volume.h"

#include "sync/keys/hash.h"
#include "sync/keys/little_endian.h"

#include <algorithm>

namespace peelpack::parcel {
namespace {

using journal::Checked;
using journal::Reason;
using keys::littleEndian;

constexpr std::string_view notice = "Peelpack journal 1: education records, keep them confidential.\n";
constexpr std::size_t headBytes = 148;
constexpr std::size_t runHeadBytes = 56;
constexpr std::size_t lengthBytes = 4;
constexpr keys::Personal digestPersonal = "peelpack.volum.1";

void put(keys::Bytes& bytes, const journal::FeedId& feed)
{
    keys::append(bytes, feed.device.view());
    keys::append(bytes, feed.stream.view());
}

journal::FeedId readFeedId(keys::Reader& reader)
{
    journal::FeedId feed;
    feed.device = reader.fixed<keys::VerifyKey>();
    feed.stream = reader.fixed<keys::Id>();
    return feed;
}

/// What every volume of a batch has in front of its runs, without the numbers.
keys::Bytes certificatesAndHeads(const merge::Batch& batch)
{
    keys::Bytes bytes;
    keys::append(bytes, littleEndian(static_cast<std::uint16_t>(batch.certificates.size())));
    for (const keys::ByteView certificate : batch.certificates) {
        keys::append(bytes, littleEndian(static_cast<std::uint16_t>(certificate.size())));
        keys::append(bytes, certificate);
    }
    keys::append(bytes, littleEndian(static_cast<std::uint16_t>(batch.heads.size())));
    for (const merge::StatedHead& head : batch.heads) {
        put(bytes, head.feed);
        keys::append(bytes, littleEndian(head.count));
        keys::append(bytes, head.link.hash.view());
        keys::append(bytes, head.link.signature.view());
    }
    return bytes;
}

/// The runs cut so that each part fits one volume.
Checked<std::vector<std::vector<merge::Run>>> parts(const std::vector<merge::Run>& runs, std::size_t room)
{
    std::vector<std::vector<merge::Run>> result(1);
    std::size_t used = 0;
    std::size_t entries = 0;
    for (const merge::Run& run : runs) {
        bool begun = false;
        for (std::size_t i = 0; i < run.entries.size(); ++i) {
            const std::size_t size = lengthBytes + run.entries[i].size();
            const std::size_t needed = size + (begun ? 0 : runHeadBytes);
            if (size + runHeadBytes > room) {
                return Reason::TooLarge;
            }
            const bool full =
                used + needed > room || entries == mostEntries || (!begun && result.back().size() == mostRuns);
            if (full) {
                result.emplace_back();
                used = 0;
                entries = 0;
                begun = false;
            }
            if (!begun) {
                result.back().push_back({run.feed, static_cast<std::uint32_t>(run.from + i), {}});
                used += runHeadBytes;
                begun = true;
            }
            result.back().back().entries.push_back(run.entries[i]);
            used += size;
            ++entries;
        }
    }
    return result;
}

void putRuns(keys::Bytes& bytes, const std::vector<merge::Run>& runs)
{
    keys::append(bytes, littleEndian(static_cast<std::uint16_t>(runs.size())));
    for (const merge::Run& run : runs) {
        put(bytes, run.feed);
        keys::append(bytes, littleEndian(run.from));
        keys::append(bytes, littleEndian(static_cast<std::uint32_t>(run.entries.size())));
        for (const keys::ByteView entry : run.entries) {
            keys::append(bytes, littleEndian(static_cast<std::uint32_t>(entry.size())));
            keys::append(bytes, entry);
        }
    }
}

Reason readCertificates(keys::Reader& reader, merge::Batch& batch)
{
    const auto count = reader.number<std::uint16_t>();
    if (count > merge::Ledger::mostCertificates || count > reader.left() / 2) {
        return Reason::TooMany;
    }
    for (unsigned i = 0; i < count && !reader.failed(); ++i) {
        const auto length = reader.number<std::uint16_t>();
        if (length > trust::mostCertificateBytes) {
            return Reason::TooLarge;
        }
        batch.certificates.push_back(reader.view(length));
    }
    return Reason::None;
}

Reason readHeads(keys::Reader& reader, merge::Batch& batch)
{
    const auto count = reader.number<std::uint16_t>();
    if (count > mostHeads || count > reader.left() / headBytes) {
        return Reason::TooManyFeeds;
    }
    for (unsigned i = 0; i < count; ++i) {
        merge::StatedHead head;
        head.feed = readFeedId(reader);
        head.count = reader.number<std::uint32_t>();
        head.link.hash = reader.fixed<keys::Hash>();
        head.link.signature = reader.fixed<keys::Signature>();
        batch.heads.push_back(head);
    }
    return Reason::None;
}

Reason readRuns(keys::Reader& reader, merge::Batch& batch)
{
    const auto count = reader.number<std::uint16_t>();
    if (count > mostRuns || count > reader.left() / runHeadBytes) {
        return Reason::TooMany;
    }
    std::size_t total = 0;
    for (unsigned i = 0; i < count && !reader.failed(); ++i) {
        merge::Run run;
        run.feed = readFeedId(reader);
        run.from = reader.number<std::uint32_t>();
        const auto entries = reader.number<std::uint32_t>();
        total += entries;
        if (total > mostEntries || entries > reader.left() / (lengthBytes + journal::leastEntryBytes)) {
            return Reason::TooManyEntries;
        }
        if (entries > UINT32_MAX - run.from) {
            return Reason::BadNumber;
        }
        run.entries.reserve(entries);
        for (std::uint32_t entry = 0; entry < entries && !reader.failed(); ++entry) {
            const auto length = reader.number<std::uint32_t>();
            if (length > journal::mostEntryBytes) {
                return Reason::TooLarge;
            }
            run.entries.push_back(reader.view(length));
        }
        batch.runs.push_back(std::move(run));
    }
    return Reason::None;
}

} // namespace

Checked<std::vector<keys::Bytes>> writeVolumes(const keys::VerifyKey& program, const merge::Batch& batch,
                                               std::size_t mostBytes)
{
    if (batch.heads.size() > mostHeads) {
        return Reason::TooManyFeeds;
    }
    if (batch.certificates.size() > merge::Ledger::mostCertificates) {
        return Reason::TooMany;
    }
    const keys::Bytes shared = certificatesAndHeads(batch);
    const std::size_t fixedBytes = notice.size() + keys::VerifyKey::size + 2 * sizeof(std::uint16_t) + shared.size() +
                                   sizeof(std::uint16_t) + keys::Hash::size;
    if (fixedBytes > mostBytes) {
        return Reason::TooLarge;
    }
    const auto divided = parts(batch.runs, mostBytes - fixedBytes);
    if (!divided) {
        return divided.reason();
    }
    if (divided.value().size() > UINT16_MAX) {
        return Reason::TooMany;
    }
    std::vector<keys::Bytes> volumes;
    for (std::size_t i = 0; i < divided.value().size(); ++i) {
        keys::Bytes bytes;
        keys::append(bytes, keys::bytesOf(notice));
        keys::append(bytes, program.view());
        keys::append(bytes, littleEndian(static_cast<std::uint16_t>(i + 1)));
        keys::append(bytes, littleEndian(static_cast<std::uint16_t>(divided.value().size())));
        keys::append(bytes, shared);
        putRuns(bytes, divided.value()[i]);
        keys::append(bytes, keys::hash(digestPersonal, {bytes}).view());
        volumes.push_back(std::move(bytes));
    }
    return volumes;
}

Checked<Volume> readVolume(const keys::VerifyKey& program, keys::ByteView bytes)
{
    if (bytes.size() > mostVolumeBytes) {
        return Reason::TooLarge;
    }
    if (!keys::startsWith(bytes, notice)) {
        return Reason::NotOurs;
    }
    if (bytes.size() < notice.size() + keys::Hash::size) {
        return Reason::TooShort;
    }
    const keys::ByteView content = bytes.first(bytes.size() - keys::Hash::size);
    keys::Reader reader(content.subspan(notice.size()));
    if (reader.fixed<keys::VerifyKey>() != program) {
        return reader.failed() ? Reason::TooShort : Reason::WrongProgram;
    }
    const keys::Hash digest = keys::hash(digestPersonal, {content});
    if (!std::equal(digest.bytes.begin(), digest.bytes.end(), bytes.last(keys::Hash::size).begin())) {
        return Reason::BadDigest;
    }
    Volume volume;
    volume.number = reader.number<std::uint16_t>();
    volume.of = reader.number<std::uint16_t>();
    if (volume.number == 0 || volume.number > volume.of) {
        return reader.failed() ? Reason::TooShort : Reason::BadNumber;
    }
    for (const auto& part : {readCertificates, readHeads, readRuns}) {
        if (const Reason reason = part(reader, volume.batch); reason != Reason::None) {
            return reason;
        }
    }
    if (reader.failed()) {
        return Reason::TooShort;
    }
    if (reader.left() > 0) {
        return Reason::LeftOver;
    }
    return volume;
}

} // namespace peelpack::parcel
