#include "core/base/text.h"

#include <cstdint>

namespace peelpack::base {
namespace {

bool isContinuation(unsigned char byte)
{
    return (byte & 0xC0U) == 0x80U;
}

/// Length of the well-formed sequence at `at`, or 0.
std::size_t sequenceLength(std::string_view text, std::size_t at)
{
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned char lead = byte(at);
    const std::size_t left = text.size() - at;
    if (lead < 0x80) {
        return 1;
    }
    if (lead >= 0xC2 && lead <= 0xDF) {
        return left >= 2 && isContinuation(byte(at + 1)) ? 2 : 0;
    }
    if (lead >= 0xE0 && lead <= 0xEF) {
        if (left < 3 || !isContinuation(byte(at + 1)) || !isContinuation(byte(at + 2))) {
            return 0;
        }
        const bool overlong = lead == 0xE0 && byte(at + 1) < 0xA0;
        const bool surrogate = lead == 0xED && byte(at + 1) > 0x9F;
        return overlong || surrogate ? 0 : 3;
    }
    if (lead >= 0xF0 && lead <= 0xF4) {
        if (left < 4 || !isContinuation(byte(at + 1)) || !isContinuation(byte(at + 2)) ||
            !isContinuation(byte(at + 3))) {
            return 0;
        }
        const bool overlong = lead == 0xF0 && byte(at + 1) < 0x90;
        const bool tooLarge = lead == 0xF4 && byte(at + 1) > 0x8F;
        return overlong || tooLarge ? 0 : 4;
    }
    return 0;
}

} // namespace

std::size_t firstInvalidUtf8(std::string_view text)
{
    std::size_t at = 0;
    while (at < text.size()) {
        if (static_cast<unsigned char>(text[at]) < 0x80) {
            ++at;
            continue;
        }
        const std::size_t length = sequenceLength(text, at);
        if (length == 0) {
            return at;
        }
        at += length;
    }
    return std::string_view::npos;
}

std::string foldCaseAndSpaces(std::string_view text)
{
    std::string out;
    out.reserve(text.size());
    bool pendingSpace = false;
    const auto put = [&](std::string_view piece) {
        if (pendingSpace && !out.empty()) {
            out += ' ';
        }
        pendingSpace = false;
        out += piece;
    };
    for (std::size_t i = 0; i < text.size(); ++i) {
        const char c = text[i];
        const auto byte = static_cast<unsigned char>(c);
        if (c == ' ' || c == '\t' || c == '\n' || c == '\r') {
            pendingSpace = true;
        } else if (c >= 'A' && c <= 'Z') {
            const char lower = static_cast<char>(c - 'A' + 'a');
            put(std::string_view(&lower, 1));
        } else if (byte == 0xC2 && i + 1 < text.size() && static_cast<unsigned char>(text[i + 1]) == 0xA0) {
            pendingSpace = true;
            ++i;
        } else if (byte == 0xC3 && i + 1 < text.size()) {
            auto second = static_cast<unsigned char>(text[i + 1]);
            const bool upperLatin1 = second >= 0x80 && second <= 0x9E && second != 0x97;
            if (upperLatin1) {
                second = static_cast<unsigned char>(second + 0x20);
            }
            const char pair[2] = {c, static_cast<char>(second)};
            put(std::string_view(pair, 2));
            ++i;
        } else {
            put(std::string_view(&text[i], 1));
        }
    }
    return out;
}

std::string_view trimmed(std::string_view text)
{
    const std::size_t first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

std::vector<std::string_view> split(std::string_view text, char separator)
{
    std::vector<std::string_view> pieces;
    std::size_t start = 0;
    for (std::size_t at = text.find(separator); at != std::string_view::npos; at = text.find(separator, start)) {
        pieces.push_back(text.substr(start, at - start));
        start = at + 1;
    }
    pieces.push_back(text.substr(start));
    return pieces;
}

std::string counted(std::size_t count, std::string_view singular, std::string_view plural)
{
    return std::to_string(count) + ' ' + std::string(count == 1 ? singular : plural);
}

namespace {

template <class Text>
std::string listedOf(const std::vector<Text>& items, std::string_view word)
{
    std::string out;
    for (std::size_t i = 0; i < items.size(); ++i) {
        if (i > 0) {
            out += i + 1 == items.size() ? ' ' + std::string(word) + ' ' : ", ";
        }
        out += items[i];
    }
    return out;
}

} // namespace

std::string listed(const std::vector<std::string>& items, std::string_view word)
{
    return listedOf(items, word);
}

std::string listed(const std::vector<std::string_view>& items, std::string_view word)
{
    return listedOf(items, word);
}

} // namespace peelpack::base
