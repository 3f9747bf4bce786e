#pragma once

#include "platform/session/setup.h"
#include "platform/vault/install_mark.h"
#include "qml/shell/phone.h"
#include "tests/qml/support/test_camera.h"
#include "tests/qml/support/test_share.h"

#include <QTemporaryDir>

#include <memory>
#include <vector>

namespace peelpack::test {

/// A program around one real phone: a director with a journal in memory, preceptors with cards, a real vault of a
/// student in a folder of its own, and a clock that can be turned. For tests of the screens.
class PhoneWorld : public QObject {
    Q_OBJECT
    Q_PROPERTY(peelpack::shell::Phone* phone READ phone NOTIFY phoneChanged)
    Q_PROPERTY(peelpack::shell::Phone* preceptorPhone READ preceptorPhone NOTIFY phoneChanged)
    Q_PROPERTY(int saves READ saves NOTIFY phoneChanged)

public:
    explicit PhoneWorld(QObject* parent = nullptr) : PhoneWorld(QString(), parent) {}
    /// In a folder that stays, where another process may have been before; an empty one: its own.
    explicit PhoneWorld(const QString& folder, QObject* parent = nullptr);
    ~PhoneWorld() override;

    [[nodiscard]] shell::Phone* phone() { return m_phone.get(); }
    /// A second real phone, of a preceptor; null before startPreceptorPhone().
    [[nodiscard]] shell::Phone* preceptorPhone() { return m_preceptorPhone.get(); }
    [[nodiscard]] int saves() const { return m_saves; }
    [[nodiscard]] session::Session& director() { return *m_director; }
    [[nodiscard]] const std::string& vaultFile() const { return m_vaultFile; }

    static constexpr const char* secret = "amber walnut lantern";

    /// A fresh invitation of the student as text.
    Q_INVOKABLE QString invitation();
    /// Lays a fresh invitation ready for the file picker.
    Q_INVOKABLE void readyInvitation();
    /// The director grants what the phone saved last as its answer. The digits that they see; empty: refused.
    Q_INVOKABLE QString grant();
    /// The student's phone set up and granted, without the screens.
    Q_INVOKABLE void setUp();
    /// Sheets that somebody opened before, `ago` days back.
    Q_INVOKABLE QString openSheet(const QString& procedure, int ago);
    /// Signed with the first preceptor's card, all first-scrub skills Yes.
    Q_INVOKABLE void signSheet(const QString& id);
    /// Takes in what the phone saved last, initials every signed sheet when asked to, and lays the answer ready.
    Q_INVOKABLE bool instructorAnswers(bool initials);
    Q_INVOKABLE bool instructorReturns(const QString& id, const QString& question);
    Q_INVOKABLE bool instructorAcceptsReview(const QString& id);
    /// The staff's view of a sheet: its standing.
    Q_INVOKABLE QString standingAtInstructor(const QString& id);

    /// Lays a picture of a preceptor's card ready for the file picker, or holds it before the camera.
    Q_INVOKABLE void readyCard(int preceptor);
    Q_INVOKABLE void cameraSeesCard(int preceptor);
    Q_INVOKABLE void cameraIsThere(bool there);
    Q_INVOKABLE QString pinOf(int preceptor) const;
    Q_INVOKABLE QString nameOf(int preceptor) const;
    Q_INVOKABLE QString codeOf(int preceptor) const;
    /// Signs the request that the phone shows with a preceptor's own phone and lays the answer ready.
    Q_INVOKABLE bool answerOnOwnPhone();

    // The preceptor's own phone.
    Q_INVOKABLE void startPreceptorPhone();
    Q_INVOKABLE void preceptorCameraIsThere(bool there);
    /// An instructor vouches for the key that a signing key's text file or code holds; and the student hears of it.
    Q_INVOKABLE bool vouchFor(const QString& name, const QByteArray& key);
    /// Lays what one phone saved last ready for the other's file picker.
    Q_INVOKABLE void carryToPreceptor();
    Q_INVOKABLE void carryToStudent();
    /// A picture of a screen, held before the preceptor's or the student's camera.
    Q_INVOKABLE void preceptorCameraSees(const QString& picture);
    Q_INVOKABLE void studentCameraSees(const QString& picture);
    /// A file in the world's own folder.
    Q_INVOKABLE QString file(const QString& name) const;
    /// Other bytes for a phone's file picker: a card's code, a damaged answer.
    Q_INVOKABLE void readyBytes(bool preceptors, const QByteArray& bytes);
    Q_INVOKABLE QByteArray cardBytes(int preceptor) const;
    Q_INVOKABLE QByteArray lastSavedBy(bool preceptors) const;
    Q_INVOKABLE QByteArray changedAt(const QByteArray& bytes, int place) const;

    /// The director's rules: which strengths count, as bits (journal::Policy::counted). The student's phone gets them.
    Q_INVOKABLE void setCounted(int bits);
    /// Their other rules, which the student's phone gets: a credential with its roles as bits on the list of who may
    /// sign, a clinical day today at a site with its rule about phones, another set in force for everybody in some
    /// days.
    Q_INVOKABLE void expectSigner(const QString& credential, int roles);
    Q_INVOKABLE void listDayToday(const QString& site, int phones);
    Q_INVOKABLE void changeRequirements(const QString& set, int daysAhead);

    /// The app is closed and started again on the same vault.
    Q_INVOKABLE void restart();
    /// Lets go of the vault, so that another process can open it.
    void closePhone();
    /// Writes a preceptor's card into a file.
    void keepCard(int preceptor, const QString& file) const;
    Q_INVOKABLE void turnClock(int seconds);
    /// No file may grow any more, as on a full disk.
    Q_INVOKABLE void fillStorage(bool full);

    // What the journal on the phone says.
    Q_INVOKABLE int sheetCount();
    /// A sheet that was not told yet; of several, any. Empty: there is none.
    Q_INVOKABLE QString lastSheet();
    Q_INVOKABLE QString standingOf(const QString& id);
    Q_INVOKABLE QString roleOf(const QString& id);
    Q_INVOKABLE QString strengthOf(const QString& id);
    Q_INVOKABLE int signersOf(const QString& id);
    Q_INVOKABLE int handOversOf(const QString& id);
    Q_INVOKABLE int wrongTriesOf(const QString& id);
    /// How the last hand-over of the sheet ended, and after how many minutes.
    Q_INVOKABLE QString lastHandOverOf(const QString& id);
    Q_INVOKABLE QString categoriesOf(const QString& id);
    Q_INVOKABLE int journalBytes();

Q_SIGNALS:
    void phoneChanged();

private:
    struct Preceptor {
        std::string name;
        std::string pin;
        keys::SigningCard card;
        keys::VerifyKey key;
    };

    void beginProgram();
    void startPhone();
    [[nodiscard]] session::Clock clock();
    /// The student's phone takes in what the director has for it.
    void bringToStudent();
    [[nodiscard]] keys::Bytes cardCode(int preceptor) const;
    /// Stops the test when the phone is locked or has no such sheet.
    [[nodiscard]] const record::SheetRecord& sheet(const QString& id) const;
    [[nodiscard]] session::SheetPlace placeAtInstructor(const QString& id);

    QTemporaryDir m_own;
    QString m_folder;
    std::string m_vaultFile;
    vault::FolderMarkStore m_marks;
    keys::SystemRandom m_random;
    std::int64_t m_offset = 0;
    TestShare m_share;
    TestCamera m_camera;
    student::Shelf m_shelf;
    std::unique_ptr<session::Session> m_director;
    std::vector<Preceptor> m_preceptors;
    std::optional<keys::DeviceKey> m_ownPhone;
    std::unique_ptr<vault::FolderMarkStore> m_preceptorMarks;
    TestShare m_preceptorShare;
    TestCamera m_preceptorCamera;
    std::unique_ptr<shell::Phone> m_preceptorPhone;
    std::unique_ptr<shell::Phone> m_phone;
    QStringList m_known; ///< sheets that lastSheet() has told
    int m_saves = 0;
};

} // namespace peelpack::test
