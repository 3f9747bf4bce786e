#include "tests/fuzz/support/program.h"

// A certificate from anywhere, and the same bytes with their last 64 replaced by the program key's signature.
namespace {

using namespace peelpack;

void read(keys::ByteView bytes)
{
    const fuzz::Program& known = fuzz::program();
    const auto certificate = trust::readCertificate(known.id, bytes);
    if (!certificate) {
        return;
    }
    fuzz::require(
        std::equal(bytes.begin(), bytes.end(), certificate.value().bytes.begin(), certificate.value().bytes.end()),
        "a certificate is kept as it was signed");
    const auto again = trust::writeCertificate(known.key, certificate.value().epoch, certificate.value().content);
    fuzz::require(again.ok() && again.value().size() == bytes.size() &&
                      std::equal(bytes.begin(), bytes.end() - keys::Signature::size, again.value().begin()),
                  "there is one way to write a certificate");
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    const keys::ByteView bytes(data, size);
    read(bytes);
    if (size < keys::Signature::size) {
        return 0;
    }
    const fuzz::Program& known = fuzz::program();
    const keys::ByteView body = bytes.first(size - keys::Signature::size);
    keys::Bytes statement;
    keys::append(statement, keys::bytesOf("peelpack cert 1\n"));
    keys::append(statement, known.id.view());
    keys::append(statement, body);
    keys::Bytes certificate(body.begin(), body.end());
    keys::append(certificate, known.key.sign(statement).view());
    read(certificate);
    return 0;
}
