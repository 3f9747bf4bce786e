#pragma once

#include "core/base/result.h"
#include "platform/cli/arguments.h"
#include "sync/keys/secret.h"

#include <string_view>

namespace peelpack::cli {

/// --secrets-fd.
OptionSpec secretsOption();

/// Where passphrases, PINs and codes come from: a file descriptor, a line each in the order in which they are asked
/// for, or the terminal without echo. Never the command line, where every process of the machine could read them.
class Secrets {
public:
    /// BadUsage: --secrets-fd is not the number of an open descriptor.
    static base::Result<Secrets> from(const Arguments& arguments);

    /// The next secret. BadInput: there is no line left, or no terminal to ask on. At most 256 bytes.
    base::Result<keys::Secret> ask(std::string_view prompt);
    /// Asked for twice on a terminal, once from a descriptor. BadInput when the two differ.
    base::Result<keys::Secret> askNew(std::string_view prompt);
    /// A line that is not secret (the six digits, a yes), from the same place.
    base::Result<std::string> line(std::string_view prompt);

private:
    explicit Secrets(int descriptor) : m_descriptor(descriptor) {}
    base::Result<keys::Secret> readLine(std::string_view prompt, bool echo);

    int m_descriptor; ///< -1: the terminal
};

/// The characters of a secret, for calls that take text; lives as long as the secret.
inline std::string_view textOf(const keys::Secret& secret)
{
    return {reinterpret_cast<const char*>(secret.view().data()), secret.size()};
}

} // namespace peelpack::cli
