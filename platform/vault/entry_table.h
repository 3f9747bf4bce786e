#pragma once

#include "platform/vault/database.h"
#include "platform/vault/sealer.h"
#include "platform/vault/vault.h"

namespace peelpack::vault {

/// The rows of entries and certificates in a vault's file, and the chain over them. Rows are only ever added.
class EntryTable {
public:
    EntryTable(Database& database, const Sealer& sealer) : m_database(database), m_sealer(sealer) {}

    /// Everything that opens goes to `contents`, everything else to its `damage`. An error: nothing can be read at all.
    Result<bool> read(Contents& contents);
    /// Within a transaction. Reads the table first if nobody has.
    Result<bool> append(const Change& change);
    /// After the commit: reads from the file what append() wrote and opens it. The chain is the new one from here on.
    Result<bool> readBack();
    /// The transaction was not made: everything is as it was before append(). False when the file says otherwise.
    [[nodiscard]] bool forget();
    /// The chain of no rows, for a new vault.
    Result<bool> writeChain(const Chain& chain);

private:
    struct Row {
        std::uint64_t number = 0;
        std::uint32_t feed = 0;
        std::uint32_t seq = 0;
        keys::ByteView sealed; ///< lent
    };
    /// What every save changes.
    struct Counts {
        Chain chain;
        std::uint32_t lastFeed = 0;
        std::uint32_t certificates = 0;
    };
    struct State : Counts {
        std::map<journal::FeedId, std::uint32_t> numbers;
        bool listHolds = true; ///< false: writing on would cover up what is missing
    };
    /// As it will be once the transaction is made.
    struct Next : Counts {
        std::map<journal::FeedId, std::uint32_t> newNumbers;
    };

    /// What reading fills.
    struct Reading {
        Contents& contents;
        State state{};
        std::map<std::uint32_t, journal::FeedId> feeds{};
        const std::pair<const std::uint32_t, journal::FeedId>* found = nullptr; ///< of the row before
        keys::SharedBlocks blocks{};
    };

    Result<QSqlQuery*> prepared(std::optional<QSqlQuery>& statement, const char* text) const;
    /// The only column of the only row that the statement finds; empty when it finds none.
    static Result<QByteArray> onlyValue(QSqlQuery& statement);
    Result<Chain> readChain();
    Result<bool> readRows(std::uint64_t expected, Reading& reading);
    void takeRow(const Row& row, Reading& reading) const;
    Result<bool> readRowsOneByOne(std::uint64_t from, std::uint64_t to, const std::function<void(const Row&)>& onRow);
    Result<bool> writeRow(std::uint32_t feed, std::uint32_t seq, keys::ByteView plain);
    Result<std::uint32_t> numberOf(const journal::FeedId& feed);

    Database& m_database;
    const Sealer& m_sealer;
    State m_state;
    bool m_isRead = false;
    Next m_next;
    std::vector<std::pair<Row, keys::Hash>> m_written; ///< without its sealed bytes, and their hash
    // Prepared when they are first needed, and kept.
    std::optional<QSqlQuery> m_insert;
    std::optional<QSqlQuery> m_readRow;
    std::optional<QSqlQuery> m_writeChain;
    std::optional<QSqlQuery> m_readChain;
};

} // namespace peelpack::vault
