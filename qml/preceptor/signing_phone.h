#pragma once

#include "platform/session/preceptor_vault.h"
#include "qml/parts/row_list.h"
#include "qml/preceptor/own_sheet.h"

#include <functional>
#include <memory>

namespace peelpack::preceptor {

/// A sheet that this phone signed, as a list shows it.
struct SignedRow {
    Q_GADGET
    QML_VALUE_TYPE(signedRow)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString detail MEMBER detail)
    Q_PROPERTY(QString standing MEMBER standing)

public:
    QString title;    ///< the procedures
    QString detail;   ///< the day of the case, the student, the site
    QString standing; ///< when it was signed, and how much of it
    bool operator==(const SignedRow&) const = default;
};

class SignedRows : public parts::RowList<SignedRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};

/// The preceptor's own phone: its signing key, the sheet that is being marked, and what was signed on it. Marks live in
/// memory only until they are signed.
class SigningPhone : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when a preceptor's vault opens")
    Q_PROPERTY(peelpack::preceptor::SigningPhone::Place place READ place NOTIFY changed)
    Q_PROPERTY(QString name READ name NOTIFY changed)
    Q_PROPERTY(QString credential READ credential NOTIFY changed)
    Q_PROPERTY(QString who READ who NOTIFY changed)
    Q_PROPERTY(QString keyText READ keyText CONSTANT)
    Q_PROPERTY(QByteArray keyCode READ keyCode CONSTANT)
    Q_PROPERTY(peelpack::preceptor::OwnSheet* sheet READ sheet NOTIFY sheetChanged)
    Q_PROPERTY(peelpack::preceptor::SignedRows* signedHere READ signedHere CONSTANT)
    Q_PROPERTY(int count READ count NOTIFY changed)
    Q_PROPERTY(QString shownTitle READ shownTitle NOTIFY changed)
    Q_PROPERTY(QStringList shownLines READ shownLines NOTIFY changed)
    Q_PROPERTY(QByteArray answer READ answer NOTIFY changed)
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    enum Place {
        Naming, ///< who signs here has not been said
        AtHome,
        AtSheet, ///< a sheet is marked
        AtAnswer ///< a signed sheet and the code for the student's phone
    };
    Q_ENUM(Place)
    /// Why this is not what opens the phone; empty: it is.
    using CheckSecret = std::function<QString(const QString&)>;

    SigningPhone(std::unique_ptr<session::PreceptorVault> vault, CheckSecret check, QObject* parent = nullptr);
    ~SigningPhone() override;

    [[nodiscard]] Place place() const { return m_place; }
    [[nodiscard]] QString name() const;
    [[nodiscard]] QString credential() const;
    /// "L. Brandt, CST"
    [[nodiscard]] QString who() const;
    /// 64 digits, in groups of 4.
    [[nodiscard]] QString keyText() const;
    /// The same without gaps, as the bytes of a QR code.
    [[nodiscard]] QByteArray keyCode() const;
    /// The sheet in hand; null: none. Not told when it goes: the screens over it go first.
    [[nodiscard]] OwnSheet* sheet() const { return m_sheet.get(); }
    /// What was signed here, the latest first.
    [[nodiscard]] SignedRows* signedHere() { return &m_rows; }
    [[nodiscard]] int count() const { return static_cast<int>(m_rows.rows().size()); }
    [[nodiscard]] QString shownTitle() const;
    /// What was signed on the sheet that is shown, a fact a line.
    [[nodiscard]] QStringList shownLines() const;
    /// Its code for the student's phone.
    [[nodiscard]] QByteArray answer() const;
    [[nodiscard]] bool busy() const { return m_busy; }
    [[nodiscard]] const QString& error() const { return m_error; }

    Q_INVOKABLE void introduce(const QString& name, const QString& credential);
    /// The code on the student's phone, from its camera picture or file.
    Q_INVOKABLE void read(const QByteArray& code);
    /// Signs the sheet in hand; `secret` opens this phone.
    Q_INVOKABLE void sign(const QString& secret);
    /// A row of `signedHere`.
    Q_INVOKABLE void show(int row);
    /// Leaves sheet or answer; marks that are not signed are gone.
    Q_INVOKABLE void goHome();
    /// The language changed.
    void speakAnew();

Q_SIGNALS:
    void changed();
    void sheetChanged();

private:
    [[nodiscard]] base::Date today() const;
    [[nodiscard]] const session::SignedHere* shown() const;
    void listSigned();
    void letSheetGo();

    std::unique_ptr<session::PreceptorVault> m_vault;
    CheckSecret m_check;
    Place m_place = AtHome;
    std::unique_ptr<OwnSheet> m_sheet;
    SignedRows m_rows;
    int m_shown = -1;
    bool m_busy = false;
    QString m_error;
};

} // namespace peelpack::preceptor
