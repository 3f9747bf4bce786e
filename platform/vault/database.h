#pragma once

#include "platform/vault/vault_error.h"

#include <QSqlDatabase>
#include <QSqlQuery>

#include <functional>
#include <initializer_list>
#include <memory>
#include <string>

namespace peelpack::vault {

/// One SQLite file of ours, open and locked for this process alone: WAL, every commit on the disk before it returns.
class Database {
public:
    /// Opens a file that is there. NotThere, InUse, NotAVault, Newer, Damaged, CannotRead, CannotWrite. Older tables
    /// are brought up to date, step by step.
    static Result<std::unique_ptr<Database>> open(const std::string& file);
    /// Makes a file that must not be there yet, with the newest tables.
    static Result<std::unique_ptr<Database>> make(const std::string& file);

    Database(const Database&) = delete;
    Database& operator=(const Database&) = delete;
    Database(Database&&) = delete;
    Database& operator=(Database&&) = delete;
    ~Database();

    /// A prepared statement.
    Result<QSqlQuery> prepare(const char* statement) const;
    /// Runs a prepared statement.
    static Result<bool> run(QSqlQuery& query);
    /// Runs `steps` in one transaction: all of it or nothing. An error of `steps` is handed on.
    Result<bool> transaction(const std::function<Result<bool>()>& steps);
    /// What is in the file is no longer known: nothing more is written until it is opened again.
    void distrust() { m_doubtful = true; }

private:
    explicit Database(QString connection) : m_connection(std::move(connection)) {}
    /// Writes nothing yet.
    Result<bool> connect(const std::string& file);
    Result<bool> lock();
    [[nodiscard]] Result<bool> execute(const std::string& statement) const;
    [[nodiscard]] Result<bool> executeAll(std::initializer_list<const char*> statements) const;
    [[nodiscard]] Result<int> pragma(const char* name) const;
    Result<bool> bringUpToDate(int from);
    [[nodiscard]] Result<bool> compareTables() const;

    QString m_connection;
    QSqlDatabase m_database;
    bool m_doubtful = false;
};

/// What an error of the database means to a person.
VaultError errorOf(const QSqlError& error);

} // namespace peelpack::vault
