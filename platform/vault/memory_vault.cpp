#include "platform/vault/memory_vault.h"

#include <algorithm>

namespace peelpack::vault {

MemoryVault::MemoryVault(keys::RandomSource& random)
    : m_random(random), m_id(random.id()), m_device(keys::deviceKey(keys::newDeviceSeeds(random)).value())
{
}

Result<bool> MemoryVault::save(const Change& change)
{
    m_contents.certificates.insert(m_contents.certificates.end(), change.certificates.begin(),
                                   change.certificates.end());
    m_contents.entries.insert(m_contents.entries.end(), change.entries.begin(), change.entries.end());
    for (const auto& [name, value] : change.notes) {
        if (value) {
            m_contents.notes[name] = *value;
        } else {
            m_contents.notes.erase(name);
        }
    }
    std::vector<HeldVolume>& held = m_contents.held;
    std::erase_if(held, [&](const HeldVolume& volume) {
        return std::find(change.release.begin(), change.release.end(), volume.number) != change.release.end();
    });
    std::size_t bytes = 0;
    for (const keys::Bytes& volume : change.hold) {
        held.push_back({m_nextHeld++, volume});
    }
    for (const HeldVolume& volume : held) {
        bytes += volume.bytes.size();
    }
    while (held.size() > mostHeld || bytes > mostHeldBytes) {
        bytes -= held.front().bytes.size();
        held.erase(held.begin());
    }
    return true;
}

Result<bool> MemoryVault::renewDevice()
{
    m_device = keys::deviceKey(keys::newDeviceSeeds(m_random)).value();
    return true;
}

} // namespace peelpack::vault
