#include "platform/cli/program_option.h"

namespace peelpack::cli {

OptionSpec programOption()
{
    return {"program", "ID", "the program's id, from somewhere that you trust"};
}

base::Result<keys::VerifyKey> programGiven(const Arguments& arguments)
{
    const auto bytes = keys::fromHex(arguments.value("program").value_or(std::string()));
    const auto program = bytes ? keys::VerifyKey::from(*bytes) : std::nullopt;
    if (!program) {
        return base::Error{base::ErrorCode::BadUsage,
                           "Give --program with the program's id (64 digits), from somewhere that you trust."};
    }
    return *program;
}

} // namespace peelpack::cli
