#include "qml/program/granting.h"

#include "qml/program/inviting.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"

namespace peelpack::program {

void Granting::fail(const QString& sentence)
{
    m_error = sentence;
    Q_EMIT changed();
}

void Granting::forget()
{
    m_reply.reset();
    m_done.clear();
    m_digits.clear();
    fail({});
}

void Granting::read(const QByteArray& code)
{
    forget();
    const base::Result<keys::InvitationReply> reply = keys::InvitationReply::fromCode(words::toBytes(code));
    if (!reply) {
        fail(words::why(reply.error()));
        return;
    }
    const base::Result<session::Answered> answered = session::matchReply(m_desk.session(), reply.value());
    if (!answered) {
        fail(words::why(answered.error()));
        return;
    }
    m_reply = reply.value();
    m_name = words::fromUtf8(answered.value().invitation.name);
    m_what = describe(answered.value().invitation, m_desk.today());
    m_digits = words::fromUtf8(answered.value().digits);
    fail({});
}

void Granting::readText(const QString& text)
{
    const std::optional<QByteArray> code = words::pastedCode(text);
    if (!code) {
        fail(tr("This is not the text of an answer. Copy all of it."));
        return;
    }
    read(*code);
}

bool Granting::grant()
{
    if (!m_reply) {
        return false;
    }
    const QString problem = m_desk.write([this] { return words::problem(session::grant(m_desk.session(), *m_reply)); });
    if (problem.isEmpty()) {
        forget();
        m_done = tr("%1 is in. Send them a parcel next: then their phone knows it, too.").arg(m_name);
    }
    fail(problem);
    return problem.isEmpty();
}

void Granting::refuse()
{
    forget();
    fail(tr("Nothing was granted: somebody else may have answered. Invite %1 again; the old invitation is good for "
            "nothing then.")
             .arg(m_name));
}

} // namespace peelpack::program
