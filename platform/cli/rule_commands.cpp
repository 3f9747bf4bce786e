#include "platform/cli/commands.h"

#include "core/base/text.h"
#include "platform/calendar/days_file.h"
#include "platform/cli/answer.h"
#include "platform/cli/bytes_file.h"
#include "platform/cli/output.h"
#include "platform/cli/policy_words.h"
#include "platform/cli/rule_words.h"
#include "platform/cli/sheet_options.h"
#include "platform/files/table_file.h"
#include "platform/files/text_file.h"
#include "platform/session/checks.h"
#include "platform/session/program_rules.h"
#include "platform/session/rule_writing.h"

#include <algorithm>

namespace peelpack::cli {
namespace {

constexpr std::size_t mostDaysBytes = 16U << 20U;
constexpr std::size_t mostTableBytes = 1U << 20U;

base::Error usage(const char* sentence)
{
    return {base::ErrorCode::BadUsage, sentence};
}

/// The class of --class; empty with --every-class. BadUsage: neither or both.
base::Result<std::string> classGiven(const Arguments& arguments)
{
    const std::string name = typed(arguments, "class");
    if (name.empty() == !arguments.has("every-class")) {
        return usage("For whom? Give --class NAME or --every-class.");
    }
    return name;
}

/// A class may be told its rules before anybody is in it; a mistyped one would be told them for ever. A vault that
/// holds no students at all cannot say.
void remarkOnNobody(const session::Session& session, const std::string& className)
{
    if (!className.empty() && !session::studentsOf(session).empty() &&
        session::studentsOf(session, className).empty()) {
        complain("None of the students in this vault is in the class \"" + className +
                 "\"; if that is not its name, write it again.");
    }
}

OptionSpec everyClassOption()
{
    return {"every-class", "", "for every class"};
}

Answer listed(nlohmann::ordered_json json, std::string text, const char* nothing)
{
    Answer answer;
    answer.json = std::move(json);
    answer.text = text.empty() ? nothing : std::move(text);
    return answer;
}

base::Result<Answer> requirements(const Arguments& arguments)
{
    const bool changes = arguments.has("set");
    const auto told = rulesFrom(arguments); // the set with its digest; the rest of it is not asked for
    const auto from = dateOption(arguments, "from");
    base::Result<OpenedVault> opened = openVault(arguments);
    if (const base::Error* error = base::firstError(told, from, opened)) {
        return *error;
    }
    session::Session& session = *opened.value().session;
    if (changes) {
        const base::Result<std::string> className = classGiven(arguments);
        const base::Result<std::string> reason = requiredReason(arguments);
        if (const base::Error* error = base::firstError(className, reason)) {
            return *error;
        }
        if (!from.value()) {
            return usage("From which day on? Give --from DATE.");
        }
        const auto written =
            session::changeRequirements(session, {className.value(), *from.value(), told.value().requirementSet,
                                                  told.value().setDigest, reason.value(), told.value().setText});
        if (!written) {
            return written.error();
        }
        remarkOnNobody(session, className.value());
    }
    const auto all = session::requirementChanges(session);
    return listed({{"requirementChanges", changesJson(all)}}, changesText(all),
                  "No requirements were changed: the set of the program's rules is in force.\n");
}

base::Result<Answer> writeCalendar(const session::Session& session, const std::vector<journal::ClinicalDay>& days,
                                   const std::string& out)
{
    const base::Result<std::string> calendar = calendar::daysAsCalendar(days, session.now().seconds);
    if (!calendar) {
        return calendar.error();
    }
    if (const base::Result<bool> kept = writeNewFile(out, keys::bytesOf(calendar.value())); !kept) {
        return kept.error();
    }
    Answer answer;
    answer.json = {{"file", out}, {"days", days.size()}};
    answer.text = "Written: " + out + ", " + base::counted(days.size(), "clinical day", "clinical days") + ".\n";
    return answer;
}

base::Result<calendar::DaysWanted> daysWanted(const Arguments& arguments, const session::Session& session)
{
    const auto from = dateOption(arguments, "from");
    const auto to = dateOption(arguments, "to");
    if (const base::Error* error = base::firstError(from, to)) {
        return *error;
    }
    const calendar::DaysWanted usual = calendar::usualDays(session::today(session));
    return calendar::DaysWanted{from.value().value_or(usual.first), to.value().value_or(usual.last),
                                typed(arguments, "site"), arguments.value("zone").value_or(std::string())};
}

base::Result<std::vector<journal::ClinicalDay>> daysOfFile(const std::string& file, const calendar::DaysWanted& wanted)
{
    const base::Result<std::string> text = files::readWholeFile(file, mostDaysBytes);
    if (!text) {
        return text.error();
    }
    return calendar::daysFrom(file, text.value(), wanted);
}

base::Result<Answer> days(const Arguments& arguments)
{
    const auto in = arguments.value("in");
    if (in && arguments.has("none")) {
        return usage("Use --in or --none.");
    }
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!opened) {
        return opened.error();
    }
    session::Session& session = *opened.value().session;
    const bool own = session.role() == journal::Role::Student && !arguments.has("class") &&
                     !arguments.has("every-class"); // a student's own calendar
    const base::Result<std::string> className = own ? base::Result<std::string>(std::string()) : classGiven(arguments);
    const base::Result<calendar::DaysWanted> wanted = daysWanted(arguments, session);
    if (const base::Error* error = base::firstError(className, wanted)) {
        return *error;
    }
    if (in || arguments.has("none")) {
        base::Result<std::vector<journal::ClinicalDay>> read = std::vector<journal::ClinicalDay>();
        if (in) {
            read = daysOfFile(*in, wanted.value());
        }
        if (!read) {
            return read.error();
        }
        const auto written = session::setClinicalDays(session, className.value(), std::move(read).value());
        if (!written) {
            return written.error();
        }
        remarkOnNobody(session, className.value());
    }
    const std::vector<journal::ClinicalDay> found =
        own ? session::clinicalDaysOf(session, session.person()) : session::clinicalDays(session, className.value());
    if (const auto out = arguments.value("out")) {
        return writeCalendar(session, found, *out);
    }
    return listed({{"class", className.value()}, {"clinicalDays", daysJson(found)}}, daysText(found),
                  "No clinical days are known.\n");
}

base::Result<std::vector<journal::Site>> sitesFromFile(const std::string& file)
{
    const base::Result<std::string> text = files::readWholeFile(file, mostTableBytes);
    if (!text) {
        return text.error();
    }
    const auto rows = files::readTable(file, text.value(), {{"name", true}, {"phones", false}, {"note", false}});
    if (!rows) {
        return rows.error();
    }
    std::vector<journal::Site> sites;
    for (const files::TableRow& row : rows.value()) {
        const auto phones = phoneRuleFromWord(row.cells[1].empty() ? "not-said" : row.cells[1]);
        if (row.cells[0].empty() || !phones) {
            return row.error(file, row.cells[0].empty() ? "the name is missing; fill it in."
                                                        : "phones is core, lounge, none, not-said or empty.");
        }
        sites.push_back({row.cells[0], *phones, row.cells[2]});
    }
    return sites;
}

/// The sites as --site, --phones and --note change them, or without the one of --remove.
base::Result<std::vector<journal::Site>> changedSites(const Arguments& arguments, std::vector<journal::Site> sites)
{
    const std::string removed = typed(arguments, "remove");
    const std::string name = typed(arguments, "site");
    if (!removed.empty()) {
        return session::withoutSite(std::move(sites), removed);
    }
    const auto found = std::find_if(sites.begin(), sites.end(), [&](const auto& site) { return site.name == name; });
    journal::Site site = found == sites.end() ? journal::Site{name, journal::PhoneRule::NotSaid, {}} : *found;
    if (const auto phones = arguments.value("phones")) {
        const auto rule = phoneRuleFromWord(*phones);
        if (!rule) {
            return usage("--phones takes core, lounge, none or not-said.");
        }
        site.phones = *rule;
    }
    if (arguments.has("note")) {
        site.note = typed(arguments, "note");
    }
    return session::withSite(std::move(sites), std::move(site));
}

base::Result<Answer> sites(const Arguments& arguments)
{
    const auto in = arguments.value("in");
    const bool changesOne = arguments.has("site") || arguments.has("remove");
    if (static_cast<int>(in.has_value()) + static_cast<int>(arguments.has("site")) +
            static_cast<int>(arguments.has("remove")) >
        1) {
        return usage("Use one of --in, --site and --remove.");
    }
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!opened) {
        return opened.error();
    }
    session::Session& session = *opened.value().session;
    if (in || changesOne) {
        auto list = in ? sitesFromFile(*in) : changedSites(arguments, session::sites(session));
        if (!list) {
            return list.error();
        }
        const auto written = session::setSites(session, std::move(list).value());
        if (!written) {
            return written.error();
        }
    }
    const std::vector<journal::Site> found = session::sites(session);
    return listed({{"sites", sitesJson(found)}}, sitesText(found), "No sites are listed.\n");
}

base::Result<std::vector<journal::MaySign>> signersFrom(const std::vector<std::string>& allowed)
{
    std::vector<journal::MaySign> signers;
    for (const std::string& text : allowed) {
        const std::size_t sign = text.rfind('=');
        const auto roles = sign == std::string::npos ? std::nullopt : rolesFromWords(text.substr(sign + 1));
        const std::string credential = files::normalized(base::trimmed(std::string_view(text).substr(0, sign)));
        if (!roles || credential.empty()) {
            return usage("--allow takes a credential and roles, such as \"CST=first,second,observed\".");
        }
        signers.push_back({credential, *roles});
    }
    return signers;
}

base::Result<Answer> signers(const Arguments& arguments)
{
    const std::vector<std::string>& allowed = arguments.list("allow");
    if (!allowed.empty() && arguments.has("anybody")) {
        return usage("Use --allow or --anybody.");
    }
    auto list = signersFrom(allowed);
    base::Result<OpenedVault> opened = openVault(arguments);
    if (const base::Error* error = base::firstError(list, opened)) {
        return *error;
    }
    session::Session& session = *opened.value().session;
    if (!allowed.empty() || arguments.has("anybody")) {
        const auto written = session::setWhoMaySign(session, std::move(list).value());
        if (!written) {
            return written.error();
        }
    }
    const std::vector<journal::MaySign> found = session::whoMaySign(session);
    return listed({{"signers", signersJson(found)}}, signersText(found), "");
}

base::Result<Answer> standing(const Arguments& arguments)
{
    const auto oriented = dateOption(arguments, "oriented");
    if (!oriented) {
        return oriented.error();
    }
    if ((oriented.value() && arguments.has("not-oriented")) ||
        (arguments.has("active") && arguments.has("not-active"))) {
        return usage("Say one of the two, not both.");
    }
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!opened) {
        return opened.error();
    }
    session::Session& session = *opened.value().session;
    const session::Directory directory(session);
    const base::Result<const session::Preceptor*> preceptor = directory.findPreceptor(arguments.operands.front());
    if (!preceptor) {
        return preceptor.error();
    }
    const keys::Id& person = preceptor.value()->id;
    const bool changes =
        oriented.value() || arguments.has("not-oriented") || arguments.has("active") || arguments.has("not-active");
    if (changes) {
        const auto before = session::standingOf(session, person).value_or(journal::PreceptorStanding{});
        const auto since = oriented.value() ? oriented.value() : before.oriented;
        const auto written =
            session::setStanding(session, person, arguments.has("not-oriented") ? std::nullopt : since,
                                 arguments.has("active") || (before.active && !arguments.has("not-active")));
        if (!written) {
            return written.error();
        }
    }
    const auto found = session::standingOf(session, person);
    const std::string text = standingText(found);
    return listed({{"preceptor", keys::hex(person.view())}, {"standing", standingJson(found)}},
                  text.empty() ? text : preceptor.value()->name + ": " + text + ".\n",
                  "The program has said nothing about this preceptor.\n");
}

} // namespace

std::vector<Command> ruleCommands()
{
    return {
        {{"program requirements",
          "Put another requirement set in force for a class from a day on, as the director; or list such changes.",
          {},
          withVaultOptions({{"set", "ID|FILE", "the set"},
                            {"class", "NAME", "for this class"},
                            everyClassOption(),
                            {"from", "DATE", "first day on which it is in force"},
                            {"reason", "TEXT", "why; everybody sees it"}}),
          "peelpack program requirements --set spread10 --class \"Spring class\" --from 2026-08-24 --reason \"the "
          "accreditor's new list\"\n  until that day the tally shows both"},
         [](const Arguments& arguments) { return give(arguments, requirements(arguments)); }},
        {{"program days",
          "Take a class's clinical days from a calendar or table, list them, or write them as a calendar.",
          {},
          withVaultOptions(
              {{"class", "NAME", "of this class"},
               everyClassOption(),
               {"in", "FILE", "an .ics calendar, or CSV with date, site, start, end; in place of what is there"},
               {"none", "", "take all days of the list away"},
               {"out", "FILE.ics", "write them as a calendar"},
               {"from", "DATE", "first day taken from a calendar (a year ago)"},
               {"to", "DATE", "last day taken from a calendar (in two years)"},
               {"site", "NAME", "of days that name no place"},
               {"zone", "ZONE", "of the site, for times in UTC, such as America/Chicago"}}),
          "peelpack program days --class \"Spring class\" --in spring.ics\n  a student gets their own with: peelpack "
          "program days --out mine.ics"},
         [](const Arguments& arguments) { return give(arguments, days(arguments)); }},
        {{"program sites",
          "List the sites with their rule about phones, or change the list.",
          {},
          withVaultOptions({{"in", "FILE.csv", "a table with name, phones, note; in place of what is there"},
                            {"site", "NAME", "add or change this site"},
                            {"phones", "RULE", "core, lounge, none or not-said"},
                            {"note", "TEXT", "what else students should know"},
                            {"remove", "NAME", "take this site off the list"}}),
          "peelpack program sites --site \"North Campus\" --phones lounge\n  no rule of Peelpack: the site's own, "
          "shown"},
         [](const Arguments& arguments) { return give(arguments, sites(arguments)); }},
        {{"program signers",
          "List whose signature the program expects for which role, or change the list, as the director. A signature "
          "outside it is never refused; it becomes a question.",
          {},
          withVaultOptions(
              {{"allow", "CREDENTIAL=ROLES", "roles: first, second, observed; in place of what is there", true},
               {"anybody", "", "anybody for whom the program vouches"}}),
          "peelpack program signers --allow CST=first,second,observed --allow RN=observed\n  asks about a first scrub "
          "that an RN signed"},
         [](const Arguments& arguments) { return give(arguments, signers(arguments)); }},
        {{"preceptor standing",
          "Say since when a preceptor is oriented, and whether they are active; or show it.",
          {"NAME|ID"},
          withVaultOptions({{"oriented", "DATE", "oriented by the program on this day"},
                            {"not-oriented", "", "not oriented yet"},
                            {"active", "", "active"},
                            {"not-active", "", "not active any more; what was signed stays"}}),
          "peelpack preceptor standing \"L. Brandt\" --oriented 2026-01-15\n  cases before that day raise a question"},
         [](const Arguments& arguments) { return give(arguments, standing(arguments)); }},
    };
}

} // namespace peelpack::cli
