#include "platform/vault/side_tables.h"

#include "platform/vault/statement.h"

#include <QSqlError>

namespace peelpack::vault {

Result<bool> SideTables::readNotes(Contents& contents) const
{
    Result<QSqlQuery> query = runWith(m_database, "SELECT name, sealed FROM note ORDER BY name");
    if (!query) {
        return query.error();
    }
    QSqlQuery row = std::move(query).value();
    while (row.next()) {
        const std::string name = row.value(0).toString().toStdString();
        auto plain = m_sealer.open(namedPlace("note", name), bytesAt(row, 1));
        if (!plain) {
            contents.damage.push_back({"a setting of this device"});
        } else if (name != deviceNote) {
            contents.notes.emplace(name, std::move(*plain));
        }
    }
    if (row.lastError().isValid()) {
        contents.damage.push_back({"the settings of this device"});
    }
    return true;
}

Result<bool> SideTables::readHeld(Contents& contents) const
{
    Result<QSqlQuery> query = runWith(m_database, "SELECT number, sealed FROM held ORDER BY number");
    if (!query) {
        return query.error();
    }
    QSqlQuery row = std::move(query).value();
    while (row.next()) {
        const std::uint64_t number = row.value(0).toULongLong();
        auto plain = m_sealer.open(namedPlace("held", std::to_string(number)), bytesAt(row, 1));
        if (plain) {
            contents.held.push_back({number, std::move(*plain)});
        } else {
            contents.damage.push_back({"a parcel that waits"});
        }
    }
    if (row.lastError().isValid()) {
        contents.damage.push_back({"the parcels that wait"});
    }
    return true;
}

Result<bool> SideTables::writeNotes(const Change& change) const
{
    for (const auto& [name, value] : change.notes) {
        const QString key = QString::fromStdString(name);
        const Result<bool> written =
            value ? runOnce(m_database,
                            "INSERT INTO note (name, sealed) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET "
                            "sealed = excluded.sealed",
                            key, copyOf(m_sealer.seal(namedPlace("note", name), *value)))
                  : runOnce(m_database, "DELETE FROM note WHERE name = ?", key);
        if (!written) {
            return written;
        }
    }
    return true;
}

Result<bool> SideTables::writeHeld(const Change& change) const
{
    for (const std::uint64_t number : change.release) {
        if (const Result<bool> gone =
                runOnce(m_database, "DELETE FROM held WHERE number = ?", QVariant::fromValue<qulonglong>(number));
            !gone) {
            return gone;
        }
    }
    if (change.hold.empty()) {
        return true;
    }
    Result<QSqlQuery> query = runWith(m_database, "SELECT number, length(sealed) FROM held ORDER BY number");
    if (!query) {
        return query.error();
    }
    std::vector<std::pair<std::uint64_t, std::size_t>> held;
    for (QSqlQuery row = std::move(query).value(); row.next();) {
        held.emplace_back(row.value(0).toULongLong(), row.value(1).toULongLong());
    }
    std::uint64_t next = held.empty() ? 1 : held.back().first + 1;
    for (const keys::Bytes& volume : change.hold) {
        const keys::Bytes sealed = m_sealer.seal(namedPlace("held", std::to_string(next)), volume);
        if (const Result<bool> kept = runOnce(m_database, "INSERT INTO held (number, sealed) VALUES (?, ?)",
                                              QVariant::fromValue<qulonglong>(next), copyOf(sealed));
            !kept) {
            return kept;
        }
        held.emplace_back(next++, sealed.size());
    }
    std::size_t bytes = 0;
    for (const auto& [number, size] : held) {
        bytes += size;
    }
    for (std::size_t i = 0; i < held.size() && (held.size() - i > mostHeld || bytes > mostHeldBytes); ++i) {
        if (const Result<bool> gone = runOnce(m_database, "DELETE FROM held WHERE number = ?",
                                              QVariant::fromValue<qulonglong>(held[i].first));
            !gone) {
            return gone;
        }
        bytes -= held[i].second;
    }
    return true;
}

Result<std::optional<keys::Bytes>> SideTables::note(const std::string& name) const
{
    Result<QSqlQuery> query =
        runWith(m_database, "SELECT sealed FROM note WHERE name = ?", QString::fromStdString(name));
    if (!query) {
        return query.error();
    }
    QSqlQuery row = std::move(query).value();
    return row.next() ? m_sealer.open(namedPlace("note", name), bytesAt(row, 0)) : std::optional<keys::Bytes>();
}

} // namespace peelpack::vault
