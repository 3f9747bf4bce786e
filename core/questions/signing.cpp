#include "core/questions/signing.h"

#include "core/base/text.h"

#include <charconv>

namespace peelpack::questions {
namespace {

/// "07:30" as minutes; notSaid for anything else.
record::MinuteOfDay minuteOf(std::string_view text)
{
    constexpr std::size_t colon = 2;
    constexpr std::size_t length = 5;
    constexpr unsigned minutesInAnHour = 60;
    constexpr unsigned hoursInADay = 24;
    if (text.size() != length || text[colon] != ':') {
        return record::notSaid;
    }
    unsigned hour = hoursInADay;
    unsigned minute = minutesInAnHour;
    const char* const middle = text.data() + colon;
    const char* const end = text.data() + length;
    const bool read =
        std::from_chars(text.data(), middle, hour).ptr == middle && std::from_chars(middle + 1, end, minute).ptr == end;
    return read && hour < hoursInADay && minute < minutesInAnHour
               ? static_cast<record::MinuteOfDay>(hour * minutesInAnHour + minute)
               : record::notSaid;
}

bool isWeak(sheet::Strength strength)
{
    return strength == sheet::Strength::Drawn || strength == sheet::Strength::Paper;
}

} // namespace

std::vector<Signing> signingsOf(const record::SheetRecord& sheet, std::string_view student, std::string_view name)
{
    std::vector<Signing> signings;
    if (sheet.standing == record::SheetStanding::Withdrawn || sheet.standing == record::SheetStanding::Void) {
        return signings;
    }
    for (const record::Signer& signer : sheet.signers) {
        const record::Attested& said = signer.statement;
        if (isWeak(said.strength)) {
            continue;
        }
        const record::Head& head = sheet.original ? sheet.content.head : said.head;
        Signing& signing = signings.emplace_back();
        signing.signer = said.person ? said.person->hex() : said.key.hex();
        signing.name = said.name;
        signing.student = student;
        signing.sheet = name;
        signing.date = head.date;
        signing.site = head.site;
        signing.room = head.room;
        signing.start = head.start;
        signing.end = head.end;
        signing.signedAt = said.signedAt.seconds;
        signing.confirmed = signer.confirmed;
        signing.entry = signer.entry;
    }
    return signings;
}

std::vector<Signing> signingsOf(const sheet::CaseRow& row)
{
    std::vector<Signing> signings;
    if (row.attested == sheet::Strength::None || isWeak(row.attested)) {
        return signings;
    }
    for (const std::string_view piece : base::split(row.preceptor, ';')) {
        const std::string_view name = base::trimmed(piece);
        if (name.empty()) {
            continue;
        }
        Signing& signing = signings.emplace_back();
        signing.signer = base::foldCaseAndSpaces(name);
        signing.name = name;
        signing.student = row.student;
        signing.sheet = row.sheet;
        signing.date = row.date;
        signing.site = row.site;
        signing.room = row.room;
        signing.start = minuteOf(row.start);
        signing.end = minuteOf(row.end);
    }
    return signings;
}

} // namespace peelpack::questions
