#include "platform/calendar/clinical_days.h"
#include "tests/support/catch.h"

#include <nlohmann/json.hpp>
#include <sodium.h>

#include <fstream>

namespace peelpack::calendar {
namespace {

using Json = nlohmann::json;

base::Date day(const char* iso)
{
    const auto date = base::Date::fromIso(iso);
    REQUIRE(date.has_value());
    return *date;
}

constexpr record::MinuteOfDay at(int hour, int minute)
{
    return static_cast<record::MinuteOfDay>(hour * 60 + minute);
}

Reading read(const std::string& text, const char* first = "1990-01-01", const char* last = "2030-12-31",
             const std::string& zone = {})
{
    auto reading = readDays(text, day(first), day(last), zone);
    REQUIRE(reading.ok());
    return std::move(reading).value();
}

/// A calendar with one event.
std::string event(const std::string& lines)
{
    return "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Invented//EN\r\nBEGIN:VEVENT\r\nUID:one\r\n" + lines +
           "END:VEVENT\r\nEND:VCALENDAR\r\n";
}

std::vector<std::string> datesOf(const Reading& reading)
{
    std::vector<std::string> dates;
    for (const ClinicalDay& one : reading.days) {
        dates.push_back(one.date.iso());
    }
    return dates;
}

Json vectors()
{
    std::ifstream file(std::string(PEELPACK_FIXTURES) + "/vectors/rfc5545_icaljs_parser.json");
    REQUIRE(file.good());
    return Json::parse(file);
}

std::string icsOf(const Json& item)
{
    const auto coded = item.at("ics_base64").get<std::string>();
    std::string text(coded.size(), '\0');
    std::size_t size = 0;
    REQUIRE(sodium_base642bin(reinterpret_cast<unsigned char*>(text.data()), text.size(), coded.data(), coded.size(),
                              nullptr, &size, nullptr, sodium_base64_VARIANT_ORIGINAL) == 0);
    text.resize(size);
    return text;
}

/// The properties of a vector's calendar as those of an event.
std::string asEvent(std::string ics)
{
    const auto replace = [&](const std::string& what, const std::string& with) {
        const std::size_t place = ics.find(what);
        REQUIRE(place != std::string::npos);
        ics.replace(place, what.size(), with);
    };
    replace("BEGIN:VCALENDAR\n", "BEGIN:VCALENDAR\nBEGIN:VEVENT\n");
    replace("END:VCALENDAR", "END:VEVENT\nEND:VCALENDAR");
    return ics;
}

/// The first value of a property of a vector as the other parser read it (jCal, RFC 7265).
std::string firstValue(const Json& properties, const std::string& name)
{
    for (const Json& property : properties) {
        if (property.at(0) == name) {
            return property.at(3).get<std::string>();
        }
    }
    return {};
}

} // namespace

TEST_CASE("Every calendar of kewisch/ical.js 926193a2, test/parser, is read, and its events as that parser reads them",
          "[vectors]")
{
    std::size_t calendars = 0;
    std::size_t events = 0;
    for (const Json& item : vectors()) {
        INFO(item.at("name"));
        const Reading reading = read(icsOf(item));
        const Json& root = item.at("jcal");
        std::size_t expected = 0;
        for (const Json& part : root.at(0).is_string() ? root.at(2) : Json::array()) {
            if (part.at(0) != "vevent") {
                continue;
            }
            const std::string start = firstValue(part.at(1), "dtstart");
            const std::string summary = firstValue(part.at(1), "summary");
            if (start.empty()) {
                const bool named = std::any_of(reading.notTaken.begin(), reading.notTaken.end(),
                                               [&](const NotTaken& one) { return one.event == summary; });
                CHECK(named);
            } else {
                ++expected;
                REQUIRE(reading.days.size() == expected);
                CHECK(reading.days.back() == ClinicalDay{day(start.c_str()), record::notSaid, record::notSaid, ""});
            }
            ++events;
        }
        CHECK(reading.days.size() == expected);
        ++calendars;
    }
    CHECK(calendars == 21);
    CHECK(events == 3);
}

TEST_CASE("Dates and times of the same vectors, as those of an event", "[vectors]")
{
    for (const Json& item : vectors()) {
        const auto name = item.at("name").get<std::string>();
        INFO(name);
        if (name == "tzid_with_gmt") { // a zone that nobody knows: the time as it is written
            const std::string start = firstValue(item.at("jcal").at(1), "dtstart");
            const Reading reading = read(asEvent(icsOf(item)));
            REQUIRE(reading.days.size() == 1);
            CHECK(start == "2011-10-28T16:00:00");
            CHECK(reading.days.front() == ClinicalDay{day("2011-10-28"), at(16, 0), record::notSaid, ""});
        }
        if (name == "dates") { // in UTC, with an end of another value type (section 3.8.2.2 forbids it), and an RDATE
            std::string ics = asEvent(icsOf(item));
            CHECK(read(ics, "1990-01-01", "2030-12-31", "America/Chicago").days.empty());
            const std::string end = "DTEND;VALUE=DATE:20120901\n";
            REQUIRE(ics.find(end) != std::string::npos);
            ics.erase(ics.find(end), end.size());
            CHECK(read(ics).notTaken.size() == 1); // nobody said where the site is
            const Reading reading = read(ics, "1990-01-01", "2030-12-31", "America/Chicago");
            CHECK(datesOf(reading) == std::vector<std::string>{"2012-09-01", "2013-12-10"});
            CHECK(reading.days.front().start == at(8, 0)); // 13:00Z, five hours west in summer
        }
    }
}

TEST_CASE("Days, times and site of an event are taken as they are written", "[calendar]")
{
    const Reading timed = read(event("DTSTART:20270312T070000\r\nDTEND:20270312T150000\r\nSUMMARY:Clinical\r\n"
                                     "LOCATION:North Campus\\, Room 4\r\n"));
    REQUIRE(timed.days.size() == 1);
    CHECK(timed.days.front() == ClinicalDay{day("2027-03-12"), at(7, 0), at(15, 0), "North Campus, Room 4"});
    const Reading duration = read(event("DTSTART;TZID=America/Chicago:20270312T190000\r\nDURATION:PT12H\r\n"));
    REQUIRE(duration.days.size() == 1);
    CHECK(duration.days.front() == ClinicalDay{day("2027-03-12"), at(19, 0), at(7, 0), ""}); // over midnight
    CHECK(datesOf(read(event("DTSTART;VALUE=DATE:20270312\r\nDTEND;VALUE=DATE:20270315\r\n"))) ==
          std::vector<std::string>{"2027-03-12", "2027-03-13", "2027-03-14"}); // DTEND is not among them
    CHECK(datesOf(read(event("DTSTART;VALUE=DATE:20270312\r\nDTEND;VALUE=DATE:20270315\r\n"), "2027-03-13",
                       "2027-03-13")) == std::vector<std::string>{"2027-03-13"});
}

TEST_CASE("Repeated events: RFC 5545 section 3.8.5.3, examples of RRULE and EXDATE", "[calendar]")
{
    const std::string start = "DTSTART;TZID=America/New_York:19970902T090000\r\n";
    // "Daily for 10 occurrences": September 2-11.
    CHECK(datesOf(read(event(start + "RRULE:FREQ=DAILY;COUNT=10\r\n"))) ==
          std::vector<std::string>{"1997-09-02", "1997-09-03", "1997-09-04", "1997-09-05", "1997-09-06", "1997-09-07",
                                   "1997-09-08", "1997-09-09", "1997-09-10", "1997-09-11"});
    // "Weekly on Tuesday and Thursday for five weeks", by UNTIL and by COUNT.
    const std::vector<std::string> tuesdaysAndThursdays{"1997-09-02", "1997-09-04", "1997-09-09", "1997-09-11",
                                                        "1997-09-16", "1997-09-18", "1997-09-23", "1997-09-25",
                                                        "1997-09-30", "1997-10-02"};
    CHECK(datesOf(read(event(start + "RRULE:FREQ=WEEKLY;UNTIL=19971007T000000Z;WKST=SU;BYDAY=TU,TH\r\n"))) ==
          tuesdaysAndThursdays);
    CHECK(datesOf(read(event(start + "RRULE:FREQ=WEEKLY;COUNT=10;WKST=SU;BYDAY=TU,TH\r\n"))) == tuesdaysAndThursdays);
    // "Every Friday the 13th, forever", the start itself excepted.
    const Reading fridays = read(event(start + "EXDATE;TZID=America/New_York:19970902T090000\r\n"
                                               "RRULE:FREQ=MONTHLY;BYDAY=FR;BYMONTHDAY=13\r\n"),
                                 "1990-01-01", "2000-12-31");
    CHECK(datesOf(fridays) ==
          std::vector<std::string>{"1998-02-13", "1998-03-13", "1998-11-13", "1999-08-13", "2000-10-13"});
    // The clock of the site stays when summer time ends on October 26.
    const Reading weeks =
        read(event(start + "DTEND;TZID=America/New_York:19970902T170000\r\nRRULE:FREQ=WEEKLY;COUNT=9\r\n"));
    REQUIRE(weeks.days.size() == 9);
    CHECK(weeks.days.back() == ClinicalDay{day("1997-10-28"), at(9, 0), at(17, 0), ""});
}

TEST_CASE("One occurrence moved, one added, one canceled", "[calendar]")
{
    const std::string calendar =
        "BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:-//Invented//EN\r\n"
        "BEGIN:VEVENT\r\nUID:a\r\nDTSTART:20270301T070000\r\nDTEND:20270301T150000\r\nRRULE:FREQ=WEEKLY;COUNT=4\r\n"
        "RDATE:20270305T070000\r\nEXDATE:20270322T070000\r\nLOCATION:North Campus\r\nEND:VEVENT\r\n"
        "BEGIN:VEVENT\r\nUID:a\r\nRECURRENCE-ID:20270308T070000\r\nDTSTART:20270309T080000\r\nLOCATION:South "
        "Campus\r\nEND:VEVENT\r\n"
        "BEGIN:VEVENT\r\nUID:a\r\nRECURRENCE-ID:20270315T070000\r\nDTSTART:20270315T070000\r\nSTATUS:CANCELLED\r\n"
        "END:VEVENT\r\nEND:VCALENDAR\r\n";
    CHECK(read(calendar).days == std::vector<ClinicalDay>{
                                     {day("2027-03-01"), at(7, 0), at(15, 0), "North Campus"},
                                     {day("2027-03-05"), at(7, 0), at(15, 0), "North Campus"},
                                     {day("2027-03-09"), at(8, 0), record::notSaid, "South Campus"},
                                 });
}

TEST_CASE("What cannot be a clinical day is named, and what is no calendar refused", "[calendar]")
{
    const Reading long36 = read(event("SUMMARY:Trip\r\nDTSTART:20270312T070000\r\nDTEND:20270313T190000\r\n"));
    CHECK(long36.days.empty());
    REQUIRE(long36.notTaken.size() == 1);
    CHECK(long36.notTaken.front().event == "Trip");
    CHECK(read(event("DTSTART:20270312T070000\r\nDTEND:20270312T060000\r\n")).notTaken.size() == 1);
    CHECK(read(event("DTSTART:20271312T070000\r\n")).days.empty());
    for (const std::string& text :
         {std::string(), std::string("sheet,date\n1,2027-03-12\n"), std::string("BEGIN:VCARD\nEND:VCARD\n"),
          std::string("\0BEGIN:VCALENDAR", 16), std::string("BEGIN:VCALENDAR\nX:\xFF\n")}) {
        INFO(text);
        const auto refused = readDays(text, day("2027-01-01"), day("2027-12-31"));
        REQUIRE_FALSE(refused.ok());
        CHECK(refused.error().code == base::ErrorCode::BadInput);
    }
    CHECK(readDays(event(""), day("2027-01-01"), day("2027-12-31"), "Mars/Crater").error().code ==
          base::ErrorCode::BadUsage);
    const Reading many = read(event("DTSTART:20270101T070000\r\nRRULE:FREQ=SECONDLY\r\n"), "2027-01-01", "2027-12-31");
    CHECK(many.days.size() < 400'000); // it ends
}

TEST_CASE("What is written is iCalendar of short lines, and reads back", "[calendar]")
{
    const std::vector<ClinicalDay> days{
        {day("2027-03-12"), at(7, 0), at(15, 30), "North Campus; Room 4, \"east\""},
        {day("2027-03-13"), at(19, 0), at(7, 0), std::string(120, 'x') + "\n\xC3\xA9"},
        {day("2027-03-14"), at(6, 45), record::notSaid, ""},
        {day("2027-03-15"), record::notSaid, record::notSaid, "Clinica del Norte"},
        {day("2027-03-16"), at(7, 0), at(7, 0), "A whole day and night"},
    };
    const auto text = writeDays(days, 1'800'000'000);
    REQUIRE(text.ok());
    CHECK(read(text.value()).days == days);
    CHECK(read(text.value()).notTaken.empty());
    // RFC 5545 sections 3.1 (75 octets, CRLF), 3.6 and 3.6.1 (what must be there).
    std::size_t from = 0;
    for (std::size_t end = 0; (end = text.value().find("\r\n", from)) != std::string::npos; from = end + 2) {
        CHECK(end - from <= 75);
    }
    CHECK(from == text.value().size());
    for (const char* line : {"VERSION:2.0\r\n", "PRODID:", "UID:", "DTSTAMP:20270115T080000Z\r\n",
                             "DTSTART:20270312T070000\r\n", "DTSTART;VALUE=DATE:20270315\r\n"}) {
        CHECK(text.value().find(line) != std::string::npos);
    }
    CHECK(writeDays(days, 1'800'000'000).value() == text.value());
    const std::vector<ClinicalDay> bad{{day("2027-03-12"), at(7, 0), at(8, 0), "\xFF"}};
    CHECK_FALSE(writeDays(bad, 0).ok());
}

} // namespace peelpack::calendar
