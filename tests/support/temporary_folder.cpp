#include "tests/support/temporary_folder.h"

#include <cstdlib>
#include <stdexcept>
#include <string>
#include <system_error>

namespace peelpack::test {

namespace {

std::filesystem::path usualParent()
{
    const std::filesystem::path memory = "/dev/shm";
    return std::filesystem::is_directory(memory) ? memory : std::filesystem::temp_directory_path();
}

} // namespace

TemporaryFolder::TemporaryFolder() : TemporaryFolder(usualParent()) {}

TemporaryFolder::TemporaryFolder(const std::filesystem::path& parent)
{
    std::string name = (parent / "peelpack-test-XXXXXX").string();
    if (mkdtemp(name.data()) == nullptr) {
        throw std::runtime_error("cannot make a folder like " + name);
    }
    m_path = name;
}

TemporaryFolder::~TemporaryFolder()
{
    std::error_code stays;
    std::filesystem::remove_all(m_path, stays);
}

} // namespace peelpack::test
