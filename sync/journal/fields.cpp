#include "sync/journal/fields.h"

#include <algorithm>
#include <cstring>

namespace peelpack::journal {
namespace {

/// True only if the text has nothing but printable ASCII, eight characters looked at together. False says nothing.
bool isPlain(std::string_view text)
{
    constexpr std::uint64_t ones = 0x0101010101010101;
    constexpr std::uint64_t tops = 0x80 * ones;
    constexpr std::uint64_t spaces = 0x20 * ones;
    constexpr std::uint64_t erases = 0x7F * ones;
    std::uint64_t odd = 0;
    for (std::size_t at = 0; at < text.size(); at += sizeof(std::uint64_t)) {
        std::uint64_t word = spaces;
        std::memcpy(&word, text.data() + at, std::min(sizeof(word), text.size() - at));
        // The top bit of a byte is set where it was set before, the byte is below a space, or it is an erase.
        odd |= word | (word - spaces) | ((word ^ erases) - ones);
    }
    return (odd & tops) == 0;
}

} // namespace

Reason textFault(std::string_view value, std::size_t mostCharacters, bool required)
{
    constexpr unsigned char continuationMask = 0xC0;
    constexpr unsigned char continuation = 0x80;
    constexpr unsigned char firstPrintable = 0x20;
    constexpr unsigned char erase = 0x7F;
    if (value.empty()) {
        return required ? Reason::TextMissing : Reason::None;
    }
    if (isPlain(value)) {
        return value.size() > mostCharacters ? Reason::TextTooLong : Reason::None;
    }
    std::size_t characters = 0;
    bool control = false;
    bool ascii = true;
    for (const char c : value) {
        const auto byte = static_cast<unsigned char>(c);
        control = control || (byte < firstPrintable && byte != '\n') || byte == erase;
        ascii = ascii && byte < continuation;
        characters += (byte & continuationMask) != continuation ? 1U : 0U;
    }
    if (control || (!ascii && base::firstInvalidUtf8(value) != std::string_view::npos)) {
        return Reason::BadText;
    }
    return characters > mostCharacters ? Reason::TextTooLong : Reason::None;
}

namespace {

void load(InputArchive& archive, std::string& value, std::size_t mostCharacters, bool required)
{
    constexpr std::size_t mostBytesInCharacter = 4;
    const auto claimed = archive.number<std::uint64_t>();
    if (claimed > mostCharacters * mostBytesInCharacter) {
        archive.fail(Reason::TextTooLong);
    }
    const keys::ByteView bytes = archive.failed() ? keys::ByteView{} : archive.view(static_cast<std::size_t>(claimed));
    value.clear();
    if (!bytes.empty()) {
        value.assign(reinterpret_cast<const char*>(bytes.data()), bytes.size());
    }
    if (const Reason fault = textFault(value, mostCharacters, required); fault != Reason::None) {
        archive.fail(fault);
    }
}

void save(OutputArchive& archive, const std::string& value)
{
    archive(static_cast<std::uint64_t>(value.size()));
    archive(cereal::binary_data(value.data(), value.size()));
}

} // namespace

void CEREAL_LOAD_FUNCTION_NAME(InputArchive& archive, TextField& field)
{
    load(archive, field.value, field.mostCharacters, field.required);
}

void CEREAL_SAVE_FUNCTION_NAME(OutputArchive& archive, const TextField& field)
{
    save(archive, field.value);
}

void CEREAL_LOAD_FUNCTION_NAME(InputArchive& archive, BytesField& field)
{
    const std::uint64_t count = archive.count(field.most);
    const keys::ByteView bytes = archive.view(static_cast<std::size_t>(count));
    field.value.assign(bytes.begin(), bytes.end());
}

void CEREAL_SAVE_FUNCTION_NAME(OutputArchive& archive, const BytesField& field)
{
    archive(static_cast<std::uint64_t>(field.value.size()));
    archive(cereal::binary_data(field.value.data(), field.value.size()));
}

void CEREAL_LOAD_FUNCTION_NAME(InputArchive& archive, TextListField& field)
{
    const InputArchive::Level level(archive);
    const std::uint64_t count = archive.count(field.most);
    field.value.clear();
    for (std::uint64_t i = 0; i < count && !archive.failed(); ++i) {
        load(archive, field.value.emplace_back(), field.mostCharacters, true);
    }
    if (field.value.size() < field.least) {
        archive.fail(Reason::TooFew);
    }
}

void CEREAL_SAVE_FUNCTION_NAME(OutputArchive& archive, const TextListField& field)
{
    archive(static_cast<std::uint64_t>(field.value.size()));
    for (const std::string& item : field.value) {
        save(archive, item);
    }
}

} // namespace peelpack::journal
