#include "sync/carry/frame_source.h"
#include "sync/journal/own_phone.h"
#include "sync/keys/card.h"
#include "sync/keys/code.h"
#include "sync/keys/invitation.h"
#include "sync/keys/little_endian.h"
#include "sync/merge/contents.h"
#include "sync/parcel/volume.h"
#include "tests/fuzz/support/program.h"

#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>

// Writes what the fuzz targets start from, one folder for each target, into the folder that is named: payloads of every
// kind, entries, statements, certificates, codes, and the journals of the folder that is named second.
namespace peelpack::fuzz {
namespace {

class Folder {
public:
    Folder(const std::filesystem::path& root, const std::string& target) : m_path(root / target)
    {
        std::filesystem::create_directories(m_path);
    }
    void add(const std::string& name, keys::ByteView bytes) const
    {
        std::ofstream(m_path / name, std::ios::binary)
            .write(reinterpret_cast<const char*>(bytes.data()), static_cast<std::streamsize>(bytes.size()));
    }

private:
    std::filesystem::path m_path;
};

keys::Bytes contentOf(const std::filesystem::path& path)
{
    std::ifstream file(path, std::ios::binary);
    std::ostringstream content;
    content << file.rdbuf();
    const std::string text = content.str();
    return {text.begin(), text.end()};
}

void writePayloads(const std::filesystem::path& root)
{
    const Folder payloads(root, "payload");
    const Folder entries(root, "entry");
    for (const journal::Payload& payload : program().payloads()) {
        const std::uint16_t kind = kindOf(payload);
        const std::string name = "kind-" + std::to_string(kind);
        const keys::Bytes bytes = journal::encode(payload).value();
        keys::Bytes chosen{static_cast<std::uint8_t>(kind), 0};
        keys::append(chosen, bytes);
        payloads.add(name, chosen);
        const journal::Place place = program().ledger.next(program().studentFeed());
        const auto entry = journal::writeRawEntry(program().id, place, {{1'772'366'400, -300}, std::nullopt}, kind,
                                                  bytes, program().student.signing);
        entries.add(name, entry.value().bytes);
    }
    for (const auto& [id, feed] : program().ledger.feeds()) {
        for (std::size_t seq = 0; seq < feed.trunk().entries.size(); ++seq) {
            entries.add(keys::hex(id.device.view().first(4)) + '-' + std::to_string(seq),
                        feed.trunk().entries[seq].bytes);
        }
    }
}

void writeStatements(const std::filesystem::path& root)
{
    const Folder statements(root, "statement");
    for (const journal::SignerKind kind : {journal::SignerKind::Device, journal::SignerKind::Card,
                                           journal::SignerKind::Drawn, journal::SignerKind::Paper}) {
        statements.add("signer-" + std::to_string(static_cast<unsigned>(kind)),
                       journal::encode(program().statement(kind)).value());
    }
}

void writeCertificates(const std::filesystem::path& root)
{
    const Folder certificates(root, "certificate");
    const Program& known = program();
    const std::vector<trust::CertificateContent> contents{
        trust::DirectorCertificate{known.directorId, known.director.signing.verifyKey(),
                                   known.director.opening.sealKey(), "Director"},
        trust::DirectorRevoked{{known.director.signing.verifyKey(), known.stream}, 1},
        trust::Completion{known.studentId, "cap15", {}, {known.studentFeed(), 1, {}}, {}}};
    for (const trust::CertificateContent& content : contents) {
        certificates.add("type-" + std::to_string(content.index() + 1),
                         trust::writeCertificate(known.key, 1, content).value());
    }
}

void writeCodes(const std::filesystem::path& root)
{
    const Folder codes(root, "codes");
    const Program& known = program();
    keys::SigningCard card;
    card.programStream = known.stream;
    card.card = known.cardId;
    card.epoch = 1;
    card.secret = keys::Secret(keys::Bytes(keys::SigningCard::secretBytes, 0x41));
    codes.add("card", card.code().view());
    keys::Invitation invitation;
    invitation.program = known.id;
    invitation.inviterDevice = known.instructor.signing.verifyKey();
    invitation.inviterSeal = known.instructor.opening.sealKey();
    invitation.person = known.studentId;
    invitation.role = 4;
    invitation.secret = keys::Secret(keys::Bytes(keys::Invitation::secretBytes, 0x61));
    invitation.expiry = 1;
    codes.add("invitation", invitation.code().view());
    codes.add("reply", keys::answer(invitation, known.student).code());
    const keys::Bytes code(keys::codeSecretBytes, 0x5A);
    codes.add("code", code);
    codes.add("program-code", keys::codeText(keys::CodeSort::Program, code).view());
    codes.add("vault-code", keys::codeText(keys::CodeSort::Vault, code).view());

    const journal::Statement statement = known.statement(journal::SignerKind::Device);
    const journal::SigningRequest request{known.id,          known.studentId,      "Student",      statement.operation,
                                          known.sheet,       statement.procedures, statement.head, statement.locale,
                                          statement.wording, statement.meaning};
    codes.add("request", journal::encode(request).value());
    const journal::Attestation attestation = journal::attest(statement, known.preceptor).value();
    codes.add("answer", journal::signingAnswer(attestation));
    codes.add("statement", attestation.statement);
}

void writeLight(const std::filesystem::path& root)
{
    const Folder light(root, "light");
    const auto add = [&](const std::string& name, std::size_t size, const std::vector<std::uint16_t>& numbers) {
        const auto source = carry::FrameSource::of(keys::Bytes(size, 0x5A));
        keys::Bytes codes;
        for (const std::uint16_t number : numbers) {
            const keys::Bytes code = source.value().frame(number);
            keys::append(codes, keys::littleEndian(static_cast<std::uint16_t>(code.size())));
            keys::append(codes, code);
        }
        light.add(name, codes);
    };
    add("one", 40, {0});
    add("plain", 700, {0, 1, 2});
    add("spare", 700, {3, 4, 5, 6, 7, 8});
    add("repeated", 500, {1, 1, 9, 9, 0});
    add("large", carry::mostLightBytes, {0, 1753, 1754, 65'535});
}

void writeVolumes(const std::filesystem::path& root, const std::filesystem::path& journals)
{
    const Folder parcels(root, "parcel");
    for (const auto& file : std::filesystem::recursive_directory_iterator(journals)) {
        const std::string ending = file.path().extension();
        if (ending == ".export" || ending == ".parcel") {
            parcels.add(file.path().filename(), contentOf(file.path()));
        }
    }
    const Program& known = program();
    parcels.add("ledger", parcel::writeVolumes(known.id, merge::contents(known.ledger)).value().front());

    // What each of them can write, of every kind.
    std::vector<keys::Bytes> kept;
    for (const keys::DeviceKey* device : {&known.director, &known.instructor, &known.student}) {
        for (const keys::Id& stream : {known.stream, known.studentId}) {
            journal::Place place = known.ledger.next({device->signing.verifyKey(), stream});
            merge::Run run{place.feed, place.seq, {}};
            for (const journal::Payload& payload : known.payloads()) {
                const auto entry = journal::writeEntry(known.id, place, {{1'772'366'400, -300}, std::nullopt}, payload,
                                                       device->signing);
                if (entry.ok()) {
                    place = {place.feed, place.seq + 1, entry.value().link};
                    run.entries.emplace_back(kept.emplace_back(entry.value().bytes));
                }
            }
            parcels.add("kinds-" + keys::hex(device->signing.verifyKey().view().first(4)) +
                            (stream == known.stream ? "-program" : "-student"),
                        parcel::writeVolumes(known.id, {{}, {}, {run}}).value().front());
        }
    }

    // Forks of the student's feed inside one another.
    merge::Batch forks;
    journal::Place place = known.ledger.next(known.studentFeed());
    for (int fork = 0; fork < 5; ++fork) {
        journal::Link next;
        for (int branch = 0; branch < 5; ++branch) {
            const auto entry = journal::writeEntry(known.id, place, {{branch, 0}, std::nullopt},
                                                   journal::Withdrawn{known.sheet, "Twice."}, known.student.signing);
            next = entry.value().link;
            forks.runs.push_back({place.feed, place.seq, {keys::ByteView(kept.emplace_back(entry.value().bytes))}});
        }
        place = {place.feed, place.seq + 1, next};
    }
    parcels.add("forks", parcel::writeVolumes(known.id, forks).value().front());

    // One entry in six ways: the target makes the signatures, with nonces from what stands in their place.
    merge::Batch again;
    const keys::Bytes one = known.ledger.feed(known.studentFeed())->trunk().entries.front().bytes.toBytes();
    for (std::uint8_t nonce = 0; nonce < 6; ++nonce) {
        keys::Bytes& bytes = kept.emplace_back(one);
        *(bytes.end() - keys::Signature::size) = nonce;
        again.runs.push_back({known.studentFeed(), 0, {keys::ByteView(bytes)}});
    }
    parcels.add("signed-again", parcel::writeVolumes(known.id, again).value().front());
}

} // namespace
} // namespace peelpack::fuzz

int main(int count, char** arguments)
{
    if (count != 3) {
        std::fputs("Usage: peelpack_fuzz_seeds FOLDER JOURNALS\n", stderr);
        return 2;
    }
    using namespace peelpack::fuzz;
    const std::filesystem::path root = arguments[1];
    writePayloads(root);
    writeStatements(root);
    writeCertificates(root);
    writeCodes(root);
    writeLight(root);
    writeVolumes(root, arguments[2]);
    return 0;
}
