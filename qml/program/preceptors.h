#pragma once

#include "platform/session/cards.h"
#include "qml/parts/row_list.h"
#include "qml/program/program_desk.h"

namespace peelpack::program {

/// Somebody who marks and signs.
struct PreceptorRow {
    Q_GADGET
    QML_VALUE_TYPE(preceptorRow)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString detail MEMBER detail)
    Q_PROPERTY(bool good MEMBER good)

public:
    QString id; ///< 32 digits
    QString name;
    QString detail;
    bool good = false; ///< may sign: something of theirs is not ended
    bool operator==(const PreceptorRow&) const = default;
};
/// A card or phone of one of them.
struct SigningKeyRow {
    Q_GADGET
    QML_VALUE_TYPE(signingKeyRow)
    Q_PROPERTY(int index MEMBER index)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString detail MEMBER detail)
    Q_PROPERTY(bool mayEnd MEMBER mayEnd)

public:
    int index = 0;
    QString title;
    QString detail;
    bool mayEnd = false;
    bool operator==(const SigningKeyRow&) const = default;
};

class PreceptorRows : public parts::RowList<PreceptorRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};
class SigningKeyRows : public parts::RowList<SigningKeyRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};

/// Preceptors for whom somebody vouches, and one of them with their cards and phones.
class Preceptors : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when a vault of staff opens")
    Q_PROPERTY(peelpack::program::PreceptorRows* rows READ rows CONSTANT)
    Q_PROPERTY(QString preceptor READ preceptor NOTIFY changed)
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString what READ what NOTIFY changed)
    Q_PROPERTY(peelpack::program::SigningKeyRows* keys READ keys CONSTANT)
    Q_PROPERTY(bool mayStand READ mayStand CONSTANT)
    Q_PROPERTY(QString standing READ standing NOTIFY changed)
    Q_PROPERTY(QString oriented READ oriented WRITE setOriented NOTIFY changed)
    Q_PROPERTY(bool active READ active WRITE setActive NOTIFY changed)
    Q_PROPERTY(bool standsOtherwise READ standsOtherwise NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    explicit Preceptors(ProgramDesk& desk, QObject* parent = nullptr);

    /// By name.
    [[nodiscard]] PreceptorRows* rows() { return &m_rows; }
    [[nodiscard]] const QString& preceptor() const { return m_preceptor; }
    [[nodiscard]] const QString& name() const { return m_name; }
    /// "CST · North Campus"
    [[nodiscard]] const QString& what() const { return m_what; }
    [[nodiscard]] SigningKeyRows* keys() { return &m_keys; }
    /// Whether this person says how preceptors stand with the program.
    [[nodiscard]] bool mayStand();
    /// "Oriented on Jan 15 · active"
    [[nodiscard]] const QString& standing() const { return m_standing; }
    /// How the preceptor will stand once it is signed: "2027-01-15" as it was typed, empty: not yet.
    [[nodiscard]] const QString& oriented() const { return m_oriented; }
    void setOriented(const QString& day);
    [[nodiscard]] bool active() const { return m_active; }
    void setActive(bool active);
    /// It is not what is signed already.
    [[nodiscard]] bool standsOtherwise();
    [[nodiscard]] const QString& error() const { return m_error; }

    /// When the page is shown.
    Q_INVOKABLE void read();
    Q_INVOKABLE void show(const QString& preceptor);
    /// Ends one card or phone of the preceptor that is shown.
    Q_INVOKABLE void end(int key, const QString& reason);
    Q_INVOKABLE void signStanding();

Q_SIGNALS:
    void changed();

private:
    void readStanding();

    ProgramDesk& m_desk;
    PreceptorRows m_rows;
    QString m_preceptor;
    QString m_name;
    QString m_what;
    SigningKeyRows m_keys;
    QString m_standing;
    QString m_oriented;
    bool m_active = true;
    QString m_error;
};

} // namespace peelpack::program
