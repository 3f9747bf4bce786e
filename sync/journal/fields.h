#pragma once

#include "core/base/text.h"
#include "sync/journal/input_archive.h"

#include <cereal/archives/portable_binary.hpp>

#include <algorithm>
#include <optional>
#include <string>
#include <vector>

namespace peelpack::journal {

using OutputArchive = cereal::PortableBinaryOutputArchive;

/// How one member of a payload is written (FORMAT.md section 3). Each is a reference with its limits; it is read by the
/// bounded archive and written by cereal's own.
template <class Fixed>
struct RawField {
    Fixed& value;
};
struct TextField {
    std::string& value;
    std::size_t mostCharacters;
    bool required;
};
struct BytesField {
    keys::Bytes& value;
    std::size_t most;
};
template <class T>
struct ListField {
    std::vector<T>& value;
    std::size_t least;
    std::size_t most;
};
struct TextListField {
    std::vector<std::string>& value;
    std::size_t least;
    std::size_t most;
    std::size_t mostCharacters;
};
template <class T>
struct OptionalField {
    std::optional<T>& value;
};
template <class T>
struct RangeField {
    T& value;
    std::uint64_t lowest;
    std::uint64_t highest;
};

inline constexpr std::size_t shortText = 200; ///< characters: names, places, categories
inline constexpr std::size_t longText = 4000; ///< characters: reasons, feedback
/// Set aside at once for a list; a longer one grows as its elements are read.
inline constexpr std::size_t fewElements = 16;

template <class Fixed>
RawField<Fixed> raw(Fixed& value)
{
    return {value};
}
inline TextField text(std::string& value, std::size_t mostCharacters = shortText)
{
    return {value, mostCharacters, false};
}
inline TextField requiredText(std::string& value, std::size_t mostCharacters = shortText)
{
    return {value, mostCharacters, true};
}
inline BytesField blob(keys::Bytes& value, std::size_t most)
{
    return {value, most};
}
template <class T>
ListField<T> list(std::vector<T>& value, std::size_t least, std::size_t most)
{
    return {value, least, most};
}
inline TextListField texts(std::vector<std::string>& value, std::size_t least, std::size_t most)
{
    return {value, least, most, shortText};
}
template <class T>
OptionalField<T> maybe(std::optional<T>& value)
{
    return {value};
}
/// A number or enumeration from `lowest` to `highest`, in the number of bytes that T has.
template <class T>
RangeField<T> range(T& value, std::uint64_t lowest, std::uint64_t highest)
{
    return {value, lowest, highest};
}

/// What is wrong with a text, None if nothing.
Reason textFault(std::string_view value, std::size_t mostCharacters, bool required);

template <class Fixed>
void CEREAL_LOAD_FUNCTION_NAME(InputArchive& archive, RawField<Fixed>& field)
{
    field.value = {};
    const keys::ByteView bytes = archive.view(Fixed::size);
    std::copy(bytes.begin(), bytes.end(), field.value.bytes.begin());
}
template <class Fixed>
void CEREAL_SAVE_FUNCTION_NAME(OutputArchive& archive, const RawField<Fixed>& field)
{
    archive(cereal::binary_data(field.value.bytes.data(), Fixed::size));
}

void CEREAL_LOAD_FUNCTION_NAME(InputArchive& archive, TextField& field);
void CEREAL_SAVE_FUNCTION_NAME(OutputArchive& archive, const TextField& field);
void CEREAL_LOAD_FUNCTION_NAME(InputArchive& archive, BytesField& field);
void CEREAL_SAVE_FUNCTION_NAME(OutputArchive& archive, const BytesField& field);
void CEREAL_LOAD_FUNCTION_NAME(InputArchive& archive, TextListField& field);
void CEREAL_SAVE_FUNCTION_NAME(OutputArchive& archive, const TextListField& field);

template <class T>
void CEREAL_LOAD_FUNCTION_NAME(InputArchive& archive, ListField<T>& field)
{
    const InputArchive::Level level(archive);
    const std::uint64_t count = archive.count(field.most);
    field.value.clear();
    field.value.reserve(std::min<std::size_t>(count, fewElements));
    for (std::uint64_t i = 0; i < count && !archive.failed(); ++i) {
        archive(field.value.emplace_back());
    }
    if (field.value.size() < field.least) {
        archive.fail(Reason::TooFew);
    }
}
template <class T>
void CEREAL_SAVE_FUNCTION_NAME(OutputArchive& archive, const ListField<T>& field)
{
    archive(static_cast<std::uint64_t>(field.value.size()));
    for (T& item : field.value) {
        archive(item);
    }
}

template <class T>
void CEREAL_LOAD_FUNCTION_NAME(InputArchive& archive, OptionalField<T>& field)
{
    const InputArchive::Level level(archive);
    bool present = false;
    archive(present);
    field.value.reset();
    if (present && !archive.failed()) {
        archive(field.value.emplace());
    }
}
template <class T>
void CEREAL_SAVE_FUNCTION_NAME(OutputArchive& archive, const OptionalField<T>& field)
{
    archive(field.value.has_value());
    if (field.value) {
        archive(*field.value);
    }
}

template <class T>
void CEREAL_LOAD_FUNCTION_NAME(InputArchive& archive, RangeField<T>& field)
{
    if constexpr (std::is_enum_v<T>) {
        const auto number = archive.number<std::underlying_type_t<T>>();
        if (number < field.lowest || number > field.highest) {
            archive.fail(Reason::BadNumber);
        }
        field.value = static_cast<T>(archive.failed() ? static_cast<std::underlying_type_t<T>>(field.lowest) : number);
    } else {
        field.value = archive.number<T>();
        if (field.value < field.lowest || field.value > field.highest) {
            archive.fail(Reason::BadNumber);
        }
    }
}
template <class T>
void CEREAL_SAVE_FUNCTION_NAME(OutputArchive& archive, const RangeField<T>& field)
{
    if constexpr (std::is_enum_v<T>) {
        archive(static_cast<std::underlying_type_t<T>>(field.value));
    } else {
        archive(field.value);
    }
}

} // namespace peelpack::journal
