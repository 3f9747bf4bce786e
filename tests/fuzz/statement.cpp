#include "tests/fuzz/support/program.h"

// A statement that a preceptor signs, from anywhere: there is one way to write it, and only for its own feed does it
// verify.
extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size)
{
    using namespace peelpack;
    const keys::ByteView bytes(data, size);
    const auto statement = journal::decodeStatement(bytes);
    if (!statement) {
        return 0;
    }
    const auto again = journal::encode(statement.value());
    fuzz::require(again.ok() && std::equal(again.value().begin(), again.value().end(), bytes.begin(), bytes.end()),
                  "there is one way to write a statement");
    const fuzz::Program& known = fuzz::program();
    for (const keys::SigningKey* key : {&known.card, &known.preceptor, &known.student.signing}) {
        const journal::Attestation attestation{{bytes.begin(), bytes.end()}, key->sign(bytes)};
        const auto checked = journal::checkAttestation(attestation, known.id, known.studentFeed());
        if (checked) {
            fuzz::require(statement.value().student == known.studentId && statement.value().program == known.id,
                          "an attestation counts only where it was made for");
            fuzz::require(statement.value().signer.key == key->verifyKey(), "an attestation is signed by its signer");
        }
    }
    return 0;
}
