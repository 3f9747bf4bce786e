#include "qml/program/signer_list.h"

#include "platform/session/program_rules.h"
#include "platform/session/rule_writing.h"
#include "qml/words/bridge.h"
#include "qml/words/rules.h"
#include "qml/words/words.h"

#include <algorithm>

namespace peelpack::program {
namespace {

constexpr qsizetype mostCredential = 40;

} // namespace

SignerList::SignerList(ProgramDesk& desk, QObject* parent) : QObject(parent), m_desk(desk)
{
    connect(&desk, &ProgramDesk::written, this, &SignerList::read);
}

bool SignerList::mayChange()
{
    return session::mayWriteRule(m_desk.session(), journal::Kind::WhoMaySign);
}

void SignerList::setCredential(const QString& credential)
{
    if (credential != m_credential) {
        m_credential = credential;
        Q_EMIT changed();
    }
}

void SignerList::turn(std::uint8_t role, bool on)
{
    m_roles = static_cast<std::uint8_t>(on ? m_roles | role : m_roles & ~role);
    Q_EMIT changed();
}

void SignerList::read()
{
    std::vector<NamedRow> rows;
    for (const journal::MaySign& signer : session::whoMaySign(m_desk.session())) {
        rows.push_back({static_cast<int>(rows.size()), words::fromUtf8(signer.credential),
                        words::capitalized(words::roles(signer.roles))});
    }
    m_rows.put(std::move(rows));
    Q_EMIT changed();
}

void SignerList::begin(const journal::MaySign& signer)
{
    m_before = signer.credential;
    m_credential = words::fromUtf8(signer.credential);
    m_roles = signer.roles;
    m_error.clear();
    m_editing = true;
    Q_EMIT changed();
}

void SignerList::begin()
{
    begin(journal::MaySign());
}

void SignerList::change(int row)
{
    const std::vector<journal::MaySign> signers = session::whoMaySign(m_desk.session());
    if (mayChange() && row >= 0 && row < static_cast<int>(signers.size())) {
        begin(signers[static_cast<std::size_t>(row)]);
    }
}

void SignerList::leave()
{
    m_editing = false;
    m_error.clear();
    Q_EMIT changed();
}

void SignerList::write(std::vector<journal::MaySign> signers)
{
    m_error =
        m_desk.write([&] { return words::problem(session::setWhoMaySign(m_desk.session(), std::move(signers))); });
    m_editing = !m_error.isEmpty();
    Q_EMIT changed();
}

void SignerList::sign()
{
    journal::MaySign signer{words::line(m_credential, mostCredential), m_roles};
    std::vector<journal::MaySign> signers = session::whoMaySign(m_desk.session());
    const bool listed = std::any_of(signers.begin(), signers.end(),
                                    [&](const journal::MaySign& one) { return one.credential == signer.credential; });
    m_error = signer.credential.empty()                 ? tr("Which credential? It is missing.")
              : signer.roles == 0                       ? tr("Turn on at least one role that it may sign.")
              : listed && signer.credential != m_before ? tr("This credential is on the list: change that one.")
                                                        : QString();
    if (!m_error.isEmpty()) {
        Q_EMIT changed();
        return;
    }
    if (auto others = session::withoutSigner(signers, m_before)) {
        signers = std::move(others).value();
    }
    write(session::withSigner(std::move(signers), std::move(signer)));
}

void SignerList::remove()
{
    auto signers = session::withoutSigner(session::whoMaySign(m_desk.session()), m_before);
    if (!signers) {
        m_error = words::why(signers.error());
        Q_EMIT changed();
        return;
    }
    write(std::move(signers).value());
}

} // namespace peelpack::program
