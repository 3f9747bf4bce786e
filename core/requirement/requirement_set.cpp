#include "core/requirement/requirement_set.h"

#include <algorithm>

namespace peelpack::requirement {
namespace {

class Validator {
public:
    explicit Validator(const RequirementSet& set) : m_set(set) {}

    std::vector<Flaw> run()
    {
        if (m_set.id.empty()) {
            add("id", "the set has no id", "give it a short id such as cap15");
        }
        if (m_set.title.empty()) {
            add("title", "the set has no title", "say in a few words what it requires");
        }
        if (m_set.targets.empty()) {
            add("targets", "there is no target", "add at least one");
        }
        if (m_set.targets.size() > mostTargets) {
            add("targets", "there are " + std::to_string(m_set.targets.size()) + " targets",
                "use at most " + std::to_string(mostTargets));
        }
        std::size_t spreads = 0;
        for (std::size_t i = 0; i < m_set.targets.size(); ++i) {
            checkTarget(i);
            spreads += m_set.targets[i].spread ? 1 : 0;
        }
        if (spreads > 1) {
            add("targets", "more than one target has a spread", "keep the spread of one target");
        }
        checkLimits();
        return std::move(m_flaws);
    }

private:
    void add(std::string place, std::string reason, std::string mend)
    {
        m_flaws.push_back({std::move(place), std::move(reason), std::move(mend)});
    }

    void checkTarget(std::size_t i)
    {
        const Target& target = m_set.targets[i];
        const std::string place = "targets[" + std::to_string(i) + "]";
        if (target.id.empty()) {
            add(place + ".id", "the target has no id", "give it a short id such as first-general");
        }
        for (std::size_t j = 0; j < i; ++j) {
            if (m_set.targets[j].id == target.id) {
                add(place + ".id", "the id \"" + target.id + "\" is used twice", "give every target an id of its own");
            }
        }
        if (!target.acceptsFirst && !target.acceptsSecond) {
            add(place + ".roles", "the target accepts no role", "list first, second or both");
        }
        if (target.categories.empty()) {
            add(place + ".categories", "the target has no category", "list ids such as general, or specialties");
        }
        if (target.required == 0 || target.required > mostCases) {
            add(place + ".required", std::to_string(target.required) + " cases are required",
                "require 1 to " + std::to_string(mostCases));
        }
        if (target.cap && *target.cap == 0) {
            add(place + ".cap", "a cap of 0 lets no case count", "leave the cap out, or raise it");
        }
        if (target.spread) {
            checkSpread(target, place + ".spread");
        }
        if (target.cap && target.cap > 0U && reachableUnderCap(target) < target.required) {
            add(place + ".cap",
                "with " + std::to_string(*target.cap) + " cases at most in each of " +
                    std::to_string(target.categories.size()) + " categories, " + std::to_string(target.required) +
                    " can never be reached",
                "raise the cap or lower what is required");
        }
    }

    void checkSpread(const Target& target, const std::string& place)
    {
        const Spread& spread = *target.spread;
        if (spread.specialties == 0 || spread.each == 0) {
            add(place, "a spread of 0 reserves no seat", "leave the spread out, or use numbers from 1");
            return;
        }
        if (spread.specialties > static_cast<std::uint32_t>(target.categories.size())) {
            add(place + ".specialties",
                "it asks for " + std::to_string(spread.specialties) + " specialties and the target has " +
                    std::to_string(target.categories.size()),
                "ask for fewer specialties or add categories");
        }
        if (spread.each > target.required ||
            std::uint64_t{spread.specialties} * spread.each > std::uint64_t{target.required}) {
            add(place,
                std::to_string(spread.specialties) + " × " + std::to_string(spread.each) + " is more than the " +
                    std::to_string(target.required) + " required",
                "lower the spread or raise what is required");
        }
        if (target.cap && *target.cap > 0 && *target.cap < spread.each) {
            add(place + ".each",
                "it asks for more cases of a specialty than the cap of " + std::to_string(*target.cap) + " allows",
                "raise the cap or lower the spread");
        }
        if ((target.categories.bits() & ~catalogue::CategorySet::specialties().bits() & ~1U) != 0) {
            add(place, "a category that is no specialty cannot be part of a spread",
                "take diagnostic-endoscopy and labor-delivery out of this target");
        }
    }

    [[nodiscard]] static std::uint64_t reachableUnderCap(const Target& target)
    {
        return std::uint64_t{*target.cap} * static_cast<std::uint64_t>(target.categories.size());
    }

    void checkLimits()
    {
        for (std::size_t i = 0; i < m_set.limits.size(); ++i) {
            const std::string place = "limits[" + std::to_string(i) + "]";
            const auto same = [&](const Limit& other) { return other.category == m_set.limits[i].category; };
            if (std::any_of(m_set.limits.begin(), m_set.limits.begin() + static_cast<std::ptrdiff_t>(i), same)) {
                add(place + ".category", "the category has two limits", "keep one of them");
            }
            if (m_set.limits[i].most > mostCases) {
                add(place + ".most", "the limit is out of range", "use 0 to " + std::to_string(mostCases));
            }
        }
    }

    const RequirementSet& m_set;
    std::vector<Flaw> m_flaws;
};

} // namespace

std::uint32_t RequirementSet::required() const
{
    std::uint32_t sum = 0;
    for (const Target& target : targets) {
        sum += target.required;
    }
    return sum;
}

std::vector<Flaw> validate(const RequirementSet& set)
{
    return Validator(set).run();
}

} // namespace peelpack::requirement
