#include "platform/cli/commands.h"

#include "platform/cli/exit_code.h"
#include "platform/cli/output.h"

namespace peelpack::cli {
namespace {

std::vector<Command> allCommands()
{
    return {roleCommand(), tallyCommand(), findCommand(), demoCommand()};
}

int print(const std::string& text)
{
    Output out;
    out << text;
    return written(out) ? Done : CannotReadOrWrite;
}

std::string overview()
{
    std::string text = "Peelpack counts the cases of surgical technology students from their case sheets.\n\n"
                       "Usage: peelpack COMMAND ...\n\n";
    for (const Command& command : allCommands()) {
        std::string name = "  " + command.spec.name;
        name.append(10 > name.size() ? 10 - name.size() : 1, ' ');
        text += name + command.spec.purpose + '\n';
    }
    return text +
           "\npeelpack COMMAND --help says more, with an example.\n"
           "Counts, sterile technique and what a student may do follow the facility's policy and the licensed staff\n"
           "present. The program's director decides which requirements are in force and who has met them.\n"
           "No patient identifiers belong on a case sheet.\n";
}

} // namespace

int runCommandLine(const std::vector<std::string>& words)
{
    if (words.empty()) {
        complain("Which command? See: peelpack --help");
        return BadUsageOrInput;
    }
    if (words.front() == "--help" || words.front() == "help") {
        return print(overview());
    }
    for (const Command& command : allCommands()) {
        if (command.spec.name != words.front()) {
            continue;
        }
        const base::Result<Arguments> arguments = parseArguments(command.spec, {words.begin() + 1, words.end()});
        if (!arguments) {
            complain(arguments.error().sentence);
            return BadUsageOrInput;
        }
        if (arguments.value().help) {
            return print(helpText(command.spec));
        }
        return command.run(arguments.value());
    }
    complain("There is no command \"" + words.front() + "\". See: peelpack --help");
    return BadUsageOrInput;
}

} // namespace peelpack::cli
