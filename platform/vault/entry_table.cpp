#include "platform/vault/entry_table.h"

#include "sync/keys/hash.h"
#include "sync/keys/little_endian.h"

#include <QSqlError>
#include <QVariant>

namespace peelpack::vault {
namespace {

constexpr std::uint32_t certificateFeed = 0;
constexpr std::uint32_t introduction = 0xFFFFFFFF; ///< the seq of the row that says which feed a number stands for

keys::ByteView viewOf(const QByteArray& bytes)
{
    return {reinterpret_cast<const std::uint8_t*>(bytes.constData()), static_cast<std::size_t>(bytes.size())};
}

QByteArray lent(keys::ByteView bytes)
{
    return QByteArray::fromRawData(reinterpret_cast<const char*>(bytes.data()), static_cast<qsizetype>(bytes.size()));
}

std::string placeInWords(std::uint64_t number, std::uint32_t feed, std::uint32_t seq)
{
    std::string text = "row " + std::to_string(number);
    if (feed == certificateFeed) {
        return text + " (a certificate)";
    }
    return text + (seq == introduction ? " (which feed " + std::to_string(feed) + " is)"
                                       : " (entry " + std::to_string(seq) + " of feed " + std::to_string(feed) + ")");
}

/// Names the rows that are missing before row `number`. A damaged number may be anything, so they are named together.
void skipTo(std::uint64_t number, Chain& chain, Contents& contents)
{
    const std::uint64_t first = chain.rows + 1;
    if (number <= first) {
        return;
    }
    const std::uint64_t last = number - 1;
    contents.damage.push_back({first == last
                                   ? "row " + std::to_string(first) + " (missing)"
                                   : "rows " + std::to_string(first) + " to " + std::to_string(last) + " (missing)"});
    chain.rows = last;
}

keys::Hash hashOf(keys::ByteView sealed)
{
    return keys::hash({}, {sealed});
}

} // namespace

Result<QSqlQuery*> EntryTable::prepared(std::optional<QSqlQuery>& statement, const char* text) const
{
    if (!statement) {
        Result<QSqlQuery> query = m_database.prepare(text);
        if (!query) {
            return query.error();
        }
        statement = std::move(query).value();
    }
    return &*statement;
}

Result<QByteArray> EntryTable::onlyValue(QSqlQuery& statement)
{
    if (Result<bool> ran = Database::run(statement); !ran) {
        return ran.error();
    }
    QByteArray value = statement.next() ? statement.value(0).toByteArray() : QByteArray();
    statement.finish(); // a statement that stays open would hold on to the write-ahead log
    return value;
}

Result<Chain> EntryTable::readChain()
{
    const Result<QSqlQuery*> statement = prepared(m_readChain, "SELECT sealed FROM chain");
    if (!statement) {
        return statement.error();
    }
    const Result<QByteArray> sealed = onlyValue(*statement.value());
    if (!sealed) {
        return sealed.error();
    }
    if (const auto plain = m_sealer.open(namedPlace("chain", ""), viewOf(sealed.value()))) {
        if (const auto chain = Chain::from(*plain)) {
            return *chain;
        }
    }
    return VaultError{Fault::Damaged, "The list of the vault's rows is damaged."};
}

Result<bool> EntryTable::writeChain(const Chain& chain)
{
    const Result<QSqlQuery*> statement =
        prepared(m_writeChain, "INSERT INTO chain (one, sealed) VALUES (1, ?) ON CONFLICT (one) DO UPDATE SET sealed = "
                               "excluded.sealed");
    if (!statement) {
        return statement.error();
    }
    const keys::Bytes sealed = m_sealer.seal(namedPlace("chain", ""), chain.bytes());
    statement.value()->bindValue(0, lent(sealed));
    return Database::run(*statement.value());
}

void EntryTable::takeRow(const Row& row, Reading& reading) const
{
    State& state = reading.state;
    Contents& contents = reading.contents;
    const auto place = entryPlace(row.number, row.feed, row.seq);
    skipTo(row.number, state.chain, contents);
    state.chain.add(place, row.sealed);
    auto plain = m_sealer.open(place, row.sealed, reading.blocks);
    const auto damaged = [&] { contents.damage.push_back({placeInWords(row.number, row.feed, row.seq)}); };
    if (!plain) {
        damaged();
        return;
    }
    if (row.feed == certificateFeed) {
        contents.certificates.push_back(plain->toBytes());
        ++state.certificates;
        return;
    }
    state.lastFeed = std::max(state.lastFeed, row.feed);
    if (row.seq == introduction) {
        keys::Reader reader(*plain);
        journal::FeedId feed;
        feed.device = reader.fixed<keys::VerifyKey>();
        feed.stream = reader.fixed<keys::Id>();
        state.numbers[feed] = row.feed;
        reading.feeds[row.feed] = feed;
        return;
    }
    if (reading.found == nullptr || reading.found->first != row.feed) {
        const auto feed = reading.feeds.find(row.feed);
        reading.found = feed == reading.feeds.end() ? nullptr : &*feed;
    }
    if (reading.found == nullptr) {
        damaged();
        return;
    }
    contents.entries.push_back({reading.found->second, row.seq, std::move(*plain)});
}

Result<bool> EntryTable::read(Contents& contents)
{
    const Result<Chain> chain = readChain();
    if (!chain && chain.error().fault != Fault::Damaged) {
        return chain.error();
    }
    const std::uint64_t expected = chain ? chain.value().rows : 0;
    const std::size_t damageBefore = contents.damage.size();
    contents.entries.reserve(expected);
    Reading reading{contents};
    if (Result<bool> done = readRows(expected, reading); !done) {
        return done;
    }
    State& state = reading.state;
    skipTo(expected + 1, state.chain, contents);
    state.listHolds = chain && (chain.value() == state.chain || contents.damage.size() > damageBefore);
    if (!state.listHolds) {
        contents.damage.push_back({"the list of rows"});
    }
    if (chain) {
        state.chain = chain.value();
    }
    m_state = std::move(state);
    m_isRead = true;
    return true;
}

Result<bool> EntryTable::readRows(std::uint64_t expected, Reading& reading)
{
    Result<QSqlQuery> query = m_database.prepare("SELECT number, feed, seq, sealed FROM entry ORDER BY number");
    if (!query) {
        return query.error();
    }
    QSqlQuery statement = std::move(query).value();
    const auto onRow = [&](const Row& row) { takeRow(row, reading); };
    Result<bool> ran = Database::run(statement);
    if (!ran && ran.error().fault != Fault::Damaged) {
        return ran;
    }
    while (statement.next()) {
        const QByteArray sealed = statement.value(3).toByteArray();
        onRow({statement.value(0).toULongLong(), statement.value(1).toUInt(), statement.value(2).toUInt(),
               viewOf(sealed)});
    }
    if (!statement.lastError().isValid()) {
        return true;
    }
    // A damaged page ends the scan; what lies on others is still found by its number.
    statement.finish();
    return readRowsOneByOne(reading.state.chain.rows + 1, expected, onRow);
}

Result<bool> EntryTable::readRowsOneByOne(std::uint64_t from, std::uint64_t to,
                                          const std::function<void(const Row&)>& onRow)
{
    for (std::uint64_t number = from; number <= to; ++number) {
        Result<QSqlQuery> query = m_database.prepare("SELECT feed, seq, sealed FROM entry WHERE number = ?");
        if (!query) {
            return query.error();
        }
        QSqlQuery statement = std::move(query).value();
        statement.addBindValue(QVariant::fromValue<qulonglong>(number));
        if (statement.exec() && statement.next()) {
            const QByteArray sealed = statement.value(2).toByteArray();
            onRow({number, statement.value(0).toUInt(), statement.value(1).toUInt(), viewOf(sealed)});
        }
    }
    return true;
}

Result<std::uint32_t> EntryTable::numberOf(const journal::FeedId& feed)
{
    for (const auto* numbers : {&m_state.numbers, &m_next.newNumbers}) {
        if (const auto found = numbers->find(feed); found != numbers->end()) {
            return found->second;
        }
    }
    const std::uint32_t number = ++m_next.lastFeed;
    keys::Bytes plain(feed.device.bytes.begin(), feed.device.bytes.end());
    keys::append(plain, feed.stream.view());
    if (const Result<bool> written = writeRow(number, introduction, plain); !written) {
        return written.error();
    }
    m_next.newNumbers[feed] = number;
    return number;
}

Result<bool> EntryTable::writeRow(std::uint32_t feed, std::uint32_t seq, keys::ByteView plain)
{
    Row row{m_next.chain.rows + 1, feed, seq, {}};
    const auto place = entryPlace(row.number, feed, seq);
    const keys::Bytes sealed = m_sealer.seal(place, plain);
    const Result<QSqlQuery*> insert =
        prepared(m_insert, "INSERT INTO entry (number, feed, seq, sealed) VALUES (?, ?, ?, ?)");
    if (!insert) {
        return insert.error();
    }
    insert.value()->bindValue(0, QVariant::fromValue<qulonglong>(row.number));
    insert.value()->bindValue(1, feed);
    insert.value()->bindValue(2, seq);
    insert.value()->bindValue(3, lent(sealed));
    if (Result<bool> inserted = Database::run(*insert.value()); !inserted) {
        return inserted;
    }
    m_next.chain.add(place, sealed);
    m_written.emplace_back(row, hashOf(sealed));
    return true;
}

Result<bool> EntryTable::append(const Change& change)
{
    if (!m_isRead) {
        Contents unused;
        if (Result<bool> done = read(unused); !done) {
            return done;
        }
    }
    if (!m_state.listHolds) {
        return VaultError{Fault::Damaged,
                          "The list of the vault's rows is damaged, so nothing more is written to it: join "
                          "anew and have your history sent back."};
    }
    m_next = {static_cast<const Counts&>(m_state), {}};
    m_written.clear();
    for (const keys::Bytes& certificate : change.certificates) {
        if (Result<bool> written = writeRow(certificateFeed, m_next.certificates++, certificate); !written) {
            return written;
        }
    }
    for (const PlacedEntry& entry : change.entries) {
        const Result<std::uint32_t> feed = numberOf(entry.feed);
        if (!feed) {
            return feed.error();
        }
        if (Result<bool> written = writeRow(feed.value(), entry.seq, entry.bytes); !written) {
            return written;
        }
    }
    return m_written.empty() ? Result<bool>(true) : writeChain(m_next.chain);
}

Result<bool> EntryTable::readBack()
{
    const std::vector<std::pair<Row, keys::Hash>> written = std::move(m_written);
    m_written.clear();
    static_cast<Counts&>(m_state) = static_cast<const Counts&>(m_next);
    m_state.numbers.merge(m_next.newNumbers);
    m_next = {};
    if (written.empty()) {
        return true;
    }
    const VaultError different{Fault::Damaged, "What was saved does not read back; check the device's storage."};
    const Result<QSqlQuery*> statement = prepared(m_readRow, "SELECT sealed FROM entry WHERE number = ?");
    if (!statement) {
        return statement.error();
    }
    for (const auto& [row, hash] : written) {
        statement.value()->bindValue(0, QVariant::fromValue<qulonglong>(row.number));
        const Result<QByteArray> sealed = onlyValue(*statement.value());
        if (!sealed) {
            return sealed.error();
        }
        const keys::ByteView view = viewOf(sealed.value());
        if (hashOf(view) != hash || !m_sealer.open(entryPlace(row.number, row.feed, row.seq), view)) {
            return different;
        }
    }
    const Result<Chain> chain = readChain();
    if (!chain) {
        return chain.error();
    }
    return chain.value() == m_state.chain ? Result<bool>(true) : different;
}

bool EntryTable::forget()
{
    m_next = {};
    m_written.clear();
    for (std::optional<QSqlQuery>* statement : {&m_insert, &m_readRow, &m_writeChain, &m_readChain}) {
        statement->reset(); // after an error a new one is surer
    }
    if (!m_isRead || !m_state.listHolds) {
        return true;
    }
    const Result<Chain> chain = readChain();
    return chain && chain.value() == m_state.chain;
}

} // namespace peelpack::vault
