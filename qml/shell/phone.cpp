#include "qml/shell/phone.h"

#include "qml/parts/after_frame.h"
#include "qml/words/bridge.h"
#include "qml/words/sentences.h"
#include "qml/words/words.h"
#include "sync/keys/code.h"

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

QStringList Phone::demoCards() const
{
    QStringList list;
    if (m_demo) {
        for (const demo::PhoneDemo::Card& card : m_demo->cards) {
            list.append(words::fromUtf8(card.name + ", " + card.credential) + QStringLiteral(" · ") +
                        tr("PIN %1").arg(words::fromUtf8(card.pin)));
        }
    }
    return list;
}

bool Phone::opensWithPin() const
{
    if (demo()) {
        return true;
    }
    if (m_vault == nullptr) {
        return false;
    }
    const auto kind = m_vault->secretKind();
    return kind && kind.value() == vault::SecretKind::Pin;
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

void Phone::unlock(const QString& secret)
{
    later([this, secret] {
        auto vault =
            vault::SqliteVault::open(m_surroundings.vaultFile, keys::bytesOf(words::secret(secret)),
                                     m_surroundings.marks, m_surroundings.random, m_surroundings.clock().seconds);
        if (!vault) {
            m_error = words::why(vault.error());
            return;
        }
        openVault(std::move(vault).value());
    });
}

void Phone::unlockWithCode(const QString& code)
{
    later([this, code] {
        const base::Result<keys::Secret> bytes =
            keys::codeFromText(keys::CodeSort::Vault, code.trimmed().toStdString());
        if (!bytes) {
            m_error = words::why(bytes.error());
            return;
        }
        auto vault = vault::SqliteVault::openWithCode(m_surroundings.vaultFile, bytes.value().view(),
                                                      m_surroundings.marks, m_surroundings.random);
        if (!vault) {
            m_error = words::why(vault.error());
            return;
        }
        openVault(std::move(vault).value());
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
        beginJoining();
    }
    Q_EMIT changed();
    if (m_stage != Welcome) {
        letGo(m_joining);
        letGo(m_startingToSign);
    }
    letGo(m_signing);
    letGo(m_handOver);
    letGo(m_student);
    letGo(m_desk);
    letGo(m_staff);
    letGo(m_staffDesk);
    m_demo.reset();
    m_staffDemo.reset();
    Q_EMIT changed();
}

void Phone::beginJoining()
{
    if (m_joining) {
        return;
    }
    m_joining = std::make_unique<Joining>(m_surroundings);
    m_startingToSign = std::make_unique<StartingToSign>(m_surroundings);
    Q_EMIT pagesChanged();
    connect(m_startingToSign.get(), &StartingToSign::finished, this, [this] {
        StartingToSign::Made made = m_startingToSign->take();
        if (made.own) {
            openSigning(std::move(made.own), made.vault);
        }
        letGo(m_startingToSign);
        letGo(m_joining);
    });
    connect(m_joining.get(), &Joining::finished, this, [this] {
        auto vault = m_joining->takeVault();
        if (vault) {
            openVault(std::move(vault));
        }
        letGo(m_joining);
        letGo(m_startingToSign);
    });
}

void Phone::lock()
{
    m_error.clear();
    close();
}

void Phone::openDemo()
{
    later([this] {
        auto made = demo::makePhoneDemo(m_surroundings.shelf.catalogue(), m_surroundings.clock, m_surroundings.random);
        if (!made) {
            m_error = words::why(made.error());
            return;
        }
        m_demo = std::move(made).value();
        m_demoTries = 0;
        openSession(std::move(m_demo->student));
    });
}

void Phone::openInstructorDemo()
{
    later([this] {
        auto made =
            demo::makeInstructorDemo(m_surroundings.shelf.catalogue(), m_surroundings.clock, m_surroundings.random);
        if (!made) {
            m_error = words::why(made.error());
            return;
        }
        m_staffDemo = std::move(made).value();
        openSession(std::move(m_staffDemo->instructor));
    });
}

void Phone::takeInDemoParcels()
{
    if (!m_staffDemo || !m_staff) {
        return;
    }
    QStringList names;
    QByteArrayList files;
    for (const demo::InstructorDemo::Parcel& parcel : m_staffDemo->parcels) {
        names.append(words::fromUtf8(parcel.name));
        files.append(words::toArray(parcel.bytes));
    }
    m_staff->parcels()->takeIn(names, files);
}

void Phone::leaveDemo()
{
    if (demo()) {
        close();
    }
}

QByteArray Phone::demoCard(int index) const
{
    if (!m_demo || index < 0 || index >= static_cast<int>(m_demo->cards.size())) {
        return {};
    }
    const keys::Bytes& code = m_demo->cards[static_cast<std::size_t>(index)].code;
    return words::toArray(code);
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

QString Phone::checkSecret(const QString& secret)
{
    if (m_demo) {
        return secret == QLatin1String(demo::phoneDemoPin)
                   ? QString()
                   : tr("That is not the demo's PIN: it is %1.").arg(QLatin1String(demo::phoneDemoPin));
    }
    if (m_vault == nullptr) {
        return tr("The phone is locked.");
    }
    const auto right = m_vault->check(keys::bytesOf(words::secret(secret)), m_surroundings.clock().seconds);
    return words::problem(right);
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

void Phone::changeSecret(const QString& now, const QString& next, const QString& again, bool pin)
{
    if (m_vault == nullptr) {
        m_error = demo() ? tr("The demo's PIN stays as it is.") : tr("The phone is locked.");
        Q_EMIT changed();
        return;
    }
    if (next != again) {
        m_error = tr("The two new PINs or passphrases differ.");
        Q_EMIT changed();
        return;
    }
    later([this, now, next, pin] {
        m_error = checkSecret(now);
        if (!m_error.isEmpty()) {
            return;
        }
        const auto changedNow = m_vault->changeSecret(pin ? vault::SecretKind::Pin : vault::SecretKind::Passphrase,
                                                      keys::bytesOf(words::secret(next)));
        m_error = words::problem(changedNow);
        m_notice = changedNow ? tr("Changed. From now on the new one opens this phone.") : QString();
    });
}

void Phone::makeVaultCode(const QString& now)
{
    if (m_vault == nullptr) {
        m_error = demo() ? tr("The demo has no vault code.") : tr("The phone is locked.");
        Q_EMIT changed();
        return;
    }
    later([this, now] {
        m_error = checkSecret(now);
        if (!m_error.isEmpty()) {
            return;
        }
        const auto code = m_vault->changeCode();
        if (!code) {
            m_error = words::why(code.error());
            return;
        }
        m_newVaultCode = words::shown(keys::codeText(keys::CodeSort::Vault, code.value().view()));
    });
}

void Phone::forgetVaultCode()
{
    m_newVaultCode.fill(QLatin1Char('0'));
    m_newVaultCode.clear();
    Q_EMIT changed();
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
