#include "platform/evidence/proof.h"

#include "core/base/date.h"
#include "platform/evidence/did_key.h"
#include "platform/evidence/digest.h"
#include "platform/evidence/jcs.h"
#include "platform/evidence/multibase.h"

#include <algorithm>
#include <array>

namespace peelpack::evidence {
namespace {

constexpr const char* proofType = "DataIntegrityProof";
constexpr const char* cryptosuite = "eddsa-jcs-2022";
constexpr const char* purpose = "assertionMethod";

base::Error unusable(const std::string& why)
{
    return {base::ErrorCode::BadInput, why};
}

/// What is signed: the digest of the proof's canonical form, then that of the document's.
base::Result<keys::Bytes> signedBytes(const Json& proof, const Json& document)
{
    const base::Result<std::string> proofText = canonical(proof);
    const base::Result<std::string> documentText = canonical(document);
    if (const base::Error* error = base::firstError(proofText, documentText)) {
        return *error;
    }
    keys::Bytes bytes;
    keys::append(bytes, sha256({keys::bytesOf(proofText.value())}).view());
    keys::append(bytes, sha256({keys::bytesOf(documentText.value())}).view());
    return bytes;
}

bool isText(const Json& object, const char* member, const char* wanted)
{
    const auto found = object.find(member);
    return found != object.end() && found->is_string() && found->get_ref<const std::string&>() == wanted;
}

std::string textIn(const Json& object, const char* member)
{
    const auto found = object.find(member);
    return found != object.end() && found->is_string() ? found->get<std::string>() : std::string();
}

/// Two digits from a text at a place, at most `most`.
bool isNumberUpTo(std::string_view text, std::size_t at, int most)
{
    const auto digit = [&](std::size_t place) { return text[place] >= '0' && text[place] <= '9'; };
    return digit(at) && digit(at + 1) && (text[at] - '0') * 10 + (text[at + 1] - '0') <= most;
}

} // namespace

bool isDateTime(std::string_view text)
{
    constexpr std::size_t dayLength = 10;
    constexpr std::size_t offsetLength = 6;
    constexpr std::string_view shortest = "2027-05-20T14:03:00Z";
    constexpr int lastHour = 23;
    constexpr int lastMinute = 59;
    constexpr int leapSecond = 60;
    if (text.size() < shortest.size() || !base::Date::fromIso(text.substr(0, dayLength)) || text[dayLength] != 'T') {
        return false;
    }
    const std::string_view time = text.substr(dayLength + 1, 8);
    if (!isNumberUpTo(time, 0, lastHour) || time[2] != ':' || !isNumberUpTo(time, 3, lastMinute) || time[5] != ':' ||
        !isNumberUpTo(time, 6, leapSecond)) {
        return false;
    }
    std::string_view rest = text.substr(shortest.size() - 1);
    if (rest.front() == '.') {
        const std::size_t end = rest.find_first_not_of("0123456789", 1);
        if (end == std::string_view::npos || end == 1) {
            return false;
        }
        rest.remove_prefix(end);
    }
    const bool offset = rest.size() == offsetLength && (rest[0] == '+' || rest[0] == '-') &&
                        isNumberUpTo(rest, 1, lastHour) && rest[3] == ':' && isNumberUpTo(rest, 4, lastMinute);
    return rest == "Z" || offset;
}

base::Result<Json> withProof(Json document, const std::string& created, const keys::SigningKey& key)
{
    if (!document.is_object() || document.contains("proof") || !isDateTime(created)) {
        return base::Error{base::ErrorCode::BadValue, "Only a document without a proof, and at a time, can be signed."};
    }
    Json proof{{"type", proofType},
               {"cryptosuite", cryptosuite},
               {"created", created},
               {"verificationMethod", methodOf(key.verifyKey())},
               {"proofPurpose", purpose}};
    if (const auto context = document.find("@context"); context != document.end()) {
        proof["@context"] = *context;
    }
    const base::Result<keys::Bytes> bytes = signedBytes(proof, document);
    if (!bytes) {
        return bytes.error();
    }
    proof["proofValue"] = multibase(key.sign(bytes.value()).view());
    document["proof"] = std::move(proof);
    return document;
}

base::Result<Proven> verifyProof(const Json& document)
{
    if (!document.is_object() || !document.contains("proof") || !document["proof"].is_object()) {
        return unusable("It has no proof.");
    }
    Json unsecured = document;
    Json proof = document["proof"];
    unsecured.erase("proof");
    constexpr std::array<std::string_view, 7> known{"@context",           "type",         "cryptosuite", "created",
                                                    "verificationMethod", "proofPurpose", "proofValue"};
    for (const auto& [name, value] : proof.items()) {
        if (std::find(known.begin(), known.end(), name) == known.end()) {
            return unusable("Its proof says something that this version does not know: " + name + ".");
        }
    }
    if (!isText(proof, "type", proofType) || !isText(proof, "cryptosuite", cryptosuite) ||
        !isText(proof, "proofPurpose", purpose)) {
        return unusable("Its proof is of another kind than eddsa-jcs-2022 for an assertion.");
    }
    const std::string created = textIn(proof, "created");
    const auto signer = keyOfMethod(textIn(proof, "verificationMethod"));
    const auto value = fromMultibase(textIn(proof, "proofValue"));
    const auto signature = value ? keys::Signature::from(*value) : std::nullopt;
    if (!isDateTime(created) || !signer || !signature) {
        return unusable("Its proof lacks a usable time, key or signature.");
    }
    proof.erase("proofValue");
    const auto ownContext = proof.find("@context");
    const auto context = unsecured.find("@context");
    const bool sameContext = ownContext == proof.end() || (context != unsecured.end() && *context == *ownContext);
    const base::Result<keys::Bytes> bytes = signedBytes(proof, unsecured);
    if (!bytes) {
        return unusable(bytes.error().sentence);
    }
    if (!sameContext || !keys::verify(*signer, bytes.value(), *signature)) {
        return base::Error{base::ErrorCode::BadValue, "Its signature does not fit: something was changed."};
    }
    return Proven{*signer, created};
}

} // namespace peelpack::evidence
