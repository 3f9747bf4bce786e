#include "platform/vault/side_tables.h"

#include "platform/vault/statement.h"
#include "sync/keys/hash.h"
#include "sync/keys/little_endian.h"

#include <QSqlError>

namespace peelpack::vault {
namespace {

// Keys of the table of notes: those that a caller names begin with a period, the vault's own do not.
constexpr const char* deviceKey = "device";
constexpr const char* listKey = "list";
constexpr const char* allNotes = "SELECT name, sealed FROM note ORDER BY name";

bool isDamage(const VaultError& error)
{
    return error.fault == Fault::Damaged;
}

} // namespace

Result<bool> SideTables::read(Contents& contents) const
{
    const std::size_t damageBefore = contents.damage.size();
    Result<bool> notes = readNotes(contents);
    if (!notes && !isDamage(notes.error())) {
        return notes;
    }
    if (!notes) {
        contents.damage.push_back({"the settings of this device"});
    }
    Result<bool> held = readHeld(contents);
    if (!held && !isDamage(held.error())) {
        return held;
    }
    if (!held) {
        contents.damage.push_back({"the parcels that wait"});
    }
    if (contents.damage.size() > damageBefore) {
        return true;
    }
    const Result<std::optional<keys::Bytes>> list = row(listKey);
    const Result<keys::Bytes> found = digest();
    if (!list || !found || list.value() != found.value()) {
        contents.damage.push_back({"the list of settings and of parcels that wait"});
    }
    return true;
}

Result<bool> SideTables::readNotes(Contents& contents) const
{
    Result<QSqlQuery> query = runWith(m_database, allNotes);
    if (!query) {
        return query.error();
    }
    QSqlQuery row = std::move(query).value();
    while (row.next()) {
        const std::string key = row.value(0).toString().toStdString();
        auto plain = m_sealer.open(namedPlace("note", key), bytesAt(row, 1));
        if (!plain) {
            contents.damage.push_back({"a setting of this device"});
        } else if (key.starts_with('.')) {
            contents.notes.emplace(key.substr(1), std::move(*plain));
        }
    }
    return row.lastError().isValid() ? errorOf(row.lastError()) : Result<bool>(true);
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
    return row.lastError().isValid() ? errorOf(row.lastError()) : Result<bool>(true);
}

Result<keys::Bytes> SideTables::digest() const
{
    keys::Bytes all;
    Result<QSqlQuery> notes = runWith(m_database, allNotes);
    if (!notes) {
        return notes.error();
    }
    QSqlQuery note = std::move(notes).value();
    while (note.next()) {
        const std::string key = note.value(0).toString().toStdString();
        const keys::Bytes sealed = bytesAt(note, 1);
        if (key != listKey) {
            keys::append(all, keys::littleEndian(static_cast<std::uint64_t>(key.size())));
            keys::append(all, keys::bytesOf(key));
            keys::append(all, keys::hash({}, {sealed}).view());
        }
    }
    Result<QSqlQuery> waiting = runWith(m_database, "SELECT number, length(sealed) FROM held ORDER BY number");
    if (!waiting) {
        return waiting.error();
    }
    QSqlQuery held = std::move(waiting).value();
    keys::append(all, keys::littleEndian(std::uint64_t{0}));
    while (held.next()) {
        keys::append(all, keys::littleEndian(static_cast<std::uint64_t>(held.value(0).toULongLong())));
        keys::append(all, keys::littleEndian(static_cast<std::uint64_t>(held.value(1).toULongLong())));
    }
    for (const QSqlQuery* query : {&note, &held}) {
        if (query->lastError().isValid()) {
            return errorOf(query->lastError());
        }
    }
    const keys::Hash hash = keys::hash("peelpack.sidels1", {all});
    return keys::Bytes(hash.bytes.begin(), hash.bytes.end());
}

Result<bool> SideTables::writeList() const
{
    const Result<keys::Bytes> now = digest();
    return now ? writeRow(listKey, now.value()) : now.error();
}

Result<bool> SideTables::writeRow(const std::string& key, keys::ByteView plain) const
{
    return runOnce(m_database,
                   "INSERT INTO note (name, sealed) VALUES (?, ?) ON CONFLICT (name) DO UPDATE SET "
                   "sealed = excluded.sealed",
                   QString::fromStdString(key), copyOf(m_sealer.seal(namedPlace("note", key), plain)));
}

Result<bool> SideTables::write(const Change& change) const
{
    if (change.notes.empty() && change.hold.empty() && change.release.empty()) {
        return true;
    }
    if (Result<bool> noted = writeNotes(change); !noted) {
        return noted;
    }
    if (Result<bool> held = writeHeld(change); !held) {
        return held;
    }
    return writeList();
}

Result<bool> SideTables::readBack(const Change& change) const
{
    const VaultError different{Fault::Damaged, "What was saved does not read back; check the device's storage."};
    for (const auto& [name, value] : change.notes) {
        const Result<std::optional<keys::Bytes>> found = row("." + name);
        if (!found) {
            return found.error();
        }
        if (found.value() != value) {
            return different;
        }
    }
    if (change.hold.empty()) {
        return true;
    }
    Result<QSqlQuery> query = runWith(m_database, "SELECT number, sealed FROM held ORDER BY number DESC LIMIT ?",
                                      QVariant::fromValue<qulonglong>(change.hold.size()));
    if (!query) {
        return query.error();
    }
    QSqlQuery held = std::move(query).value();
    // Of very many the first are not kept.
    for (auto volume = change.hold.rbegin(); volume != change.hold.rend() && held.next(); ++volume) {
        const std::string number = std::to_string(held.value(0).toULongLong());
        if (m_sealer.open(namedPlace("held", number), bytesAt(held, 1)) != *volume) {
            return different;
        }
    }
    return held.lastError().isValid() ? errorOf(held.lastError()) : Result<bool>(true);
}

Result<bool> SideTables::writeDevice(keys::ByteView wrapped) const
{
    const Result<bool> written = writeRow(deviceKey, wrapped);
    return written ? writeList() : written;
}

Result<bool> SideTables::writeNotes(const Change& change) const
{
    for (const auto& [name, value] : change.notes) {
        const std::string key = "." + name;
        Result<bool> written =
            value ? writeRow(key, *value)
                  : runOnce(m_database, "DELETE FROM note WHERE name = ?", QString::fromStdString(key));
        if (!written) {
            return written;
        }
    }
    return true;
}

Result<bool> SideTables::writeHeld(const Change& change) const
{
    for (const std::uint64_t number : change.release) {
        if (Result<bool> gone =
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
        if (Result<bool> kept = runOnce(m_database, "INSERT INTO held (number, sealed) VALUES (?, ?)",
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
        if (Result<bool> gone = runOnce(m_database, "DELETE FROM held WHERE number = ?",
                                        QVariant::fromValue<qulonglong>(held[i].first));
            !gone) {
            return gone;
        }
        bytes -= held[i].second;
    }
    return true;
}

Result<std::optional<keys::Bytes>> SideTables::device() const
{
    return row(deviceKey);
}

Result<std::optional<keys::Bytes>> SideTables::row(const std::string& key) const
{
    Result<QSqlQuery> query =
        runWith(m_database, "SELECT sealed FROM note WHERE name = ?", QString::fromStdString(key));
    if (!query) {
        return query.error();
    }
    QSqlQuery found = std::move(query).value();
    return found.next() ? m_sealer.open(namedPlace("note", key), bytesAt(found, 0)) : std::optional<keys::Bytes>();
}

} // namespace peelpack::vault
