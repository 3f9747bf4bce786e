#include "tests/support/catch.h"

#include "core/sheet/identifiers.h"

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
                             "record"}) {
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
    CHECK(findIdentifiers(std::string(60'000, '9')).size() <= 1);
    CHECK(findIdentifiers(std::string(60'000, '@')).empty());
}
