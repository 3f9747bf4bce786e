#pragma once

#include <cassert>
#include <cstdint>
#include <string_view>
#include <utility>
#include <variant>

namespace peelpack::journal {

/// What became of something that was offered (journal document, section 3).
enum class Verdict : std::uint8_t {
    Taken,   ///< new, and now held
    Known,   ///< identical bytes already there
    Gap,     ///< its predecessor is missing; keep what brought it and try again later
    Aside,   ///< valid, visible, not counted
    Refused, ///< not usable, and never will be
    Forked,  ///< valid, and another valid entry stands at its place
};

/// Why. Closed: a caller may switch over it. The numbers never leave the process.
enum class Reason : std::uint8_t {
    None,
    // form
    TooLarge,
    TooShort,
    LeftOver,
    UnknownVersion,
    ByteOrder,
    BadBoolean,
    BadNumber,
    BadText,
    TextTooLong,
    TextMissing,
    TooMany,
    TooFew,
    TooDeep,
    BadOrder,
    BadCombination,
    WrongStream,
    NotOurs,
    BadDigest,
    // chain and signature
    PredecessorMissing,
    BadSignature,
    UnusableKey,
    WrongProgram,
    WrongStudent,
    BadSigner,
    BadEvidence,
    RecordForked,
    BranchNotKept,
    // authority
    NoGrant,
    NewerKind,
    RoleMayNotWrite,
    NotTheirStudent,
    OutOfScope,
    Revoked,
    PastFork,
    CardRevoked,
    UnknownSigner,
    NotAdmissible,
    // parcel
    NotForThisDevice,
    NotCommitted,
    HeaderDamaged,
    ChunkDamaged,
    TooManyFeeds,
    TooManyEntries,
};

/// The verdict in one word ("known").
std::string_view word(Verdict verdict);
/// The reason as a sentence for a person (US English, ends with a period); empty for None.
std::string_view sentence(Reason reason);

/// Either a value or the reason why there is none. Thread: as safe as T.
template <class T>
class [[nodiscard]] Checked {
public:
    Checked(T value) : m_state(std::in_place_index<0>, std::move(value)) {}
    /// Never Reason::None.
    Checked(Reason reason) : m_state(std::in_place_index<1>, reason) { assert(reason != Reason::None); }

    [[nodiscard]] bool ok() const { return m_state.index() == 0; }
    explicit operator bool() const { return ok(); }

    /// Only when ok().
    [[nodiscard]] const T& value() const&
    {
        assert(ok());
        return *std::get_if<0>(&m_state);
    }
    [[nodiscard]] T&& value() &&
    {
        assert(ok());
        return std::move(*std::get_if<0>(&m_state));
    }
    /// None when ok().
    [[nodiscard]] Reason reason() const { return ok() ? Reason::None : *std::get_if<1>(&m_state); }

private:
    std::variant<T, Reason> m_state;
};

} // namespace peelpack::journal
