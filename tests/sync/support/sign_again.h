#pragma once

#include "sync/keys/sign.h"

namespace peelpack::test {

/// What a modified app can do and no honest one does: a signature of the same message by the same key that differs with
/// `nonce` and verifies all the same (RFC 8032 does not bind the nonce to the message for who verifies). `seed` has the
/// key's 32 bytes.
keys::Signature signAgain(keys::ByteView seed, keys::ByteView message, keys::ByteView nonce);

} // namespace peelpack::test
