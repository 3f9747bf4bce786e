#include "sync/keys/device_key.h"

namespace peelpack::keys {

DeviceSeeds newDeviceSeeds(RandomSource& random)
{
    return {random.secret(SigningKey::seedBytes), random.secret(OpeningKey::seedBytes)};
}

base::Result<DeviceKey> deviceKey(const DeviceSeeds& seeds)
{
    auto signing = SigningKey::fromSeed(seeds.signing.view());
    if (!signing) {
        return signing.error();
    }
    auto opening = OpeningKey::fromSeed(seeds.opening.view());
    if (!opening) {
        return opening.error();
    }
    return DeviceKey{std::move(signing).value(), std::move(opening).value()};
}

base::Result<DeviceKey> deviceKey(const DeviceSeeds& seeds, const VerifyKey& storedVerify, const SealKey& storedSeal)
{
    auto key = deviceKey(seeds);
    if (key && (key.value().signing.verifyKey() != storedVerify || key.value().opening.sealKey() != storedSeal)) {
        return base::Error{base::ErrorCode::BadValue,
                           "The stored public keys do not belong to the stored seeds; nothing is signed with them."};
    }
    return key;
}

} // namespace peelpack::keys
