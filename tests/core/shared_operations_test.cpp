#include "core/questions/shared_operations.h"
#include "core/questions/sheet_questions.h"
#include "tests/support/catch.h"

#include <algorithm>
#include <set>

using namespace peelpack;
using questions::OperationPlace;

namespace {

base::Id id(std::uint8_t number)
{
    base::Id made;
    made.bytes[0] = number;
    return made;
}

OperationPlace place(std::uint8_t student, record::MinuteOfDay start, record::MinuteOfDay end)
{
    OperationPlace made;
    made.student = id(student);
    made.sheet = id(static_cast<std::uint8_t>(100 + student));
    made.date = base::Date::fromDays(20'000);
    made.site = "north campus";
    made.room = "room 4";
    made.procedures = {"appendectomy"};
    made.start = start;
    made.end = end;
    return made;
}

record::SheetRecord sheetWith(record::SheetStanding standing)
{
    record::SheetRecord sheet;
    sheet.standing = standing;
    return sheet;
}

bool asks(const std::vector<questions::SheetQuestion>& asked, questions::SheetQuestionKind kind)
{
    return std::any_of(asked.begin(), asked.end(), [&](const auto& question) { return question.kind == kind; });
}

} // namespace

TEST_CASE("two students are at one operation when room, day and times say so")
{
    const OperationPlace one = place(1, 450, 540);
    CHECK(isOneOperation(one, place(2, 500, 560)));
    CHECK(isOneOperation(place(2, 500, 560), one));
    CHECK_FALSE(isOneOperation(one, place(2, 540, 600))); // one after the other
    CHECK_FALSE(isOneOperation(one, place(1, 450, 540))); // one student's two sheets
    OperationPlace other = place(2, 450, 540);
    other.room = "room 5";
    CHECK_FALSE(isOneOperation(one, other));
    other.room.clear();
    CHECK_FALSE(isOneOperation(one, other)); // what is not said is not the same
    other = place(2, 450, 540);
    other.date = base::Date::fromDays(20'001);
    CHECK_FALSE(isOneOperation(one, other));
}

TEST_CASE("an operation over midnight overlaps with one late in the evening")
{
    CHECK(isOneOperation(place(1, 1380, 60), place(2, 1400, 1430)));
    CHECK_FALSE(isOneOperation(place(1, 1380, 60), place(2, 1300, 1380)));
}

TEST_CASE("where times are not said, a procedure in common and no two surgeons tell")
{
    const OperationPlace one = place(1, record::notSaid, record::notSaid);
    OperationPlace other = place(2, 450, 540);
    CHECK(isOneOperation(one, other));
    other.procedures = {"tonsillectomy"};
    CHECK_FALSE(isOneOperation(one, other));
    other.procedures.emplace_back("appendectomy");
    CHECK(isOneOperation(one, other));
    other.surgeon = "dr okafor";
    CHECK(isOneOperation(one, other));
    OperationPlace second = one;
    second.surgeon = "dr bose";
    CHECK_FALSE(isOneOperation(second, other));
}

TEST_CASE("shared operations are groups, the same in every order")
{
    // A chain: 1 meets 2, 2 meets 3, 1 and 3 do not meet. 4 is alone, 5 and 6 are in another room.
    std::vector<OperationPlace> places{place(1, 450, 500), place(2, 490, 560), place(3, 550, 600),
                                       place(4, 700, 760), place(5, 450, 500), place(6, 450, 500)};
    places[4].room = "room 9";
    places[5].room = "room 9";
    const auto groupsOf = [](const std::vector<OperationPlace>& list) {
        std::set<std::set<base::Id>> groups;
        for (const questions::SharedOperation& shared : questions::sharedOperations(list)) {
            std::set<base::Id> group;
            for (const OperationPlace* one : shared) {
                group.insert(one->student);
            }
            groups.insert(group);
        }
        return groups;
    };
    const std::set<std::set<base::Id>> expected{{id(1), id(2), id(3)}, {id(5), id(6)}};
    std::vector<std::size_t> order{0, 1, 2, 3, 4, 5};
    do {
        std::vector<OperationPlace> turned;
        for (const std::size_t i : order) {
            turned.push_back(places[i]);
        }
        REQUIRE(groupsOf(turned) == expected);
    } while (std::next_permutation(order.begin(), order.end()));
    CHECK(questions::sharedOperations({}).empty());
}

TEST_CASE("a sheet waits while it is signed or changed, or something about it is asked")
{
    using record::SheetStanding;
    for (const auto& [standing, expected] :
         {std::pair(SheetStanding::Open, false), std::pair(SheetStanding::Signed, true),
          std::pair(SheetStanding::Returned, false), std::pair(SheetStanding::Initialed, false),
          std::pair(SheetStanding::Amended, true), std::pair(SheetStanding::Withdrawn, false),
          std::pair(SheetStanding::Void, false)}) {
        CHECK(questions::waits(sheetWith(standing), false) == expected);
        const bool gone = standing == SheetStanding::Withdrawn || standing == SheetStanding::Void;
        CHECK(questions::waits(sheetWith(standing), true) == !gone);
    }
    record::SheetRecord initialed = sheetWith(SheetStanding::Initialed);
    initialed.reviews.emplace_back();
    CHECK(questions::waits(initialed, false));
    initialed.reviews.front().answer = record::Review::Answer::Declined;
    CHECK_FALSE(questions::waits(initialed, false));
    initialed.changedAfterInitial = true;
    CHECK(questions::waits(initialed, false));
}

TEST_CASE("what stands out on a sheet is asked, with its skill")
{
    using Kind = questions::SheetQuestionKind;
    record::SheetRecord sheet = sheetWith(record::SheetStanding::Signed);
    for (const sheet::Skill skill : sheet::allSkills) {
        sheet.content.marks.set(skill, sheet::Mark::Yes);
    }
    sheet.strength = sheet::Strength::Card;
    CHECK(questions::sheetQuestions(sheet, false, false).empty());
    CHECK(asks(questions::sheetQuestions(sheet, true, false), Kind::NotTheirs));
    sheet.strength = sheet::Strength::Drawn;
    CHECK(asks(questions::sheetQuestions(sheet, false, false), Kind::WeakSignature));
    sheet.strength = sheet::Strength::Card;
    record::Review review;
    review.asked.skill = sheet::Skill::Pass;
    sheet.reviews.push_back(review);
    const auto asked = questions::sheetQuestions(sheet, false, false);
    REQUIRE(asked.size() == 1);
    CHECK(asked.front().kind == Kind::ReviewAsked);
    CHECK(asked.front().skill == sheet::Skill::Pass);
    sheet.reviews.clear();
    sheet.content.marks.set(sheet::Skill::Counts, sheet::Mark::NotApplicable);
    CHECK(asks(questions::sheetQuestions(sheet, false, false), Kind::NotApplicableCounts));
    CHECK(questions::sheetQuestions(sheet, false, true).empty());
}

TEST_CASE("who alone attested a sheet is told from one of two")
{
    record::SheetRecord sheet = sheetWith(record::SheetStanding::Signed);
    CHECK_FALSE(questions::attestedOnlyBy(sheet, id(1))); // nobody did
    record::Signer signer;
    signer.statement.person = id(1);
    sheet.signers.push_back(signer);
    CHECK(questions::attestedOnlyBy(sheet, id(1)));
    CHECK_FALSE(questions::attestedOnlyBy(sheet, id(2)));
    signer.statement.person = std::nullopt; // somebody who cannot be told
    sheet.signers.push_back(signer);
    CHECK_FALSE(questions::attestedOnlyBy(sheet, id(1)));
    sheet.signers.back().afterInitial = true; // without effect
    CHECK(questions::attestedOnlyBy(sheet, id(1)));
}
