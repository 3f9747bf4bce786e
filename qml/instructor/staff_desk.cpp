#include "qml/instructor/staff_desk.h"

#include "platform/session/program_catalogue.h"
#include "platform/session/repudiations.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"
#include "sync/merge/record_content.h"

#include <algorithm>

namespace peelpack::instructor {
namespace {

constexpr int sliceMs = 12;    ///< of work between two looks at what the person does
constexpr qint64 tellMs = 180; ///< between two reports of progress
constexpr qsizetype idDigits = 32;

std::optional<std::array<std::uint8_t, 16>> idFrom(const QString& digits)
{
    const QByteArray bytes = QByteArray::fromHex(digits.toLatin1());
    std::array<std::uint8_t, 16> id{};
    if (digits.size() != idDigits || bytes.size() != static_cast<qsizetype>(id.size())) {
        return std::nullopt;
    }
    std::copy(bytes.begin(), bytes.end(), id.begin());
    return id;
}

} // namespace

QString SheetKey::text() const
{
    return QString::fromStdString(keys::hex(student.view())) + QLatin1Char(':') + words::fromUtf8(sheet.hex());
}

std::optional<SheetKey> SheetKey::fromText(const QString& text)
{
    const QStringList parts = text.split(QLatin1Char(':'));
    const auto student = idFrom(parts.value(0));
    const auto sheet = idFrom(parts.value(1));
    if (parts.size() != 2 || !student || !sheet) {
        return std::nullopt;
    }
    return SheetKey{keys::Id{*student}, base::Id{*sheet}};
}

StaffDesk::StaffDesk(std::unique_ptr<session::Session> session, student::Shelf& shelf, QObject* parent)
    : QObject(parent), m_session(std::move(session)), m_shelf(shelf)
{
    m_work.setInterval(0);
    connect(&m_work, &QTimer::timeout, this, &StaffDesk::work);
    readPeople();
}

base::Date StaffDesk::today() const
{
    return merge::timeOf(m_session->now()).day();
}

QString StaffDesk::name() const
{
    const session::Directory directory(*m_session);
    const session::Person* own = directory.person(m_session->person());
    if (own != nullptr && !own->name.empty()) {
        return words::fromUtf8(own->name);
    }
    const auto note = m_session->note(session::notes::name);
    return note ? QString::fromUtf8(words::toArray(*note)) : tr("Instructor");
}

const requirement::RequirementSet* StaffDesk::setOf(const Student& student) const
{
    return m_sets.sets.empty() ? nullptr : &m_sets.of(m_places.at(student.person.id));
}

void StaffDesk::readPeople()
{
    m_shelf.layOver(session::overlayInForce(*m_session));
    m_students.clear();
    m_places.clear();
    std::vector<keys::Id> ids;
    const session::Directory directory(*m_session);
    for (const session::Person& person : directory.people()) {
        if (person.role == journal::Role::Student) {
            m_places.emplace(person.id, m_students.size());
            Student& student = m_students.emplace_back();
            student.person = person;
            ids.push_back(person.id);
        }
    }
    m_nextToFold = 0;
    m_nextToCount = 0;
    m_stamp = ++m_stamps;
    base::Result<session::SetsInForce> sets = session::setsInForce(*m_session, ids);
    m_setError = words::problem(sets);
    m_sets = sets ? std::move(sets).value() : session::SetsInForce{};
    const std::vector<role::RoleRules> roles = session::roleRulesInForce(*m_session, ids);
    for (std::size_t i = 0; i < roles.size(); ++i) {
        m_students[i].rules.roles = roles[i];
    }
    m_told.start();
    m_work.start();
}

bool Student::isIn(const std::string& className) const
{
    return className.empty() || std::find(person.scopes.begin(), person.scopes.end(), className) != person.scopes.end();
}

QStringList StaffDesk::classes() const
{
    QStringList found;
    for (const Student& student : m_students) {
        for (const std::string& scope : student.person.scopes) {
            found.append(words::fromUtf8(scope));
        }
    }
    found.removeDuplicates();
    found.sort();
    return found;
}

Student* StaffDesk::find(const keys::Id& id)
{
    const auto found = m_places.find(id);
    return found == m_places.end() ? nullptr : &m_students[found->second];
}

void StaffDesk::fold(Student& student)
{
    if (student.folded) {
        return;
    }
    student.record = m_session->recordOf(student.person.id);
    student.names = record::shortNames(student.record);
    student.notTheirs = session::repudiatedIn(*m_session, student.person.id);
    student.rules = session::sheetRules(*m_session, student.person.id, student.rules.roles);
    student.folded = true;
    student.stamp = m_stamp = ++m_stamps;
}

void StaffDesk::count(Student& student)
{
    const requirement::RequirementSet* set = setOf(student);
    if (student.counted || set == nullptr) {
        return;
    }
    fold(student);
    base::Result<session::CaseBook> cases = session::caseBook(*m_session, catalogue(), student.record);
    if (!cases) {
        return;
    }
    student.counted = std::make_unique<Student::Counted>(Student::Counted{std::move(cases).value(), {}});
    tally::Tallier tallier(*set, tally::Level::Recorded, tally::everyStrength);
    student.counted->tally = student.counted->cases.tally(tallier, 0, {true, false, false});
    student.stamp = ++m_stamps;
}

const Student* StaffDesk::student(const keys::Id& id)
{
    Student* found = find(id);
    if (found != nullptr) {
        fold(*found);
    }
    return found;
}

const record::SheetRecord* StaffDesk::sheet(const SheetKey& key)
{
    const Student* owner = student(key.student);
    if (owner == nullptr) {
        return nullptr;
    }
    const auto found = std::lower_bound(owner->record.sheets.begin(), owner->record.sheets.end(), key.sheet,
                                        [](const record::SheetRecord& one, const base::Id& id) { return one.id < id; });
    return found == owner->record.sheets.end() || found->id != key.sheet ? nullptr : &*found;
}

const Student::Counted* StaffDesk::counted(const keys::Id& id)
{
    Student* found = find(id);
    if (found == nullptr) {
        return nullptr;
    }
    count(*found);
    return found->counted.get();
}

std::optional<tally::StudentTally> StaffDesk::tallyAt(const keys::Id& id, tally::Level level)
{
    const Student::Counted* made = counted(id);
    if (made == nullptr) {
        return std::nullopt;
    }
    tally::Tallier tallier(*setOf(*find(id)), level, tally::everyStrength);
    return made->cases.tally(tallier, 0, {true, false, true});
}

std::size_t StaffDesk::foldedCount() const
{
    return m_nextToFold;
}

std::size_t StaffDesk::countedCount() const
{
    return m_nextToCount;
}

bool StaffDesk::workOnce()
{
    if (m_nextToFold < m_students.size()) {
        fold(m_students[m_nextToFold++]);
    } else if (m_nextToCount < m_students.size()) {
        count(m_students[m_nextToCount++]);
    }
    return !isReady();
}

void StaffDesk::work()
{
    QElapsedTimer slice;
    slice.start();
    bool more = true;
    while (more && slice.elapsed() < sliceMs) {
        more = workOnce();
    }
    if (!more) {
        m_work.stop();
    }
    if (!more || m_told.elapsed() > tellMs) {
        m_told.start();
        Q_EMIT changed();
    }
}

void StaffDesk::finish()
{
    while (workOnce()) {
    }
    m_work.stop();
    Q_EMIT changed();
}

QString StaffDesk::write(const std::vector<session::Writing>& writings)
{
    const auto written = m_session->append(writings);
    if (!written) {
        return words::why(written.error());
    }
    for (const session::Writing& writing : writings) {
        if (Student* student = find(writing.stream)) {
            const bool wasCounted = student->counted != nullptr;
            student->folded = false;
            student->counted.reset();
            fold(*student);
            if (wasCounted) {
                count(*student);
            }
        }
    }
    Q_EMIT changed();
    return {};
}

void StaffDesk::speakAnew()
{
    for (Student& student : m_students) {
        student.stamp = m_stamp = ++m_stamps;
    }
    Q_EMIT changed();
}

void StaffDesk::refresh()
{
    readPeople();
    Q_EMIT changed();
}

} // namespace peelpack::instructor
