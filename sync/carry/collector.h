#pragma once

#include "sync/carry/frame.h"

#include <deque>
#include <map>
#include <optional>

namespace peelpack::carry {

/// How far the reading of one parcel is.
struct Progress {
    keys::Id parcel;
    std::size_t have = 0; ///< frames that told something new
    std::size_t of = 0;   ///< so many are needed, whichever
    bool operator==(const Progress&) const = default;
};

/// What became of one code.
struct Offered {
    enum class Sort : std::uint8_t {
        Taken,       ///< it tells something new
        Known,       ///< what it tells follows from those before
        Complete,    ///< it was the last that was needed: here is the parcel
        StartedAnew, ///< it does not go with those before, and nothing says which is wrong: all of them are dropped
        Unusable,    ///< no frame, or a misread one: see the reason
    };
    Sort sort = Sort::Unusable;
    journal::Reason reason = journal::Reason::None; ///< as readFrame() says; None unless Unusable
    keys::Bytes parcel;                             ///< none unless Complete
};

/// Puts parcels together from frames in any order, from anywhere in the sequence, with losses and repetitions, and
/// frames of other parcels in between. What comes may be hostile: about a MiB at most is kept for a parcel, for 4
/// parcels at a time. That a parcel is whole says nothing about who made it.
class Collector {
public:
    Offered offer(keys::ByteView code);
    /// Of the parcel to which the last usable frame belongs; none before the first, and after one that started anew.
    /// Of a complete one: all of all.
    [[nodiscard]] const std::optional<Progress>& progress() const { return m_progress; }
    /// A parcel that was complete before is read again from its next frame on, as one that is new.
    void forgetComplete();
    /// Parcels of which something is missing, in the order of their ids.
    [[nodiscard]] std::vector<Progress> unfinished() const;

private:
    struct Key {
        keys::Id parcel;
        std::uint32_t length = 0;
        std::uint16_t count = 0;
        auto operator<=>(const Key&) const = default; // NOLINT(modernize-use-nullptr): a false alarm of version 14
    };
    /// An equation: which pieces, then what they come to, in words of 8 bytes.
    using Row = std::vector<std::uint64_t>;
    struct Reading {
        std::map<std::size_t, Row> rows; ///< by their first piece
        std::uint64_t latest = 0;        ///< when its last frame came, in frames of the collector
    };

    [[nodiscard]] bool isDone(const Key& key) const;
    Reading& readingOf(const Key& key);
    static Row rowOf(const Frame& frame);
    static Offered::Sort add(Reading& reading, const Key& key, Row row);
    static keys::Bytes solve(Reading& reading, const Key& key);

    std::map<Key, Reading> m_readings;
    std::deque<Key> m_done; ///< complete before, the latest last
    std::optional<Progress> m_progress;
    std::uint64_t m_now = 0;
};

} // namespace peelpack::carry
