#pragma once

#include <cassert>
#include <string>
#include <utility>
#include <variant>

namespace peelpack::base {

/// Why something could not be done. Closed: a caller may switch over it. The numbers never leave the process.
enum class ErrorCode {
    BadUsage,    ///< the caller asked for something that does not exist
    BadInput,    ///< text or bytes that do not follow their format
    BadValue,    ///< well-formed, but outside what the rules allow
    NotFound,    ///< nothing has that name
    CannotRead,  ///< the system would not let us read
    CannotWrite, ///< the system would not let us write
};

/// An error as a value: a code for the program, a sentence for the person (US English, ends with a period, says the
/// mend).
struct Error {
    ErrorCode code = ErrorCode::BadInput;
    std::string sentence;
};

/// Either a value or an error; never both, never neither. `E` is Error, or a part's own error with a closed code and a
/// sentence. Thread: as safe as T.
template <class T, class E = Error>
class [[nodiscard]] Result {
public:
    Result(T value) : m_state(std::in_place_index<0>, std::move(value)) {}
    Result(E error) : m_state(std::in_place_index<1>, std::move(error)) {}

    [[nodiscard]] bool ok() const { return m_state.index() == 0; }
    explicit operator bool() const { return ok(); }

    /// Only when ok().
    [[nodiscard]] const T& value() const&
    {
        assert(ok());
        return *std::get_if<0>(&m_state);
    }
    [[nodiscard]] T&& value() &&
    {
        assert(ok());
        return std::move(*std::get_if<0>(&m_state));
    }
    /// Only when not ok().
    [[nodiscard]] const E& error() const
    {
        assert(!ok());
        return *std::get_if<1>(&m_state);
    }

private:
    std::variant<T, E> m_state;
};

/// The first error among results; null when all are well.
template <class E = Error, class... T>
const E* firstError(const Result<T, E>&... results)
{
    const E* found = nullptr;
    ((found = found == nullptr && !results ? &results.error() : found), ...);
    return found;
}

} // namespace peelpack::base
