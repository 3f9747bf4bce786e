#include "tests/sync/support/catch.h"
#include "tests/sync/support/example.h"

#include <fstream>
#include <sstream>

namespace peelpack::test {
namespace {

std::string contentOf(const std::string& path)
{
    std::ifstream file(path, std::ios::binary);
    REQUIRE(file.good());
    std::ostringstream content;
    content << file.rdbuf();
    return std::move(content).str();
}

void writeBeside(const std::string& name, const std::string& content)
{
    std::ofstream(name + ".actual", std::ios::binary) << content;
}

void compareFixture(const std::string& name, const keys::Bytes& bytes)
{
    const std::string actual(bytes.begin(), bytes.end());
    std::ifstream file(std::string(PEELPACK_FIXTURES) + "/journal/" + name, std::ios::binary);
    std::ostringstream expected;
    expected << file.rdbuf();
    if (expected.str() != actual) {
        writeBeside(name, actual);
    }
    const bool same = expected.str() == actual; // not compared in CHECK, which would print the bytes
    CHECK(same);
}

} // namespace

TEST_CASE("The worked example of FORMAT.md is what the code writes, byte for byte", "[format]")
{
    const std::string document = contentOf(PEELPACK_FORMAT);
    const std::string begins = "<!-- example begins -->\n```\n";
    const std::string ends = "```\n<!-- example ends -->";
    const std::size_t from = document.find(begins);
    const std::size_t to = document.find(ends);
    REQUIRE(from != std::string::npos);
    REQUIRE(to != std::string::npos);
    const std::string written = document.substr(from + begins.size(), to - from - begins.size());
    const Example example = makeExample();
    if (written != example.text) {
        writeBeside("format_example", example.text);
    }
    CHECK(written == example.text);
}

TEST_CASE("The export and the parcel of the example are the files that version 1 wrote", "[format]")
{
    const Example example = makeExample();
    compareFixture("example-v1.export", example.exported);
    compareFixture("example-v1.parcel", example.parcel);
}

TEST_CASE("The files that version 1 wrote are opened and verified", "[format]")
{
    const World world;
    const std::string sealed = contentOf(std::string(PEELPACK_FIXTURES) + "/journal/example-v1.parcel");
    const auto volume =
        parcel::open({reinterpret_cast<const std::uint8_t*>(sealed.data()), sealed.size()}, world.instructor.opening);
    REQUIRE(volume.ok());
    const merge::Taken taken = fromVolume(world.program, volume.value());
    CHECK(taken.report.taken == 6);
    CHECK(taken.report.findings.empty());
    CHECK(volumeOf(taken.ledger) == volume.value());
}

TEST_CASE("An export with a completion by exception is the file that the first build with kind 39 wrote", "[format]")
{
    World world;
    world.setUp();
    const journal::Position head = world.sheet(world.student, world.studentId, idOf(0x50));
    const journal::Position decided = world.append(
        world.director, world.studentId,
        journal::CompleteByException{"spread10", {}, head, 120, 118, "The site closed its rooms for a month."});
    compareFixture("exception-v1.export", volumeOf(world.all));
    CHECK(judgment(world.all, decided) == trust::Judgment{});
}

} // namespace peelpack::test
