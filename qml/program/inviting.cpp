#include "qml/program/inviting.h"

#include "platform/session/class_list.h"
#include "qml/program/people.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"
#include "sync/merge/record_content.h"
#include "sync/trust/rights.h"

#include <QClipboard>
#include <QGuiApplication>

namespace peelpack::program {
namespace {

using journal::Role;

constexpr qsizetype mostName = 80;

std::vector<Role> rolesFor(Role inviter)
{
    std::vector<Role> roles;
    for (const Role role : {Role::Student, Role::Instructor, Role::Coordinator, Role::Contact}) {
        if (trust::mayGrant(inviter, role)) {
            roles.push_back(role);
        }
    }
    return roles;
}

} // namespace

QString describe(const session::OpenInvitation& open, base::Date today)
{
    const base::Result<keys::Invitation> invitation = keys::Invitation::fromCode(open.code);
    if (!invitation) {
        return {};
    }
    QStringList parts{roleName(static_cast<Role>(invitation.value().role))};
    if (!open.scopes.empty()) {
        parts.append(words::listed(open.scopes));
    }
    if (open.again) {
        parts.append(Inviting::tr("for another device"));
    }
    const base::Date until = merge::timeOf({invitation.value().expiry, 0}).day();
    parts.append(Inviting::tr("until %1").arg(words::day(until, today)));
    return parts.join(QStringLiteral(" · "));
}

Inviting::Inviting(ProgramDesk& desk, QObject* parent) : QObject(parent), m_desk(desk)
{
    connect(&desk, &ProgramDesk::written, this, &Inviting::read);
}

QStringList Inviting::roles()
{
    QStringList names;
    for (const Role role : rolesFor(m_desk.session().role())) {
        names.append(words::capitalized(roleName(role)));
    }
    return names;
}

QStringList Inviting::classes()
{
    return m_desk.staff().classes();
}

QString Inviting::fileName() const
{
    return words::fromUtf8(session::invitationNames({m_name.toStdString()}).front());
}

void Inviting::read()
{
    std::vector<OpenInvitationRow> rows;
    for (const session::OpenInvitation& open : session::openInvitations(m_desk.session())) {
        rows.push_back({words::fromUtf8(open.name), describe(open, m_desk.today())});
    }
    m_open.put(std::move(rows));
    Q_EMIT changed();
}

bool Inviting::invite(int role, const QString& name, const QString& scopes)
{
    const std::vector<Role> roles = rolesFor(m_desk.session().role());
    if (role < 0 || role >= static_cast<int>(roles.size())) {
        return false;
    }
    std::vector<std::string> list;
    for (const QString& scope : scopes.split(QLatin1Char(';'))) {
        if (std::string line = words::line(scope, mostName); !line.empty()) {
            list.push_back(std::move(line));
        }
    }
    return made(session::invite(m_desk.session(), words::line(name, mostName), roles[static_cast<std::size_t>(role)],
                                list, std::nullopt, session::usualInvitationDays));
}

bool Inviting::inviteAgain(const QString& person)
{
    const session::Directory directory(m_desk.session());
    const session::Person* known = directory.person(idFrom(person));
    return known != nullptr && made(session::inviteAgain(m_desk.session(), *known, session::usualInvitationDays));
}

bool Inviting::made(const base::Result<session::OpenInvitation>& invitation)
{
    m_error = words::problem(invitation);
    if (invitation) {
        show(invitation.value());
    }
    read();
    return invitation.ok();
}

void Inviting::show(int index)
{
    const std::vector<session::OpenInvitation> open = session::openInvitations(m_desk.session());
    if (index >= 0 && index < static_cast<int>(open.size())) {
        show(open[static_cast<std::size_t>(index)]);
    }
    Q_EMIT changed();
}

void Inviting::show(const session::OpenInvitation& invitation)
{
    m_error.clear();
    m_name = words::fromUtf8(invitation.name);
    m_what = describe(invitation, m_desk.today());
    m_code = words::toArray(invitation.code);
    m_text = words::codeAsText(m_code);
}

void Inviting::copyText() const
{
    QGuiApplication::clipboard()->setText(m_text);
}

bool Inviting::withdraw()
{
    const base::Result<bool> done = session::withdrawInvitation(m_desk.session(), words::toBytes(m_code));
    m_error = words::problem(done);
    read();
    return done.ok();
}

void Inviting::forget()
{
    wipe(m_code);
    wipe(m_text);
    m_error.clear();
    Q_EMIT changed();
}

} // namespace peelpack::program
