#pragma once

#include "core/record/sheet_record.h"
#include "platform/session/signing.h"
#include "qml/preceptor/marking_rows.h"

#include <QStringList>

namespace peelpack::preceptor {

/// One sheet while a preceptor marks it: head and procedures as performed, the marks made so far, why a skill is N/A,
/// feedback. A value; nothing of it is kept anywhere before it is signed.
class MarkedSheet {
public:
    /// As the student wrote it, with no mark.
    explicit MarkedSheet(const record::SheetRecord& record);
    /// As the student's phone asks a preceptor's own phone to sign it.
    explicit MarkedSheet(const journal::SigningRequest& request);

    /// 32 digits.
    [[nodiscard]] const QString& id() const { return m_id; }
    /// What is signed.
    [[nodiscard]] const session::SheetMarks& marks() const { return m_marks; }
    /// "Mar 12 · Dr Okafor · North Campus · Room 4 · 07:30 to 09:10"
    [[nodiscard]] QString head(base::Date today) const;
    [[nodiscard]] QStringList procedures() const;
    [[nodiscard]] bool canceled() const { return m_marks.head.canceled; }
    [[nodiscard]] const QString& feedback() const { return m_feedback; }
    /// The ten skills as the page shows them.
    [[nodiscard]] std::vector<MarkingRow> rows() const;
    /// How many skills have no mark.
    [[nodiscard]] int open() const;
    /// What keeps it from being signed, in a sentence; empty: nothing.
    [[nodiscard]] QString missing() const;
    /// What looks as if it could point at the patient; empty: nothing.
    [[nodiscard]] QString feedbackWarning() const;
    /// What is signed, a fact a line.
    [[nodiscard]] QStringList readBack(base::Date today, const QString& student) const;

    /// An empty text, or a procedure that is not there, changes nothing.
    void correct(int procedure, const QString& text);
    void setCanceled(bool canceled) { m_marks.head.canceled = canceled; }
    void setFeedback(const QString& text);
    /// Unmarked takes a mark back. Skills and marks by number; others change nothing.
    void mark(int skill, int mark);
    void reason(int skill, const QString& text);
    void markFirstScrubYes();

private:
    [[nodiscard]] const journal::SkillMark* markOf(sheet::Skill skill) const;
    void put(sheet::Skill skill, sheet::Mark mark);

    QString m_id;
    session::SheetMarks m_marks;
    sheet::Marks m_before; ///< what somebody else marked already
    QString m_feedback;    ///< as typed, with the space at its end that a next word follows
    QStringList m_reasons; ///< by skill, as typed; they stay while the mark changes to and fro
};

} // namespace peelpack::preceptor
