#include "platform/vault/database.h"
#include "platform/vault/key_table.h"
#include "platform/vault/sealer.h"
#include "platform/vault/slot.h"
#include "platform/vault/statement.h"
#include "sync/keys/code.h"
#include "tests/platform/support/forge.h"
#include "tests/platform/support/forge_parts.h"

namespace peelpack::test {
namespace {

using nlohmann::json;

struct Row {
    std::uint64_t number = 0;
    std::uint32_t feed = 0;
    std::uint32_t seq = 0;
    keys::Bytes sealed;
};

constexpr const char* updateTrigger = "entry_stays";

} // namespace

struct RowForge::State {
    keys::SystemRandom random;
    std::unique_ptr<vault::Database> database;
    std::optional<vault::Sealer> sealer;

    std::vector<Row> rows()
    {
        QSqlQuery query =
            need(vault::runWith(*database, "SELECT number, feed, seq, sealed FROM entry ORDER BY number"));
        std::vector<Row> found;
        while (query.next()) {
            found.push_back({query.value(0).toULongLong(), query.value(1).toUInt(), query.value(2).toUInt(),
                             vault::bytesAt(query, 3)});
        }
        return found;
    }

    json list()
    {
        json answer = json::array();
        for (const Row& row : rows()) {
            const auto plain = sealer->open(vault::entryPlace(row.number, row.feed, row.seq), row.sealed);
            answer.push_back({{"row", row.number},
                              {"feed", row.feed},
                              {"seq", row.seq},
                              {"plain", plain ? keys::hex(*plain) : std::string()}});
        }
        return answer;
    }

    json replace(const json& request)
    {
        const auto number = request.at("row").get<std::uint64_t>();
        const keys::Bytes plain = hexOf(request, "plain");
        QSqlQuery trigger =
            need(vault::runWith(*database, "SELECT sql FROM sqlite_schema WHERE name = ?", QString(updateTrigger)));
        trigger.next();
        const QByteArray guard = trigger.value(0).toByteArray();
        trigger.finish();
        need(database->transaction([&]() -> vault::Result<bool> {
            need(vault::runOnce(*database, "DROP TRIGGER entry_stays"));
            vault::Chain chain;
            for (const Row& row : rows()) {
                const auto place = vault::entryPlace(row.number, row.feed, row.seq);
                const keys::Bytes sealed = row.number == number ? sealer->seal(place, plain) : row.sealed;
                if (row.number == number) {
                    need(vault::runOnce(*database, "UPDATE entry SET sealed = ? WHERE number = ?",
                                        vault::copyOf(sealed), QVariant::fromValue<qulonglong>(number)));
                }
                chain.add(place, sealed);
            }
            const keys::Bytes sealed = sealer->seal(vault::namedPlace("chain", ""), chain.bytes());
            need(vault::runOnce(*database, "UPDATE chain SET sealed = ?", vault::copyOf(sealed)));
            need(vault::runOnce(*database, guard.constData()));
            return true;
        }));
        return {{"replaced", number}};
    }
};

RowForge::RowForge(const std::string& file, const std::string& code) : m_state(std::make_unique<State>())
{
    const keys::Secret secret = need(keys::codeFromText(keys::CodeSort::Vault, code));
    m_state->database = need(vault::Database::open(file));
    const keys::Id id = need(vault::vaultId(*m_state->database));
    keys::Secret dataKey =
        need(vault::unwrapWithCode(need(vault::slotFor(*m_state->database, true)), id, secret.view()));
    m_state->sealer.emplace(id, std::move(dataKey), m_state->random);
}

RowForge::~RowForge() = default;

json RowForge::answer(const json& request)
{
    const std::string what = request.at("do");
    if (what == "rows") {
        return m_state->list();
    }
    if (what == "replace") {
        return m_state->replace(request);
    }
    throw std::runtime_error("nothing is known of " + what);
}

} // namespace peelpack::test
