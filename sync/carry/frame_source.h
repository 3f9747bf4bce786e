#pragma once

#include "sync/carry/frame.h"

namespace peelpack::carry {

/// Bytes of a writer's own pieces at most: with the rest of its frame, what a QR code of version 13 holds with error
/// correction M (331 bytes; ISO/IEC 18004, table 7).
inline constexpr std::size_t usualPieceBytes = 299;

/// A parcel cut into frames, which are made one by one as they are shown. Owns the parcel.
class FrameSource {
public:
    /// Reasons: TooShort (no bytes), TooLarge (more than goes by light). `most` is the longest piece, from 256 to
    /// mostPieceBytes.
    static journal::Checked<FrameSource> of(keys::Bytes parcel, std::size_t most = usualPieceBytes);

    /// Plain frames, 0 and up; every number from here on is a spare.
    [[nodiscard]] std::uint16_t count() const { return m_count; }
    [[nodiscard]] const keys::Id& parcel() const { return m_id; }
    /// The bytes of a code; there is one for every number.
    [[nodiscard]] keys::Bytes frame(std::uint16_t number) const;

private:
    FrameSource(keys::Bytes parcel, std::uint16_t count);

    keys::Id m_id;
    std::uint32_t m_length;
    std::uint16_t m_count;
    keys::Bytes m_pieces; ///< the parcel, filled up
};

} // namespace peelpack::carry
