#include "platform/vault/key_table.h"

#include "platform/vault/statement.h"

namespace peelpack::vault {
namespace {

const VaultError damagedStart{Fault::Damaged, "The start of the vault is damaged; use a copy of the file, or join anew "
                                              "and have your history sent back."};

Result<std::vector<Slot>> slotsIn(const Database& database)
{
    Result<QSqlQuery> query =
        runWith(database, "SELECT kind, salt, mark_check, commitment, sealed, checksum FROM slot ORDER BY kind");
    if (!query) {
        return query.error();
    }
    std::vector<Slot> found;
    QSqlQuery row = std::move(query).value();
    while (row.next()) {
        Slot slot;
        slot.kind = static_cast<SlotKind>(row.value(0).toInt());
        slot.salt = bytesAt(row, 1);
        slot.markCheck = keys::Id::from(bytesAt(row, 2)).value_or(keys::Id{});
        slot.commitment = keys::Hash::from(bytesAt(row, 3)).value_or(keys::Hash{});
        slot.sealed = bytesAt(row, 4);
        slot.checksum = keys::Id::from(bytesAt(row, 5)).value_or(keys::Id{});
        found.push_back(std::move(slot));
    }
    return found;
}

} // namespace

Result<bool> writeSlot(const Database& database, const Slot& slot)
{
    return runOnce(database,
                   "INSERT INTO slot (kind, salt, mark_check, commitment, sealed, checksum) VALUES (?, ?, ?, ?, ?, ?)",
                   static_cast<int>(slot.kind), copyOf(slot.salt), copyOf(slot.markCheck.view()),
                   copyOf(slot.commitment.view()), copyOf(slot.sealed), copyOf(slot.checksum.view()));
}

Result<keys::Id> vaultId(const Database& database)
{
    Result<QSqlQuery> query = runWith(database, "SELECT id FROM vault");
    if (!query) {
        return query.error();
    }
    QSqlQuery row = std::move(query).value();
    const auto id = row.next() ? keys::Id::from(bytesAt(row, 0)) : std::nullopt;
    return id ? Result<keys::Id>(*id) : damagedStart;
}

Result<Slot> slotFor(const Database& database, bool code)
{
    const Result<std::vector<Slot>> all = slotsIn(database);
    if (!all) {
        return all.error();
    }
    for (const Slot& slot : all.value()) {
        if ((slot.kind == SlotKind::VaultCode) == code) {
            return slot;
        }
    }
    return damagedStart;
}

Result<WrongTries> wrongTries(const Database& database)
{
    Result<QSqlQuery> query = runWith(database, "SELECT count, last_at FROM wrong_try");
    if (!query) {
        return query.error();
    }
    QSqlQuery row = std::move(query).value();
    return row.next() ? Result<WrongTries>(WrongTries{row.value(0).toUInt(), row.value(1).toLongLong()}) : damagedStart;
}

Result<bool> writeTries(Database& database, const WrongTries& tries)
{
    return database.transaction([&] {
        return runOnce(database, "UPDATE wrong_try SET count = ?, last_at = ?", tries.count,
                       QVariant::fromValue<qlonglong>(tries.lastAt));
    });
}

} // namespace peelpack::vault
