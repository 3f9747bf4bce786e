#include "sync/carry/frame_source.h"

#include <algorithm>
#include <functional>

namespace peelpack::carry {

journal::Checked<FrameSource> FrameSource::of(keys::Bytes parcel, std::size_t most)
{
    if (parcel.empty()) {
        return journal::Reason::TooShort;
    }
    const std::size_t count = (parcel.size() + most - 1) / most;
    if (parcel.size() > mostLightBytes || count > mostPieces) {
        return journal::Reason::TooLarge;
    }
    return FrameSource(std::move(parcel), static_cast<std::uint16_t>(count));
}

FrameSource::FrameSource(keys::Bytes parcel, std::uint16_t count)
    : m_id(parcelId(parcel)), m_length(static_cast<std::uint32_t>(parcel.size())), m_count(count),
      m_pieces(std::move(parcel))
{
    m_pieces.resize(count * pieceBytes(m_length, count));
}

keys::Bytes FrameSource::frame(std::uint16_t number) const
{
    const std::size_t size = pieceBytes(m_length, m_count);
    const keys::ByteView all = m_pieces;
    if (number < m_count) {
        return writeFrame({m_id, m_length, m_count, number, all.subspan(number * size, size)});
    }
    constexpr std::size_t wordBits = 64;
    const PieceSet chosen = piecesOf(m_id, m_count, number);
    keys::Bytes sum(size);
    for (std::size_t i = 0; i < m_count; ++i) {
        if (((chosen[i / wordBits] >> (i % wordBits)) & 1U) != 0) {
            const keys::ByteView piece = all.subspan(i * size, size);
            std::transform(sum.begin(), sum.end(), piece.begin(), sum.begin(), std::bit_xor<>());
        }
    }
    return writeFrame({m_id, m_length, m_count, number, sum});
}

} // namespace peelpack::carry
