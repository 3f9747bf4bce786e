#include "platform/evidence/json.h"

#include "core/base/text.h"
#include "platform/evidence/code_points.h"
#include "platform/evidence/jcs.h"

#include <set>
#include <string>
#include <vector>

namespace peelpack::evidence {
namespace {

constexpr std::size_t mostLevels = 64;

/// Looks through a text for what I-JSON forbids and a usual parser lets pass.
class StrictReader final : public nlohmann::json_sax<Json> {
public:
    [[nodiscard]] const std::string& fault() const { return m_fault; }

    bool null() override { return true; }
    bool boolean(bool /*value*/) override { return true; }
    bool number_integer(number_integer_t value) override { return fitsDouble(value) || refuse(inexact); }
    bool number_unsigned(number_unsigned_t value) override { return fitsDouble(value) || refuse(inexact); }
    bool number_float(number_float_t value, const string_t& text) override
    {
        // A whole number too long for 64 bits comes as a float.
        const base::Result<std::string> written = ecmaNumber(value);
        return text.find_first_of(".eE") != string_t::npos || (written && written.value() == text) || refuse(inexact);
    }
    bool string(string_t& value) override { return isPlainText(value) || refuse(notText); }
    bool binary(binary_t& /*value*/) override { return refuse("Bytes are not JSON."); }
    bool start_object(std::size_t /*count*/) override { return enter(); }
    bool key(string_t& name) override
    {
        if (!isPlainText(name)) {
            return refuse(notText);
        }
        return m_members.back().insert(name).second || refuse("A member stands twice in one object.");
    }
    bool end_object() override { return leave(); }
    bool start_array(std::size_t /*count*/) override { return enter(); }
    bool end_array() override { return leave(); }
    bool parse_error(std::size_t at, const std::string& /*token*/, const nlohmann::detail::exception& error) override
    {
        constexpr int outOfRange = 406;
        return refuse(error.id == outOfRange ? "A number is too large."
                                             : "It is not JSON from byte " + std::to_string(at) + " on.");
    }

private:
    static constexpr const char* inexact = "A whole number is larger than every reader can hold.";
    static constexpr const char* notText = "A text holds what is no character.";

    bool refuse(std::string why)
    {
        m_fault = std::move(why);
        return false;
    }
    bool enter()
    {
        m_members.emplace_back();
        return m_members.size() <= mostLevels || refuse("It is nested too deep.");
    }
    bool leave()
    {
        m_members.pop_back();
        return true;
    }

    std::vector<std::set<std::string>> m_members; ///< names seen so far, of every open object or list
    std::string m_fault;
};

bool isNoncharacter(char32_t point)
{
    return (point >= 0xFDD0 && point <= 0xFDEF) || (point & 0xFFFEU) == 0xFFFEU;
}

template <class Number>
bool fits(Number number)
{
    constexpr auto exact = std::uint64_t{1} << 53U;
    const std::uint64_t size = number < 0 ? 0 - static_cast<std::uint64_t>(number) : static_cast<std::uint64_t>(number);
    if (size <= exact) {
        return true;
    }
    const base::Result<std::string> written = ecmaNumber(static_cast<double>(number));
    return written && written.value() == std::to_string(number);
}

} // namespace

bool isPlainText(std::string_view text)
{
    if (base::firstInvalidUtf8(text) != std::string_view::npos) {
        return false;
    }
    for (std::size_t at = 0; at < text.size();) {
        if (isNoncharacter(nextCodePoint(text, at))) {
            return false;
        }
    }
    return true;
}

bool fitsDouble(std::int64_t number)
{
    return fits(number);
}

bool fitsDouble(std::uint64_t number)
{
    return fits(number);
}

base::Result<Json> parseJson(std::string_view text)
{
    const auto wrong = [](const std::string& why) { return base::Error{base::ErrorCode::BadInput, why}; };
    if (text.starts_with("\xEF\xBB\xBF")) {
        return wrong("It begins with a byte order mark.");
    }
    StrictReader reader;
    if (!Json::sax_parse(text.begin(), text.end(), &reader)) {
        return wrong(reader.fault());
    }
    return Json::parse(text.begin(), text.end());
}

} // namespace peelpack::evidence
