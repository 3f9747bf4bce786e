#pragma once

#include "sync/keys/bytes.h"

#include <nlohmann/json.hpp>

#include <stdexcept>

/// Short ways for the forges: a request that cannot be met is an exception.
namespace peelpack::test {

inline keys::Bytes hexOf(const nlohmann::json& request, const char* name)
{
    const auto bytes = keys::fromHex(request.at(name).get<std::string>());
    return bytes ? *bytes : throw std::runtime_error(std::string(name) + " is not hexadecimal");
}

template <class Fixed>
Fixed fixedOf(const nlohmann::json& request, const char* name)
{
    const auto fixed = Fixed::from(hexOf(request, name));
    return fixed ? *fixed : throw std::runtime_error(std::string(name) + " has a wrong length");
}

/// The value of a result, or its sentence as an exception.
template <class Result>
auto need(Result&& result)
{
    if (!result) {
        throw std::runtime_error(result.error().sentence);
    }
    return std::forward<Result>(result).value();
}

} // namespace peelpack::test
