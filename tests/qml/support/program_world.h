#pragma once

#include "platform/session/signing.h"
#include "platform/vault/install_mark.h"
#include "qml/shell/phone.h"
#include "tests/qml/support/test_camera.h"
#include "tests/qml/support/test_share.h"

#include <QStringList>
#include <QTemporaryDir>

#include <memory>

namespace peelpack::test {

/// One real device that nobody has used, on which a director sets up a program, and a student with a real vault of
/// their own beside it.
class ProgramWorld : public QObject {
    Q_OBJECT
    Q_PROPERTY(peelpack::shell::Phone* phone READ phone NOTIFY phoneChanged)

public:
    explicit ProgramWorld(QObject* parent = nullptr);
    ~ProgramWorld() override;

    [[nodiscard]] shell::Phone* phone() { return m_phone.get(); }

    static constexpr const char* secret = "amber walnut lantern";

    /// A director's vault on the device, without the screens.
    Q_INVOKABLE void setUp();
    /// Another device that nobody has used is in hand from now on.
    Q_INVOKABLE void takeNewDevice();
    Q_INVOKABLE [[nodiscard]] bool vaultIsThere() const;
    /// Of the program that setUp() made.
    Q_INVOKABLE [[nodiscard]] QString programCode() const;
    /// A code of the right form that no program has.
    Q_INVOKABLE QString otherCode();

    /// The student joins with what was saved last, in a fresh vault, and lays the answer ready for the file picker. The
    /// digits that their phone shows.
    Q_INVOKABLE QString studentJoins(const QString& name);
    Q_INVOKABLE QString replyAsText();
    /// The student takes in what was saved last, and is in the program by what it says.
    Q_INVOKABLE bool studentTakesIn();
    /// A sheet that the student had signed with a card made on the spot; the parcel lies ready for the file picker.
    Q_INVOKABLE void studentHasNewCardSign(const QString& preceptor);
    /// What was saved last lies ready for the file picker.
    Q_INVOKABLE void readySaved();
    Q_INVOKABLE void readyText(const QString& name, const QString& text);
    Q_INVOKABLE [[nodiscard]] QString lastSavedText() const { return QString::fromUtf8(m_share.last); }
    Q_INVOKABLE [[nodiscard]] QString lastSavedName() const { return m_share.lastName; }
    Q_INVOKABLE [[nodiscard]] bool savedIsPdf() const { return m_share.last.startsWith("%PDF-"); }
    Q_INVOKABLE [[nodiscard]] int savedFiles() const { return static_cast<int>(m_share.kept.size()); }

    // What the vault in hand says, which is open.
    Q_INVOKABLE QString setInForce();
    /// Of a class on a day ("2027-08-23"), by the rules.
    Q_INVOKABLE QString setOn(const QString& className, const QString& day);
    /// The clinical days of a class, and those that the student knows of: "2027-01-12 North Campus 420 930".
    Q_INVOKABLE QStringList daysOf(const QString& className);
    Q_INVOKABLE [[nodiscard]] QStringList daysOfStudent() const;
    /// The table of the program's own procedures in force; empty: none.
    Q_INVOKABLE QString ownProcedures();
    /// The best hit when the student searches for a procedure; empty: none.
    Q_INVOKABLE [[nodiscard]] QString foundByStudent(const QString& text) const;
    /// The rule about phones of a site, as the journal numbers it; -1: it is not listed.
    Q_INVOKABLE int phonesAt(const QString& site);
    /// The roles of a credential as bits; -1: the list does not name it.
    Q_INVOKABLE int rolesOf(const QString& credential);
    /// "2027-01-15", "not oriented", with " active" where it is so; empty: nothing was said.
    Q_INVOKABLE QString standingOf(const QString& preceptor);
    Q_INVOKABLE int peopleCount();
    /// How the student's only sheet is signed.
    Q_INVOKABLE QString strengthOfSheet();
    /// Whether card and PIN make the key for which somebody vouches under this name.
    Q_INVOKABLE bool cardIsVouched(const QByteArray& code, const QString& pin, const QString& name);
    Q_INVOKABLE int goodKeysOf(const QString& preceptor);
    Q_INVOKABLE int goodDevicesOf(const QString& person);

Q_SIGNALS:
    void phoneChanged();

private:
    void startPhone();
    [[nodiscard]] session::Session& inHand();
    [[nodiscard]] std::string vaultFile() const;

    QTemporaryDir m_folder;
    int m_device = 0;
    std::unique_ptr<vault::FolderMarkStore> m_marks;
    vault::FolderMarkStore m_studentMarks;
    keys::SystemRandom m_random;
    TestShare m_share;
    TestCamera m_camera;
    student::Shelf m_shelf;
    QString m_programCode;
    QByteArray m_reply;
    std::unique_ptr<session::Session> m_student;
    std::unique_ptr<shell::Phone> m_phone;
};

} // namespace peelpack::test
