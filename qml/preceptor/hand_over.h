#pragma once

#include "qml/preceptor/sitting.h"
#include "qml/student/desk.h"

#include <QStringList>

#include <optional>

namespace peelpack::preceptor {

/// The phone in a preceptor's hands: the sheets of one sitting are confirmed, marked, read back and signed. Marks live
/// here only until they are signed; a hand-over that ends otherwise leaves its time in the journal and nothing else.
class HandOver : public Sitting {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when the phone is given away")
    Q_PROPERTY(QString ownPhoneWord READ ownPhoneWord CONSTANT)
    Q_PROPERTY(QString newCardWord READ newCardWord CONSTANT)
    Q_PROPERTY(QString drawnWord READ drawnWord CONSTANT)
    Q_PROPERTY(QStringList people READ people CONSTANT)
    Q_PROPERTY(QString signer READ signer NOTIFY changed)
    Q_PROPERTY(QString listed READ listed NOTIFY changed)
    Q_PROPERTY(bool cardHeld READ cardHeld NOTIFY changed)
    Q_PROPERTY(bool stranger READ stranger NOTIFY changed)
    Q_PROPERTY(QByteArray newCard READ newCard NOTIFY changed)
    Q_PROPERTY(bool hasNewCard READ hasNewCard NOTIFY changed)
    Q_PROPERTY(QByteArray request READ request NOTIFY changed)
    Q_PROPERTY(bool awaitsVouch READ awaitsVouch NOTIFY changed)
    Q_PROPERTY(bool busy READ busy NOTIFY changed)

public:
    /// Begins it for these sheets (32 digits each) and keeps that it has begun, so that it is there again after the
    /// app was killed; without marks.
    HandOver(student::Desk& desk, const QStringList& sheets, journal::Time began, QObject* parent = nullptr);

    /// The hand-over that was going on when the app ended; empty: none.
    struct Begun {
        QStringList sheets;
        journal::Time at;
    };
    static std::optional<Begun> begun(const student::Desk& desk);

    [[nodiscard]] QString student() const override { return m_desk.name(); }
    /// What the program says about who may sign how.
    [[nodiscard]] QString beforehand() const override;
    /// Of one way of signing: what it is worth, or that it does not count.
    [[nodiscard]] QString ownPhoneWord() const;
    [[nodiscard]] QString newCardWord() const;
    [[nodiscard]] QString drawnWord() const;
    /// Preceptors with a card on the program's list, those of the sheet's site first: for a card's typed code.
    [[nodiscard]] QStringList people() const;
    [[nodiscard]] QString signer() const;
    /// What the program's list of who may sign says about the holder of the card that is held; empty: nothing.
    [[nodiscard]] QString listed() const;
    /// The same about a credential that somebody types.
    Q_INVOKABLE [[nodiscard]] QString listedAs(const QString& credential) const;
    [[nodiscard]] bool cardHeld() const { return m_card.has_value(); }
    /// The card that is held is on no list: its holder says who they are.
    [[nodiscard]] bool stranger() const { return m_stranger; }
    /// The code of a card that was just made, to be photographed by its owner; empty: none.
    [[nodiscard]] const QByteArray& newCard() const { return m_newCard; }
    [[nodiscard]] bool hasNewCard() const { return !m_newCard.isEmpty(); }
    /// What the preceptor's own phone scans.
    [[nodiscard]] QByteArray request() const;
    /// Signed on a phone for which nobody in the program vouches yet, as far as this phone knows.
    [[nodiscard]] bool awaitsVouch() const { return m_awaitsVouch; }
    [[nodiscard]] bool busy() const { return m_busy; }

    Q_INVOKABLE void go(peelpack::preceptor::Sitting::Step to);

    /// The bytes of a card's QR code.
    Q_INVOKABLE void takeCard(const QByteArray& code);
    /// A card by its owner's place in `people` and the code printed on it.
    Q_INVOKABLE void typeCard(int person, const QString& code);
    /// Who holds a card that nobody on the program's list has.
    Q_INVOKABLE void introduce(const QString& name, const QString& credential);
    /// A card for somebody who has none; nobody vouches for it yet.
    Q_INVOKABLE void makeCard(const QString& name, const QString& credential);
    Q_INVOKABLE void dropCard();
    /// Signs all sheets with the card that is held.
    Q_INVOKABLE void sign(const QString& pin);
    Q_INVOKABLE void signDrawn(const QString& name, const QString& credential, const QByteArray& strokes);
    Q_INVOKABLE void takeAnswer(const QByteArray& code);
    Q_INVOKABLE void decline(const QString& reason);

    /// Neither signed nor declined.
    [[nodiscard]] bool isUnfinished() const { return step() != Signed && step() != Declined; }
    /// Ends it. What is not signed leaves its time and cause in the journal, once a sheet. Empty: done; else why not.
    QString end(journal::HandOverCause cause);

Q_SIGNALS:
    void signedNow();

protected:
    [[nodiscard]] base::Date today() const override { return m_desk.today(); }

private:
    /// The sheet in hand as the journal has it; empty when it is there no more.
    [[nodiscard]] std::optional<session::SheetPlace> placeNow() const;
    [[nodiscard]] QString wordOn(sheet::Strength strength, const QString& usual) const;
    [[nodiscard]] QString keepBegun() const;
    void hold(keys::SigningCard card);
    void finish(QString problem, Step to);
    void after(const std::function<void()>& work);

    student::Desk& m_desk;
    journal::Time m_began;
    std::vector<session::Preceptor> m_people;
    std::optional<keys::SigningCard> m_card;
    session::SignerName m_signer;
    std::optional<session::Preceptor> m_known; ///< whose card is held, where the program knows it
    bool m_stranger = false;
    QByteArray m_newCard;
    bool m_awaitsVouch = false;
    bool m_busy = false;
};

} // namespace peelpack::preceptor
