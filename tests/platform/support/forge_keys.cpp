#include "platform/files/text_file.h"
#include "platform/session/exchange.h"
#include "platform/session/intake.h"
#include "platform/vault/install_mark.h"
#include "platform/vault/sqlite_vault.h"
#include "sync/keys/code.h"
#include "sync/parcel/parcel.h"
#include "sync/parcel/volume.h"
#include "tests/platform/support/forge.h"
#include "tests/platform/support/forge_parts.h"
#include "tests/sync/support/sign_again.h"

#include <ctime>

namespace peelpack::test {
namespace {

using nlohmann::json;

keys::Bytes fileBytes(const std::string& name)
{
    const std::string text = need(files::readWholeFile(name, std::size_t{80} * 1024 * 1024));
    return {text.begin(), text.end()};
}

void writeFile(const std::string& name, keys::ByteView bytes)
{
    need(files::writeWholeFile(name, {reinterpret_cast<const char*>(bytes.data()), bytes.size()}));
}

session::Recipients recipients(const session::Session& session, const json& request)
{
    if (!session.isStaff()) {
        return need(session::toStaff(session));
    }
    if (!request.contains("to")) {
        return need(session::toColleagues(session));
    }
    const session::Directory directory(session);
    const session::Person& person = *need(directory.findPerson(request.at("to").get<std::string>()));
    return {session::Directory::keysOf(person), person.id};
}

} // namespace

struct KeyForge::State {
    vault::FolderMarkStore marks{vault::FolderMarkStore::usualFolder()};
    keys::SystemRandom random;
    std::int64_t now = std::time(nullptr);
    std::unique_ptr<session::Session> session;

    const keys::DeviceKey& device() { return *need(session->device()); }

    json who()
    {
        json feeds = json::array();
        for (const auto& [id, feed] : session->ledger().feeds()) {
            feeds.push_back({{"device", keys::hex(id.device.view())},
                             {"stream", keys::hex(id.stream.view())},
                             {"count", feed.count()}});
        }
        return {{"device", keys::hex(device().signing.verifyKey().view())},
                {"program", keys::hex(session->program().view())},
                {"programStream", keys::hex(session->programStream().view())},
                {"person", keys::hex(session->person().view())},
                {"feeds", feeds},
                {"damage", session->damage()}};
    }

    json sign(const json& request)
    {
        const keys::Bytes message = hexOf(request, "message");
        if (!request.contains("seed")) {
            return {{"signature", keys::hex(device().signing.sign(message).view())}};
        }
        const auto key = need(keys::SigningKey::fromSeed(hexOf(request, "seed")));
        return {{"signature", keys::hex(key.sign(message).view())}, {"key", keys::hex(key.verifyKey().view())}};
    }

    static json signOnceMore(const json& request)
    {
        const keys::Signature signature =
            signAgain(hexOf(request, "seed"), hexOf(request, "message"), hexOf(request, "nonce"));
        return {{"signature", keys::hex(signature.view())}};
    }

    json keep(const json& request)
    {
        vault::Change change;
        for (const json& entry : request.at("entries")) {
            change.entries.push_back({{fixedOf<keys::VerifyKey>(entry, "device"), fixedOf<keys::Id>(entry, "stream")},
                                      entry.at("seq").get<std::uint32_t>(),
                                      hexOf(entry, "entry")});
        }
        need(session->vault().save(change));
        return {{"kept", change.entries.size()}};
    }

    json seal(const json& request)
    {
        const auto parcel = parcel::seal(fileBytes(request.at("file")), recipients(*session, request).keys, random);
        if (!parcel) {
            throw std::runtime_error(std::string(journal::sentence(parcel.reason())));
        }
        writeFile(request.at("out"), parcel.value());
        return {{"bytes", parcel.value().size()}};
    }

    json flood(const json& request)
    {
        const journal::FeedId own = need(session->ownFeed(session->person()));
        journal::Place place = session->ledger().next(own);
        std::vector<std::pair<std::uint16_t, keys::Bytes>> contents;
        for (const json& entry : request.at("entries")) {
            contents.emplace_back(entry.at("kind").get<std::uint16_t>(), hexOf(entry, "payload"));
        }
        std::vector<keys::Bytes> entries;
        const std::uint32_t from = place.seq;
        const auto count = request.at("count").get<std::size_t>();
        for (std::size_t i = 0; i < count; ++i) {
            const auto& [kind, payload] = contents.at(i % contents.size());
            auto entry = journal::writeRawEntry(session->program(), place, {{now, 0}, std::nullopt}, kind, payload,
                                                device().signing);
            if (!entry) {
                throw std::runtime_error(std::string(journal::sentence(entry.reason())));
            }
            place = {own, place.seq + 1, entry.value().link};
            entries.push_back(std::move(entry).value().bytes);
        }
        merge::Batch batch;
        batch.runs.push_back({own, from, {entries.begin(), entries.end()}});
        const auto volumes = parcel::writeVolumes(session->program(), batch);
        if (!volumes || volumes.value().size() != 1) {
            throw std::runtime_error("more than a volume holds");
        }
        writeFile(request.at("out"), volumes.value().front());
        return {{"bytes", volumes.value().front().size()}};
    }

    json open(const json& request)
    {
        const auto volume = parcel::open(fileBytes(request.at("file")), device().opening);
        if (!volume) {
            throw std::runtime_error(std::string(journal::sentence(volume.reason())));
        }
        writeFile(request.at("out"), volume.value());
        return {{"bytes", volume.value().size()}};
    }

    json take(const json& request)
    {
        now = request.at("now").get<std::int64_t>();
        std::vector<session::OfferedFile> offered;
        for (const json& file : request.at("files")) {
            offered.push_back({file, fileBytes(file)});
        }
        const session::IntakeReport report = need(session::takeIn(*session, std::move(offered)));
        return {{"new", report.taken}, {"receipts", report.receipts}};
    }
};

KeyForge::KeyForge(const std::string& file, const std::string& code) : m_state(std::make_unique<State>())
{
    const keys::Secret secret = need(keys::codeFromText(keys::CodeSort::Vault, code));
    auto vault = need(vault::SqliteVault::openWithCode(file, secret.view(), m_state->marks, m_state->random));
    const auto clock = [this] { return journal::Time{m_state->now, 0}; };
    m_state->session = need(session::Session::open(std::move(vault), clock, m_state->random));
}

KeyForge::~KeyForge() = default;

json KeyForge::answer(const json& request)
{
    const std::string what = request.at("do");
    if (what == "who") {
        return m_state->who();
    }
    if (what == "sign") {
        return m_state->sign(request);
    }
    if (what == "sign-again") {
        return State::signOnceMore(request);
    }
    if (what == "keep") {
        return m_state->keep(request);
    }
    if (what == "seal") {
        return m_state->seal(request);
    }
    if (what == "flood") {
        return m_state->flood(request);
    }
    if (what == "open") {
        return m_state->open(request);
    }
    if (what == "take") {
        return m_state->take(request);
    }
    throw std::runtime_error("nothing is known of " + what);
}

} // namespace peelpack::test
