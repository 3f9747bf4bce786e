#include "platform/files/requirement_json.h"

#include "core/base/text.h"
#include "platform/files/resources.h"
#include "platform/files/text_file.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <optional>

namespace peelpack::files {
namespace {

using nlohmann::json;
using requirement::Flaw;
using requirement::RequirementSet;

/// Reads member after member and collects every flaw instead of stopping at the first.
class Reader {
public:
    std::vector<Flaw> flaws;

    void flaw(std::string place, std::string reason, std::string mend)
    {
        flaws.push_back({std::move(place), std::move(reason), std::move(mend)});
    }

    bool isObject(const json& value, const std::string& place, std::initializer_list<std::string_view> known)
    {
        if (!value.is_object()) {
            flaw(place, "this is no object", "write { ... }");
            return false;
        }
        for (const auto& [key, unused] : value.items()) {
            if (std::find(known.begin(), known.end(), key) == known.end()) {
                const std::vector<std::string> names(known.begin(), known.end());
                flaw(place, "\"" + key + "\" is no known member", "use " + base::listed(names, "or"));
            }
        }
        return true;
    }

    std::string text(const json& object, const std::string& place, const char* key, bool needed)
    {
        const auto found = object.find(key);
        if (found == object.end()) {
            if (needed) {
                flaw(member(place, key), "it is missing", "add it");
            }
            return {};
        }
        if (!found->is_string()) {
            flaw(member(place, key), "it is no text", "put it in quotes");
            return {};
        }
        return found->get<std::string>();
    }

    std::uint32_t number(const json& object, const std::string& place, const char* key)
    {
        const auto found = object.find(key);
        if (found == object.end()) {
            flaw(member(place, key), "it is missing", "add it");
            return 1; // so that validate() does not complain of the same thing again
        }
        if (!found->is_number_unsigned() || found->get<std::uint64_t>() > UINT32_MAX) {
            flaw(member(place, key), "it is no whole number from 0 up", "write a number such as 15, without quotes");
            return 1;
        }
        return found->get<std::uint32_t>();
    }

    std::vector<std::string> texts(const json& object, const std::string& place, const char* key)
    {
        std::vector<std::string> out;
        const auto found = object.find(key);
        if (found == object.end()) {
            flaw(member(place, key), "it is missing", "add it");
            return out;
        }
        if (!found->is_array()) {
            flaw(member(place, key), "it is no list", "write [ ... ]");
            return out;
        }
        for (const json& item : *found) {
            if (item.is_string()) {
                out.push_back(item.get<std::string>());
            } else {
                flaw(member(place, key), "one of the list is no text", "put each in quotes");
            }
        }
        return out;
    }

    static std::string member(const std::string& place, const std::string& key)
    {
        return place.empty() ? key : place + "." + key;
    }
};

requirement::Target readTarget(Reader& reader, const json& value, const std::string& place)
{
    requirement::Target target;
    if (!reader.isObject(value, place, {"id", "roles", "categories", "required", "cap", "spread"})) {
        return target;
    }
    target.id = reader.text(value, place, "id", true);
    for (const std::string& role : reader.texts(value, place, "roles")) {
        if (role == "first") {
            target.acceptsFirst = true;
        } else if (role == "second") {
            target.acceptsSecond = true;
        } else {
            reader.flaw(place + ".roles", "\"" + role + "\" is no role that counts", "use first, second or both");
        }
    }
    for (const std::string& id : reader.texts(value, place, "categories")) {
        if (id == "specialties") {
            target.categories = target.categories | catalogue::CategorySet::specialties();
        } else if (const std::optional<catalogue::Category> category = catalogue::categoryFromId(id)) {
            target.categories.add(*category);
        } else {
            reader.flaw(place + ".categories", "\"" + id + "\" is no category",
                        "use ids such as general, or specialties");
        }
    }
    target.required = reader.number(value, place, "required");
    if (value.contains("cap")) {
        target.cap = reader.number(value, place, "cap");
    }
    if (value.contains("spread") && reader.isObject(value["spread"], place + ".spread", {"specialties", "each"})) {
        target.spread = requirement::Spread{reader.number(value["spread"], place + ".spread", "specialties"),
                                            reader.number(value["spread"], place + ".spread", "each")};
    }
    return target;
}

void readLimits(Reader& reader, const json& value, RequirementSet& set)
{
    if (!value.is_array()) {
        reader.flaw("limits", "it is no list", "write [ ... ], or leave it out");
        return;
    }
    for (std::size_t i = 0; i < value.size(); ++i) {
        const std::string place = "limits[" + std::to_string(i) + "]";
        if (!reader.isObject(value[i], place, {"category", "most"})) {
            continue;
        }
        requirement::Limit limit;
        const std::string id = reader.text(value[i], place, "category", true);
        if (const std::optional<catalogue::Category> category = catalogue::categoryFromId(id)) {
            limit.category = *category;
        } else {
            reader.flaw(place + ".category", "\"" + id + "\" is no category", "use an id such as diagnostic-endoscopy");
        }
        limit.most = reader.number(value[i], place, "most");
        set.limits.push_back(limit);
    }
}

RequirementSet readSet(Reader& reader, const json& value)
{
    RequirementSet set;
    if (!reader.isObject(value, "", {"id", "title", "source", "notApplicable", "assistCounts", "targets", "limits"})) {
        return set;
    }
    set.id = reader.text(value, "", "id", true);
    set.title = reader.text(value, "", "title", true);
    set.source = reader.text(value, "", "source", false);
    for (const std::string& column : reader.texts(value, "", "notApplicable")) {
        const std::optional<sheet::Skill> skill = sheet::skillFromColumn(column);
        if (skill && sheet::isFirstScrubSkill(*skill)) {
            set.notApplicable.add(*skill);
        } else {
            reader.flaw("notApplicable", "\"" + column + "\" is no first-scrub skill",
                        "use verify, setup, counts, pass or technique");
        }
    }
    if (const auto assist = value.find("assistCounts"); assist != value.end()) {
        if (assist->is_boolean()) {
            set.assistCounts = assist->get<bool>();
        } else {
            reader.flaw("assistCounts", "it is neither true nor false", "write true or false, without quotes");
        }
    }
    if (const auto targets = value.find("targets"); targets != value.end() && targets->is_array()) {
        for (std::size_t i = 0; i < targets->size(); ++i) {
            set.targets.push_back(readTarget(reader, (*targets)[i], "targets[" + std::to_string(i) + "]"));
        }
    } else {
        reader.flaw("targets", "there is no list of targets", "add \"targets\": [ ... ]");
    }
    if (value.contains("limits")) {
        readLimits(reader, value["limits"], set);
    }
    return set;
}

/// "targets[0]" for "targets[0].spread.each".
std::string_view elementOf(std::string_view place)
{
    return place.substr(0, place.find('.'));
}

/// What the rules say of the elements that could be read in full. Of the others they would complain of what only
/// follows from that; so they would of every limit, because limits are compared with one another.
void addBrokenRules(const RequirementSet& set, std::vector<Flaw>& flaws)
{
    const std::vector<Flaw> unread = flaws;
    for (Flaw& flaw : requirement::validate(set)) {
        const std::string_view element = elementOf(flaw.place);
        const bool follows = std::any_of(unread.begin(), unread.end(), [&](const Flaw& other) {
            const std::string_view unreadElement = elementOf(other.place);
            return unreadElement == element || (element.starts_with("limits") && unreadElement.starts_with("limits"));
        });
        if (!follows) {
            flaws.push_back(std::move(flaw));
        }
    }
}

std::string explain(const std::vector<Flaw>& flaws)
{
    std::string sentence = "The requirement set cannot be used:";
    for (const Flaw& flaw : flaws) {
        sentence += "\n  " + (flaw.place.empty() ? std::string("the whole") : flaw.place) + ": " + flaw.reason + "; " +
                    flaw.mend + ".";
    }
    return sentence;
}

} // namespace

base::Result<RequirementSet> requirementSetFromJson(std::string_view text)
{
    // Members that stand twice would silently win over each other: refuse them.
    std::vector<std::vector<std::string>> open;
    std::string twice;
    const json::parser_callback_t watch = [&](int, json::parse_event_t event, json& parsed) {
        if (event == json::parse_event_t::object_start) {
            open.emplace_back();
        } else if (event == json::parse_event_t::object_end) {
            open.pop_back();
        } else if (event == json::parse_event_t::key) {
            const auto key = parsed.get<std::string>();
            std::vector<std::string>& keys = open.back();
            twice = std::find(keys.begin(), keys.end(), key) != keys.end() ? key : twice;
            keys.push_back(key);
        }
        return true;
    };
    json value;
    try {
        value = json::parse(text, watch);
    } catch (const json::parse_error& error) {
        const std::size_t at = std::min(error.byte, text.size());
        const auto line = 1 + std::count(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(at), '\n');
        return base::Error{base::ErrorCode::BadInput, "The requirement set is no JSON: look at line " +
                                                          std::to_string(line) +
                                                          " for a missing comma, quote or bracket."};
    }
    if (!twice.empty()) {
        return base::Error{base::ErrorCode::BadInput,
                           "The requirement set has the member \"" + twice + "\" twice; keep one of them."};
    }
    Reader reader;
    RequirementSet set = readSet(reader, value);
    if (value.is_object()) {
        addBrokenRules(set, reader.flaws);
    }
    if (!reader.flaws.empty()) {
        return base::Error{base::ErrorCode::BadValue, explain(reader.flaws)};
    }
    return set;
}

base::Result<RequirementSet> requirementSet(const std::string& idOrFile)
{
    const std::vector<std::string>& ids = shippedSetIds();
    const bool shipped = std::find(ids.begin(), ids.end(), idOrFile) != ids.end();
    const base::Result<std::string> text =
        shipped ? shippedText("requirements/" + idOrFile + ".json") : readWholeFile(idOrFile, 1U << 20U);
    if (!text) {
        const bool looksLikeId = idOrFile.find_first_of("./") == std::string::npos;
        return looksLikeId
                   ? base::Error{base::ErrorCode::NotFound, "There is no requirement set \"" + idOrFile + "\"; use " +
                                                                base::listed(ids, "or") + ", or the name of a file."}
                   : text.error();
    }
    base::Result<RequirementSet> set = requirementSetFromJson(text.value());
    if (!set) {
        return base::Error{set.error().code, idOrFile + ": " + set.error().sentence};
    }
    return set;
}

} // namespace peelpack::files
