#pragma once

#include "core/base/result.h"
#include "sync/keys/random.h"
#include "sync/keys/seal.h"
#include "sync/keys/sign.h"

namespace peelpack::keys {

/// What identifies one installation: a key that signs its feeds and a key that parcels are sealed to. Made on the
/// device for one program, never backed up.
struct DeviceKey {
    SigningKey signing;
    OpeningKey opening;
};

/// Two seeds of 32 bytes each, in locked memory: all that is ever stored of a device key.
struct DeviceSeeds {
    Secret signing;
    Secret opening;
};

DeviceSeeds newDeviceSeeds(RandomSource& random);

/// BadValue when a seed does not have 32 bytes.
base::Result<DeviceKey> deviceKey(const DeviceSeeds& seeds);
/// The same, also BadValue when a stored public half is not the seed's.
base::Result<DeviceKey> deviceKey(const DeviceSeeds& seeds, const VerifyKey& storedVerify, const SealKey& storedSeal);

} // namespace peelpack::keys
