#pragma once

#include "core/tally/tally.h"
#include "platform/session/case_book.h"
#include "platform/session/directory.h"
#include "platform/session/sets_in_force.h"
#include "platform/session/sheet_rules.h"
#include "qml/student/shelf.h"

#include <QElapsedTimer>
#include <QObject>
#include <QString>
#include <QTimer>

#include <map>
#include <memory>
#include <optional>
#include <set>

namespace peelpack::instructor {

/// A sheet among those of all students. As text: 32 digits, a colon, 32 digits.
struct SheetKey {
    keys::Id student;
    base::Id sheet;
    [[nodiscard]] QString text() const;
    static std::optional<SheetKey> fromText(const QString& text);
    auto operator<=>(const SheetKey&) const = default; // NOLINT(modernize-use-nullptr): a false alarm of version 14
};

/// One student as the pages see them.
struct Student {
    session::Person person;
    record::StudentRecord record;
    record::ShortNames names;
    std::set<base::EntryHash> notTheirs; ///< signatures that a preceptor says are not theirs
    questions::SheetRules rules;         ///< of the program, for these sheets
    /// Counted under the set in force; empty until it was asked for, or when it could not be counted.
    struct Counted {
        session::CaseBook cases;
        tally::StudentTally tally; ///< recorded, placed as best, without what to ask for next
    };
    std::unique_ptr<Counted> counted;
    bool folded = false;     ///< record, names, notTheirs and rules are there
    std::uint64_t stamp = 0; ///< another one whenever it was folded or counted anew

    /// Empty: of any class.
    [[nodiscard]] bool isIn(const std::string& className) const;
};

/// A staff member's unlocked journal as the pages see it: students, folded and counted one after another while the
/// screen stays alive. Every page writes through it and hears of it. QML never sees it.
class StaffDesk : public QObject {
    Q_OBJECT

public:
    /// The shelf must outlive it.
    StaffDesk(std::unique_ptr<session::Session> session, student::Shelf& shelf, QObject* parent = nullptr);

    [[nodiscard]] session::Session& session() { return *m_session; }
    [[nodiscard]] const session::Session& session() const { return *m_session; }
    [[nodiscard]] student::Shelf& shelf() const { return m_shelf; }
    [[nodiscard]] const catalogue::Catalogue& catalogue() const { return m_shelf.catalogue(); }
    [[nodiscard]] base::Date today() const;
    [[nodiscard]] QString name() const;
    /// The requirement set in force for a student; null when one of the sets in force is not at hand: setError() says
    /// why.
    [[nodiscard]] const requirement::RequirementSet* setOf(const Student& student) const;
    /// Those that are in force for somebody, each once; the policy's without students. Empty: as above.
    [[nodiscard]] const std::vector<requirement::RequirementSet>& sets() const { return m_sets.sets; }
    [[nodiscard]] const QString& setError() const { return m_setError; }

    /// By name. Those not folded yet have an empty record.
    [[nodiscard]] const std::vector<Student>& students() const { return m_students; }
    /// Sorted, each once.
    [[nodiscard]] QStringList classes() const;
    /// Null when there is none of that id. Folds it where that was not done yet.
    const Student* student(const keys::Id& id);
    /// Null when there is none.
    const record::SheetRecord* sheet(const SheetKey& key);
    /// The student's tally, made when first asked for; null when it cannot be made.
    const Student::Counted* counted(const keys::Id& id);
    /// The same at another level, not kept.
    std::optional<tally::StudentTally> tallyAt(const keys::Id& id, tally::Level level);
    /// Students folded, and counted as well, so far.
    [[nodiscard]] std::size_t foldedCount() const;
    [[nodiscard]] std::size_t countedCount() const;
    /// Everybody is folded and counted.
    [[nodiscard]] bool isReady() const
    {
        return m_nextToFold == m_students.size() && m_nextToCount == m_students.size();
    }
    /// Goes on until that is so.
    void finish();

    /// One transaction. Empty: done; else why not, in a sentence.
    QString write(const std::vector<session::Writing>& writings);
    /// After something was taken in: everything is read anew.
    void refresh();
    /// The same values in other words.
    void speakAnew();
    /// Another one whenever what the sheets say may have changed.
    [[nodiscard]] std::uint64_t stamp() const { return m_stamp; }

Q_SIGNALS:
    /// What is known has changed: sheets, counts, or how far the reading is.
    void changed();

private:
    void readPeople();
    void work();
    bool workOnce();
    void fold(Student& student);
    void count(Student& student);
    Student* find(const keys::Id& id);

    std::unique_ptr<session::Session> m_session;
    student::Shelf& m_shelf;
    session::SetsInForce m_sets;
    QString m_setError;
    std::vector<Student> m_students;
    std::map<keys::Id, std::size_t> m_places;
    std::uint64_t m_stamp = 0;
    std::uint64_t m_stamps = 0; ///< given out
    std::size_t m_nextToFold = 0;
    std::size_t m_nextToCount = 0;
    QTimer m_work;
    QElapsedTimer m_told; ///< since the pages heard of progress
};

} // namespace peelpack::instructor
