#pragma once

#include "platform/evidence/json.h"
#include "sync/keys/sign.h"

#include <string>

namespace peelpack::evidence {

/// W3C Data Integrity proofs with the cryptosuite eddsa-jcs-2022 (Data Integrity EdDSA Cryptosuites 1.0, section 3.3):
/// Ed25519 over two SHA-256 digests, of the canonical proof without its value and of the canonical document without its
/// proof. Whoever wrote it follows from the did:key that the proof names.

/// The document with its proof, for the purpose assertionMethod. `created` is a time as RFC 3339 writes it. BadValue
/// for a document that has a proof already or is not I-JSON.
base::Result<Json> withProof(Json document, const std::string& created, const keys::SigningKey& key);

/// What a proof that verifies says.
struct Proven {
    keys::VerifyKey signer;
    std::string created;
};
/// One proof and no member in it that this does not know. Contexts that the proof names must be the document's, all of
/// them (the standard lets the document have more, unsigned). BadInput: there is no such proof. BadValue: it does not
/// fit the document.
base::Result<Proven> verifyProof(const Json& document);

/// A time as RFC 3339 section 5.6 writes it, upper case, with the offset that a proof needs.
bool isDateTime(std::string_view text);

} // namespace peelpack::evidence
