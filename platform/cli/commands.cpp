#include "platform/cli/commands.h"

#include "core/base/text.h"
#include "platform/cli/exit_code.h"
#include "platform/cli/output.h"

#include <algorithm>

namespace peelpack::cli {
namespace {

std::vector<Command> allCommands()
{
    std::vector<Command> commands{roleCommand(),   tallyCommand(),     findCommand(),   checkCommand(),
                                  queueCommand(),  questionsCommand(), sampleCommand(), rowsCommand(),
                                  importCommand(), catalogueCommand(), demoCommand()};
    for (const std::vector<Command>& group :
         {programCommands(), ruleCommands(), enrollCommands(), sheetCommands(), signCommands(), preceptorCommands(),
          exchangeCommands(), instructorCommands(), recordCommands(), printCommands(), vaultCommands()}) {
        commands.insert(commands.end(), group.begin(), group.end());
    }
    return commands;
}

/// How many of the words name the command; 0: another command.
std::size_t wordsNaming(const CommandSpec& spec, const std::vector<std::string>& words)
{
    const std::vector<std::string_view> name = base::split(spec.name, ' ');
    const bool fits = words.size() >= name.size() && std::equal(name.begin(), name.end(), words.begin());
    return fits ? name.size() : 0;
}

int print(const std::string& text)
{
    Output out;
    out << text;
    return written(out) ? Done : CannotReadOrWrite;
}

std::string overview()
{
    constexpr std::size_t nameWidth = 22;
    std::string text = "Peelpack counts the cases of surgical technology students from their case sheets.\n\n"
                       "Usage: peelpack COMMAND ...\n\n";
    for (const Command& command : allCommands()) {
        std::string name = "  " + command.spec.name;
        name.append(nameWidth > name.size() ? nameWidth - name.size() : 1, ' ');
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
        const std::size_t named = wordsNaming(command.spec, words);
        if (named == 0) {
            continue;
        }
        const base::Result<Arguments> arguments =
            parseArguments(command.spec, {words.begin() + static_cast<std::ptrdiff_t>(named), words.end()});
        if (!arguments) {
            complain(arguments.error().sentence);
            return BadUsageOrInput;
        }
        if (arguments.value().help) {
            return print(helpText(command.spec));
        }
        return command.run(arguments.value());
    }
    std::string parts;
    for (const Command& command : allCommands()) {
        if (command.spec.name.starts_with(words.front() + " ")) {
            parts += (parts.empty() ? "" : ", ") + command.spec.name;
        }
    }
    complain(parts.empty() ? "There is no command \"" + words.front() + "\". See: peelpack --help"
                           : "Which of these? " + parts + ". See: peelpack --help");
    return BadUsageOrInput;
}

} // namespace peelpack::cli
