#pragma once

#include "core/catalogue/catalogue.h"
#include "core/sheet/case_row.h"

#include <string>
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

} // namespace peelpack::demo
