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
/// A vault's sheets as a case-sheet file.
Command rowsCommand();
/// An earlier paper log into the journal.
Command importCommand();
/// Setting up a program and its rules.
std::vector<Command> programCommands();
/// The program's rules besides its policy: requirements, days, sites, signers, preceptors' standing.
std::vector<Command> ruleCommands();
/// Inviting, joining, granting, ending.
std::vector<Command> enrollCommands();
/// What a student writes about case sheets, and looking at them.
std::vector<Command> sheetCommands();
/// A preceptor's marks and signature, on the student's phone and on their own.
std::vector<Command> signCommands();
/// Signing cards: making, vouching, ending, looking through what they signed.
std::vector<Command> preceptorCommands();
/// Taking in, sending, exporting.
std::vector<Command> exchangeCommands();
/// What instructors and the director do about sheets.
std::vector<Command> instructorCommands();
/// Papers as PDF.
std::vector<Command> printCommands();
/// The director's decision that a student has met the requirements, the record of it, and proofs of its sheets.
std::vector<Command> recordCommands();
/// The vault's own secrets.
std::vector<Command> vaultCommands();
/// The program's own procedures.
Command catalogueCommand();
Command checkCommand();
/// What waits for an instructor.
Command queueCommand();
/// What an instructor should check.
Command questionsCommand();
/// Sheets drawn to be confirmed with preceptors.
Command sampleCommand();

/// Finds the command that the first word names, reads the rest, runs it. `words` without the program's name.
int runCommandLine(const std::vector<std::string>& words);

} // namespace peelpack::cli
