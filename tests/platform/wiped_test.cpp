#include "platform/session/cards.h"
#include "platform/session/setup.h"
#include "platform/session/signing.h"
#include "platform/vault/memory_vault.h"
#include "tests/sync/support/catch.h"
#include "tests/sync/support/world.h"

#include <algorithm>
#include <cstdio>
#include <fcntl.h>
#include <fstream>
#include <sstream>
#include <unistd.h>

// After a preceptor has signed, neither the card's secret nor the PIN nor the key they make is anywhere in the memory
// of the process. What is looked for is kept masked here, or it would be found in the test itself.
namespace peelpack::test {
namespace {

constexpr std::uint8_t mask = 0x5A;

keys::Bytes masked(keys::ByteView bytes)
{
    keys::Bytes result(bytes.begin(), bytes.end());
    std::transform(result.begin(), result.end(), result.begin(),
                   [](std::uint8_t byte) { return static_cast<std::uint8_t>(byte ^ mask); });
    return result;
}

/// Places in readable memory where the masked bytes stand unmasked.
std::size_t timesInMemory(const keys::Bytes& maskedBytes)
{
    std::size_t found = 0;
    const int memory = open("/proc/self/mem", O_RDONLY | O_CLOEXEC);
    REQUIRE(memory >= 0);
    std::ifstream maps("/proc/self/maps");
    std::vector<std::pair<std::uint64_t, std::uint64_t>> ranges;
    for (std::string line; std::getline(maps, line);) {
        std::istringstream fields(line);
        std::uint64_t from = 0;
        std::uint64_t to = 0;
        char dash = 0;
        std::string rights;
        fields >> std::hex >> from >> dash >> to >> rights;
        if (rights[0] == 'r' && line.find("[vsyscall]") == std::string::npos) {
            ranges.emplace_back(from, to);
        }
    }
    constexpr std::size_t pieceBytes = std::size_t{1} << 20U;
    keys::Bytes piece(pieceBytes);
    for (const auto& [from, to] : ranges) {
        for (std::uint64_t at = from; at < to; at += pieceBytes) {
            const std::size_t size = std::min<std::size_t>(pieceBytes, to - at);
            const ssize_t got = pread(memory, piece.data(), size, static_cast<off_t>(at));
            for (std::size_t i = 0; got > 0 && i + maskedBytes.size() <= static_cast<std::size_t>(got); ++i) {
                std::size_t same = 0;
                while (same < maskedBytes.size() &&
                       static_cast<std::uint8_t>(piece[i + same] ^ mask) == maskedBytes[same]) {
                    ++same;
                }
                found += same == maskedBytes.size() ? 1U : 0U;
            }
        }
    }
    close(memory);
    return found;
}

struct Masked {
    keys::Bytes secret;
    keys::Bytes pin;
    keys::Bytes seedHalf;
};

/// A whole sitting: card and PIN come in, a sheet is signed, everything goes.
Masked signOneSheet(session::Session& session, const keys::Id& sheet, bool keepAlive)
{
    Masked hidden;
    const keys::SigningCard card = session::newCard(session);
    hidden.secret = masked(card.secret.view());
    keys::Secret pin(keys::bytesOf("59018436"));
    hidden.pin = masked(pin.view());
    const std::string_view digits(reinterpret_cast<const char*>(pin.view().data()), pin.size());
    const auto unlocked = session::unlockCard(session, card, digits, sheet);
    REQUIRE(unlocked.ok());
    const auto signedSheet = session::signWithCard(
        session, unlocked.value(), {"Invented Preceptor", "CST"},
        {{sheet, {"Open appendectomy"}, {}, {{sheet::Skill::Verify, sheet::Mark::Yes, {}}}, "Good."}});
    REQUIRE(signedSheet.ok());
    if (keepAlive) {
        CHECK(timesInMemory(hidden.secret) == 1);
    }
    return hidden;
}

} // namespace

// Not under AddressSanitizer: it maps terabytes of shadow memory, all of which would be searched, and keeps freed
// memory.
TEST_CASE("Nothing of card and PIN is left in memory after signing", "[secrets][not-sanitized]")
{
    World world;
    world.setUp();
    SeededRandom random(9);
    auto vault = std::make_unique<vault::MemoryVault>(random);
    keys::Invitation invitation;
    invitation.program = world.program;
    invitation.inviterDevice = world.instructor.signing.verifyKey();
    invitation.inviterSeal = world.instructor.opening.sealKey();
    invitation.person = world.studentId;
    invitation.role = 4;
    invitation.secret = random.secret(keys::Invitation::secretBytes);
    invitation.expiry = minute(60).seconds;
    REQUIRE(session::join(*vault, invitation, "Invented Student").ok());
    auto session = session::Session::open(
        std::move(vault), [] { return minute(0); }, random);
    REQUIRE(session.ok());
    journal::Draft draft;
    draft.procedures = {"Open appendectomy"};
    const auto sheet = session::openSheet(*session.value(), draft);
    REQUIRE(sheet.ok());

    const Masked hidden =
        signOneSheet(*session.value(), sheet.value(), true); // found while it is there: the search works
    CHECK(timesInMemory(hidden.secret) == 0);
    CHECK(timesInMemory(hidden.pin) <= 1); // the literal in this file
}

} // namespace peelpack::test
