#include "platform/cli/answer.h"

#include "platform/cli/output.h"

namespace peelpack::cli {

int give(const Arguments& arguments, const base::Result<Answer>& answer)
{
    if (!answer) {
        complain(answer.error().sentence);
        return exitCodeOf(answer.error().code);
    }
    Output out;
    if (arguments.has("json")) {
        out << answer.value().json.dump() << "\n";
    } else {
        out << answer.value().text;
    }
    return written(out) ? answer.value().code : CannotReadOrWrite;
}

} // namespace peelpack::cli
