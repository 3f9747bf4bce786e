#pragma once

#include "platform/session/signing.h"
#include "platform/vault/install_mark.h"
#include "qml/shell/phone.h"
#include "tests/qml/support/test_camera.h"
#include "tests/qml/support/test_share.h"

#include <QTemporaryDir>

#include <memory>
#include <vector>

namespace peelpack::test {

/// A class around one instructor: their real vault, and a real vault for each of two students, every one of them on a
/// device of its own; a director; a preceptor with a card. Whose device is in hand can be changed.
class ClassWorld : public QObject {
    Q_OBJECT
    Q_PROPERTY(peelpack::shell::Phone* phone READ phone NOTIFY phoneChanged)

public:
    explicit ClassWorld(QObject* parent = nullptr);
    ~ClassWorld() override;

    [[nodiscard]] shell::Phone* phone() { return m_phone.get(); }

    static constexpr const char* secret = "amber walnut lantern";

    /// Takes up the device of "director", "instructor", "Ines Duarte" or "Caleb Nwosu"; the one before is put down,
    /// locked.
    Q_INVOKABLE void hold(const QString& whose);
    /// A student's sheet, signed by the preceptor: first-scrub skills Yes, except those named (as CSV columns), which
    /// are No. Answers the sheet's id.
    Q_INVOKABLE QString signedSheet(const QString& student, const QString& procedure, const QStringList& no = {});
    /// The same of the operation in this room from half past seven to nine.
    Q_INVOKABLE QString signedSheetIn(const QString& student, const QString& procedure, const QString& room);
    /// Signed by the instructor's own card.
    Q_INVOKABLE QString sheetSignedByInstructor(const QString& student, const QString& procedure);
    Q_INVOKABLE void askReview(const QString& student, const QString& sheet, int skill, const QString& reason);
    /// The students' parcels lie ready for the file picker.
    Q_INVOKABLE void readyParcels(const QStringList& students);
    /// What was saved last for this student lies ready for the file picker.
    Q_INVOKABLE bool readyAnswer(const QString& student);
    Q_INVOKABLE void readyBroken();
    // The camera of whatever device is in hand.
    Q_INVOKABLE void cameraIsThere(bool there);
    /// Picture files, one after another.
    Q_INVOKABLE bool cameraSees(const QStringList& pictures);
    /// A picture file of a code with these bytes.
    Q_INVOKABLE QString pictureOf(const QByteArray& code, const QString& name) const;
    /// A code of a parcel by light with another piece in it, and otherwise right.
    Q_INVOKABLE QByteArray lieAbout(const QByteArray& code) const;
    /// A file in the world's own folder.
    Q_INVOKABLE QString file(const QString& name) const;
    Q_INVOKABLE void readyText(const QString& name, const QString& text);
    /// The parcels of these students are dropped on the window from a file manager, or the folder that holds them.
    Q_INVOKABLE bool dropParcels(QObject* window, const QStringList& students, bool asFolder);
    /// A student's vault is put back to how it was, and written on: two sheets of two histories, and both parcels lie
    /// ready for the file picker. Answers the sheets.
    Q_INVOKABLE QStringList splitRecord(const QString& student, const QString& procedure, const QString& other);
    /// The instructor, on their own device, takes in the student's parcel and initials what is signed.
    Q_INVOKABLE void initialAtInstructor(const QString& student);
    /// The instructor's parcel for colleagues, taken in by the director.
    Q_INVOKABLE void bringToDirector();
    /// As it is typed.
    [[nodiscard]] Q_INVOKABLE QString programCode() const { return QString::fromStdString(m_programCode); }
    // Of the saved file whose name holds this.
    [[nodiscard]] Q_INVOKABLE QString savedText(const QString& name) const;
    [[nodiscard]] Q_INVOKABLE bool isPdf(const QString& name) const;
    /// "Ines Duarte, exception: why" of a completion record that verifies.
    [[nodiscard]] Q_INVOKABLE QString verifiedRecord(const QString& name);
    /// Sheets that are proven to be in the record beside them; all that the file holds, else -1.
    [[nodiscard]] Q_INVOKABLE int provenSheets(const QString& name);
    [[nodiscard]] Q_INVOKABLE int savedFiles() const { return static_cast<int>(m_share.kept.size()); }

    // What the vault in hand says, which is open.
    Q_INVOKABLE QString standingOf(const QString& student, const QString& sheet);
    Q_INVOKABLE QString roleOf(const QString& student, const QString& sheet);
    Q_INVOKABLE QString categoryOf(const QString& student, const QString& sheet);
    /// A line for each of the student's sheets from a paper log: "2026-01-14 Appendectomy second imported: page 3".
    Q_INVOKABLE QStringList importedOf(const QString& student);
    /// As in keyOf, of the sheet on that line.
    Q_INVOKABLE QString keyOfImported(const QString& student, int index);
    /// Entries of the device in hand in a student's stream.
    Q_INVOKABLE int actsAbout(const QString& student);
    Q_INVOKABLE int decisionsAbout(const QString& student);
    Q_INVOKABLE QString keyOf(const QString& student, const QString& sheet) const;

Q_SIGNALS:
    void phoneChanged();

private:
    struct Member {
        QString name;
        keys::Id person;
        std::string vaultFile;
        std::unique_ptr<session::Session> beside; ///< open without the screens
    };

    [[nodiscard]] const Member& member(const QString& name) const;
    void join(session::Session& inviter, const QString& name, journal::Role role, const char* file);
    session::UnlockedCard newCard(session::Session& staff, const std::string& name, const keys::Id& person,
                                  const char* pin);
    /// A member's vault without the screens, open until somebody takes up the device.
    session::Session& beside(const QString& name);
    QString makeSheet(const QString& student, const journal::Draft& draft, const QStringList& no,
                      const session::UnlockedCard& card, const char* signer);
    record::SheetRecord recordOf(const QString& student, const QString& sheet);
    [[nodiscard]] session::Session& inHand();

    QTemporaryDir m_folder;
    vault::FolderMarkStore m_marks;
    keys::SystemRandom m_random;
    TestShare m_share;
    TestCamera m_camera;
    student::Shelf m_shelf;
    std::string m_directorFile;
    std::string m_programCode;
    std::unique_ptr<session::Session> m_director; ///< while the director's device is not in hand
    std::vector<Member> m_members;                ///< the instructor first
    std::optional<session::UnlockedCard> m_card;
    std::optional<session::UnlockedCard> m_ownCard; ///< of the instructor
    std::unique_ptr<shell::Phone> m_phone;
};

} // namespace peelpack::test
