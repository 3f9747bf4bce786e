#include "platform/cli/arguments.h"

#include <QCommandLineParser>

#include <charconv>

namespace peelpack::cli {
namespace {

bool takesRest(const CommandSpec& spec)
{
    return !spec.operands.empty() && spec.operands.back().ends_with("...");
}

std::string usage(const CommandSpec& spec)
{
    std::string line = "peelpack " + spec.name;
    for (const std::string& operand : spec.operands) {
        line += ' ' + operand;
    }
    for (const OptionSpec& option : spec.options) {
        line += " [--" + option.name + (option.value.empty() ? "]" : ' ' + option.value + "]") +
                (option.repeats ? "..." : "");
    }
    return line;
}

std::string padded(std::string text, std::size_t width)
{
    text.append(width > text.size() ? width - text.size() : 1, ' ');
    return text;
}

} // namespace

std::optional<std::string> Arguments::value(const std::string& option) const
{
    const auto found = values.find(option);
    return found == values.end() ? std::nullopt : std::optional(found->second);
}

const std::vector<std::string>& Arguments::list(const std::string& option) const
{
    static const std::vector<std::string> none;
    const auto found = lists.find(option);
    return found == lists.end() ? none : found->second;
}

base::Result<Arguments> parseArguments(const CommandSpec& spec, const std::vector<std::string>& words)
{
    QCommandLineParser parser;
    parser.setOptionsAfterPositionalArgumentsMode(QCommandLineParser::ParseAsOptions);
    parser.addOption({QStringLiteral("help"), {}});
    for (const OptionSpec& option : spec.options) {
        QCommandLineOption added(QString::fromStdString(option.name));
        added.setValueName(QString::fromStdString(option.value));
        parser.addOption(added);
    }
    QStringList list{QStringLiteral("peelpack")};
    for (const std::string& word : words) {
        list << QString::fromStdString(word);
    }
    const std::string seeHelp = " See: peelpack " + spec.name + " --help";
    if (!parser.parse(list)) {
        return base::Error{base::ErrorCode::BadUsage, parser.errorText().toStdString() + seeHelp};
    }
    Arguments arguments;
    arguments.help = parser.isSet(QStringLiteral("help"));
    for (const OptionSpec& option : spec.options) {
        const QString name = QString::fromStdString(option.name);
        if (parser.isSet(name) && option.repeats) {
            for (const QString& value : parser.values(name)) {
                arguments.lists[option.name].push_back(value.toStdString());
            }
        } else if (parser.isSet(name)) {
            if (parser.values(name).size() > 1) {
                return base::Error{base::ErrorCode::BadUsage, "--" + option.name + " is given twice." + seeHelp};
            }
            arguments.values.emplace(option.name, parser.value(name).toStdString());
        }
    }
    for (const QString& operand : parser.positionalArguments()) {
        arguments.operands.push_back(operand.toStdString());
    }
    if (arguments.help) {
        return arguments;
    }
    if (arguments.operands.size() < spec.operands.size()) {
        return base::Error{base::ErrorCode::BadUsage,
                           "Missing: " + spec.operands[arguments.operands.size()] + "." + seeHelp};
    }
    if (arguments.operands.size() > spec.operands.size() && !takesRest(spec)) {
        return base::Error{base::ErrorCode::BadUsage,
                           "One word too many: " + arguments.operands[spec.operands.size()] + "." + seeHelp};
    }
    return arguments;
}

base::Result<std::uint64_t> wholeNumber(const Arguments& arguments, const std::string& option, std::uint64_t lowest,
                                        std::uint64_t highest, std::uint64_t usual)
{
    const std::optional<std::string> text = arguments.value(option);
    if (!text) {
        return usual;
    }
    std::uint64_t number = 0;
    const char* const last = text->data() + text->size();
    const auto [end, error] = std::from_chars(text->data(), last, number);
    if (error != std::errc() || end != last || number < lowest || number > highest) {
        return base::Error{base::ErrorCode::BadUsage, "--" + option + " takes a whole number from " +
                                                          std::to_string(lowest) + " to " + std::to_string(highest) +
                                                          "."};
    }
    return number;
}

std::string helpText(const CommandSpec& spec)
{
    std::string text = spec.purpose + "\n\nUsage: " + usage(spec) + "\n";
    if (!spec.options.empty()) {
        text += '\n';
        for (const OptionSpec& option : spec.options) {
            text += "  " + padded("--" + option.name + (option.value.empty() ? "" : ' ' + option.value), 24) +
                    option.help + '\n';
        }
    }
    return text + "\nExample:\n  " + spec.example + '\n';
}

} // namespace peelpack::cli
