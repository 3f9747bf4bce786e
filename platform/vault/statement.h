#pragma once

#include "platform/vault/database.h"
#include "sync/keys/bytes.h"

#include <QVariant>

namespace peelpack::vault {

inline QByteArray copyOf(keys::ByteView bytes)
{
    return {reinterpret_cast<const char*>(bytes.data()), static_cast<qsizetype>(bytes.size())};
}

inline keys::Bytes bytesAt(const QSqlQuery& query, int column)
{
    const QByteArray bytes = query.value(column).toByteArray();
    return {bytes.begin(), bytes.end()};
}

/// Runs one statement with the values given.
template <class... Values>
Result<QSqlQuery> runWith(const Database& database, const char* statement, const Values&... values)
{
    Result<QSqlQuery> prepared = database.prepare(statement);
    if (!prepared) {
        return prepared.error();
    }
    QSqlQuery query = std::move(prepared).value();
    (query.addBindValue(values), ...);
    if (const Result<bool> ran = Database::run(query); !ran) {
        return ran.error();
    }
    return query;
}

template <class... Values>
Result<bool> runOnce(const Database& database, const char* statement, const Values&... values)
{
    const Result<QSqlQuery> query = runWith(database, statement, values...);
    return query ? Result<bool>(true) : query.error();
}

} // namespace peelpack::vault
