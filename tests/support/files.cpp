#include "tests/support/files.h"

#include "core/base/text.h"

#include <cstdlib>
#include <fstream>
#include <iostream>
#include <sstream>

namespace peelpack::support {

std::string projectFile(const std::string& path)
{
    std::ifstream file(std::string(PEELPACK_ROOT) + "/" + path, std::ios::binary);
    if (!file) {
        std::cerr << "cannot read " << path << '\n';
        std::abort();
    }
    std::stringstream text;
    text << file.rdbuf();
    return text.str();
}

std::vector<std::vector<std::string>> tableRows(const std::string& path)
{
    const std::string text = projectFile(path);
    std::vector<std::vector<std::string>> rows;
    bool header = true;
    for (const std::string_view line : base::split(text, '\n')) {
        if (header || line.empty()) {
            header = false;
            continue;
        }
        std::vector<std::string> cells;
        for (const std::string_view cell : base::split(line, '\t')) {
            cells.emplace_back(cell);
        }
        rows.push_back(std::move(cells));
    }
    return rows;
}

} // namespace peelpack::support
