#include "core/sheet/identifiers.h"

#include "core/base/text.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string>

namespace peelpack::sheet {
namespace {

bool isDigit(char c)
{
    return c >= '0' && c <= '9';
}

bool isUpper(char c)
{
    return c >= 'A' && c <= 'Z';
}

bool isLetter(char c)
{
    return isUpper(c) || (c >= 'a' && c <= 'z') || static_cast<unsigned char>(c) >= 0x80;
}

bool isWordCharacter(char c)
{
    return isDigit(c) || isLetter(c);
}

/// A place in a text from which pieces of a pattern are taken one after another; a piece that does not fit fails the
/// whole.
class Cursor {
public:
    Cursor(std::string_view text, std::size_t at) : m_text(text), m_at(at) {}

    [[nodiscard]] std::size_t at() const { return m_at; }
    [[nodiscard]] char peek() const { return m_at < m_text.size() ? m_text[m_at] : '\0'; }
    bool takeAny(std::string_view set)
    {
        if (m_at < m_text.size() && set.find(m_text[m_at]) != std::string_view::npos) {
            ++m_at;
            return true;
        }
        return false;
    }
    void skip(std::string_view set)
    {
        while (takeAny(set)) {
        }
    }
    /// Exactly `least` to `most` digits, all there are.
    bool digits(std::size_t least, std::size_t most, int* value = nullptr)
    {
        std::size_t count = 0;
        int number = 0;
        while (isDigit(peek()) && count <= most) {
            number = number * 10 + (peek() - '0');
            ++m_at;
            ++count;
        }
        if (value != nullptr) {
            *value = number;
        }
        return count >= least && count <= most;
    }
    /// The word in lower case, ASCII letters only compared.
    bool word(std::string_view lower)
    {
        if (m_text.size() - m_at < lower.size()) {
            return false;
        }
        for (std::size_t i = 0; i < lower.size(); ++i) {
            const char c = m_text[m_at + i];
            if ((isUpper(c) ? static_cast<char>(c - 'A' + 'a') : c) != lower[i]) {
                return false;
            }
        }
        m_at += lower.size();
        return true;
    }
    [[nodiscard]] bool atWordEnd() const { return m_at >= m_text.size() || !isWordCharacter(m_text[m_at]); }

private:
    std::string_view m_text;
    std::size_t m_at;
};

using End = std::optional<std::size_t>;

End socialSecurity(std::string_view text, std::size_t at)
{
    Cursor cursor(text, at);
    if (cursor.word("ssn")) {
        cursor.skip(" :#.");
        const bool digits = isDigit(cursor.peek());
        cursor.skip("0123456789-");
        return digits ? End(cursor.at()) : std::nullopt;
    }
    const bool fits = cursor.digits(3, 3) && cursor.takeAny("- ") && cursor.digits(2, 2) && cursor.takeAny("- ") &&
                      cursor.digits(4, 4) && cursor.atWordEnd();
    return fits ? End(cursor.at()) : std::nullopt;
}

End phone(std::string_view text, std::size_t at)
{
    Cursor cursor(text, at);
    if (cursor.takeAny("+")) {
        std::size_t digits = 0;
        std::size_t end = cursor.at();
        while (isDigit(cursor.peek()) ||
               (cursor.peek() != '\0' && std::string_view(" -.()").find(cursor.peek()) != std::string_view::npos)) {
            digits += isDigit(cursor.peek()) ? 1 : 0;
            cursor.takeAny("0123456789 -.()");
            end = isDigit(text[cursor.at() - 1]) ? cursor.at() : end;
        }
        return digits >= 8 ? End(end) : std::nullopt;
    }
    Cursor local = cursor;
    if (local.digits(3, 3) && local.takeAny("-.") && local.digits(4, 4) && local.atWordEnd()) {
        return local.at();
    }
    if (cursor.word("1")) {
        if (!cursor.takeAny("- .")) {
            return std::nullopt;
        }
    }
    const bool bracket = cursor.takeAny("(");
    bool fits = cursor.digits(3, 3);
    if (bracket) {
        fits = fits && cursor.takeAny(")");
        cursor.skip(" -");
    } else {
        fits = fits && cursor.takeAny("- .");
    }
    fits = fits && cursor.digits(3, 3) && cursor.takeAny("- .") && cursor.digits(4, 4) && cursor.atWordEnd();
    return fits ? End(cursor.at()) : std::nullopt;
}

End numericDate(std::string_view text, std::size_t at)
{
    int first = 0;
    Cursor yearFirst(text, at);
    if (yearFirst.digits(4, 4, &first) && first >= 1880 && first <= 2199 && yearFirst.takeAny("-/") &&
        yearFirst.digits(1, 2) && yearFirst.takeAny("-/") && yearFirst.digits(1, 2) && yearFirst.atWordEnd()) {
        return yearFirst.at();
    }
    int second = 0;
    Cursor monthFirst(text, at);
    const bool start = monthFirst.digits(1, 2, &first) && monthFirst.takeAny("/-.") &&
                       monthFirst.digits(1, 2, &second) && monthFirst.takeAny("/-.");
    const bool dayAndMonth =
        first >= 1 && second >= 1 && std::min(first, second) <= 12 && std::max(first, second) <= 31;
    Cursor longYear = monthFirst;
    if (start && dayAndMonth &&
        ((longYear.digits(4, 4) && longYear.atWordEnd()) || (monthFirst.digits(2, 2) && monthFirst.atWordEnd()))) {
        return longYear.atWordEnd() ? longYear.at() : monthFirst.at();
    }
    return std::nullopt;
}

End dateInWords(std::string_view text, std::size_t at)
{
    constexpr std::array<std::string_view, 12> months{"jan", "feb", "mar", "apr", "may", "jun",
                                                      "jul", "aug", "sep", "oct", "nov", "dec"};
    for (const std::string_view month : months) {
        Cursor cursor(text, at);
        if (!cursor.word(month)) {
            continue;
        }
        while (isLetter(cursor.peek())) {
            cursor.takeAny(std::string_view(&text[cursor.at()], 1));
        }
        cursor.skip(". ");
        if (cursor.digits(1, 2) && cursor.takeAny(", ")) {
            cursor.skip(" ");
            if (cursor.digits(4, 4) && cursor.atWordEnd()) {
                return cursor.at();
            }
        }
    }
    return std::nullopt;
}

End birthDate(std::string_view text, std::size_t at)
{
    for (const std::string_view lead : {"date of birth", "birth date", "birthdate", "d.o.b", "dob", "born"}) {
        Cursor cursor(text, at);
        if (!cursor.word(lead)) {
            continue;
        }
        cursor.skip(" .:#");
        cursor.word("on ");
        cursor.word("in ");
        if (const End end = numericDate(text, cursor.at()); end) {
            return end;
        }
        if (const End end = dateInWords(text, cursor.at()); end) {
            return end;
        }
        const bool digits = isDigit(cursor.peek());
        cursor.skip("0123456789/-.");
        if (digits) {
            return cursor.at();
        }
    }
    return std::nullopt;
}

End dateAboutAPerson(std::string_view text, std::size_t at)
{
    for (const auto pattern : {birthDate, numericDate, dateInWords}) {
        if (const End end = pattern(text, at); end) {
            return end;
        }
    }
    return std::nullopt;
}

bool isAgeOver89(int age)
{
    return age > 89 && age < 130;
}

End ageOver89(std::string_view text, std::size_t at)
{
    int age = 0;
    for (const std::string_view lead : {"aged", "age"}) {
        Cursor cursor(text, at);
        if (cursor.word(lead) && cursor.atWordEnd()) {
            cursor.skip(" :=");
            if (cursor.digits(2, 3, &age) && isAgeOver89(age) && cursor.atWordEnd()) {
                return cursor.at();
            }
        }
    }
    Cursor cursor(text, at);
    if (!cursor.digits(2, 3, &age) || !isAgeOver89(age)) {
        return std::nullopt;
    }
    cursor.skip(" -");
    for (const std::string_view unit : {"years old", "years-old", "year old", "year-old", "yrs old", "yr old",
                                        "years of age", "y/o", "y.o", "yo", "yof", "yom", "yrs", "yr"}) {
        Cursor end = cursor;
        if (end.word(unit) && end.atWordEnd()) {
            return end.at();
        }
    }
    return std::nullopt;
}

/// RFC 5321 section 4.5.3.1: longer ones are no address. It also keeps the search linear in the length of the text.
constexpr std::size_t longestLocalPart = 64;

End email(std::string_view text, std::size_t at)
{
    std::size_t end = at;
    const auto isLocal = [](char c) {
        return isWordCharacter(c) || std::string_view("._%+-").find(c) != std::string_view::npos;
    };
    while (end < text.size() && end - at <= longestLocalPart && isLocal(text[end])) {
        ++end;
    }
    if (end == at || end >= text.size() || text[end] != '@') {
        return std::nullopt;
    }
    const std::size_t domain = ++end;
    while (end < text.size() && (isWordCharacter(text[end]) || text[end] == '.' || text[end] == '-')) {
        ++end;
    }
    while (end > domain && !isWordCharacter(text[end - 1])) {
        --end; // a period may end the sentence
    }
    // "cut@30.5" is a setting: the last label of a domain begins with a letter.
    const std::size_t dot = text.substr(0, end).rfind('.');
    return dot != std::string_view::npos && dot > domain && isLetter(text[dot + 1]) ? End(end) : std::nullopt;
}

/// A run of letters, digits and hyphens without enough digits by here is no number.
constexpr std::size_t longestRecordNumber = 40;

End recordNumber(std::string_view text, std::size_t at)
{
    for (const std::string_view lead : {"medical record", "record", "mrn", "mr#", "mr #", "chart", "account", "acct",
                                        "encounter", "csn", "fin", "visit"}) {
        Cursor cursor(text, at);
        if (!cursor.word(lead) || (lead.back() != '#' && isLetter(cursor.peek()))) {
            continue;
        }
        cursor.skip(" ");
        for (const std::string_view between : {"number", "num", "no"}) {
            if (cursor.word(between)) {
                break;
            }
        }
        cursor.skip(" .:#-");
        const std::size_t start = cursor.at();
        std::size_t digits = 0;
        while ((isWordCharacter(cursor.peek()) || cursor.peek() == '-') &&
               (digits >= 3 || cursor.at() - start < longestRecordNumber)) {
            digits += isDigit(cursor.peek()) ? 1 : 0;
            cursor.takeAny(std::string_view(&text[cursor.at()], 1));
        }
        if (digits >= 3) {
            return cursor.at();
        }
    }
    Cursor bare(text, at);
    if (bare.digits(6, 14) && bare.atWordEnd()) {
        return bare.at();
    }
    return std::nullopt;
}

/// "mr imaging" is a picture, not a person.
bool isImaging(std::string_view word)
{
    constexpr std::array<std::string_view, 5> pictures{"imaging", "image", "images", "guided", "angiogram"};
    return std::find(pictures.begin(), pictures.end(), base::foldCaseAndSpaces(word)) != pictures.end();
}

End nameAfterTitle(std::string_view text, std::size_t at)
{
    for (const std::string_view title : {"patient", "mister", "miss", "mrs", "mr", "ms", "pt"}) {
        Cursor cursor(text, at);
        if (!cursor.word(title) || !cursor.atWordEnd()) {
            continue;
        }
        cursor.skip(".:");
        if (!cursor.takeAny(" ")) {
            continue;
        }
        cursor.skip(" ");
        std::size_t end = cursor.at();
        while (end < text.size() && (isLetter(text[end]) || text[end] == '\'' || text[end] == '-')) {
            ++end;
        }
        const std::string_view next = text.substr(cursor.at(), end - cursor.at());
        // "mr smith" is a name in any case; "pt", "patient" and "miss" are followed by ordinary words as often as by a
        // name.
        const bool nameInAnyCase =
            title.front() == 'm' && title != "miss" && !(isUpper(text[at]) && isUpper(text[at + 1]));
        if (next.size() >= 2 && (isUpper(next.front()) || nameInAnyCase) && !isImaging(next)) {
            return end;
        }
    }
    return std::nullopt;
}

struct Pattern {
    IdentifierKind kind;
    End (*match)(std::string_view text, std::size_t at);
};

constexpr std::array<Pattern, 7> patterns{{{IdentifierKind::SocialSecurity, socialSecurity},
                                           {IdentifierKind::Email, email},
                                           {IdentifierKind::Date, dateAboutAPerson},
                                           {IdentifierKind::Phone, phone},
                                           {IdentifierKind::AgeOver89, ageOver89},
                                           {IdentifierKind::RecordNumber, recordNumber},
                                           {IdentifierKind::Name, nameAfterTitle}}};

} // namespace

std::string_view inWords(IdentifierKind kind)
{
    constexpr std::array<std::string_view, 7> words{
        "a record number",          "a date",          "an age over 89", "a phone number", "an e-mail address",
        "a social security number", "a patient's name"};
    return words[static_cast<std::size_t>(kind)];
}

std::vector<IdentifierHit> findIdentifiers(std::string_view text)
{
    std::vector<IdentifierHit> hits;
    std::size_t at = 0;
    while (at < text.size()) {
        const bool wordStart = at == 0 || !isWordCharacter(text[at - 1]);
        const bool candidate = wordStart && (isWordCharacter(text[at]) || text[at] == '+' || text[at] == '(');
        std::size_t next = at + 1;
        if (candidate) {
            for (const Pattern& pattern : patterns) {
                if (const End end = pattern.match(text, at); end && *end > at) {
                    hits.push_back({pattern.kind, at, *end - at});
                    next = *end;
                    break;
                }
            }
        }
        at = next;
    }
    return hits;
}

} // namespace peelpack::sheet
