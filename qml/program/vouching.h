#pragma once

#include "platform/session/cards.h"
#include "platform/session/waiting_signers.h"
#include "qml/parts/row_list.h"
#include "qml/program/program_desk.h"

#include <QStringList>

namespace peelpack::program {

/// A card made on the spot or a preceptor's own phone that waits for somebody to vouch for it.
struct WaitingSignerRow {
    Q_GADGET
    QML_VALUE_TYPE(waitingSignerRow)
    Q_PROPERTY(QString title MEMBER title)
    Q_PROPERTY(QString detail MEMBER detail)

public:
    QString title;  ///< as it stood under the signature
    QString detail; ///< what it is, and how many sheets wait
    bool operator==(const WaitingSignerRow&) const = default;
};
class WaitingSignerRows : public parts::RowList<WaitingSignerRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};

/// Vouching for a signing key: one that waits, with the sheets that wait for it, or one that a preceptor shows.
class Vouching : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when a vault of staff opens")
    Q_PROPERTY(peelpack::program::WaitingSignerRows* waiting READ waiting CONSTANT)
    Q_PROPERTY(bool chosen READ chosen NOTIFY changed)
    Q_PROPERTY(QString what READ what NOTIFY changed)
    Q_PROPERTY(QString claimedName READ claimedName NOTIFY changed)
    Q_PROPERTY(QString claimedCredential READ claimedCredential NOTIFY changed)
    Q_PROPERTY(QString keyText READ keyText NOTIFY changed)
    Q_PROPERTY(QStringList sheets READ sheets NOTIFY changed)
    Q_PROPERTY(QStringList known READ known NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    explicit Vouching(ProgramDesk& desk, QObject* parent = nullptr);

    [[nodiscard]] WaitingSignerRows* waiting() { return &m_waiting; }
    /// There is a key to vouch for.
    [[nodiscard]] bool chosen() const { return m_key.has_value(); }
    [[nodiscard]] const QString& what() const { return m_what; }
    /// What stood under the signature; empty: nothing was signed yet.
    [[nodiscard]] const QString& claimedName() const { return m_claimedName; }
    [[nodiscard]] const QString& claimedCredential() const { return m_claimedCredential; }
    /// In groups, to be compared with the preceptor's own phone; empty for a card.
    [[nodiscard]] QString keyText() const;
    /// "Ines Duarte, Mar 12: Appendectomy"
    [[nodiscard]] const QStringList& sheets() const { return m_sheets; }
    /// Names of preceptors who are known: the key is of one of them when it is the same name.
    [[nodiscard]] const QStringList& known() const { return m_known; }
    [[nodiscard]] const QString& error() const { return m_error; }

    /// When the page is shown.
    Q_INVOKABLE void read();
    Q_INVOKABLE void choose(int index);
    /// The code that a preceptor's own phone shows, from the camera or a file.
    Q_INVOKABLE void readKey(const QByteArray& code);
    /// Its 64 digits, typed or pasted.
    Q_INVOKABLE void readKeyText(const QString& digits) { readKey(digits.left(mostKeyText).toLatin1()); }
    /// True: it is vouched for.
    Q_INVOKABLE bool vouch(const QString& name, const QString& credential, const QString& site);
    Q_INVOKABLE void drop();

Q_SIGNALS:
    void changed();

private:
    static constexpr qsizetype mostKeyText = 200;

    void take(const session::WaitingSigner& waiting);
    [[nodiscard]] QString kindOf(const journal::Signer& signer) const;

    ProgramDesk& m_desk;
    std::vector<session::WaitingSigner> m_signers;
    WaitingSignerRows m_waiting;
    std::optional<session::VouchedKey> m_key;
    QString m_what;
    QString m_claimedName;
    QString m_claimedCredential;
    QStringList m_sheets;
    QStringList m_known;
    QString m_error;
};

} // namespace peelpack::program
