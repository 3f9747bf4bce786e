#include "core/questions/sample.h"
#include "tests/support/catch.h"

#include <algorithm>
#include <array>
#include <map>
#include <random>
#include <set>

using namespace peelpack;
using namespace peelpack::questions;

namespace {

Signing signing(const std::string& student, const std::string& sheet, const std::string& name)
{
    Signing one;
    one.signer = name;
    one.name = name;
    one.student = student;
    one.sheet = sheet;
    return one;
}

std::vector<Signing> signingsOfMany(std::size_t count)
{
    constexpr std::array names{"B. Preceptor", "A. Preceptor", "C. Preceptor"};
    std::vector<Signing> signings;
    for (std::size_t i = 0; i < count; ++i) {
        signings.push_back(signing(i % 2 == 0 ? "Invented Student" : "Second Student", "s" + std::to_string(i),
                                   names.at(i % names.size())));
    }
    return signings;
}

std::set<std::pair<std::string, std::string>> sheetsOf(const Sample& sample)
{
    std::set<std::pair<std::string, std::string>> sheets;
    for (const Signing& one : sample.signings) {
        sheets.emplace(one.student, one.sheet);
    }
    return sheets;
}

} // namespace

TEST_CASE("A sample is drawn again by its seed, whatever the order", "[sample]")
{
    std::vector<Signing> signings = signingsOfMany(40);
    const Sample sample = sampleOf(signings, 6, 7);
    CHECK(sample.of == 40);
    CHECK(sample.sheets == 6);
    CHECK(sheetsOf(sample).size() == 6);
    CHECK(std::is_sorted(sample.signings.begin(), sample.signings.end(),
                         [](const Signing& a, const Signing& b) { return a.name < b.name; }));
    std::mt19937 random(1);
    std::shuffle(signings.begin(), signings.end(), random);
    CHECK(sampleOf(signings, 6, 7).signings == sample.signings);
    CHECK(sheetsOf(sampleOf(signings, 6, 8)) != sheetsOf(sample));
}

TEST_CASE("The sample of a seed stays what it is from version to version", "[sample]")
{
    // Worked out apart from this code, from what the header says.
    const std::set<std::pair<std::string, std::string>> expected{
        {"Invented Student", "s2"}, {"Invented Student", "s6"}, {"Second Student", "s5"}};
    CHECK(sheetsOf(sampleOf(signingsOfMany(10), 3, 2026)) == expected);
}

TEST_CASE("Every sheet is as likely to be drawn as any other", "[sample]")
{
    const std::vector<Signing> signings = signingsOfMany(7);
    std::map<std::string, int> drawn;
    std::map<std::set<std::pair<std::string, std::string>>, int> sets;
    constexpr int rounds = 21'000;
    for (int seed = 0; seed < rounds; ++seed) {
        const auto sheets = sheetsOf(sampleOf(signings, 2, static_cast<std::uint64_t>(seed)));
        ++sets[sheets];
        for (const auto& [student, sheet] : sheets) {
            ++drawn[sheet];
        }
    }
    CHECK(drawn.size() == 7);
    REQUIRE(sets.size() == 21); // 7 over 2
    for (const auto& [sheets, times] : sets) {
        CHECK(std::abs(times - rounds / 21) < 150); // nearly five standard deviations
    }
}

TEST_CASE("What is confirmed is left out, and a sheet with two signers is drawn once", "[sample]")
{
    std::vector<Signing> signings = signingsOfMany(5);
    signings.push_back(signings[0]);
    signings.back().signer = signings.back().name = "D. Preceptor";
    signings[1].confirmed = true;
    signings[2].confirmed = true;
    Sample sample = sampleOf(signings, 100, 7);
    CHECK(sample.of == 3);
    CHECK(sample.sheets == 3);
    CHECK(sample.signings.size() == 4);
    CHECK(sheetsOf(sample) == std::set<std::pair<std::string, std::string>>{
                                  {"Invented Student", "s0"}, {"Invented Student", "s4"}, {"Second Student", "s3"}});
    signings[0].confirmed = true; // by one of its two signers
    sample = sampleOf(signings, 100, 7);
    CHECK(sample.sheets == 3);
    CHECK(sample.signings.size() == 3);
    CHECK(sampleOf(signings, 0, 7).signings.empty());
    CHECK(sampleOf({}, 3, 7).of == 0);
}
