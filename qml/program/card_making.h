#pragma once

#include "platform/session/cards.h"
#include "qml/program/program_desk.h"

namespace peelpack::program {

/// A signing card is made for a preceptor: whose it is, a PIN that they choose, and its code, shown once. Without a PIN
/// the preceptor chooses one when they first sign with it, and somebody vouches for it afterwards.
class CardMaking : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when a vault of staff opens")
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString credential READ credential NOTIFY changed)
    Q_PROPERTY(QString site READ site NOTIFY changed)
    Q_PROPERTY(bool known READ known NOTIFY changed)
    Q_PROPERTY(bool made READ made NOTIFY changed)
    Q_PROPERTY(bool vouched READ vouched NOTIFY changed)
    Q_PROPERTY(QByteArray code READ code NOTIFY changed)
    Q_PROPERTY(QString typed READ typed NOTIFY changed)
    Q_PROPERTY(QString holder READ holder NOTIFY changed)
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    explicit CardMaking(ProgramDesk& desk, QObject* parent = nullptr) : QObject(parent), m_desk(desk) {}

    /// Whose it is, where that is known before.
    [[nodiscard]] const QString& name() const { return m_name; }
    [[nodiscard]] const QString& credential() const { return m_credential; }
    [[nodiscard]] const QString& site() const { return m_site; }
    /// Another card for a preceptor who is known.
    [[nodiscard]] bool known() const { return !m_preceptor.isZero(); }
    [[nodiscard]] bool made() const { return !m_code.isEmpty(); }
    /// It counts at once.
    [[nodiscard]] bool vouched() const { return m_vouched; }
    /// What stands on the card: a secret, until it is forgotten.
    [[nodiscard]] const QByteArray& code() const { return m_code; }
    [[nodiscard]] const QString& typed() const { return m_typed; }
    /// "L. Brandt, CST"
    [[nodiscard]] QString holder() const;
    [[nodiscard]] bool busy() const { return m_busy; }
    [[nodiscard]] const QString& error() const { return m_error; }

    Q_INVOKABLE void begin();
    Q_INVOKABLE void beginFor(const QString& preceptor);
    /// Vouched for at once.
    Q_INVOKABLE void make(const QString& name, const QString& credential, const QString& site, const QString& pin,
                          const QString& again);
    /// The PIN is left to the preceptor.
    Q_INVOKABLE void makeWithoutPin(const QString& name, const QString& credential);
    /// The card is printed or photographed.
    Q_INVOKABLE void forget();

Q_SIGNALS:
    void changed();

private:
    bool take(const QString& name, const QString& credential, const QString& site);
    void makeNow(const QString& pin);
    void show(const keys::SigningCard& card);
    [[nodiscard]] keys::SigningCard cardFor(const session::Directory& directory) const;

    ProgramDesk& m_desk;
    keys::Id m_preceptor; ///< zero: not known yet
    QString m_name;
    QString m_credential;
    QString m_site;
    QByteArray m_code;
    QString m_typed;
    bool m_vouched = false;
    bool m_busy = false;
    QString m_error;
};

} // namespace peelpack::program
