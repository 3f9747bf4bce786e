#include "qml/program/people.h"

#include "platform/session/completion.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"
#include "sync/merge/receipts.h"
#include "sync/trust/rights.h"

#include <algorithm>
#include <tuple>

namespace peelpack::program {

using journal::Role;

QString roleName(Role role)
{
    switch (role) {
    case Role::Director:
        return People::tr("director");
    case Role::Instructor:
        return People::tr("instructor");
    case Role::Coordinator:
        return People::tr("coordinator");
    case Role::Contact:
        return People::tr("contact of a site");
    case Role::Student:
        return People::tr("student");
    }
    return {};
}

People::People(ProgramDesk& desk, QObject* parent) : QObject(parent), m_desk(desk)
{
    connect(&desk, &ProgramDesk::written, this, [this] {
        read();
        show(m_person);
    });
}

QString People::detailOf(const session::Person& person)
{
    QStringList parts;
    if (person.role != Role::Student) {
        parts.append(person.id == m_desk.session().person() ? tr("%1, you").arg(roleName(person.role))
                                                            : roleName(person.role));
        if (!person.scopes.empty()) {
            parts.append(words::listed(person.scopes));
        }
    }
    const auto ended = std::count_if(person.devices.begin(), person.devices.end(),
                                     [](const session::GrantedDevice& device) { return device.revoked; });
    parts.append(
        tr("%n device(s)", nullptr, static_cast<int>(person.devices.size() - static_cast<std::size_t>(ended))));
    if (ended > 0) {
        parts.append(tr("%n ended", nullptr, static_cast<int>(ended)));
    }
    return parts.join(QStringLiteral(" · "));
}

void People::read()
{
    std::vector<PersonRow> students;
    std::vector<PersonRow> staff;
    const session::Directory directory(m_desk.session());
    std::vector<const session::Person*> people;
    for (const session::Person& person : directory.people()) {
        people.push_back(&person);
    }
    std::stable_sort(people.begin(), people.end(), [](const session::Person* a, const session::Person* b) {
        return a->role == Role::Student && b->role == Role::Student && a->scopes < b->scopes;
    });
    QString group;
    for (const session::Person* person : people) {
        PersonRow row{digitsOf(person->id), words::fromUtf8(person->name), detailOf(*person), {}};
        if (person->role != Role::Student) {
            staff.push_back(row);
            continue;
        }
        const QString classes = words::listed(person->scopes);
        if (students.empty() || classes != group) {
            row.heading = classes;
            group = classes;
        }
        students.push_back(row);
    }
    m_students.put(std::move(students));
    m_staff.put(std::move(staff));
    Q_EMIT changed();
}

void People::show(const QString& person)
{
    if (person != m_person) {
        m_error.clear();
    }
    m_person = person;
    const session::Directory directory(m_desk.session());
    const session::Person* found = directory.person(idFrom(person));
    std::vector<DeviceRow> devices;
    m_endsByCode = false;
    if (found != nullptr) {
        m_name = words::fromUtf8(found->name);
        QStringList what{roleName(found->role)};
        if (!found->scopes.empty()) {
            what.append(words::listed(found->scopes));
        }
        m_what = what.join(QStringLiteral(" · "));
        m_mayInviteAgain = trust::mayGrant(m_desk.session().role(), found->role);
        const bool mayEnd = session::mayEnd(m_desk.session(), *found);
        const keys::Id stream = session::grantStream(m_desk.session(), found->role, found->id);
        for (const session::GrantedDevice& device : found->devices) {
            const auto received = merge::receiptedCount(m_desk.session().authority(), {device.key, stream});
            DeviceRow row{QString::fromStdString(keys::hex(device.key.view())),
                          tr("Device %1").arg(devices.size() + 1),
                          {},
                          mayEnd && !device.revoked};
            row.detail = device.revoked ? tr("ended; what was received before stays good")
                         : received > 0 ? tr("in use · %n entry(s) received", nullptr, static_cast<int>(received))
                                        : tr("in use · nothing received yet");
            devices.push_back(row);
            m_endsByCode = m_endsByCode || (!device.revoked && session::endsByCode(m_desk.session(), *found));
        }
    }
    m_devices.put(std::move(devices));
    Q_EMIT changed();
}

void People::end(const QString& device, const QString& reason)
{
    const session::Directory directory(m_desk.session());
    const session::Person* found = directory.person(idFrom(m_person));
    const auto key = keys::VerifyKey::from(words::toBytes(QByteArray::fromHex(device.toLatin1())));
    constexpr qsizetype mostReason = 400;
    const std::string why = words::line(reason, mostReason);
    if (found == nullptr || !key || why.empty()) {
        return;
    }
    const session::Person person = *found; // the directory is made anew
    m_error = m_desk.write([&] { return words::problem(session::endDevices(m_desk.session(), person, why, *key)); });
    Q_EMIT changed();
}

void People::endDirector(const QString& code)
{
    const session::Directory directory(m_desk.session());
    const session::Person* found = directory.person(idFrom(m_person));
    const auto key = session::programKeyFromCode(m_desk.session().program(), words::secret(code.trimmed()));
    if (found == nullptr || !key) {
        m_error = words::problem(key);
        Q_EMIT changed();
        return;
    }
    const session::Person director = *found; // the directory is made anew
    m_error =
        m_desk.write([&] { return words::problem(session::endDirector(m_desk.session(), key.value(), director)); });
    Q_EMIT changed();
}

} // namespace peelpack::program
