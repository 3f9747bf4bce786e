#include "tests/sync/support/rules.h"

namespace peelpack::test {

base::Date dayOf(const char* iso)
{
    return base::Date::fromIso(iso).value();
}

journal::RequirementsChange requirementsChange(const keys::Hash& standsOn, std::string className, const char* from,
                                               std::string set)
{
    keys::Hash digest;
    digest.bytes.fill(static_cast<std::uint8_t>(set.size()));
    return {standsOn, std::move(className), dayOf(from), std::move(set), digest, "The program was told of it."};
}

journal::Sites sitesOf(const std::vector<std::string>& names, const keys::Hash& standsOn)
{
    journal::Sites sites{standsOn, {}};
    for (const std::string& name : names) {
        sites.sites.push_back({name, journal::PhoneRule::LoungeOnly, "Ask at the desk."});
    }
    return sites;
}

journal::CatalogueOverlay overlayOf(std::string_view row, const keys::Hash& standsOn)
{
    const std::string table = "id\tname\tsynonyms\tshorthand\tcategories\tflags\tsources\n" + std::string(row) + "\n";
    return {standsOn, keys::Bytes(table.begin(), table.end())};
}

journal::ClinicalDays daysOf(std::string className, const std::vector<const char*>& dates, const keys::Hash& standsOn)
{
    journal::ClinicalDays days{standsOn, std::move(className), {}};
    for (const char* date : dates) {
        days.days.push_back({dayOf(date), "North Pavilion", 420, 900});
    }
    return days;
}

std::vector<journal::Payload> everyRule()
{
    return {requirementsChange({}, "Class of 2027", "2026-03-01", "spread10"),
            daysOf("Class of 2027", {"2026-03-02", "2026-03-04"}),
            sitesOf({"North Pavilion", "South Annex"}),
            journal::WhoMaySign{{}, {{"CST", journal::signsEveryRole}, {"RN", journal::signsObservation}}},
            journal::PreceptorStanding{{}, idOf(0x40), dayOf("2026-01-15"), true},
            overlayOf("own-one\tOwn procedure")};
}

std::uint16_t kindOf(const journal::Payload& payload)
{
    return std::visit(
        []<class T>(const T& /*payload*/) -> std::uint16_t {
            if constexpr (requires { T::kind; }) {
                return static_cast<std::uint16_t>(T::kind);
            } else {
                return 0;
            }
        },
        payload);
}

} // namespace peelpack::test
