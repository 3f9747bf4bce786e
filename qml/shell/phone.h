#pragma once

#include "platform/demo/instructor_demo.h"
#include "platform/demo/phone_demo.h"
#include "qml/evidence/evidence_pages.h"
#include "qml/instructor/staff_pages.h"
#include "qml/preceptor/hand_over.h"
#include "qml/preceptor/signing_phone.h"
#include "qml/program/program_pages.h"
#include "qml/shell/first_starts.h"
#include "qml/shell/idle_watch.h"
#include "qml/shell/settings.h"
#include "qml/student/student_pages.h"

#include <QVariantList>

namespace peelpack::shell {

/// In whose hands the app is, and how one gets from one to the other: not set up, locked, the student's, a
/// preceptor's; a preceptor's own phone; or an instructor's. Keys and sheets are in memory only while it is open.
class Phone : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the app")
    Q_PROPERTY(peelpack::shell::Phone::Stage stage READ stage NOTIFY changed)
    Q_PROPERTY(bool demo READ demo NOTIFY changed)
    Q_PROPERTY(QStringList demoCards READ demoCards NOTIFY changed)
    Q_PROPERTY(bool opensWithPin READ opensWithPin NOTIFY changed)
    Q_PROPERTY(bool busy READ busy NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)
    Q_PROPERTY(QString notice READ notice NOTIFY changed)
    Q_PROPERTY(QString newVaultCode READ newVaultCode NOTIFY changed)
    Q_PROPERTY(peelpack::student::StudentPages* student READ student NOTIFY pagesChanged)
    Q_PROPERTY(peelpack::instructor::StaffPages* staff READ staff NOTIFY pagesChanged)
    Q_PROPERTY(peelpack::evidence_pages::EvidencePages* evidence READ evidence NOTIFY pagesChanged)
    Q_PROPERTY(peelpack::program::ProgramPages* program READ program NOTIFY pagesChanged)
    Q_PROPERTY(peelpack::preceptor::HandOver* handOver READ handOver NOTIFY pagesChanged)
    Q_PROPERTY(peelpack::preceptor::SigningPhone* signing READ signing NOTIFY pagesChanged)
    Q_PROPERTY(peelpack::shell::FirstStarts* first READ first NOTIFY pagesChanged)
    Q_PROPERTY(peelpack::shell::Settings* settings READ settings CONSTANT)
    Q_PROPERTY(peelpack::camera::Camera* camera READ camera CONSTANT)
    Q_PROPERTY(peelpack::share::Share* share READ share CONSTANT)

public:
    enum Stage { Welcome, Locked, Open, HandedOver, Elsewhere, Signing, Staff };
    Q_ENUM(Stage)

    explicit Phone(Surroundings surroundings, QObject* parent = nullptr);
    ~Phone() override;

    [[nodiscard]] Stage stage() const { return m_stage; }
    [[nodiscard]] bool demo() const { return m_demo.has_value() || m_staffDemo.has_value(); }
    /// Of the demo: "T. Osei, CST · PIN 730518".
    [[nodiscard]] QStringList demoCards() const;
    [[nodiscard]] bool opensWithPin() const;
    [[nodiscard]] bool hasVault() const;
    [[nodiscard]] bool busy() const { return m_busy; }
    [[nodiscard]] const QString& error() const { return m_error; }
    /// Something that the person should know after opening: damage, a hand-over that was going on.
    [[nodiscard]] const QString& notice() const { return m_notice; }
    /// A code that was just made, shown once.
    [[nodiscard]] const QString& newVaultCode() const { return m_newVaultCode; }
    [[nodiscard]] student::StudentPages* student() const { return m_student.get(); }
    [[nodiscard]] instructor::StaffPages* staff() const { return m_staff.get(); }
    [[nodiscard]] evidence_pages::EvidencePages* evidence() const { return m_evidence.get(); }
    /// Rules, people and cards, for staff.
    [[nodiscard]] program::ProgramPages* program() const { return m_program.get(); }
    /// The open journal of staff; null while it is locked or a student's. Not for the screens.
    [[nodiscard]] instructor::StaffDesk* staffDesk() const { return m_staffDesk.get(); }
    /// The open journal; null while it is locked. Not for the screens.
    [[nodiscard]] student::Desk* desk() const { return m_desk.get(); }
    [[nodiscard]] preceptor::HandOver* handOver() const { return m_handOver.get(); }
    /// On a preceptor's own phone; null elsewhere.
    [[nodiscard]] preceptor::SigningPhone* signing() const { return m_signing.get(); }
    /// Null once this phone is somebody's.
    [[nodiscard]] FirstStarts* first() const { return m_first.get(); }
    [[nodiscard]] Settings* settings() { return &m_settings; }
    [[nodiscard]] camera::Camera* camera() const { return &m_surroundings.camera; }
    [[nodiscard]] share::Share* share() const { return &m_surroundings.share; }

    Q_INVOKABLE void unlock(const QString& secret);
    Q_INVOKABLE void unlockWithCode(const QString& code);
    Q_INVOKABLE void lock();
    Q_INVOKABLE void openDemo();
    Q_INVOKABLE void openInstructorDemo();
    /// The same program in its director's hands.
    void openDirectorDemo();
    /// Parcels of the demo's students that nobody has taken in yet.
    Q_INVOKABLE void takeInDemoParcels();
    Q_INVOKABLE void leaveDemo();
    Q_INVOKABLE [[nodiscard]] QByteArray demoCard(int index) const;
    /// Of the demo in staff's hands, as it is typed; empty elsewhere.
    [[nodiscard]] QString demoProgramCode() const;
    /// Gives the phone to a preceptor for these sheets.
    Q_INVOKABLE void giveAway(const QStringList& sheets);
    /// Back to the student, with the secret that opens the phone.
    Q_INVOKABLE void takeBack(const QString& secret);
    Q_INVOKABLE void changeSecret(const QString& now, const QString& next, const QString& again, bool pin);
    Q_INVOKABLE void makeVaultCode(const QString& now);
    Q_INVOKABLE void forgetVaultCode();
    Q_INVOKABLE void clearMessages();
    /// The language changed: what was put into words is put into words anew.
    void speakAnew();
    /// Something was touched: the time until the phone locks begins anew.
    Q_INVOKABLE void touched();

Q_SIGNALS:
    void changed();
    /// There are new pages' objects. Not told when they go: the screens over them go first.
    void pagesChanged();
    /// The phone came back from a preceptor: about this sheet (32 digits), signed or not.
    void cameBack(const QString& sheet, bool isSigned);

private:
    void later(const std::function<void()>& work);
    void openStaffDemo(bool asDirector);
    void openVault(std::unique_ptr<vault::SqliteVault> vault);
    void openSession(std::unique_ptr<session::Session> session);
    void openSigning(std::unique_ptr<session::PreceptorVault> own, vault::SqliteVault* vault);
    void close();
    void onIdle();
    void begin(Stage stage);
    void beginFirstStarts();
    /// It does not lock while codes run or are read: nobody touches it then.
    void stayOpenFor(const light::RunningCodes& codes, const light::CodeReading& reading);
    [[nodiscard]] QString checkSecret(const QString& secret);

    Surroundings m_surroundings;
    Settings m_settings;
    Stage m_stage = Welcome;
    std::unique_ptr<FirstStarts> m_first;
    std::unique_ptr<preceptor::SigningPhone> m_signing;
    std::optional<demo::PhoneDemo> m_demo;
    std::optional<demo::InstructorDemo> m_staffDemo;
    std::unique_ptr<instructor::StaffDesk> m_staffDesk;
    std::unique_ptr<instructor::StaffPages> m_staff;
    std::unique_ptr<evidence_pages::EvidencePages> m_evidence;
    std::unique_ptr<program::ProgramPages> m_program;
    vault::SqliteVault* m_vault = nullptr; ///< of the session; null in the demo
    std::unique_ptr<student::Desk> m_desk;
    std::unique_ptr<student::StudentPages> m_student;
    std::unique_ptr<preceptor::HandOver> m_handOver;
    QStringList m_givenAway;
    IdleWatch m_idle;
    QString m_tellOnOpening; ///< how a hand-over ended while nobody was looking
    bool m_busy = false;
    QString m_error;
    QString m_notice;
    QString m_newVaultCode;
};

} // namespace peelpack::shell
