#pragma once

#include "qml/program/named_row.h"
#include "qml/program/program_desk.h"
#include "sync/journal/rule_payloads.h"

namespace peelpack::program {

/// Whose signature the program expects on a sheet of which role, by credential, and one of them while it is changed.
class SignerList : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when a vault of staff opens")
    Q_PROPERTY(bool mayChange READ mayChange CONSTANT)
    Q_PROPERTY(peelpack::program::NamedRows* rows READ rows CONSTANT)
    Q_PROPERTY(bool editing READ editing NOTIFY changed)
    Q_PROPERTY(bool isNew READ isNew NOTIFY changed)
    Q_PROPERTY(QString credential READ credential WRITE setCredential NOTIFY changed)
    Q_PROPERTY(bool observation READ observation WRITE setObservation NOTIFY changed)
    Q_PROPERTY(bool second READ second WRITE setSecond NOTIFY changed)
    Q_PROPERTY(bool first READ first WRITE setFirst NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    explicit SignerList(ProgramDesk& desk, QObject* parent = nullptr);

    [[nodiscard]] bool mayChange();
    /// By credential; the detail are the roles. Empty: anybody for whom the program vouches.
    [[nodiscard]] NamedRows* rows() { return &m_rows; }
    [[nodiscard]] bool editing() const { return m_editing; }
    [[nodiscard]] bool isNew() const { return m_before.empty(); }
    [[nodiscard]] const QString& credential() const { return m_credential; }
    void setCredential(const QString& credential);
    [[nodiscard]] bool observation() const { return has(journal::signsObservation); }
    void setObservation(bool on) { turn(journal::signsObservation, on); }
    [[nodiscard]] bool second() const { return has(journal::signsSecondScrub); }
    void setSecond(bool on) { turn(journal::signsSecondScrub, on); }
    [[nodiscard]] bool first() const { return has(journal::signsFirstScrub); }
    void setFirst(bool on) { turn(journal::signsFirstScrub, on); }
    [[nodiscard]] const QString& error() const { return m_error; }

    /// When the page is shown.
    Q_INVOKABLE void read();
    /// Another credential; or one of the rows.
    Q_INVOKABLE void begin();
    Q_INVOKABLE void change(int row);
    Q_INVOKABLE void leave();
    Q_INVOKABLE void sign();
    /// Takes the credential that is changed off the list.
    Q_INVOKABLE void remove();

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] bool has(std::uint8_t role) const { return (m_roles & role) != 0; }
    void turn(std::uint8_t role, bool on);
    void begin(const journal::MaySign& signer);
    void write(std::vector<journal::MaySign> signers);

    ProgramDesk& m_desk;
    NamedRows m_rows;
    bool m_editing = false;
    std::string m_before; ///< as it is on the list; empty: a new one
    QString m_credential;
    std::uint8_t m_roles = 0;
    QString m_error;
};

} // namespace peelpack::program
