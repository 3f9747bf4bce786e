#pragma once

#include "qml/preceptor/marked_sheet.h"
#include "qml/student/desk.h"
#include "qml/words/words.h"

#include <QStringList>

#include <optional>

namespace peelpack::preceptor {

/// The phone in a preceptor's hands: the sheets of one sitting are confirmed, marked, read back and signed. Marks live
/// here only until they are signed; a hand-over that ends otherwise leaves its time in the journal and nothing else.
class HandOver : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when the phone is given away")
    Q_PROPERTY(peelpack::preceptor::HandOver::Step step READ step NOTIFY changed)
    Q_PROPERTY(QString student READ student CONSTANT)
    Q_PROPERTY(int place READ place NOTIFY changed)
    Q_PROPERTY(int total READ total CONSTANT)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString head READ head NOTIFY changed)
    Q_PROPERTY(QStringList procedures READ procedures NOTIFY changed)
    Q_PROPERTY(bool canceled READ canceled WRITE setCanceled NOTIFY changed)
    Q_PROPERTY(peelpack::preceptor::MarkingRows* marks READ marks CONSTANT)
    Q_PROPERTY(int open READ open NOTIFY changed)
    Q_PROPERTY(QString missing READ missing NOTIFY changed)
    Q_PROPERTY(QString feedback READ feedback WRITE setFeedback NOTIFY changed)
    Q_PROPERTY(QString feedbackWarning READ feedbackWarning NOTIFY changed)
    Q_PROPERTY(QStringList readBack READ readBack NOTIFY changed)
    Q_PROPERTY(QString policy READ policy CONSTANT)
    Q_PROPERTY(QStringList people READ people CONSTANT)
    Q_PROPERTY(QString signer READ signer NOTIFY changed)
    Q_PROPERTY(bool cardHeld READ cardHeld NOTIFY changed)
    Q_PROPERTY(bool stranger READ stranger NOTIFY changed)
    Q_PROPERTY(QByteArray newCard READ newCard NOTIFY changed)
    Q_PROPERTY(bool hasNewCard READ hasNewCard NOTIFY changed)
    Q_PROPERTY(QByteArray request READ request NOTIFY changed)
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    enum Step {
        Performed,   ///< the procedure as performed, confirmed or corrected
        Marking,     ///< the ten skills
        ReadingBack, ///< what is signed, in words
        Signing,     ///< with what
        OwnPhone,    ///< the preceptor signs on their own phone
        Drawing,     ///< the weakest way
        Declining,
        Signed,
        Declined,
    };
    Q_ENUM(Step)

    /// Begins it for these sheets (32 digits each) and keeps that it has begun, so that it is there again after the
    /// app was killed; without marks.
    HandOver(student::Desk& desk, const QStringList& sheets, journal::Time began, QObject* parent = nullptr);

    /// The hand-over that was going on when the app ended; empty: none.
    struct Begun {
        QStringList sheets;
        journal::Time at;
    };
    static std::optional<Begun> begun(const student::Desk& desk);

    [[nodiscard]] Step step() const { return m_step; }
    [[nodiscard]] QString student() const { return m_desk.name(); }
    [[nodiscard]] int place() const { return static_cast<int>(m_place); }
    [[nodiscard]] int total() const { return static_cast<int>(m_sheets.size()); }
    [[nodiscard]] QString title() const { return words::listed(procedures()); }
    [[nodiscard]] QString head() const { return now().head(m_desk.today()); }
    [[nodiscard]] QStringList procedures() const { return now().procedures(); }
    [[nodiscard]] bool canceled() const { return now().canceled(); }
    void setCanceled(bool canceled);
    [[nodiscard]] MarkingRows* marks() { return &m_rows; }
    /// Skills without a mark.
    [[nodiscard]] int open() const { return now().open(); }
    /// What keeps this sheet from being read back; empty: nothing.
    [[nodiscard]] QString missing() const { return now().missing(); }
    [[nodiscard]] QString feedback() const { return now().feedback(); }
    void setFeedback(const QString& text);
    [[nodiscard]] QString feedbackWarning() const { return now().feedbackWarning(); }
    /// What will be signed, all sheets, a fact a line.
    [[nodiscard]] QStringList readBack() const;
    /// What the program says about who may sign how.
    [[nodiscard]] QString policy() const;
    /// Preceptors with a card on the program's list, those of the sheet's site first: for a card's typed code.
    [[nodiscard]] QStringList people() const;
    [[nodiscard]] QString signer() const;
    [[nodiscard]] bool cardHeld() const { return m_card.has_value(); }
    /// The card that is held is on no list: its holder says who they are.
    [[nodiscard]] bool stranger() const { return m_stranger; }
    /// The code of a card that was just made, to be photographed by its owner; empty: none.
    [[nodiscard]] const QByteArray& newCard() const { return m_newCard; }
    [[nodiscard]] bool hasNewCard() const { return !m_newCard.isEmpty(); }
    /// What the preceptor's own phone scans.
    [[nodiscard]] QByteArray request() const;
    [[nodiscard]] bool busy() const { return m_busy; }
    [[nodiscard]] const QString& error() const { return m_error; }

    Q_INVOKABLE void correct(int procedure, const QString& text);
    Q_INVOKABLE void mark(int skill, int mark);
    Q_INVOKABLE void reason(int skill, const QString& text);
    Q_INVOKABLE void markFirstScrubYes();
    /// On to the next step or sheet, and back.
    Q_INVOKABLE void next();
    Q_INVOKABLE void back();
    Q_INVOKABLE void go(peelpack::preceptor::HandOver::Step step);

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

    /// Ends it. What is not signed leaves its time and cause in the journal, once a sheet. Empty: done; else why not.
    QString end(journal::HandOverCause cause);

Q_SIGNALS:
    void changed();
    void signedNow();

private:
    [[nodiscard]] MarkedSheet& now() { return m_sheets[m_place]; }
    [[nodiscard]] const MarkedSheet& now() const { return m_sheets[m_place]; }
    /// The sheet in hand as the journal has it; empty when it is there no more.
    [[nodiscard]] std::optional<session::SheetPlace> placeNow() const;
    void showMarks();
    void hold(keys::SigningCard card);
    void finish(QString error, Step step);
    void after(const std::function<void()>& work);

    student::Desk& m_desk;
    journal::Time m_began;
    std::vector<MarkedSheet> m_sheets;
    std::size_t m_place = 0;
    Step m_step = Performed;
    MarkingRows m_rows;
    std::vector<session::Preceptor> m_people;
    std::optional<keys::SigningCard> m_card;
    session::SignerName m_signer;
    bool m_stranger = false;
    QByteArray m_newCard;
    bool m_busy = false;
    QString m_error;
};

} // namespace peelpack::preceptor
