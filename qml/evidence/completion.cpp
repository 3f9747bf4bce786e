#include "qml/evidence/completion.h"

#include "core/sheet/identifiers.h"
#include "platform/evidence/file_text.h"
#include "platform/print/papers.h"
#include "platform/session/completion.h"
#include "qml/instructor/check_words.h"
#include "qml/words/bridge.h"
#include "qml/words/sentences.h"
#include "qml/words/words.h"

#include <algorithm>

namespace peelpack::evidence_pages {
namespace {

constexpr qsizetype mostReason = 400; ///< letters
constexpr qsizetype shortDigits = 8;

QString fileStem(const QString& name)
{
    QString stem;
    for (const QChar letter : name.toLower()) {
        stem += letter.isLetterOrNumber() ? letter : QLatin1Char('-');
    }
    return stem;
}

QByteArray fileOf(const evidence::Json& document)
{
    return QByteArray::fromStdString(evidence::fileText(document));
}

} // namespace

struct Completion::Known {
    std::optional<session::CompletionState> state;
    std::vector<session::CompletionDecision> decisions;
    std::optional<session::MadeRecord> made;
    QByteArray paper;
    std::optional<evidence::Json> proofs; ///< made, or opened
};

Completion::Completion(instructor::StaffDesk& desk, instructor::PendingActs& pending, QObject* parent)
    : QObject(parent), m_desk(desk), m_pending(pending), m_known(std::make_unique<Known>())
{
    connect(&desk, &instructor::StaffDesk::changed, this, [this] {
        if (!m_id.isEmpty()) {
            read();
        }
    });
}

Completion::~Completion() = default;

bool Completion::complete() const
{
    return m_known->state && m_known->state->complete();
}

void Completion::show(const QString& student)
{
    static_cast<void>(m_pending.writeNow()); // what was initialed a moment ago counts
    m_id = student;
    m_error = m_pending.error();
    m_made.clear();
    m_known = std::make_unique<Known>();
    read();
    readProofs();
}

void Completion::read()
{
    const auto key = instructor::SheetKey::fromText(m_id + QLatin1Char(':') + m_id);
    const instructor::Student* student = key ? m_desk.student(key->student) : nullptr;
    if (student == nullptr) {
        return;
    }
    m_student = words::fromUtf8(student->person.name);
    m_bar = words::said(m_desk.session().writeBar().sentence);
    m_standing.clear();
    m_targets.clear();
    const auto state = session::completionState(m_desk.session(), m_desk.catalogue(), student->person.id);
    m_known->state = state ? std::optional(state.value()) : std::nullopt;
    if (state) {
        m_standing = tr("%1 of %2 cases count, as initialed.").arg(state.value().counted).arg(state.value().required);
        for (std::size_t i = 0; i < state.value().targets.size(); ++i) {
            const evidence::TargetMet& target = state.value().targets[i];
            const requirement::RequirementSet* set = m_desk.setOf(*student);
            const QString label =
                set != nullptr && i < set->targets.size() ? words::of(set->targets[i]) : words::fromUtf8(target.id);
            m_targets.append(tr("%1: %2 of %3").arg(words::capitalized(label)).arg(target.placed).arg(target.required));
        }
    }
    if (m_desk.session().role() != journal::Role::Director) {
        m_bar = tr("Only the director decides who has met the requirements. You are here as an instructor.");
    } else if (m_bar.isEmpty() && !state) {
        m_bar = words::why(state.error());
    }
    m_known->decisions = session::decisionsAbout(m_desk.session(), student->person.id);
    readDecisions();
    const auto earlier = session::lastRecordOf(m_desk.session(), student->person.id);
    m_earlier = !earlier || !m_made.isEmpty()
                    ? QString()
                    : tr("A record of this student was made before: %1. A new one says that it supersedes it.")
                          .arg(words::fromUtf8(earlier->id));
    Q_EMIT changed();
}

void Completion::readDecisions()
{
    m_decisions.clear();
    m_decided = false;
    for (const session::CompletionDecision& decision : m_known->decisions) {
        QString line = instructor::inWords(decision, m_desk.today());
        if (&decision != &m_known->decisions.back()) {
            line += QLatin1Char(' ') + tr("Superseded by a later decision.");
        } else if (m_known->state) {
            m_decided = session::isAbout(decision, *m_known->state);
            if (!m_decided) {
                line += QLatin1Char(' ') + tr("Since then, sheets or rules have changed; it stands as it was decided.");
            }
        }
        m_decisions.prepend(line);
    }
}

bool Completion::refuse(const QString& why)
{
    m_error = why;
    Q_EMIT changed();
    return false;
}

QStringList Completion::readBack(const QString& reason) const
{
    if (!m_known->state) {
        return {};
    }
    const session::CompletionState& state = *m_known->state;
    QStringList lines;
    const QString set = words::fromUtf8(state.requirementSet);
    if (state.complete()) {
        lines.append(tr("%1 has met the requirements %2.").arg(m_student, set));
    } else {
        lines.append(tr("%1 is complete by exception under the requirements %2.").arg(m_student, set));
        lines.append(tr("%n case(s) are short.", nullptr, static_cast<int>(state.required - state.counted)));
        lines.append(tr("Your reason: %1").arg(reason.simplified()));
    }
    lines.append(m_standing);
    lines.append(m_targets);
    lines.append(tr("You sign this as the director. It stays in the journal for good, and goes to the student and the "
                    "instructors with the next parcels."));
    return lines;
}

bool Completion::decide(const QString& reason)
{
    if (!canDecide() || !m_known->state) {
        return refuse(m_bar);
    }
    const std::string why = words::line(reason, mostReason);
    const auto hits = sheet::findIdentifiers(why);
    if (!hits.empty()) {
        return refuse(tr("This looks like %1. No patient identifiers belong here, and what is written stays.")
                          .arg(words::fromUtf8(sheet::inWords(hits.front().kind))));
    }
    const session::CompletionState state = *m_known->state;
    m_error = words::problem(session::decideCompletion(m_desk.session(), state, why));
    m_desk.speakAnew(); // no sheet has changed, and every page says the decision
    return m_error.isEmpty();
}

bool Completion::makeRecord(const QString& code)
{
    const auto key = instructor::SheetKey::fromText(m_id + QLatin1Char(':') + m_id);
    const instructor::Student* student = key ? m_desk.student(key->student) : nullptr;
    if (!canDecide() || !m_decided || student == nullptr) {
        return refuse(m_bar.isEmpty() ? tr("Decide first; the record cites the decision.") : m_bar);
    }
    session::Session& session = m_desk.session();
    const auto programKey = session::programKeyFromCode(session.program(), words::secret(code.trimmed()));
    if (!programKey) {
        return refuse(words::why(programKey.error()));
    }
    auto made = session::makeRecord(session, programKey.value(), student->person, *m_known->state,
                                    m_known->decisions.back().exception, std::nullopt);
    if (!made) {
        return refuse(words::why(made.error()));
    }
    const auto record = evidence::verifyRecord(made.value().record, session.program());
    const auto paper =
        record ? print::makePdf(print::completionPaper(record.value(), evidence::recordDigest(made.value().record)),
                                print::frameFor(session, print::PageSize::Letter))
               : base::Result<print::Pdf>(record.error());
    if (!paper) {
        return refuse(words::why(paper.error()));
    }
    m_error.clear();
    m_made = words::fromUtf8(record.value().id);
    m_known->paper = paper.value().bytes;
    m_known->proofs = made.value().proofs;
    m_known->made = std::move(made).value();
    readProofs();
    m_desk.speakAnew();
    return true;
}

QStringList Completion::fileNames() const
{
    const QString stem = fileStem(m_student);
    return {stem + QStringLiteral(".record.json"), stem + QStringLiteral(".proofs.json"),
            stem + QStringLiteral(".record.pdf")};
}

QByteArrayList Completion::files() const
{
    return m_known->made ? QByteArrayList{fileOf(m_known->made->record), fileOf(m_known->made->proofs), m_known->paper}
                         : QByteArrayList();
}

void Completion::readProofs()
{
    m_sheets.clear();
    const auto read = m_known->proofs ? evidence::readSheetProofs(*m_known->proofs)
                                      : base::Result<evidence::SheetProofs>(base::Error{});
    if (read) {
        for (const evidence::SheetProof& proof : read.value().proofs) {
            QStringList line{words::day(proof.sheet.date, m_desk.today())};
            for (const evidence::ProvenCase& one : proof.sheet.cases) {
                line.append(words::fromUtf8(one.procedure));
            }
            line.append(QString::fromStdString(keys::hex(proof.sheet.sheet.view())).left(shortDigits));
            m_sheets.append(line.join(QStringLiteral(" · ")));
        }
    }
    Q_EMIT changed();
}

void Completion::openProofs(const QByteArray& file)
{
    const auto document = evidence::parseJson(file.toStdString());
    const auto read =
        document ? evidence::readSheetProofs(document.value()) : base::Result<evidence::SheetProofs>(document.error());
    if (!read) {
        refuse(tr("This is not a file of proofs. It is saved together with the record, and the student keeps it."));
        return;
    }
    m_error.clear();
    m_known->proofs = document.value();
    readProofs();
}

QByteArray Completion::proveSheet(int index)
{
    const auto read = m_known->proofs ? evidence::readSheetProofs(*m_known->proofs)
                                      : base::Result<evidence::SheetProofs>(base::Error{});
    if (!read || index < 0 || index >= static_cast<int>(read.value().proofs.size())) {
        refuse(tr("There is no such sheet in the file."));
        return {};
    }
    const std::string id = keys::hex(read.value().proofs[static_cast<std::size_t>(index)].sheet.sheet.view());
    const auto proof = evidence::proofOfOne(*m_known->proofs, id);
    if (!proof) {
        refuse(words::why(proof.error()));
        return {};
    }
    return fileOf(proof.value());
}

QString Completion::proofName(int index) const
{
    return QStringLiteral("proof-%1.json").arg(m_sheets.value(index).right(shortDigits));
}

} // namespace peelpack::evidence_pages
