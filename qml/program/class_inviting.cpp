#include "qml/program/class_inviting.h"

#include "qml/words/bridge.h"
#include "qml/words/sentences.h"
#include "qml/words/words.h"

namespace peelpack::program {

QStringList ClassInviting::listed() const
{
    QStringList lines;
    for (const session::ListedStudent& student : m_list.students) {
        lines.append(words::fromUtf8(student.name) + QStringLiteral(" · ") + words::fromUtf8(student.className));
    }
    return lines;
}

QStringList ClassInviting::refused() const
{
    QStringList lines;
    for (const session::RefusedLine& line : m_list.refused) {
        lines.append(tr("Line %1: %2").arg(line.line).arg(words::said(line.sentence)));
    }
    return lines;
}

void ClassInviting::read(const QString& name, const QByteArray& csv)
{
    forget();
    m_file = name;
    m_list = session::classListFrom({csv.constData(), static_cast<std::size_t>(csv.size())});
    Q_EMIT changed();
}

void ClassInviting::invite()
{
    m_error.clear();
    while (m_made.size() < m_list.students.size()) {
        const session::ListedStudent& student = m_list.students[m_made.size()];
        const auto made = session::invite(m_desk.session(), student.name, journal::Role::Student, {student.className},
                                          std::nullopt, session::usualInvitationDays);
        if (!made) {
            m_error = words::why(made.error());
            break;
        }
        m_made.push_back(made.value());
    }
    Q_EMIT changed();
}

QStringList ClassInviting::fileNames() const
{
    std::vector<std::string> people;
    for (const session::OpenInvitation& invitation : m_made) {
        people.push_back(invitation.name);
    }
    QStringList names;
    for (const std::string& name : session::invitationNames(people)) {
        names.append(words::fromUtf8(name));
    }
    return names;
}

QVariantList ClassInviting::files() const
{
    QVariantList files;
    for (const session::OpenInvitation& invitation : m_made) {
        files.append(words::toArray(invitation.code));
    }
    return files;
}

void ClassInviting::forget()
{
    for (session::OpenInvitation& invitation : m_made) {
        keys::wipe(invitation.code);
    }
    m_made.clear();
    m_list = {};
    m_file.clear();
    m_error.clear();
    Q_EMIT changed();
}

} // namespace peelpack::program
