#pragma once

#include "core/base/result.h"

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace peelpack::cli {

/// One option of a command: "--set", with a value when `value` names it.
struct OptionSpec {
    std::string name;  ///< without the dashes
    std::string value; ///< what to call the value in the help; empty: the option is a switch
    std::string help;
    bool repeats = false; ///< may be given several times
};

/// What a command takes, and the text of its --help.
struct CommandSpec {
    std::string name;                  ///< one or two words: "tally", "sheet open"
    std::string purpose;               ///< one sentence
    std::vector<std::string> operands; ///< "SHEETS.csv"
    std::vector<OptionSpec> options;
    std::string example; ///< a command line that works, and what it does
};

/// The words after the command's name, sorted out.
struct Arguments {
    bool help = false;
    std::vector<std::string> operands;
    std::map<std::string, std::string> values;             ///< by option name; a switch has an empty value
    std::map<std::string, std::vector<std::string>> lists; ///< options that repeat, in the order given

    [[nodiscard]] bool has(const std::string& option) const { return values.contains(option); }
    [[nodiscard]] std::optional<std::string> value(const std::string& option) const;
    /// Empty when the option was not given.
    [[nodiscard]] const std::vector<std::string>& list(const std::string& option) const;
};

/// The error says which word is wrong and how to see the help. Exactly as many operands as the command has, unless it
/// asks for help; the last operand takes all the remaining words when its name ends in "...".
base::Result<Arguments> parseArguments(const CommandSpec& spec, const std::vector<std::string>& words);

/// The whole number of an option, or `usual` when it is not given. BadUsage: it is none, or not from `lowest` to
/// `highest`.
base::Result<std::uint64_t> wholeNumber(const Arguments& arguments, const std::string& option, std::uint64_t lowest,
                                        std::uint64_t highest, std::uint64_t usual);

std::string helpText(const CommandSpec& spec);

} // namespace peelpack::cli
