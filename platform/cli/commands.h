#pragma once

#include "platform/cli/arguments.h"

#include <string>
#include <vector>

namespace peelpack::cli {

/// One command: what it takes and what it does. `run` answers an exit code.
struct Command {
    CommandSpec spec;
    int (*run)(const Arguments& arguments);
};

Command roleCommand();
Command tallyCommand();
Command findCommand();
Command demoCommand();
/// Setting up a program and its rules.
std::vector<Command> programCommands();
/// Inviting, joining, granting, ending.
std::vector<Command> enrollCommands();

/// Finds the command that the first word names, reads the rest, runs it. `words` without the program's name.
int runCommandLine(const std::vector<std::string>& words);

} // namespace peelpack::cli
