#include "sync/keys/code.h"

#include "sync/keys/hash.h"

#include <array>
#include <optional>
#include <string>

namespace peelpack::keys {
namespace {

constexpr std::string_view alphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
constexpr std::size_t groups = 7;
constexpr std::size_t dataInGroup = 4;
constexpr std::size_t symbolsInGroup = dataInGroup + 1;
constexpr std::size_t dataSymbols = groups * dataInGroup;
constexpr unsigned bitsInSymbol = 5;

const base::Error wrongSize{base::ErrorCode::BadValue, "A code has 128 bits."};

/// Twice `value` in GF(32) with the polynomial x^5 + x^2 + 1.
unsigned twice(unsigned value)
{
    const unsigned shifted = value << 1U;
    return (shifted & 32U) != 0 ? (shifted ^ 37U) : shifted;
}

unsigned checkDigit(std::span<const std::uint8_t> group, std::size_t number)
{
    unsigned sum = 0;
    for (std::size_t i = group.size(); i-- > 0;) {
        sum = twice(sum ^ group[i]);
    }
    return sum ^ static_cast<unsigned>(number + 1);
}

/// The first 12 bits, as two bytes with four zero bits at the end.
std::array<std::uint8_t, 2> checkBits(CodeSort sort, ByteView code)
{
    constexpr std::array personal{"peelpack.codep.1", "peelpack.codev.1", "peelpack.codec.1"};
    const Id digest = shortHash(personal.at(static_cast<std::size_t>(sort)), {code});
    return {digest.bytes[0], static_cast<std::uint8_t>(digest.bytes[1] & 0xF0U)};
}

std::optional<std::uint8_t> symbolValue(char c)
{
    if (c >= 'a' && c <= 'z') {
        c = static_cast<char>(c - 'a' + 'A');
    }
    if (c == 'O') {
        c = '0';
    } else if (c == 'I' || c == 'L') {
        c = '1';
    }
    const std::size_t at = alphabet.find(c);
    return at == std::string_view::npos ? std::nullopt : std::optional(static_cast<std::uint8_t>(at));
}

} // namespace

Secret codeText(CodeSort sort, ByteView code)
{
    if (code.size() != codeSecretBytes) {
        return Secret();
    }
    Secret bits(codeSecretBytes + 2);
    const auto check = checkBits(sort, code);
    std::copy(code.begin(), code.end(), bits.writable().begin());
    std::copy(check.begin(), check.end(), bits.writable().begin() + codeSecretBytes);

    Secret text(codeTextLength);
    std::size_t at = 0;
    std::array<std::uint8_t, dataInGroup> group{};
    for (std::size_t symbol = 0; symbol < dataSymbols; ++symbol) {
        unsigned value = 0;
        for (unsigned bit = 0; bit < bitsInSymbol; ++bit) {
            const std::size_t position = symbol * bitsInSymbol + bit;
            value = (value << 1U) | ((bits.view()[position / 8] >> (7U - position % 8)) & 1U);
        }
        group.at(symbol % dataInGroup) = static_cast<std::uint8_t>(value);
        text.writable()[at++] = static_cast<std::uint8_t>(alphabet[value]);
        if (symbol % dataInGroup == dataInGroup - 1) {
            const std::size_t number = symbol / dataInGroup;
            text.writable()[at++] = static_cast<std::uint8_t>(alphabet[checkDigit(group, number)]);
            if (number + 1 < groups) {
                text.writable()[at++] = '-';
            }
        }
    }
    wipe(group);
    return text;
}

base::Result<Secret> codeFromText(CodeSort sort, std::string_view text)
{
    Secret symbols(groups * symbolsInGroup);
    std::size_t count = 0;
    for (const char c : text) {
        if (c == '-' || c == ' ') {
            continue;
        }
        const auto value = symbolValue(c);
        if (!value || count == symbols.size()) {
            return base::Error{base::ErrorCode::BadInput,
                               "A code has 7 groups of 5 letters and digits; check what you typed."};
        }
        symbols.writable()[count++] = *value;
    }
    if (count != symbols.size()) {
        return base::Error{base::ErrorCode::BadInput, "A code has 7 groups of 5 letters and digits; some are missing."};
    }
    Secret bits(codeSecretBytes + 2);
    std::size_t bit = 0;
    for (std::size_t number = 0; number < groups; ++number) {
        const auto group = symbols.view().subspan(number * symbolsInGroup, symbolsInGroup);
        if (checkDigit(group.first(dataInGroup), number) != group[dataInGroup]) {
            return base::Error{base::ErrorCode::BadInput,
                               "Group " + std::to_string(number + 1) + " of the code is mistyped; compare it again."};
        }
        for (const std::uint8_t symbol : group.first(dataInGroup)) {
            for (unsigned i = bitsInSymbol; i-- > 0; ++bit) {
                const auto one = static_cast<std::uint8_t>(((symbol >> i) & 1U) << (7U - bit % 8));
                bits.writable()[bit / 8] = static_cast<std::uint8_t>(bits.view()[bit / 8] | one);
            }
        }
    }
    Secret code(bits.view().first(codeSecretBytes));
    const auto check = checkBits(sort, code.view());
    if (!std::equal(check.begin(), check.end(), bits.view().begin() + codeSecretBytes)) {
        constexpr std::array sentences{"This is not a program code; it may be a vault code or a card's.",
                                       "This is not a vault code; it may be a program code or a card's.",
                                       "This is not the code of a signing card; it may be a program or vault code."};
        return base::Error{base::ErrorCode::BadInput, sentences.at(static_cast<std::size_t>(sort))};
    }
    return code;
}

base::Result<SigningKey> programKey(ByteView code)
{
    if (code.size() != codeSecretBytes) {
        return wrongSize;
    }
    Secret seed(Hash::size);
    if (!blake2b(seed.writable(), "peelpack.progk.1", {code})) {
        return wrongSize;
    }
    return SigningKey::fromSeed(seed.view());
}

base::Result<Secret> vaultCodeKey(ByteView code, const Id& vault)
{
    if (code.size() != codeSecretBytes) {
        return wrongSize;
    }
    return keyedHash("peelpack.vault.1", {vault.view()}, code);
}

} // namespace peelpack::keys
