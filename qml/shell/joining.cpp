#include "qml/shell/joining.h"

#include "qml/words/bridge.h"
#include "qml/words/words.h"

#include <QClipboard>
#include <QGuiApplication>

namespace peelpack::shell {
QString Joining::program() const
{
    return m_invitation ? words::fromUtf8(keys::hex(m_invitation->program.view()).substr(0, 8)) : QString();
}

void Joining::read(const QByteArray& code)
{
    base::Result<keys::Invitation> invitation = keys::Invitation::fromCode(words::toBytes(code));
    if (!invitation) {
        fail(words::why(invitation.error()));
        return;
    }
    if (invitation.value().expiry < surroundings().clock().seconds) {
        fail(tr("This invitation has expired: ask for a new one."));
        return;
    }
    m_invitation.emplace(std::move(invitation).value());
    fail({});
}

void Joining::readText(const QString& text)
{
    const std::optional<QByteArray> code = words::pastedCode(text);
    if (!code) {
        fail(tr("This is not the text of an invitation. Copy all of it."));
        return;
    }
    read(*code);
}

void Joining::drop()
{
    m_invitation.reset();
    fail({});
}

void Joining::join(const QString& name, const QString& secret, const QString& again, bool pin)
{
    if (!m_invitation) {
        return;
    }
    const std::string called = words::line(name, mostName);
    if (called.empty()) {
        fail(tr("Write your name as your instructor knows it."));
        return;
    }
    FirstStart::make({secret, again, pin},
                     [this, called](std::unique_ptr<vault::SqliteVault>& vault) -> base::Result<bool> {
                         const base::Result<keys::InvitationReply> reply = session::join(*vault, *m_invitation, called);
                         if (!reply) {
                             return reply.error();
                         }
                         m_reply = words::toArray(reply.value().code());
                         m_digits = words::fromUtf8(keys::comparisonDigits(*m_invitation, reply.value()));
                         m_invitation.reset();
                         return true;
                     });
}

void Joining::copyReply() const
{
    QGuiApplication::clipboard()->setText(words::codeAsText(m_reply));
}

} // namespace peelpack::shell
