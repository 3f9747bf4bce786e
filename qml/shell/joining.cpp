#include "qml/shell/joining.h"

#include "qml/parts/after_frame.h"
#include "qml/shell/new_vault.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"

namespace peelpack::shell {
namespace {

constexpr qsizetype mostText = 4096;
constexpr qsizetype mostName = 80;

} // namespace

Joining::Joining(Surroundings& surroundings, QObject* parent) : QObject(parent), m_surroundings(surroundings) {}

QString Joining::program() const
{
    return m_invitation ? words::fromUtf8(keys::hex(m_invitation->program.view()).substr(0, 8)) : QString();
}

void Joining::fail(QString sentence)
{
    m_error = std::move(sentence);
    Q_EMIT changed();
}

void Joining::read(const QByteArray& code)
{
    base::Result<keys::Invitation> invitation = keys::Invitation::fromCode(words::toBytes(code));
    if (!invitation) {
        fail(words::why(invitation.error()));
        return;
    }
    if (invitation.value().expiry < m_surroundings.clock().seconds) {
        fail(tr("This invitation has expired: ask for a new one."));
        return;
    }
    m_invitation.emplace(std::move(invitation).value());
    m_error.clear();
    Q_EMIT changed();
}

void Joining::readText(const QString& text)
{
    QByteArray letters;
    for (const QChar letter : text.left(mostText)) {
        if (!letter.isSpace()) {
            letters.append(letter.toLatin1());
        }
    }
    letters.replace('-', '+').replace('_', '/');
    const auto decoded = QByteArray::fromBase64Encoding(letters, QByteArray::AbortOnBase64DecodingErrors);
    if (letters.isEmpty() || !decoded) {
        fail(tr("This is not the text of an invitation. Copy all of it."));
        return;
    }
    read(decoded.decoded);
}

void Joining::drop()
{
    m_invitation.reset();
    m_error.clear();
    Q_EMIT changed();
}

void Joining::join(const QString& name, const QString& secret, const QString& again, bool pin)
{
    if (!m_invitation || m_busy) {
        return;
    }
    const std::string called = words::line(name, mostName);
    if (called.empty()) {
        fail(tr("Write your name as your instructor knows it."));
        return;
    }
    if (const QString differs = whyNotSame(secret, again, pin); !differs.isEmpty()) {
        fail(differs);
        return;
    }
    m_busy = true;
    m_error.clear();
    Q_EMIT changed();
    parts::afterFrame(this, [this, called, secret, pin] {
        m_busy = false;
        auto made = makeVault(m_surroundings, secret, pin);
        if (!made) {
            fail(words::why(made.error()));
            return;
        }
        NewVault fresh = std::move(made).value();
        const base::Result<keys::InvitationReply> reply = session::join(*fresh.vault, *m_invitation, called);
        if (!reply) {
            fail(words::why(reply.error()));
            return;
        }
        m_reply = words::toArray(reply.value().code());
        m_digits = words::fromUtf8(keys::comparisonDigits(*m_invitation, reply.value()));
        m_vaultCode = fresh.code;
        m_vault = std::move(fresh.vault);
        Q_EMIT changed();
    });
}

std::unique_ptr<vault::SqliteVault> Joining::takeVault()
{
    return std::move(m_vault);
}

void Joining::finish()
{
    m_vaultCode.fill(QLatin1Char('0'));
    m_vaultCode.clear();
    m_invitation.reset();
    Q_EMIT changed();
    Q_EMIT finished();
}

} // namespace peelpack::shell
