#include "qml/evidence/papers.h"

#include "platform/print/papers.h"
#include "platform/session/counting_rules.h"
#include "qml/parts/after_frame.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"

#include <algorithm>

namespace peelpack::evidence_pages {

/// What both threads look at while a paper is made.
struct Papers::Work {
    std::atomic<bool> canceled = false;
    std::atomic<std::size_t> page = 0;
    std::atomic<std::size_t> pages = 0;
    std::function<void()> tell; ///< thread-safe: something of this has changed
    Made made;
};

namespace {

/// A whole paper from what is to be counted.
using MakeDocument = std::function<print::Document(const print::CountedClass&)>;

} // namespace

Papers::Papers(instructor::StaffDesk& desk, instructor::PendingActs& pending, QObject* parent)
    : QObject(parent), m_desk(desk), m_pending(pending)
{
    connect(&desk, &instructor::StaffDesk::changed, this, &Papers::changed);
}

Papers::~Papers()
{
    if (m_work) {
        m_work->canceled = true;
    }
    if (m_thread.joinable()) {
        m_thread.join();
    }
}

QStringList Papers::classes() const
{
    return QStringList{tr("All students")} + m_desk.classes();
}

void Papers::setOfClass(int ofClass)
{
    m_ofClass = std::clamp(ofClass, 0, static_cast<int>(classes().size()) - 1);
    Q_EMIT changed();
}

QStringList Papers::sizes()
{
    return {tr("Letter"), tr("A4")};
}

void Papers::setSize(int size)
{
    m_size = std::clamp(size, 0, 1);
    Q_EMIT changed();
}

void Papers::choose(const QString& student)
{
    const auto key = instructor::SheetKey::fromText(student + QLatin1Char(':') + student);
    const instructor::Student* found = key ? m_desk.student(key->student) : nullptr;
    m_studentId = found == nullptr ? QString() : student;
    m_studentName = found == nullptr ? QString() : words::fromUtf8(found->person.name);
    m_error.clear();
    Q_EMIT changed();
}

std::vector<keys::Id> Papers::chosen() const
{
    const std::string ofClass = m_ofClass > 0 ? classes().value(m_ofClass).toStdString() : std::string();
    std::vector<keys::Id> found;
    for (const instructor::Student& student : m_desk.students()) {
        const bool wanted = m_studentId.isEmpty()
                                ? student.isIn(ofClass)
                                : QString::fromStdString(keys::hex(student.person.id.view())) == m_studentId;
        if (wanted) {
            found.push_back(student.person.id);
        }
    }
    return found;
}

void Papers::fail(const QString& why)
{
    m_error = why;
    Q_EMIT changed();
}

void Papers::make(int kind)
{
    if (busy()) {
        return;
    }
    if (!m_pending.writeNow()) { // what was decided a moment ago belongs on the paper
        fail(m_pending.error());
        return;
    }
    const std::vector<keys::Id> students = chosen();
    std::vector<record::StudentRecord> records;
    for (const keys::Id& id : students) {
        records.push_back(m_desk.student(id)->record);
    }
    const std::shared_ptr<const catalogue::Catalogue> catalogue = m_desk.shelf().shared();
    const auto input = std::make_shared<base::Result<print::ClassToCount>>(
        print::classToCount(m_desk.session(), std::move(records), *catalogue));
    if (!*input) {
        fail(words::why(input->error()));
        return;
    }
    const QString day = words::fromUtf8(m_desk.today().iso());
    if (kind == Rows) {
        start(QStringLiteral("case-sheets-%1.csv").arg(day), [input](Work&) {
            const session::RowsFile file = session::caseRowsFile(input->value().rules.rows, input->value().records);
            return Made{QByteArray::fromStdString(file.text),
                        tr("%n row(s). Not de-identified: keep it as an education record.", nullptr,
                           static_cast<int>(file.rows)),
                        {}};
        });
        return;
    }
    const print::ProgramFacts facts = print::factsOf(m_desk.session());
    const MakeDocument document = [kind, facts](const print::CountedClass& counted) {
        return kind == Log     ? print::caseLog(counted)
               : kind == Board ? print::classBoard(counted)
                               : print::programReport(counted, facts);
    };
    const print::PageFrame frame = print::frameFor(m_desk.session(), static_cast<print::PageSize>(m_size));
    const char* const names[]{"case-log-%1.pdf", "class-board-%1.pdf", "program-report-%1.pdf"};
    start(QString::fromLatin1(names[std::clamp(kind, 0, 2)]).arg(day),
          [input, document, frame, catalogue](Work& work) -> Made {
              const auto counted = print::countClass(std::move(*input).value(), *catalogue);
              if (!counted || work.canceled) {
                  return {{}, {}, counted ? QString() : words::why(counted.error())};
              }
              return setPaper(document(*counted.value()), frame, work);
          });
}

void Papers::makeSheet(const QString& text)
{
    const auto key = instructor::SheetKey::fromText(text);
    if (busy() || !m_pending.writeNow()) {
        fail(m_pending.error());
        return;
    }
    const instructor::Student* student = key ? m_desk.student(key->student) : nullptr;
    const record::SheetRecord* sheet = student == nullptr ? nullptr : m_desk.sheet(*key);
    if (sheet == nullptr) {
        fail(tr("There is no such sheet here."));
        return;
    }
    const std::shared_ptr<const catalogue::Catalogue> catalogue = m_desk.shelf().shared();
    const auto input = std::make_shared<base::Result<print::ClassToCount>>(
        print::classToCount(m_desk.session(), {student->record}, *catalogue));
    if (!*input) {
        fail(words::why(input->error()));
        return;
    }
    const print::PageFrame frame = print::frameFor(m_desk.session(), static_cast<print::PageSize>(m_size));
    start(QStringLiteral("case-sheet-%1.pdf").arg(words::fromUtf8(student->names.sheets.at(sheet->id))),
          [input, frame, one = *sheet, catalogue](Work& work) -> Made {
              const auto counted = print::countClass(std::move(*input).value(), *catalogue);
              return counted ? setPaper(print::caseSheet(*counted.value(), 0, one), frame, work)
                             : Made{{}, {}, words::why(counted.error())};
          });
}

void Papers::makeRecord(const QByteArray& file)
{
    if (busy()) {
        return;
    }
    const auto document = evidence::parseJson(file.toStdString());
    const auto record = document ? evidence::verifyRecord(document.value(), m_desk.session().program())
                                 : base::Result<evidence::CompletionRecord>(document.error());
    if (!record) {
        fail(tr("This is no completion record of this program, or it was changed: %1").arg(words::why(record.error())));
        return;
    }
    const print::PageFrame frame = print::frameFor(m_desk.session(), static_cast<print::PageSize>(m_size));
    start(QStringLiteral("completion-record.pdf"),
          [paper = print::completionPaper(record.value(), evidence::recordDigest(document.value())),
           frame](Work& work) { return setPaper(paper, frame, work); });
}

Papers::Made Papers::setPaper(const print::Document& document, const print::PageFrame& frame, Work& work)
{
    const auto pdf = print::makePdf(document, frame, [&work](std::size_t page, std::size_t pages) {
        constexpr std::size_t often = 8;
        work.page = page;
        work.pages = pages;
        if (page % often == 1) {
            work.tell();
        }
        return !work.canceled;
    });
    if (!pdf) {
        return {{}, {}, work.canceled ? QString() : words::why(pdf.error())};
    }
    return {pdf.value().bytes,
            tr("%n page(s). Keep it as an education record.", nullptr, static_cast<int>(pdf.value().pages)),
            {}};
}

void Papers::start(const QString& name, Step step)
{
    if (m_thread.joinable()) {
        m_thread.join(); // it has ended: nothing goes on
    }
    m_nextName = name;
    m_name.clear();
    m_bytes.clear();
    m_done.clear();
    m_error.clear();
    m_progress = tr("Counting");
    m_work = std::make_shared<Work>();
    const std::shared_ptr<Work> work = m_work;
    work->tell = [this, told = work.get()] {
        QMetaObject::invokeMethod(
            this, [this, told] { tellProgress(*told); }, Qt::QueuedConnection);
    };
    Q_EMIT changed();
    m_thread = std::thread([this, work, step = std::move(step)] {
        work->made = step(*work);
        QMetaObject::invokeMethod(
            this, [this, work] { finish(work); }, Qt::QueuedConnection);
    });
}

void Papers::tellProgress(const Work& work)
{
    if (&work == m_work.get()) {
        m_progress = tr("Page %1 of %2").arg(work.page.load()).arg(work.pages.load());
        Q_EMIT changed();
    }
}

void Papers::finish(const std::shared_ptr<Work>& work)
{
    if (work != m_work) {
        return; // canceled
    }
    m_thread.join();
    m_work.reset();
    m_progress.clear();
    m_error = work->made.error;
    if (m_error.isEmpty()) {
        m_bytes = work->made.bytes;
        m_done = work->made.words;
        m_name = m_nextName;
    }
    Q_EMIT changed();
    if (!m_bytes.isEmpty()) {
        Q_EMIT ready(m_name);
    }
}

void Papers::cancel()
{
    if (!m_work) {
        return;
    }
    m_work->canceled = true;
    m_work.reset(); // the thread ends by itself; what it made is not looked at
    m_progress.clear();
    m_done.clear();
    m_error = tr("Stopped; nothing was made.");
    Q_EMIT changed();
}

} // namespace peelpack::evidence_pages
