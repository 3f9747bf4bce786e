#include "qml/instructor/staff_parcels.h"

#include "platform/session/directory.h"
#include "platform/session/exchange.h"
#include "qml/parts/after_frame.h"
#include "qml/words/bridge.h"
#include "qml/words/sentences.h"
#include "qml/words/words.h"

#include <algorithm>

namespace peelpack::instructor {
namespace {

constexpr const char* givenNote = "given"; ///< by student: how much of our own record was in the last parcel
const QString toColleagues = QStringLiteral("staff");

std::optional<keys::Id> idFrom(const QString& digits)
{
    const QByteArray bytes = QByteArray::fromHex(digits.toLatin1());
    keys::Id id;
    if (bytes.size() != static_cast<qsizetype>(id.bytes.size())) {
        return std::nullopt;
    }
    std::copy(bytes.begin(), bytes.end(), id.bytes.begin());
    return id;
}

} // namespace

StaffParcels::StaffParcels(StaffDesk& desk, PendingActs& pending, QObject* parent)
    : QObject(parent), m_desk(desk), m_pending(pending)
{
    connect(&desk, &StaffDesk::changed, this, &StaffParcels::readAnswers);
    connect(&m_reading, &light::CodeReading::came, this,
            [this](const QByteArray& parcel) { takeIn({tr("Codes")}, {parcel}); });
    readAnswers();
}

QString StaffParcels::progress() const
{
    return m_queue.empty() ? QString() : tr("File %1 of %2").arg(m_total - m_queue.size() + 1).arg(m_total);
}

void StaffParcels::takeIn(const QStringList& names, const QByteArrayList& files)
{
    if (busy() || files.isEmpty() || !m_pending.writeNow()) {
        m_error = m_pending.error();
        Q_EMIT changed();
        return;
    }
    m_fileRows.clear();
    m_splitRows.clear();
    m_remarks.clear();
    m_summary.clear();
    m_error.clear();
    m_taken = 0;
    m_receipts = 0;
    for (qsizetype i = files.size(); i-- > 0;) {
        m_queue.push_back({names.value(i).toStdString(), words::toBytes(files[i])});
    }
    m_total = m_queue.size();
    Q_EMIT changed();
    parts::afterFrame(this, [this] { takeNext(); });
}

void StaffParcels::takeNext()
{
    if (m_queue.empty()) {
        return; // canceled
    }
    std::vector<session::OfferedFile> file;
    file.push_back(std::move(m_queue.back()));
    const QString name = QString::fromStdString(file.front().name);
    m_queue.pop_back();
    const base::Result<session::IntakeReport> report = session::takeIn(m_desk.session(), std::move(file));
    if (report) {
        add(report.value(), name);
    } else {
        m_fileRows.push_back({name, words::why(report.error()), true});
    }
    if (m_queue.empty()) {
        finish();
        return;
    }
    Q_EMIT changed();
    parts::afterFrame(this, [this] { takeNext(); });
}

void StaffParcels::cancel()
{
    if (busy()) {
        const auto left = static_cast<int>(m_queue.size());
        m_queue.clear();
        m_remarks.append(tr("Stopped: %n file(s) were not looked at.", nullptr, left));
        finish();
    }
}

void StaffParcels::finish()
{
    m_summary = m_taken == 0 ? tr("Nothing new.")
                             : tr("%n new item(s) taken in.", nullptr, static_cast<int>(m_taken)) + QLatin1Char(' ') +
                                   tr("%n receipt(s) signed.", nullptr, static_cast<int>(m_receipts));
    m_files.put(std::move(m_fileRows));
    m_splits.put(std::move(m_splitRows));
    m_fileRows.clear();
    m_splitRows.clear();
    m_remarks.removeDuplicates();
    m_desk.refresh();
    Q_EMIT changed();
}

void StaffParcels::add(const session::IntakeReport& report, const QString& name)
{
    m_taken += report.taken;
    m_receipts += report.receipts;
    for (const session::FileOutcome& file : report.files) {
        if (!file.used) {
            m_fileRows.push_back({name, tr("Not used. %1").arg(words::said(file.whyNot)), true});
            continue;
        }
        QStringList parts{tr("%n new", nullptr, static_cast<int>(file.taken)),
                          tr("%n known", nullptr, static_cast<int>(file.known))};
        QStringList lines{parts.join(QStringLiteral(", "))};
        if (file.waits) {
            lines.append(tr("A part waits for something that came before it."));
        }
        bool grave = file.waits;
        for (const merge::Finding& finding : file.findings) {
            if (finding.verdict == journal::Verdict::Refused) {
                grave = true;
                lines.append(
                    tr("Refused, item %1 of %2: %3")
                        .arg(finding.seq)
                        .arg(writerInWords(m_desk, finding.feed), words::said(journal::sentence(finding.reason))));
            }
        }
        lines.removeDuplicates();
        m_fileRows.push_back({name, lines.join(QLatin1Char('\n')), grave});
    }
    for (const journal::ForkEvidence& fork : report.forks) {
        m_splitRows.push_back(splitInWords(m_desk, fork));
    }
    for (const merge::Contradiction& older : report.contradictions) {
        m_remarks.append(
            (older.sort == merge::Contradiction::Sort::Rewritten
                 ? tr("What came of the record of %1 differs from what was received before.")
                 : tr("What came of the record of %1 is older than what was received before, or its end was cut off."))
                .arg(writerInWords(m_desk, older.receipt.covered.feed)));
    }
    for (const auto& [stream, reason] : report.withoutReceipt) {
        const Student* student = m_desk.student(stream);
        m_remarks.append(tr("No receipt for %1: %2")
                             .arg(student == nullptr ? tr("one record") : words::fromUtf8(student->person.name),
                                  words::said(journal::sentence(reason))));
    }
    if (report.ownRecordSplit) {
        m_remarks.append(words::said(m_desk.session().writeBar().sentence));
    }
}

std::uint32_t StaffParcels::ownCount(const keys::Id& student) const
{
    const base::Result<journal::FeedId> own = m_desk.session().ownFeed(student);
    const journal::Feed* feed = own ? m_desk.session().ledger().feed(own.value()) : nullptr;
    return feed == nullptr ? 0 : feed->count();
}

std::map<keys::Id, std::uint32_t> StaffParcels::givenCounts() const
{
    std::map<keys::Id, std::uint32_t> counts;
    const auto note = m_desk.session().note(givenNote);
    constexpr std::size_t one = sizeof(keys::Id::bytes) + sizeof(std::uint32_t);
    for (std::size_t at = 0; note && at + one <= note->size(); at += one) {
        keys::Id id;
        std::copy_n(note->begin() + static_cast<std::ptrdiff_t>(at), id.bytes.size(), id.bytes.begin());
        std::uint32_t count = 0;
        for (std::size_t i = 0; i < sizeof count; ++i) {
            count |= static_cast<std::uint32_t>((*note)[at + id.bytes.size() + i]) << (8 * i);
        }
        counts[id] = count;
    }
    return counts;
}

void StaffParcels::readAnswers()
{
    const std::map<keys::Id, std::uint32_t> given = givenCounts();
    std::vector<AnswerRow> rows;
    for (const Student& student : m_desk.students()) {
        const auto before = given.find(student.person.id);
        const std::uint32_t had = before == given.end() ? 0 : before->second;
        const std::uint32_t now = ownCount(student.person.id);
        if (now > had) {
            rows.push_back({QString::fromStdString(keys::hex(student.person.id.view())),
                            words::fromUtf8(student.person.name),
                            tr("%n item(s) from you that they do not have yet", nullptr, static_cast<int>(now - had))});
        }
    }
    m_answers.put(std::move(rows));
    Q_EMIT changed();
}

QByteArray StaffParcels::packFor(const QString& id)
{
    m_error.clear();
    if (!m_pending.writeNow()) {
        m_error = m_pending.error();
        Q_EMIT changed();
        return {};
    }
    const session::Session& session = m_desk.session();
    const session::Directory directory(session);
    const auto student = idFrom(id);
    const session::Person* person = student ? directory.person(*student) : nullptr;
    base::Result<session::Recipients> to =
        id == toColleagues ? session::toColleagues(session)
        : person != nullptr
            ? session::toStudent(session, *person)
            : base::Result<session::Recipients>(base::Error{base::ErrorCode::NotFound, "There is no such student."});
    const base::Result<std::vector<keys::Bytes>> made =
        to ? session::makeParcels(session, to.value()) : base::Result<std::vector<keys::Bytes>>(to.error());
    if (!made || made.value().size() != 1) {
        m_error = made ? tr("This is too large for one parcel: use the peelpack command.") : words::why(made.error());
        Q_EMIT changed();
        return {};
    }
    return words::toArray(made.value().front());
}

bool StaffParcels::packAsCodesFor(const QString& id)
{
    const QByteArray parcel = packFor(id);
    if (m_error.isEmpty() && !m_codes.lay(words::toBytes(parcel))) {
        m_error = tr("This parcel is too large for codes: save it as a file.");
        Q_EMIT changed();
    }
    return m_error.isEmpty();
}

QString StaffParcels::whoIs(const QString& id) const
{
    const auto student = idFrom(id);
    const session::Directory directory(m_desk.session());
    const session::Person* person = student ? directory.person(*student) : nullptr;
    return person == nullptr ? tr("For the other instructors and the director")
                             : tr("For %1").arg(words::fromUtf8(person->name));
}

QString StaffParcels::nameFor(const QString& id) const
{
    const auto student = idFrom(id);
    const session::Directory directory(m_desk.session());
    const session::Person* person = student ? directory.person(*student) : nullptr;
    QString name;
    for (const QChar letter : person == nullptr ? QStringLiteral("staff") : words::fromUtf8(person->name).toLower()) {
        name += letter.isLetterOrNumber() ? letter : QLatin1Char('-');
    }
    return QStringLiteral("to-") + name + QLatin1Char('-') + words::fromUtf8(m_desk.today().iso()) +
           QStringLiteral(".peelparcel");
}

void StaffParcels::given(const QStringList& ids)
{
    std::map<keys::Id, std::uint32_t> counts = givenCounts();
    for (const QString& id : ids) {
        if (const auto student = idFrom(id)) {
            counts[*student] = ownCount(*student);
        }
    }
    keys::Bytes note;
    for (const auto& [student, count] : counts) {
        note.insert(note.end(), student.bytes.begin(), student.bytes.end());
        for (unsigned i = 0; i < sizeof count; ++i) {
            note.push_back(static_cast<std::uint8_t>(count >> (8U * i)));
        }
    }
    m_error = words::problem(m_desk.session().setNote(givenNote, std::move(note)));
    readAnswers();
}

} // namespace peelpack::instructor
