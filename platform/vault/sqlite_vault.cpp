#include "platform/vault/sqlite_vault.h"

#include "platform/vault/folder_sync.h"
#include "platform/vault/key_table.h"
#include "platform/vault/statement.h"
#include "sync/keys/code.h"
#include "sync/keys/hash.h"
#include "sync/keys/seal.h"

#include <QFile>
#include <QSqlError>
#include <QVariant>

#include <cstdio>

namespace peelpack::vault {
namespace {

const VaultError noMark{Fault::MarkMissing, "This vault is a copy, or was moved here from another device: it can be "
                                            "read, and cannot sign until it is set up anew."};

std::string waitSentence(std::int64_t seconds)
{
    return seconds < 120 ? "Too many wrong tries: wait " + std::to_string(seconds) + " seconds."
                         : "Too many wrong tries: wait " + std::to_string((seconds + 59) / 60) + " minutes.";
}

keys::Secret deviceWrap(const keys::Id& vault, const keys::Secret& mark, const keys::Secret& dataKey)
{
    return keys::keyedHash("peelpack.devkey1", {vault.view(), mark.view()}, dataKey.view());
}

/// The data key that this passphrase or PIN opens. A try is written down before it is known to be wrong.
Result<keys::Secret> dataKeyFor(Database& rows, const std::string& file, keys::ByteView secret, MarkStore& marks,
                                std::int64_t now)
{
    const Result<keys::Id> id = vaultId(rows);
    const Result<WrongTries> tries = wrongTries(rows);
    const Result<Slot> slot = slotFor(rows, false);
    if (const VaultError* error = base::firstError<VaultError>(id, tries, slot)) {
        return *error;
    }
    if (tries.value().disabled()) {
        return VaultError{Fault::Disabled, "After 10 wrong tries only the vault code opens this vault."};
    }
    if (const std::int64_t wait = tries.value().waitLeft(now); wait > 0) {
        if (now < tries.value().lastAt) { // the clock was set back: the wait starts again from here
            if (const Result<bool> kept = writeTries(rows, {tries.value().count, now}); !kept) {
                return kept.error();
            }
        }
        return VaultError{Fault::MustWait, waitSentence(wait)};
    }
    Result<std::optional<keys::Secret>> mark = marks.find(id.value(), file);
    if (!mark) {
        return mark.error();
    }
    // Written down first, so that ending the process does not give the try back.
    if (const Result<bool> counted = writeTries(rows, {tries.value().count + 1, now}); !counted) {
        return counted.error();
    }
    const keys::Secret none;
    Result<keys::Secret> dataKey =
        unwrapWithSecret(slot.value(), id.value(), secret, mark.value() ? *mark.value() : none);
    const bool wasWrong = !dataKey && dataKey.error().fault == Fault::WrongSecret;
    if (!wasWrong) {
        if (const Result<bool> reset = writeTries(rows, dataKey ? WrongTries{} : tries.value()); !reset) {
            return reset.error();
        }
    }
    return dataKey;
}

} // namespace

SqliteVault::SqliteVault(std::string file, std::unique_ptr<Database> database, Sealer sealer,
                         std::optional<keys::Secret> mark, MarkStore& marks, keys::RandomSource& random)
    : m_file(std::move(file)), m_database(std::move(database)), m_sealer(std::move(sealer)), m_mark(std::move(mark)),
      m_marks(marks), m_random(random), m_entries(*m_database, m_sealer), m_side(*m_database, m_sealer)
{
}

Result<MadeVault> SqliteVault::make(const std::string& file, SecretKind kind, keys::ByteView secret, MarkStore& marks,
                                    keys::RandomSource& random)
{
    const std::string_view text(reinterpret_cast<const char*>(secret.data()), secret.size());
    if (const Result<bool> strong = checkNewSecret(kind, text); !strong) {
        return strong.error();
    }
    for (const char* end : {"", "-wal", "-journal"}) {
        if (QFile::exists(QString::fromStdString(file + end))) {
            return VaultError{Fault::Exists, "There is a file " + file + end + " already."};
        }
    }
    const std::string unfinished = file + ".new"; // left behind by a setup that was interrupted
    for (const char* end : {"", "-wal", "-journal"}) {
        QFile::remove(QString::fromStdString(unfinished + end));
    }
    Result<std::unique_ptr<Database>> database = Database::make(unfinished);
    if (!database) {
        return database.error();
    }
    const keys::Id id = random.id();
    Result<keys::Secret> mark = marks.make(id, unfinished, random);
    if (!mark) {
        return mark.error();
    }
    keys::Secret dataKey = random.secret(keys::aeadKeyBytes);
    keys::Secret code = random.secret(keys::codeSecretBytes);
    const Slot codeSlot = wrapUnderCode(id, code.view(), dataKey, random);
    const Result<Slot> secretSlot = wrapUnderSecret(kind, id, secret, mark.value(), dataKey, random);
    if (!secretSlot) {
        return secretSlot.error();
    }
    std::unique_ptr<SqliteVault> vault(new SqliteVault(unfinished, std::move(database).value(),
                                                       Sealer(id, std::move(dataKey), random), std::move(mark).value(),
                                                       marks, random));
    Database& rows = *vault->m_database;
    const Result<bool> made = rows.transaction([&]() -> Result<bool> {
        for (const Result<bool>& step :
             {runOnce(rows, "INSERT INTO vault (one, id) VALUES (1, ?)", copyOf(id.view())),
              runOnce(rows, "INSERT INTO wrong_try (one, count, last_at) VALUES (1, 0, 0)"), writeSlot(rows, codeSlot),
              writeSlot(rows, secretSlot.value()), vault->m_entries.writeChain({}),
              vault->writeDevice(keys::newDeviceSeeds(random))}) {
            if (!step) {
                return step.error();
            }
        }
        return true;
    });
    if (!made) {
        return made.error();
    }
    vault.reset(); // closed, so that everything is in the one file before it gets its name
    if (QFile::exists(QString::fromStdString(unfinished + "-wal"))) {
        return VaultError{Fault::CannotWrite,
                          "The new vault could not be written in full; check the space that is left, "
                          "and try again."};
    }
    if (std::rename(unfinished.c_str(), file.c_str()) != 0) {
        return VaultError{Fault::CannotWrite, "Cannot make the file " + file + "."};
    }
    syncFolderOf(file);
    Result<std::unique_ptr<SqliteVault>> opened = openWithCode(file, code.view(), marks, random);
    if (!opened) {
        return opened.error();
    }
    return MadeVault{std::move(opened).value(), std::move(code)};
}

Result<std::unique_ptr<SqliteVault>> SqliteVault::open(const std::string& file, keys::ByteView secret, MarkStore& marks,
                                                       keys::RandomSource& random, std::int64_t now)
{
    Result<std::unique_ptr<Database>> database = Database::open(file);
    if (!database) {
        return database.error();
    }
    const Result<keys::Id> id = vaultId(*database.value());
    if (!id) {
        return id.error();
    }
    Result<keys::Secret> dataKey = dataKeyFor(*database.value(), file, secret, marks, now);
    if (!dataKey) {
        return dataKey.error();
    }
    return opened(file, std::move(database).value(), id.value(), std::move(dataKey).value(), marks, random);
}

Result<std::unique_ptr<SqliteVault>> SqliteVault::openWithCode(const std::string& file, keys::ByteView code,
                                                               MarkStore& marks, keys::RandomSource& random)
{
    Result<std::unique_ptr<Database>> database = Database::open(file);
    if (!database) {
        return database.error();
    }
    const Result<keys::Id> id = vaultId(*database.value());
    const Result<Slot> slot = slotFor(*database.value(), true);
    if (!id || !slot) {
        return id ? slot.error() : id.error();
    }
    Result<keys::Secret> dataKey = unwrapWithCode(slot.value(), id.value(), code);
    if (!dataKey) {
        return dataKey.error();
    }
    return opened(file, std::move(database).value(), id.value(), std::move(dataKey).value(), marks, random);
}

Result<std::unique_ptr<SqliteVault>> SqliteVault::opened(const std::string& file, std::unique_ptr<Database> database,
                                                         const keys::Id& vault, keys::Secret dataKey, MarkStore& marks,
                                                         keys::RandomSource& random)
{
    Result<std::optional<keys::Secret>> found = marks.find(vault, file);
    std::optional<keys::Secret> mark = found ? std::move(found).value() : std::nullopt;
    return std::unique_ptr<SqliteVault>(new SqliteVault(
        file, std::move(database), Sealer(vault, std::move(dataKey), random), std::move(mark), marks, random));
}

Result<Contents> SqliteVault::contents()
{
    Contents contents;
    if (const Result<bool> entries = m_entries.read(contents); !entries) {
        return entries.error();
    }
    if (const Result<bool> side = m_side.read(contents); !side) {
        return side.error();
    }
    return contents;
}

Result<bool> SqliteVault::save(const Change& change)
{
    if (change.empty()) {
        return true;
    }
    Result<bool> saved = m_database->transaction([&]() -> Result<bool> {
        if (Result<bool> appended = m_entries.append(change); !appended) {
            return appended;
        }
        return m_side.write(change);
    });
    if (!saved) {
        if (!m_entries.forget()) {
            m_database->distrust();
        }
        return saved;
    }
    Result<bool> there = m_entries.readBack();
    if (there) {
        there = m_side.readBack(change);
    }
    if (!there) {
        m_database->distrust(); // it may be there: what is saved again could be there twice
    }
    return there;
}

Result<bool> SqliteVault::writeDevice(const keys::DeviceSeeds& seeds)
{
    keys::Secret both(keys::SigningKey::seedBytes + keys::OpeningKey::seedBytes);
    std::copy(seeds.signing.view().begin(), seeds.signing.view().end(), both.writable().begin());
    std::copy(seeds.opening.view().begin(), seeds.opening.view().end(),
              both.writable().begin() + keys::SigningKey::seedBytes);
    keys::Bytes wrapped(keys::aeadNonceBytes);
    m_random.fill(wrapped);
    const keys::Secret key = deviceWrap(id(), *m_mark, m_sealer.dataKey());
    keys::append(wrapped, keys::aeadSeal(key.view(), wrapped, id().view(), both.view()).value());
    m_device.reset();
    return m_side.writeDevice(wrapped);
}

Result<const keys::DeviceKey*> SqliteVault::device()
{
    if (m_device) {
        return &*m_device;
    }
    if (!m_mark) {
        return noMark;
    }
    const Result<std::optional<keys::Bytes>> kept = m_side.device();
    if (!kept) {
        return kept.error();
    }
    const std::optional<keys::Bytes>& wrapped = kept.value();
    if (!wrapped || wrapped->size() < keys::aeadNonceBytes) {
        return VaultError{Fault::Damaged, "The keys of this device are damaged: join anew, and your history is kept."};
    }
    const keys::ByteView view(*wrapped);
    const keys::Secret key = deviceWrap(id(), *m_mark, m_sealer.dataKey());
    const auto both =
        keys::aeadOpen(key.view(), view.first(keys::aeadNonceBytes), id().view(), view.subspan(keys::aeadNonceBytes));
    if (!both) {
        return noMark;
    }
    const keys::ByteView seeds = both.value().view();
    const keys::DeviceSeeds parts{keys::Secret(seeds.first(keys::SigningKey::seedBytes)),
                                  keys::Secret(seeds.subspan(keys::SigningKey::seedBytes))};
    auto made = keys::deviceKey(parts);
    if (!made) {
        return VaultError{Fault::Damaged, made.error().sentence};
    }
    m_device.emplace(std::move(made).value());
    return &*m_device;
}

Result<bool> SqliteVault::makeMissingMark()
{
    if (m_mark) {
        return true;
    }
    Result<keys::Secret> made = m_marks.make(id(), m_file, m_random);
    if (!made) {
        return made.error();
    }
    m_mark = std::move(made).value();
    return true;
}

Result<bool> SqliteVault::renewDevice()
{
    if (Result<bool> there = makeMissingMark(); !there) {
        return there;
    }
    return m_database->transaction([&] { return writeDevice(keys::newDeviceSeeds(m_random)); });
}

Result<bool> SqliteVault::check(keys::ByteView secret, std::int64_t now)
{
    const Result<keys::Secret> dataKey = dataKeyFor(*m_database, m_file, secret, m_marks, now);
    if (!dataKey) {
        return dataKey.error();
    }
    return true;
}

Result<SecretKind> SqliteVault::secretKind() const
{
    const Result<Slot> slot = slotFor(*m_database, false);
    if (!slot) {
        return slot.error();
    }
    return slot.value().kind == SlotKind::Pin ? SecretKind::Pin : SecretKind::Passphrase;
}

Result<bool> SqliteVault::changeSecret(SecretKind kind, keys::ByteView secret)
{
    const std::string_view text(reinterpret_cast<const char*>(secret.data()), secret.size());
    if (Result<bool> strong = checkNewSecret(kind, text); !strong) {
        return strong;
    }
    if (Result<bool> there = makeMissingMark(); !there) {
        return there;
    }
    const Result<Slot> slot = wrapUnderSecret(kind, id(), secret, *m_mark, m_sealer.dataKey(), m_random);
    if (!slot) {
        return slot.error();
    }
    return m_database->transaction([&]() -> Result<bool> {
        if (Result<bool> gone =
                runOnce(*m_database, "DELETE FROM slot WHERE kind <> ?", static_cast<int>(SlotKind::VaultCode));
            !gone) {
            return gone;
        }
        if (Result<bool> written = writeSlot(*m_database, slot.value()); !written) {
            return written;
        }
        return runOnce(*m_database, "UPDATE wrong_try SET count = 0, last_at = 0");
    });
}

Result<keys::Secret> SqliteVault::changeCode()
{
    keys::Secret code = m_random.secret(keys::codeSecretBytes);
    const Slot slot = wrapUnderCode(id(), code.view(), m_sealer.dataKey(), m_random);
    const Result<bool> done = m_database->transaction([&]() -> Result<bool> {
        if (Result<bool> gone =
                runOnce(*m_database, "DELETE FROM slot WHERE kind = ?", static_cast<int>(SlotKind::VaultCode));
            !gone) {
            return gone;
        }
        return writeSlot(*m_database, slot);
    });
    if (!done) {
        return done.error();
    }
    return code;
}

} // namespace peelpack::vault
