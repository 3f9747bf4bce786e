#pragma once

#include "platform/vault/sqlite_vault.h"
#include "qml/shell/surroundings.h"

#include <QObject>
#include <QQmlEngine>

#include <functional>

namespace peelpack::shell {

/// What every first start of a phone has: a passphrase or PIN typed twice, a vault, and its code, shown once.
class FirstStart : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the app")
    Q_PROPERTY(QString vaultCode READ vaultCode NOTIFY changed)
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    /// Shown once, to be written down.
    [[nodiscard]] const QString& vaultCode() const { return m_vaultCode; }
    [[nodiscard]] bool busy() const { return m_busy; }
    [[nodiscard]] const QString& error() const { return m_error; }

    /// The code is on paper: it is not shown again.
    Q_INVOKABLE void finish();
    /// The vault that was made, once; null when there is none.
    std::unique_ptr<vault::SqliteVault> takeVault();

Q_SIGNALS:
    void changed();
    void finished();

protected:
    explicit FirstStart(Surroundings& surroundings, QObject* parent) : QObject(parent), m_surroundings(surroundings) {}

    /// What will open the phone, as it was typed.
    struct Secret {
        QString once;
        QString again;
        bool pin = false; ///< weaker than a passphrase
    };
    /// Puts into a fresh vault whose it is. It may take the vault with it.
    using Use = std::function<base::Result<bool>(std::unique_ptr<vault::SqliteVault>& vault)>;
    /// After a frame that says so: makes the vault, uses it, and shows its code. What fails leaves no vault.
    void make(const Secret& secret, const Use& use);
    /// Says why not; an empty sentence takes that back.
    void fail(QString sentence);
    [[nodiscard]] Surroundings& surroundings() const { return m_surroundings; }

    static constexpr qsizetype mostName = 80;

private:
    void makeNow(const Secret& secret, const Use& use);

    Surroundings& m_surroundings;
    std::unique_ptr<vault::SqliteVault> m_vault;
    QString m_vaultCode;
    bool m_busy = false;
    QString m_error;
};

} // namespace peelpack::shell
