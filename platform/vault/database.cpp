#include "platform/vault/database.h"

#include "platform/vault/schema.h"

#include <QFile>
#include <QSqlError>
#include <QVariant>

#include <atomic>
#include <fcntl.h>
#include <map>
#include <unistd.h>

namespace peelpack::vault {
namespace {

// Result codes of SQLite that say more than "it failed" (sqlite.org, rescode).
enum SqliteCode {
    Busy = 5,
    Locked = 6,
    ReadOnly = 8,
    IoError = 10,
    Corrupt = 11,
    Full = 13,
    CannotOpen = 14,
    NotADb = 26
};

QString nextConnection()
{
    static std::atomic<int> number = 0;
    return QStringLiteral("peelpack-vault-%1").arg(++number);
}

const VaultError notAVault{Fault::NotAVault, "This file is not a Peelpack vault."};
const VaultError damagedTables{Fault::Damaged,
                               "The vault's tables are damaged; use a copy of the file, or join anew and "
                               "have your history sent back."};

} // namespace

VaultError errorOf(const QSqlError& error)
{
    switch (error.nativeErrorCode().toInt() & 0xFF) {
    case Busy:
    case Locked:
        return {Fault::InUse, "Another Peelpack has this vault open; close it first."};
    case Full:
        return {Fault::CannotWrite, "There is no space left; nothing was saved. Free some space and try again."};
    case ReadOnly:
        return {Fault::CannotWrite, "The vault cannot be written: its file or folder is read-only."};
    case NotADb:
        return notAVault;
    case Corrupt:
        return damagedTables;
    case CannotOpen:
        return {Fault::CannotRead, "The vault cannot be opened; check that you may read and write its folder."};
    case IoError:
        return {Fault::CannotWrite, "The vault's storage failed; what was not said to be saved was not saved."};
    default:
        return {Fault::CannotRead, "The vault cannot be used: " + error.databaseText().toStdString() + "."};
    }
}

Result<std::unique_ptr<Database>> Database::open(const std::string& file)
{
    if (!QFile::exists(QString::fromStdString(file))) {
        return VaultError{Fault::NotThere, "There is no vault in " + file + "."};
    }
    std::unique_ptr<Database> database(new Database(nextConnection()));
    if (const Result<bool> connected = database->connect(file); !connected) {
        return connected.error();
    }
    // Before anything is set that would write: the file may be somebody else's.
    const Result<int> id = database->pragma("application_id");
    const Result<int> version = database->pragma("user_version");
    if (!id || !version) {
        return id ? version.error() : id.error();
    }
    if (id.value() != applicationId || version.value() < 1) {
        return notAVault;
    }
    if (version.value() > newestSchema()) {
        return VaultError{Fault::Newer, "This vault was made by a newer Peelpack; use that one. Nothing was changed."};
    }
    if (const Result<bool> locked = database->lock(); !locked) {
        return locked.error();
    }
    if (const Result<bool> current = database->bringUpToDate(version.value()); !current) {
        return current.error();
    }
    if (const Result<bool> same = database->compareTables(); !same) {
        return same.error();
    }
    return database;
}

Result<std::unique_ptr<Database>> Database::make(const std::string& file)
{
    const int created = ::open(file.c_str(), O_CREAT | O_EXCL | O_RDWR | O_CLOEXEC, S_IRUSR | S_IWUSR);
    if (created < 0) {
        return errno == EEXIST ? VaultError{Fault::Exists, "There is a file " + file + " already."}
                               : VaultError{Fault::CannotWrite, "Cannot make the file " + file + "."};
    }
    ::close(created);
    std::unique_ptr<Database> database(new Database(nextConnection()));
    Result<bool> made = database->connect(file);
    if (made) {
        made = database->lock();
    }
    if (made) {
        made = database->execute("PRAGMA application_id = " + std::to_string(applicationId));
    }
    if (made) {
        made = database->bringUpToDate(0);
    }
    if (!made) {
        return made.error();
    }
    return database;
}

Database::~Database()
{
    m_database.close();
    m_database = QSqlDatabase();
    QSqlDatabase::removeDatabase(m_connection);
}

Result<bool> Database::connect(const std::string& file)
{
    m_database = QSqlDatabase::addDatabase(QStringLiteral("QSQLITE"), m_connection);
    if (!m_database.isValid()) {
        return VaultError{Fault::CannotRead, "Qt's SQLite driver is not installed."};
    }
    m_database.setDatabaseName(QString::fromStdString(file));
    m_database.setConnectOptions(QStringLiteral("QSQLITE_BUSY_TIMEOUT=100"));
    if (!m_database.open()) {
        return errorOf(m_database.lastError());
    }
    // Exclusive before the first access: no other process gets in, and no shared-memory file is needed.
    // A new file takes the page size: smaller pages would leave a fifth unused between entries of some hundred bytes.
    return executeAll({"PRAGMA page_size = 8192", "PRAGMA locking_mode = EXCLUSIVE", "PRAGMA temp_store = MEMORY",
                       "PRAGMA trusted_schema = OFF", "PRAGMA cell_size_check = ON", "PRAGMA secure_delete = ON"});
}

Result<bool> Database::lock()
{
    return executeAll({"PRAGMA journal_mode = WAL", "PRAGMA synchronous = FULL", "BEGIN EXCLUSIVE", "COMMIT"});
}

Result<bool> Database::executeAll(std::initializer_list<const char*> statements) const
{
    for (const char* statement : statements) {
        if (Result<bool> done = execute(statement); !done) {
            return done;
        }
    }
    return true;
}

Result<bool> Database::execute(const std::string& statement) const
{
    QSqlQuery query(m_database);
    if (!query.exec(QString::fromStdString(statement))) {
        return errorOf(query.lastError());
    }
    return true;
}

Result<int> Database::pragma(const char* name) const
{
    QSqlQuery query(m_database);
    if (!query.exec(QStringLiteral("PRAGMA %1").arg(QLatin1String(name))) || !query.next()) {
        return errorOf(query.lastError());
    }
    return query.value(0).toInt();
}

Result<bool> Database::bringUpToDate(int from)
{
    for (const SchemaStep& step : schemaSteps()) {
        if (step.number <= from) {
            continue;
        }
        Result<bool> done = transaction([&]() -> Result<bool> {
            for (const std::string_view statement : step.statements) {
                if (Result<bool> made = execute(std::string(statement)); !made) {
                    return made;
                }
            }
            return execute("PRAGMA user_version = " + std::to_string(step.number));
        });
        if (!done) {
            return done;
        }
    }
    return true;
}

/// A trigger that was taken away, or a table that was changed, is damage too.
Result<bool> Database::compareTables() const
{
    std::map<std::string, std::size_t> expected;
    for (const SchemaStep& step : schemaSteps()) {
        for (const std::string_view statement : step.statements) {
            ++expected[std::string(statement)];
        }
    }
    QSqlQuery query(m_database);
    if (!query.exec(QStringLiteral("SELECT sql FROM sqlite_schema WHERE sql IS NOT NULL"))) {
        return errorOf(query.lastError());
    }
    std::map<std::string, std::size_t> found;
    while (query.next()) {
        ++found[query.value(0).toString().toStdString()];
    }
    return found == expected ? Result<bool>(true) : damagedTables;
}

Result<QSqlQuery> Database::prepare(const char* statement) const
{
    QSqlQuery query(m_database);
    query.setForwardOnly(true);
    if (!query.prepare(QLatin1String(statement))) {
        return errorOf(query.lastError());
    }
    return query;
}

Result<bool> Database::run(QSqlQuery& query)
{
    if (!query.exec()) {
        return errorOf(query.lastError());
    }
    return true;
}

Result<bool> Database::transaction(const std::function<Result<bool>()>& steps)
{
    if (m_doubtful) {
        return VaultError{Fault::CannotWrite, "The vault's storage failed before; close Peelpack and open it again."};
    }
    if (Result<bool> begun = execute("BEGIN IMMEDIATE"); !begun) {
        return begun;
    }
    Result<bool> done = steps();
    if (done) {
        done = execute("COMMIT");
    }
    if (!done) {
        // SQLite may have rolled back by itself; then there is nothing left to do.
        const Result<bool> rolledBack = execute("ROLLBACK");
        m_doubtful = !rolledBack && rolledBack.error().fault != Fault::CannotRead;
    }
    return done;
}

} // namespace peelpack::vault
