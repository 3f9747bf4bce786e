#include "platform/demo/deferred_vault.h"

namespace peelpack::demo {

vault::Result<vault::Contents> DeferredVault::contents()
{
    if (const vault::Result<bool> written = flush(); !written) {
        return written.error();
    }
    return m_file->contents();
}

vault::Result<bool> DeferredVault::save(const vault::Change& change)
{
    m_waiting.certificates.insert(m_waiting.certificates.end(), change.certificates.begin(), change.certificates.end());
    m_waiting.entries.insert(m_waiting.entries.end(), change.entries.begin(), change.entries.end());
    for (const auto& [name, value] : change.notes) {
        m_waiting.notes[name] = value;
    }
    m_waiting.hold.insert(m_waiting.hold.end(), change.hold.begin(), change.hold.end());
    m_waiting.release.insert(m_waiting.release.end(), change.release.begin(), change.release.end());
    const bool numbered = !change.hold.empty() || !change.release.empty(); // by the file
    return numbered ? flush() : vault::Result<bool>(true);
}

vault::Result<bool> DeferredVault::flush()
{
    vault::Result<bool> written = m_file->save(m_waiting);
    if (written) {
        m_waiting = {};
    }
    return written;
}

} // namespace peelpack::demo
