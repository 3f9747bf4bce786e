#include "platform/demo/demo_marks.h"

namespace peelpack::demo {

vault::Result<std::optional<keys::Secret>> DemoMarks::find(const keys::Id& vault, const std::string& file)
{
    const std::lock_guard lock(m_mutex);
    return m_store.find(vault, file);
}

vault::Result<keys::Secret> DemoMarks::make(const keys::Id& vault, const std::string& file, keys::RandomSource& random)
{
    const std::lock_guard lock(m_mutex);
    m_made.push_back(vault);
    return m_store.make(vault, file, random);
}

void DemoMarks::forgetAll()
{
    const std::lock_guard lock(m_mutex);
    for (const keys::Id& vault : m_made) {
        m_store.remove(vault);
    }
    m_made.clear();
}

} // namespace peelpack::demo
