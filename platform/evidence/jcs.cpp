#include "platform/evidence/jcs.h"

#include "platform/evidence/code_points.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cmath>
#include <vector>

namespace peelpack::evidence {
namespace {

base::Error notPlain(const std::string& why)
{
    return {base::ErrorCode::BadValue, why};
}

/// The UTF-16 code units of well-formed UTF-8.
std::u16string codeUnits(std::string_view text)
{
    constexpr char32_t firstPair = 0x10000;
    constexpr char32_t highStart = 0xD800;
    constexpr char32_t lowStart = 0xDC00;
    constexpr unsigned lowBits = 10;
    std::u16string units;
    for (std::size_t at = 0; at < text.size();) {
        const char32_t point = nextCodePoint(text, at);
        if (point < firstPair) {
            units += static_cast<char16_t>(point);
        } else {
            units += static_cast<char16_t>(highStart + ((point - firstPair) >> lowBits));
            units += static_cast<char16_t>(lowStart + ((point - firstPair) & 0x3FFU));
        }
    }
    return units;
}

class Writer {
public:
    /// Empty sentence: it is written.
    [[nodiscard]] const std::string& fault() const { return m_fault; }
    [[nodiscard]] std::string& text() { return m_text; }

    void write(const Json& value)
    {
        switch (value.type()) {
        case Json::value_t::null:
            m_text += "null";
            break;
        case Json::value_t::boolean:
            m_text += value.get<bool>() ? "true" : "false";
            break;
        case Json::value_t::string:
            writeText(value.get_ref<const std::string&>());
            break;
        case Json::value_t::number_integer:
            writeWhole(value.get<std::int64_t>());
            break;
        case Json::value_t::number_unsigned:
            writeWhole(value.get<std::uint64_t>());
            break;
        case Json::value_t::number_float:
            writeNumber(value.get<double>());
            break;
        case Json::value_t::array:
            writeList(value);
            break;
        case Json::value_t::object:
            writeObject(value);
            break;
        case Json::value_t::binary:
        case Json::value_t::discarded:
            m_fault = "That is no JSON value.";
            break;
        }
    }

private:
    template <class Number>
    void writeWhole(Number number)
    {
        if (!fitsDouble(number)) {
            m_fault = "A whole number is larger than every reader can hold.";
            return;
        }
        writeNumber(static_cast<double>(number));
    }

    void writeNumber(double number)
    {
        const base::Result<std::string> text = ecmaNumber(number);
        if (text) {
            m_text += text.value();
        } else {
            m_fault = text.error().sentence;
        }
    }

    void writeText(const std::string& text)
    {
        if (!isPlainText(text)) {
            m_fault = "A text holds what is no character.";
            return;
        }
        constexpr const char* digits = "0123456789abcdef";
        constexpr std::string_view named = "\b\t\n\f\r\"\\";
        constexpr std::string_view names = "btnfr\"\\";
        m_text += '"';
        for (const char c : text) {
            if (const std::size_t at = named.find(c); at != std::string_view::npos) {
                m_text += {'\\', names[at]};
            } else if (static_cast<unsigned char>(c) < 0x20) {
                const auto value = static_cast<unsigned char>(c);
                m_text += {'\\', 'u', '0', '0', digits[value >> 4U], digits[value & 15U]};
            } else {
                m_text += c;
            }
        }
        m_text += '"';
    }

    void writeList(const Json& list)
    {
        m_text += '[';
        for (std::size_t i = 0; i < list.size(); ++i) {
            m_text += i == 0 ? "" : ",";
            write(list[i]);
        }
        m_text += ']';
    }

    void writeObject(const Json& object)
    {
        struct Member {
            std::u16string order;
            const std::string* name;
            const Json* value;
        };
        std::vector<Member> members;
        for (const auto& [name, value] : object.items()) {
            members.push_back({isPlainText(name) ? codeUnits(name) : std::u16string(), &name, &value});
        }
        std::sort(members.begin(), members.end(), [](const Member& a, const Member& b) { return a.order < b.order; });
        m_text += '{';
        for (std::size_t i = 0; i < members.size(); ++i) {
            m_text += i == 0 ? "" : ",";
            writeText(*members[i].name);
            m_text += ':';
            write(*members[i].value);
        }
        m_text += '}';
    }

    std::string m_text;
    std::string m_fault;
};

} // namespace

base::Result<std::string> ecmaNumber(double number)
{
    if (!std::isfinite(number)) {
        return notPlain("A number is not finite.");
    }
    if (number == 0) {
        return std::string("0");
    }
    std::array<char, 32> buffer{};
    const auto [end, error] =
        std::to_chars(buffer.data(), buffer.data() + buffer.size(), std::abs(number), std::chars_format::scientific);
    const std::string_view written(buffer.data(), static_cast<std::size_t>(end - buffer.data()));
    const std::size_t mark = written.find('e');
    std::string digits(written.substr(0, mark));
    digits.erase(std::remove(digits.begin(), digits.end(), '.'), digits.end());
    int exponent = 0;
    const std::size_t sign = written[mark + 1] == '+' ? 1 : 0; // from_chars takes a minus, and no plus
    std::from_chars(written.data() + mark + 1 + sign, written.data() + written.size(), exponent);

    // The names of ECMA-262: the value is s × 10^(n-k), s having k digits.
    constexpr int mostPlain = 21;
    constexpr int mostZeros = 6;
    const int k = static_cast<int>(digits.size());
    const int n = exponent + 1;
    const auto zeros = [](int count) { return std::string(static_cast<std::size_t>(count), '0'); };
    std::string text = number < 0 ? "-" : "";
    if (k <= n && n <= mostPlain) {
        text += digits + zeros(n - k);
    } else if (0 < n && n <= mostPlain) {
        text += digits.insert(static_cast<std::size_t>(n), ".");
    } else if (-mostZeros < n && n <= 0) {
        text += "0." + zeros(-n) + digits;
    } else {
        text += (k == 1 ? digits : digits.insert(1, ".")) + (exponent < 0 ? "e-" : "e+") +
                std::to_string(std::abs(exponent));
    }
    return text;
}

base::Result<std::string> canonical(const Json& value)
{
    Writer writer;
    writer.write(value);
    if (!writer.fault().empty()) {
        return notPlain(writer.fault());
    }
    return std::move(writer.text());
}

} // namespace peelpack::evidence
