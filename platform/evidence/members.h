#pragma once

#include "core/base/date.h"
#include "platform/evidence/json.h"
#include "sync/keys/bytes.h"

#include <initializer_list>
#include <optional>
#include <string>
#include <string_view>

namespace peelpack::evidence {

/// Reads the members of one object that may be hostile. What is missing, of another type or out of bounds sets the
/// fault and gives an empty value, so that a parser checks once at the end; the first fault stays.
class Members {
public:
    /// Every member must be among `known`: what a person is not shown does not belong in evidence.
    Members(const Json& object, std::string place, std::initializer_list<std::string_view> known);

    [[nodiscard]] bool has(const char* member) const { return m_object->contains(member); }
    /// Not empty, at most `most` bytes, no control characters but line ends.
    std::string text(const char* member, std::size_t most = longestText);
    /// May be empty.
    std::string note(const char* member, std::size_t most = longestText);
    void exactly(const char* member, const Json& wanted);
    std::uint32_t number(const char* member, std::uint32_t most);
    base::Date date(const char* member);
    /// Lower-case hexadecimal of exactly so many bytes.
    template <class Fixed>
    Fixed bytes(const char* member)
    {
        return hex<Fixed>(text(member), member);
    }
    template <class Fixed>
    Fixed hex(const std::string& digits, const char* member)
    {
        const std::optional<keys::Bytes> bytes = keys::fromHex(digits);
        const auto fixed = bytes ? Fixed::from(*bytes) : std::nullopt;
        if (!fixed || keys::hex(fixed->view()) != digits) {
            refuse(member);
            return {};
        }
        return *fixed;
    }
    /// An empty object when it is none.
    const Json& object(const char* member);
    /// An empty list when it is none, or not of `least` to `most` items.
    const Json& list(const char* member, std::size_t least, std::size_t most);

    /// Names the member that is wrong.
    void refuse(const std::string& member);
    /// Takes the fault of a part over.
    void add(const Members& part);
    /// Empty: all is well.
    [[nodiscard]] const std::string& fault() const { return m_fault; }

    static constexpr std::size_t longestText = 800;     ///< bytes: 200 characters of the journal
    static constexpr std::size_t longestReason = 16000; ///< bytes: 4,000 characters of the journal

private:
    [[nodiscard]] const Json* find(const char* member) const;

    const Json* m_object;
    std::string m_place;
    std::string m_fault;
};

} // namespace peelpack::evidence
