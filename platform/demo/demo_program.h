#pragma once

#include "core/catalogue/catalogue.h"
#include "core/sheet/case_row.h"

#include <cstdint>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace peelpack::demo {

/// One class of the invented program: its name as used in file names, and the sheets of its students.
struct DemoClass {
    std::string name;
    std::vector<sheet::CaseRow> rows;
};

/// An invented program of two classes at three sites with a term of cases, the same on every machine and every run.
/// People, sites and cases are made up; it shows the tool and proves nothing.
std::vector<DemoClass> demoProgram(const catalogue::Catalogue& catalogue);

/// Another class of it, from the same dice: `days` days from the Monday `start`, sheets in the order of students and
/// days.
DemoClass demoClass(const catalogue::Catalogue& catalogue, std::string name, std::span<const std::string_view> students,
                    base::Date start, int days, std::uint32_t seed);

} // namespace peelpack::demo
