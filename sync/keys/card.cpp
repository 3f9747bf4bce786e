#include "sync/keys/card.h"

#include "sync/keys/hash.h"
#include "sync/keys/little_endian.h"
#include "sync/keys/password.h"

#include <cstring>

namespace peelpack::keys {
namespace {

constexpr std::array<std::uint8_t, 4> cardMark{'P', 'P', 'C', 1};

} // namespace

Id programStream(const VerifyKey& program)
{
    return shortHash("peelpack.progs.1", {program.view()});
}

base::Result<SigningCard> SigningCard::fromCode(ByteView code)
{
    if (code.size() != codeBytes || !std::equal(cardMark.begin(), cardMark.end(), code.begin())) {
        return base::Error{base::ErrorCode::BadInput, "This is not a signing card; scan the card's own code."};
    }
    Reader reader(code.subspan(cardMark.size()));
    SigningCard card;
    card.programStream = reader.fixed<Id>();
    card.card = reader.fixed<Id>();
    card.epoch = reader.number<std::uint32_t>();
    card.secret = Secret(reader.view(secretBytes));
    return card;
}

Secret SigningCard::code() const
{
    Secret result(codeBytes);
    const auto bytes = result.writable();
    std::size_t at = 0;
    const auto put = [&](ByteView view) {
        std::copy(view.begin(), view.end(), bytes.begin() + static_cast<std::ptrdiff_t>(at));
        at += view.size();
    };
    put(cardMark);
    put(programStream.view());
    put(card.view());
    put(littleEndian(epoch));
    put(secret.view());
    return result;
}

base::Result<SigningKey> cardKey(const SigningCard& card, const VerifyKey& program, std::string_view pin)
{
    if (card.programStream != programStream(program)) {
        return base::Error{base::ErrorCode::BadValue, "This signing card belongs to another program."};
    }
    if (const auto form = checkPin(pin); !form) {
        return form.error();
    }
    if (card.secret.size() != SigningCard::secretBytes) {
        return base::Error{base::ErrorCode::BadValue, "A signing card has 16 secret bytes."};
    }
    const Id salt = shortHash("peelpack.cards.1", {program.view(), card.card.view(), littleEndian(card.epoch)});
    const auto stretched = stretch(bytesOf(pin), salt.view(), standardCost);
    if (!stretched) {
        return stretched.error();
    }
    return SigningKey::fromSeed(keyedHash({}, {stretched.value().view()}, card.secret.view()).view());
}

base::Result<SigningKey> cardKeyFor(const SigningCard& card, const VerifyKey& program, std::string_view pin,
                                    const VerifyKey& roster)
{
    auto key = cardKey(card, program, pin);
    if (key && key.value().verifyKey() != roster) {
        return base::Error{base::ErrorCode::BadValue, "The PIN does not fit this signing card; try again."};
    }
    return key;
}

} // namespace peelpack::keys
