#include "tests/fuzz/support/program.h"

// A payload of a chosen kind: the first two bytes are its number or choose another, the others are the payload. There
// is one way to write it.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace peelpack;
    if (size < 2) {
        return 0;
    }
    const auto kinds = fuzz::knownKinds();
    const auto chosen = static_cast<std::uint16_t>(data[0] | data[1] << 8U);
    const std::uint16_t kind = journal::isKnown(chosen) ? chosen : kinds[chosen % kinds.size()];
    const keys::ByteView bytes = keys::ByteView(data, size).subspan(2);
    if (const auto payload = journal::decodePayload(kind, bytes)) {
        fuzz::require(fuzz::kindOf(payload.value()) == kind, "a payload is of the kind that it was read as");
        fuzz::requireSameBytes(payload.value(), bytes);
    }
    return 0;
}
