#include "platform/cli/ended_devices.h"

#include "core/base/text.h"

namespace peelpack::cli {

Answer endedDevices(const std::string& name, const std::vector<session::EndedDevice>& ended)
{
    Answer answer;
    answer.json["ended"] = nlohmann::ordered_json::array();
    for (const session::EndedDevice& device : ended) {
        answer.json["ended"].push_back({{"device", keys::hex(device.key.view())}, {"accepted", device.accepted}});
        answer.text += "Ended: a device of " + name + "; what was received before stays good (" +
                       base::counted(device.accepted, "entry", "entries") + ").\n";
    }
    return answer;
}

} // namespace peelpack::cli
