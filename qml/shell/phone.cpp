#include "qml/shell/phone.h"

#include "qml/parts/after_frame.h"
#include "qml/words/bridge.h"
#include "qml/words/sentences.h"
#include "qml/words/words.h"

#include <QFile>

namespace peelpack::shell {
namespace {

constexpr int handOverMinutes = 10; // without a touch: the preceptor has left

/// Once the screens over it are gone, which the stage has ended already.
template <class Object>
void letGo(std::unique_ptr<Object>& object)
{
    if (object) {
        object.release()->deleteLater();
    }
}

} // namespace

Phone::Phone(Surroundings surroundings, QObject* parent)
    : QObject(parent), m_surroundings(std::move(surroundings)), m_settings(m_surroundings.settingsFile),
      m_idle(m_surroundings.clock)
{
    connect(&m_idle, &IdleWatch::idle, this, &Phone::onIdle);
    close();
}

Phone::~Phone() = default;

bool Phone::hasVault() const
{
    return QFile::exists(QString::fromStdString(m_surroundings.vaultFile));
}

void Phone::later(const std::function<void()>& work)
{
    if (m_busy) {
        return;
    }
    m_busy = true;
    m_error.clear();
    Q_EMIT changed();
    parts::afterFrame(this, [this, work] {
        m_busy = false;
        work();
        Q_EMIT changed();
    });
}

void Phone::openVault(std::unique_ptr<vault::SqliteVault> vault)
{
    vault::SqliteVault* kept = vault.get();
    auto opened = session::openWhosever(std::move(vault), m_surroundings.clock, m_surroundings.random);
    if (!opened) {
        m_error = words::why(opened.error());
        return;
    }
    session::OpenedVault whose = std::move(opened).value();
    if (whose.preceptor) {
        openSigning(std::move(whose.preceptor), kept);
        return;
    }
    m_vault = kept;
    openSession(std::move(whose.session));
}

void Phone::openSigning(std::unique_ptr<session::PreceptorVault> own, vault::SqliteVault* vault)
{
    QStringList notices;
    for (const std::string& damage : own->damage()) {
        notices.append(words::said(damage));
    }
    m_vault = vault;
    m_signing = std::make_unique<preceptor::SigningPhone>(
        std::move(own), [this](const QString& secret) { return checkSecret(secret); });
    m_notice = notices.join(QLatin1Char('\n'));
    begin(Signing);
}

void Phone::openSession(std::unique_ptr<session::Session> session)
{
    QStringList notices;
    for (const std::string& damage : session->damage()) {
        notices.append(words::said(damage));
    }
    if (!m_tellOnOpening.isEmpty()) {
        notices.append(std::exchange(m_tellOnOpening, QString()));
    }
    if (session->isStaff()) {
        m_staffDesk = std::make_unique<instructor::StaffDesk>(std::move(session), m_surroundings.shelf);
        m_staff = std::make_unique<instructor::StaffPages>(*m_staffDesk);
        m_evidence = std::make_unique<evidence_pages::EvidencePages>(*m_staffDesk, *m_staff->pending());
        m_program = std::make_unique<program::ProgramPages>(*m_staffDesk, *m_staff->pending());
        stayOpenFor(*m_staff->parcels()->codes(), *m_staff->parcels()->reading());
        m_notice = notices.join(QLatin1Char('\n'));
        begin(Staff);
        return;
    }
    if (session->role() != journal::Role::Student) {
        m_vault = nullptr;
        begin(Elsewhere);
        return;
    }
    m_desk = std::make_unique<student::Desk>(std::move(session), m_surroundings.shelf);
    m_student = std::make_unique<student::StudentPages>(*m_desk);
    stayOpenFor(*m_student->parcels()->codes(), *m_student->parcels()->reading());
    Stage stage = Open;
    if (const auto begun = preceptor::HandOver::begun(*m_desk)) {
        notices.append(
            tr("The phone was with a preceptor when the app ended. What was marked and not signed is gone."));
        m_givenAway = begun->sheets;
        m_handOver = std::make_unique<preceptor::HandOver>(*m_desk, begun->sheets, begun->at);
        stage = HandedOver;
    }
    m_notice = notices.join(QLatin1Char('\n'));
    begin(stage);
}

void Phone::begin(Stage stage)
{
    Q_EMIT pagesChanged();
    m_stage = stage;
    Q_EMIT changed();
    touched();
}

void Phone::close()
{
    m_vault = nullptr;
    if (m_staff && !m_staff->pending()->writeNow()) {
        m_error = m_staff->pending()->error();
    }
    m_newVaultCode.clear();
    m_notice.clear();
    m_idle.stop();
    m_stage = hasVault() ? Locked : Welcome;
    if (m_stage == Welcome) {
        beginFirstStarts();
    }
    Q_EMIT changed();
    if (m_stage != Welcome) {
        letGo(m_first);
    }
    letGo(m_signing);
    letGo(m_handOver);
    letGo(m_student);
    letGo(m_desk);
    letGo(m_evidence);
    letGo(m_program);
    letGo(m_staff);
    letGo(m_staffDesk);
    m_demo.reset();
    m_staffDemo.reset();
    Q_EMIT changed();
}

void Phone::beginFirstStarts()
{
    if (m_first) {
        return;
    }
    m_first = std::make_unique<FirstStarts>(m_surroundings);
    Q_EMIT pagesChanged();
    connect(m_first.get(), &FirstStarts::readyToSign, this, [this] {
        StartingToSign::Made made = m_first->signing()->take();
        if (made.own) {
            openSigning(std::move(made.own), made.vault);
        }
        letGo(m_first);
    });
    connect(m_first.get(), &FirstStarts::made, this, [this](FirstStart* start) {
        auto vault = start->takeVault();
        if (vault) {
            openVault(std::move(vault));
        }
        letGo(m_first);
    });
}

void Phone::lock()
{
    m_error.clear();
    close();
}

void Phone::giveAway(const QStringList& sheets)
{
    if (m_stage != Open || sheets.isEmpty()) {
        return;
    }
    if (const session::WriteBar bar = m_desk->session().writeBar(); bar.stands()) {
        m_error = words::said(bar.sentence);
        Q_EMIT changed();
        return;
    }
    m_error.clear();
    m_givenAway = sheets;
    m_handOver = std::make_unique<preceptor::HandOver>(*m_desk, sheets, m_desk->session().now());
    begin(HandedOver);
}

void Phone::takeBack(const QString& secret)
{
    if (m_stage != HandedOver) {
        return;
    }
    later([this, secret] {
        m_error = checkSecret(secret);
        if (!m_error.isEmpty()) {
            return;
        }
        const bool isSigned = m_handOver->step() == preceptor::HandOver::Signed;
        m_error = m_handOver->end(journal::HandOverCause::Canceled);
        if (!m_error.isEmpty()) {
            return;
        }
        m_notice.clear();
        begin(Open);
        letGo(m_handOver);
        Q_EMIT cameBack(m_givenAway.value(0), isSigned);
    });
}

void Phone::clearMessages()
{
    if (!m_error.isEmpty() || !m_notice.isEmpty()) {
        m_error.clear();
        m_notice.clear();
        Q_EMIT changed();
    }
}

void Phone::speakAnew()
{
    if (m_first) {
        m_first->settingUp()->rules()->speakAnew();
    }
    if (m_desk) {
        m_desk->refresh();
    }
    if (m_signing) {
        m_signing->speakAnew();
    }
    if (m_staffDesk) {
        m_staffDesk->speakAnew();
    }
    Q_EMIT changed();
}

void Phone::touched()
{
    if (m_stage == Open || m_stage == Staff || m_stage == Signing) {
        m_idle.watch(m_settings.lockMinutes());
    } else if (m_stage == HandedOver) {
        m_idle.watch(handOverMinutes);
    }
}

void Phone::stayOpenFor(const light::RunningCodes& codes, const light::CodeReading& reading)
{
    connect(&codes, &light::RunningCodes::shown, &m_idle, &IdleWatch::stillInUse);
    connect(&reading, &light::CodeReading::took, &m_idle, &IdleWatch::stillInUse);
}

void Phone::onIdle()
{
    if (demo()) {
        return;
    }
    m_error.clear();
    if (m_stage == HandedOver) {
        const bool unfinished = m_handOver->isUnfinished();
        m_error = m_handOver->end(journal::HandOverCause::TimedOut);
        if (!m_error.isEmpty()) {
            m_tellOnOpening = tr("That the hand-over ended could not be recorded, and it goes on: %1").arg(m_error);
        } else if (unfinished) {
            m_tellOnOpening =
                tr("The hand-over ended after %n minute(s) without a touch. What was marked and not signed is gone.",
                   nullptr, handOverMinutes);
        }
    }
    close();
}

} // namespace peelpack::shell
