#pragma once

#include "sync/journal/reason.h"
#include "sync/keys/little_endian.h"

#include <cereal/cereal.hpp>

#include <type_traits>

namespace peelpack::journal {

/// Reads cereal's portable binary (little-endian) from bytes that may be hostile. Nothing is set aside before it is
/// known that the bytes for it are there. The first thing that is wrong is kept as the reason; from then on every value
/// reads as zero and every list as empty, so that a whole structure is read through and judged once, by finish().
class InputArchive : public cereal::InputArchive<InputArchive, cereal::AllowEmptyClassElision> {
public:
    static constexpr unsigned mostDeep = 8;

    /// Takes the byte-order byte.
    explicit InputArchive(keys::ByteView bytes)
        : cereal::InputArchive<InputArchive, cereal::AllowEmptyClassElision>(this), m_reader(bytes)
    {
        if (const auto order = number<std::uint8_t>(); order != 1) {
            fail(Reason::ByteOrder);
        }
    }

    template <class T>
    T number()
    {
        const T value = m_reader.number<T>();
        if (m_reader.failed()) {
            fail(Reason::TooShort);
        }
        return m_reason == Reason::None ? value : T{};
    }

    /// A list's element count: at most `most`, and no more than there are bytes left (an element has at least one).
    std::uint64_t count(std::uint64_t most)
    {
        const auto claimed = number<std::uint64_t>();
        if (claimed > m_reader.left() || claimed > most) {
            fail(Reason::TooMany);
            return 0;
        }
        return m_reason == Reason::None ? claimed : 0;
    }

    /// `size` bytes, none when they are not there.
    keys::ByteView view(std::size_t size)
    {
        const keys::ByteView bytes = m_reader.view(size);
        if (m_reader.failed()) {
            fail(Reason::TooShort);
        }
        return m_reason == Reason::None ? bytes : keys::ByteView{};
    }

    /// One level of nesting for as long as it lives.
    class Level {
    public:
        explicit Level(InputArchive& archive) : m_archive(archive)
        {
            if (++m_archive.m_depth > mostDeep) {
                m_archive.fail(Reason::TooDeep);
            }
        }
        Level(const Level&) = delete;
        Level& operator=(const Level&) = delete;
        Level(Level&&) = delete;
        Level& operator=(Level&&) = delete;
        ~Level() { --m_archive.m_depth; }

    private:
        InputArchive& m_archive;
    };

    void fail(Reason reason)
    {
        if (m_reason == Reason::None) {
            m_reason = reason;
        }
    }
    [[nodiscard]] bool failed() const { return m_reason != Reason::None; }

    /// None when everything was read, nothing was wrong and nothing is left.
    [[nodiscard]] Reason finish() const
    {
        if (m_reason != Reason::None) {
            return m_reason;
        }
        return m_reader.left() == 0 ? Reason::None : Reason::LeftOver;
    }

private:
    keys::Reader m_reader;
    Reason m_reason = Reason::None;
    unsigned m_depth = 0;
};

/// Numbers. A bool is 0 or 1; floating point does not exist in the format.
template <class T>
requires std::is_integral_v<T>
void CEREAL_LOAD_FUNCTION_NAME(InputArchive& archive, T& value)
{
    if constexpr (std::is_same_v<T, bool>) {
        const auto byte = archive.number<std::uint8_t>();
        if (byte > 1) {
            archive.fail(Reason::BadBoolean);
        }
        value = byte == 1;
    } else {
        value = archive.number<T>();
    }
}

} // namespace peelpack::journal

CEREAL_REGISTER_ARCHIVE(peelpack::journal::InputArchive)
