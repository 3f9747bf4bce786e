#pragma once

#include "platform/vault/vault_error.h"

namespace peelpack::demo {

/// Ends the making of the invented program from wherever it is. Never leaves makeJournalDemo, which answers the error.
struct Stopped {
    base::Error error;
};

/// The value, or the end.
template <class T>
T need(base::Result<T> result)
{
    if (!result) {
        throw Stopped{result.error()};
    }
    return std::move(result).value();
}
template <class T>
T need(vault::Result<T> result)
{
    if (!result) {
        throw Stopped{vault::asError(result.error())};
    }
    return std::move(result).value();
}

} // namespace peelpack::demo
