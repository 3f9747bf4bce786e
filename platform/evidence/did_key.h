#pragma once

#include "sync/keys/bytes.h"

#include <optional>
#include <string>
#include <string_view>

namespace peelpack::evidence {

/// A public key as a name that carries the key itself (W3C CCG, The did:key Method 0.9): nothing has to be looked up.
/// "did:key:z6Mk..." for Ed25519.
std::string didOf(const keys::VerifyKey& key);
/// The same key as a method of its own document: the did, "#", and the key again. Proofs name it.
std::string methodOf(const keys::VerifyKey& key);

/// Empty unless it is exactly the did, or the method, of an Ed25519 key that can be used for signing.
std::optional<keys::VerifyKey> keyOfDid(std::string_view did);
std::optional<keys::VerifyKey> keyOfMethod(std::string_view method);

/// The X25519 key that the document of an Ed25519 did names for key agreement (the same point on the other curve), and
/// how it is written there, "z6LS...". Empty for a key that has none.
std::optional<keys::SealKey> agreementKeyOf(const keys::VerifyKey& key);
std::string agreementText(const keys::SealKey& key);

} // namespace peelpack::evidence
