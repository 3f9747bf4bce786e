#include "sync/carry/collector.h"
#include "sync/carry/frame_source.h"
#include "sync/keys/hash.h"
#include "tests/fuzz/support/program.h"

#include <algorithm>

// What a camera sees while a parcel comes by light: codes one after another, each a size of two bytes and as many
// bytes, as they are and with their check put right. What comes out whole is what its id says; and whatever came
// before, the true frames of a parcel give that parcel.
namespace peelpack::fuzz {
namespace {

using Sort = carry::Offered::Sort;

constexpr std::size_t checkBytes = 4;

void offer(carry::Collector& collector, keys::ByteView code)
{
    const auto frame = carry::readFrame(code);
    if (frame) {
        const keys::Bytes again = carry::writeFrame(frame.value());
        require(std::equal(again.begin(), again.end(), code.begin(), code.end()), "there is one way to write a frame");
    }
    const carry::Offered result = collector.offer(code);
    require((result.sort == Sort::Unusable) == !frame.ok(), "a code is used when it can be read");
    require(result.parcel.empty() == (result.sort != Sort::Complete), "a parcel comes when it is whole");
    require(result.parcel.empty() || carry::parcelId(result.parcel) == frame.value().parcel, "it is that of its id");
    require(collector.unfinished().size() <= 4, "few parcels are read at a time");
}

void offerAll(carry::Collector& collector, keys::ByteView bytes)
{
    while (bytes.size() >= 2) {
        const std::size_t size = std::min(bytes[0] + std::size_t{256} * bytes[1], bytes.size() - 2);
        const keys::ByteView code = bytes.subspan(2, size);
        offer(collector, code);
        if (size > checkBytes) {
            const keys::ByteView before = code.first(size - checkBytes);
            keys::Bytes right(before.begin(), before.end());
            keys::append(right, keys::shortHash("peelpack.frame.1", {before}).view().first(checkBytes));
            offer(collector, right);
        }
        bytes = bytes.subspan(2 + size);
    }
}

/// Lies about this very parcel can cost one beginning anew.
void trueFramesComeThrough(carry::Collector& collector, keys::ByteView bytes)
{
    const auto source = carry::FrameSource::of({bytes.begin(), bytes.end()});
    if (!source) {
        return;
    }
    const std::size_t most = 2 * (std::size_t{source.value().count()} + 100);
    for (std::size_t i = 0; i < most; ++i) {
        const carry::Offered result = collector.offer(source.value().frame(static_cast<std::uint16_t>(i)));
        if (result.sort == Sort::Complete) {
            require(std::equal(bytes.begin(), bytes.end(), result.parcel.begin(), result.parcel.end()),
                    "the true frames give the parcel");
            return;
        }
    }
    require(false, "the true frames come to an end");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const keys::ByteView bytes(data, size);
    carry::Collector collector;
    offerAll(collector, bytes);
    trueFramesComeThrough(collector, bytes);
    return 0;
}

} // namespace peelpack::fuzz
