#include "platform/evidence/multibase.h"

#include <algorithm>
#include <iterator>

namespace peelpack::evidence {
namespace {

constexpr std::string_view alphabet = "123456789ABCDEFGHJKLMNPQRSTUVWXYZabcdefghijkmnopqrstuvwxyz";
constexpr unsigned base58 = 58;
constexpr unsigned byteValues = 256;
constexpr char prefix = 'z';
constexpr std::size_t mostCharacters = 128;

/// Multiplies a number, least significant digit first, and adds.
void multiplyAdd(keys::Bytes& number, unsigned digitValues, unsigned factor, unsigned added)
{
    unsigned carry = added;
    for (std::uint8_t& digit : number) {
        carry += digit * factor;
        digit = static_cast<std::uint8_t>(carry % digitValues);
        carry /= digitValues;
    }
    for (; carry > 0; carry /= digitValues) {
        number.push_back(static_cast<std::uint8_t>(carry % digitValues));
    }
}

} // namespace

std::string multibase(keys::ByteView bytes)
{
    const auto significant = std::find_if(bytes.begin(), bytes.end(), [](std::uint8_t byte) { return byte != 0; });
    const auto zeros = static_cast<std::size_t>(significant - bytes.begin());
    keys::Bytes number;
    for (const std::uint8_t byte : bytes.subspan(zeros)) {
        multiplyAdd(number, base58, byteValues, byte);
    }
    std::string text(1, prefix);
    text.append(zeros, alphabet.front());
    std::transform(number.rbegin(), number.rend(), std::back_inserter(text),
                   [](std::uint8_t digit) { return alphabet[digit]; });
    return text;
}

std::optional<keys::Bytes> fromMultibase(std::string_view text)
{
    if (text.empty() || text.front() != prefix || text.size() > mostCharacters) {
        return std::nullopt;
    }
    text.remove_prefix(1);
    const std::size_t zeros = std::min(text.find_first_not_of(alphabet.front()), text.size());
    keys::Bytes number;
    for (const char c : text.substr(zeros)) {
        const std::size_t digit = alphabet.find(c);
        if (digit == std::string_view::npos) {
            return std::nullopt;
        }
        multiplyAdd(number, byteValues, base58, static_cast<unsigned>(digit));
    }
    keys::Bytes bytes(zeros);
    bytes.insert(bytes.end(), number.rbegin(), number.rend());
    return bytes;
}

} // namespace peelpack::evidence
