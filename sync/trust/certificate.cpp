#include "sync/trust/certificate.h"

#include "sync/journal/coding.h"
#include "sync/keys/hash.h"
#include "sync/keys/little_endian.h"

#include <map>

namespace peelpack::trust {

using journal::Checked;
using journal::Reason;

template <class Archive>
void serialize(Archive& archive, DirectorCertificate& director)
{
    archive(journal::raw(director.person), journal::raw(director.device), journal::raw(director.seal),
            journal::requiredText(director.name));
}

template <class Archive>
void serialize(Archive& archive, DirectorRevoked& revoked)
{
    archive(revoked.feed, revoked.accepted);
}

template <class Archive>
void serialize(Archive& archive, Completion& completion)
{
    archive(journal::raw(completion.student), journal::requiredText(completion.requirementSet),
            journal::raw(completion.setDigest), completion.head, completion.time);
}

namespace {

constexpr std::uint8_t version = 1;

Checked<CertificateContent> decodeContent(std::uint8_t type, keys::ByteView bytes)
{
    const auto as = [bytes]<class T>(const T*) -> Checked<CertificateContent> {
        auto value = journal::decodeFields<T>(bytes);
        if (!value) {
            return value.reason();
        }
        return CertificateContent(std::move(value).value());
    };
    switch (type) {
    case DirectorCertificate::type: {
        auto content = as(static_cast<const DirectorCertificate*>(nullptr));
        if (content && !keys::usable(std::get<DirectorCertificate>(content.value()).device)) {
            return Reason::UnusableKey;
        }
        return content;
    }
    case DirectorRevoked::type:
        return as(static_cast<const DirectorRevoked*>(nullptr));
    case Completion::type:
        return as(static_cast<const Completion*>(nullptr));
    default:
        return Reason::UnknownVersion;
    }
}

keys::Bytes signedBytes(const keys::VerifyKey& program, keys::ByteView body)
{
    keys::Bytes bytes;
    keys::append(bytes, keys::bytesOf("peelpack cert 1\n"));
    keys::append(bytes, program.view());
    keys::append(bytes, body);
    return bytes;
}

} // namespace

Checked<keys::Bytes> writeCertificate(const keys::SigningKey& programKey, std::uint32_t epoch,
                                      const CertificateContent& content)
{
    const keys::Bytes fields = std::visit([](const auto& value) { return journal::encodeFields(value); }, content);
    if (fields.size() > mostCertificateBytes) {
        return Reason::TooLarge;
    }
    keys::Bytes bytes{version, std::visit([]<class T>(const T&) { return T::type; }, content)};
    keys::append(bytes, keys::littleEndian(epoch));
    keys::append(bytes, keys::littleEndian(static_cast<std::uint16_t>(fields.size())));
    keys::append(bytes, fields);
    const keys::Signature signature = programKey.sign(signedBytes(programKey.verifyKey(), bytes));
    keys::append(bytes, signature.view());
    const auto readBack = readCertificate(programKey.verifyKey(), bytes);
    if (!readBack) {
        return readBack.reason();
    }
    return bytes;
}

Checked<Certificate> readCertificate(const keys::VerifyKey& program, keys::ByteView bytes)
{
    if (bytes.size() > mostCertificateBytes) {
        return Reason::TooLarge;
    }
    keys::Reader reader(bytes);
    const auto certificateVersion = reader.number<std::uint8_t>();
    const auto type = reader.number<std::uint8_t>();
    Certificate certificate;
    certificate.epoch = reader.number<std::uint32_t>();
    const auto length = reader.number<std::uint16_t>();
    const keys::ByteView fields = reader.view(length);
    const auto signature = reader.fixed<keys::Signature>();
    if (reader.failed()) {
        return Reason::TooShort;
    }
    if (reader.left() > 0) {
        return Reason::LeftOver;
    }
    if (certificateVersion != version) {
        return Reason::UnknownVersion;
    }
    auto content = decodeContent(type, fields);
    if (!content) {
        return content.reason();
    }
    const keys::ByteView body = bytes.first(bytes.size() - keys::Signature::size);
    if (!keys::verify(program, signedBytes(program, body), signature)) {
        return Reason::BadSignature;
    }
    certificate.content = std::move(content).value();
    certificate.hash = keys::hash("peelpack.certs.1", {program.view(), body});
    certificate.bytes.assign(bytes.begin(), bytes.end());
    return certificate;
}

std::vector<const Certificate*> directorsThatHold(const std::vector<Certificate>& certificates)
{
    std::map<std::uint32_t, const Certificate*> byEpoch;
    for (const Certificate& certificate : certificates) {
        if (std::holds_alternative<DirectorCertificate>(certificate.content)) {
            const Certificate*& held = byEpoch[certificate.epoch];
            if (held == nullptr || certificate.hash < held->hash) {
                held = &certificate;
            }
        }
    }
    std::vector<const Certificate*> result;
    result.reserve(byEpoch.size());
    for (const auto& [epoch, certificate] : byEpoch) {
        result.push_back(certificate);
    }
    return result;
}

std::vector<const Certificate*> contradicted(const std::vector<Certificate>& certificates)
{
    const std::vector<const Certificate*> held = directorsThatHold(certificates);
    std::vector<const Certificate*> result;
    for (const Certificate& certificate : certificates) {
        for (const Certificate* holding : held) {
            if (std::holds_alternative<DirectorCertificate>(certificate.content) &&
                certificate.epoch == holding->epoch && certificate.hash != holding->hash) {
                result.push_back(&certificate);
            }
        }
    }
    return result;
}

} // namespace peelpack::trust
