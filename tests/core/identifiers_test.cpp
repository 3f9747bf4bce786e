#include "tests/support/catch.h"

#include "core/sheet/identifiers.h"
#include "tests/support/random_history.h"

#include <string>
#include <vector>

using namespace peelpack::sheet;
using Kind = IdentifierKind;

// The identifiers are those of 45 CFR 164.514(b)(2) that can slip into a note; the wordings are our own.
TEST_CASE("What can point at a patient is found", "[identifiers]")
{
    struct Case {
        std::string text;
        Kind kind;
        std::string hit;
    };
    const std::vector<Case> cases{
        {"MRN 445566", Kind::RecordNumber, "MRN 445566"},
        {"mrn: A12345", Kind::RecordNumber, "mrn: A12345"},
        {"see chart #99812", Kind::RecordNumber, "chart #99812"},
        {"medical record no. 12-34-56", Kind::RecordNumber, "medical record no. 12-34-56"},
        {"label 00412345 on tray", Kind::RecordNumber, "00412345"},
        {"DOB 3/12/1950", Kind::Date, "DOB 3/12/1950"},
        {"born 1950-03-12", Kind::Date, "born 1950-03-12"},
        {"seen 03/12/26", Kind::Date, "03/12/26"},
        {"born on March 3, 1950", Kind::Date, "born on March 3, 1950"},
        {"92 yo female", Kind::AgeOver89, "92 yo"},
        {"a 101-year-old", Kind::AgeOver89, "101-year-old"},
        {"age 95", Kind::AgeOver89, "age 95"},
        {"90 y/o", Kind::AgeOver89, "90 y/o"},
        {"call 555-123-4567", Kind::Phone, "555-123-4567"},
        {"(555) 123-4567", Kind::Phone, "(555) 123-4567"},
        {"1-555-123-4567 today", Kind::Phone, "1-555-123-4567"},
        {"+44 20 7946 0958", Kind::Phone, "+44 20 7946 0958"},
        {"ext 555-0142", Kind::Phone, "555-0142"},
        {"ann.smith+or@example.org, ok", Kind::Email, "ann.smith+or@example.org"},
        {"123-45-6789", Kind::SocialSecurity, "123-45-6789"},
        {"SSN 123456789", Kind::SocialSecurity, "SSN 123456789"},
        {"Hernia pt John", Kind::Name, "pt John"},
        {"Mr. Smith", Kind::Name, "Mr. Smith"},
        {"mrs o'neil", Kind::Name, "mrs o'neil"},
        {"Patient Duarte tolerated", Kind::Name, "Patient Duarte"},
        {"MRN445566", Kind::RecordNumber, "MRN445566"}, // written together
        {"fin: 8812-04", Kind::RecordNumber, "fin: 8812-04"},
        {"Acct 778812.", Kind::RecordNumber, "Acct 778812"},
        {"MR#12345", Kind::RecordNumber, "MR#12345"},
        {"encounter number 90210", Kind::RecordNumber, "encounter number 90210"},
        {"d.o.b. 1950", Kind::Date, "d.o.b. 1950"},
        {"date of birth: 3-12-50", Kind::Date, "date of birth: 3-12-50"},
        {"on 2026/03/12 in room 4", Kind::Date, "2026/03/12"},
        {"admitted Dec. 24 2025", Kind::Date, "Dec. 24 2025"},
        {"90 years old", Kind::AgeOver89, "90 years old"},
        {"aged 104", Kind::AgeOver89, "aged 104"},
        {"Age: 90.", Kind::AgeOver89, "Age: 90"},
        {"555.123.4567", Kind::Phone, "555.123.4567"},
        {"(555)123-4567", Kind::Phone, "(555)123-4567"},
        {"write to a@b.org.", Kind::Email, "a@b.org"},
        {"A_B%1@MAIL.EXAMPLE.COM", Kind::Email, "A_B%1@MAIL.EXAMPLE.COM"},
        {"123 45 6789", Kind::SocialSecurity, "123 45 6789"},
        {"ssn: 123-45-6789", Kind::SocialSecurity, "ssn: 123-45-6789"},
        {"Ms. \xC3\x89lise was awake", Kind::Name, "Ms. \xC3\x89lise"},
        {"spoke with Miss Arden", Kind::Name, "Miss Arden"},
        {"pt. Smith-Jones", Kind::Name, "pt. Smith-Jones"},
    };
    for (const Case& one : cases) {
        CAPTURE(one.text);
        const std::vector<IdentifierHit> hits = findIdentifiers(one.text);
        REQUIRE(hits.size() == 1);
        CHECK(hits[0].kind == one.kind);
        CHECK(one.text.substr(hits[0].offset, hits[0].length) == one.hit);
        CHECK_FALSE(inWords(hits[0].kind).empty());
    }
}

TEST_CASE("The trade's own numbers and words are left alone", "[identifiers]")
{
    for (const char* text : {"",
                             "3-0 silk on a taper",
                             "07:30",
                             "Room 12",
                             "gloves 7 1/2",
                             "L4-5 and L5-S1",
                             "#10 blade then #15",
                             "Mayo stand",
                             "pt tolerated well",
                             "patient turned prone",
                             "used 2 packs of 4x4",
                             "age 45",
                             "89 yo",
                             "500 mL of saline",
                             "C3-7",
                             "mr imaging",
                             "MR images reviewed",
                             "Had the mesh on the field.",
                             "36 Fr",
                             "T10-12",
                             "2/0 Vicryl-type suture",
                             "100 % cotton",
                             "Dr Okafor",
                             "counts 10, 20, 30",
                             "ms",
                             "mark the pt",
                             "5/8 circle needle",
                             "DOB",
                             "record",
                             "3-0 silk",
                             "size 7 1/2 gloves",
                             "L4-5",
                             "15 blade",
                             "#10 blade",
                             "used 2 packs of 4x4",
                             "0 chromic on a CT-1, 4-0 nylon on a PS-2",
                             "10, 11 and 15 blades on the Mayo",
                             "90 degree scope",
                             "30 degree, 10 mm laparoscope",
                             "a 100 mL bag of lactated Ringer's",
                             "18 Fr Foley, 10 cc balloon",
                             "5 mm and 12 mm trocars",
                             "ports at 11:15",
                             "4.5 x 40 mm cortical screw, 6-hole plate",
                             "99 sponges in the pack",
                             "tourniquet 250 mm Hg for 90 min",
                             "Room 12, second case, 07:30-09:10",
                             "held the Army-Navy and the Deaver",
                             "patient positioned left lateral",
                             "Do not miss the closing count",
                             "did not miss any step",
                             "MR Imaging reviewed",
                             "saline warmed NS@37.",
                             "bovie cut@30.5",
                             "may need a second Mayo tray",
                             "march through the tray from left to right",
                             "age-appropriate warming",
                             "dob of iodine",
                             "record the time of the count",
                             "visit the preference card again",
                             "no. 3 handle, no. 7 handle",
                             "1 2 3 4 5",
                             "1/2 and 3/4 inch Penrose",
                             "2x2, 4x8 and 18x18"}) {
        CAPTURE(text);
        CHECK(findIdentifiers(text).empty());
    }
}

TEST_CASE("Several in one text come in order and do not overlap", "[identifiers]")
{
    const std::string text = "Pt John, MRN 445566, 92 yo, 555-123-4567 \xC3\xA9t\xC3\xA9";
    const std::vector<IdentifierHit> hits = findIdentifiers(text);
    REQUIRE(hits.size() == 4);
    for (std::size_t i = 1; i < hits.size(); ++i) {
        CHECK(hits[i].offset >= hits[i - 1].offset + hits[i - 1].length);
    }
    CHECK(hits[0] == IdentifierHit{Kind::Name, 0, 7});
    CHECK(hits[1] == IdentifierHit{Kind::RecordNumber, 9, 10});
    CHECK(hits[2] == IdentifierHit{Kind::AgeOver89, 21, 5});
    CHECK(hits[3] == IdentifierHit{Kind::Phone, 28, 12});
}

TEST_CASE("Ages up to 89 are no identifier, ages over 89 are", "[identifiers]")
{
    for (int age = 10; age < 130; ++age) {
        CAPTURE(age);
        const std::string number = std::to_string(age);
        for (const std::string& text : {number + " yo", "age " + number, number + "-year-old", number + " y/o"}) {
            CAPTURE(text);
            CHECK(findIdentifiers(text).size() == (age > 89 ? 1U : 0U));
        }
    }
}

TEST_CASE("A hit stays the same whatever stands around it", "[identifiers]")
{
    for (const std::string inner : {"MRN 445566", "03/12/26", "92 yo", "555-123-4567", "a@b.org", "123-45-6789"}) {
        const std::vector<IdentifierHit> alone = findIdentifiers(inner);
        REQUIRE(alone.size() == 1);
        for (const char* before : {"", " ", "see: ", "(", "\n", "\xE2\x80\x9C ", "- "}) {
            for (const char* after : {"", " ", ",", ".", ")", " then closed", "\n"}) {
                const std::vector<IdentifierHit> hits = findIdentifiers(before + inner + after);
                CAPTURE(before, inner, after);
                REQUIRE(hits.size() == 1);
                CHECK(hits[0].kind == alone[0].kind);
            }
        }
    }
}

// Every text that the reader lets in is looked at, so none may lead outside. Each is as long as a field may be: where
// the search is not linear in its length, this test takes minutes.
TEST_CASE("Long and odd texts are looked at once and inside their bounds", "[identifiers]")
{
    constexpr std::size_t longest = 64 * 1024;
    for (const std::string piece :
         {"9",    "@",    "a.", "fin-",       "1-",   "+1 ",      "(",    "mr ",  "pt.", "dob ", "age ",
          "jan ", "a@b.", "a@", "record no ", "ssn-", "\xC3\xA9", "1/1/", "90 y", "a-",  "\x01"}) {
        std::string text;
        while (text.size() + piece.size() <= longest) {
            text += piece;
        }
        CAPTURE(piece);
        std::size_t end = 0;
        for (const IdentifierHit& hit : findIdentifiers(text)) {
            REQUIRE(hit.offset >= end);
            REQUIRE(hit.length > 0);
            end = hit.offset + hit.length;
        }
        CHECK(end <= text.size());
    }
    CHECK(findIdentifiers(std::string(longest, '9')).empty());
    CHECK(findIdentifiers(std::string(longest, '@')).empty());
}

TEST_CASE("Random texts give hits in order, inside the text, and none that overlap", "[identifiers]")
{
    const std::vector<std::string> pieces{"MRN", "pt",   "Mr", "dob", "age", "yo", "ssn", "Jan",     "@",  ".",
                                          "-",   "/",    "+",  "(",   ")",   "#",  " ",   "1",       "90", "45",
                                          "555", "6789", "b",  "Ann", "org", ":",  ",",   "\xC3\xA9"};
    peelpack::support::Dice dice(7);
    std::size_t found = 0;
    for (int round = 0; round < 20'000; ++round) {
        std::string text;
        for (std::uint32_t length = dice.below(14); length > 0; --length) {
            text += pieces[dice.below(static_cast<std::uint32_t>(pieces.size()))];
        }
        CAPTURE(text);
        std::size_t end = 0;
        for (const IdentifierHit& hit : findIdentifiers(text)) {
            REQUIRE(hit.offset >= end);
            REQUIRE(hit.length > 0);
            end = hit.offset + hit.length;
            ++found;
        }
        REQUIRE(end <= text.size());
    }
    CHECK(found > 1'000);
}
