#pragma once

#include "core/tally/tally.h"
#include "platform/session/case_book.h"
#include "platform/session/session.h"
#include "qml/student/shelf.h"

#include <QObject>
#include <QString>

#include <memory>
#include <optional>

namespace peelpack::student {

/// A student's unlocked journal as the pages see it: the sheets as they stand, counted when somebody asks. Every page
/// writes through it, and hears of it when something was written. QML never sees it.
class Desk : public QObject {
    Q_OBJECT

public:
    /// How the sheets count under the set in force.
    struct Counted {
        requirement::RequirementSet set;
        session::CaseBook cases;
        tally::StudentTally tally;
        /// The candidate of a sheet's row (counted from 1); null when it is none.
        [[nodiscard]] std::optional<std::size_t> candidateOf(std::string_view sheetName, std::uint32_t row) const;
    };

    /// The shelf must outlive it.
    Desk(std::unique_ptr<session::Session> session, Shelf& shelf, QObject* parent = nullptr);

    [[nodiscard]] session::Session& session() { return *m_session; }
    [[nodiscard]] const session::Session& session() const { return *m_session; }
    [[nodiscard]] Shelf& shelf() const { return m_shelf; }
    [[nodiscard]] const record::StudentRecord& record() const { return m_record; }
    /// Every sheet, the latest operation first; of one day in the order of the record.
    [[nodiscard]] std::vector<const record::SheetRecord*> latestFirst() const;
    /// Null when there is none of that id (32 digits).
    [[nodiscard]] const record::SheetRecord* sheet(const QString& id) const;
    [[nodiscard]] const std::string& shortName(const record::SheetRecord& sheet) const;
    [[nodiscard]] record::SheetsByName sheetsByName() const { return record::sheetsByName(m_record, m_names); }
    [[nodiscard]] base::Date today() const;
    /// The student's name, as granted, else as they call themself.
    [[nodiscard]] QString name() const;
    /// Of the set in force.
    [[nodiscard]] role::RoleRules roleRules() const;
    /// Empty when the set in force is not at hand; `countError` says it.
    [[nodiscard]] const Counted* counted();
    [[nodiscard]] const QString& countError() const { return m_countError; }

    /// Writes into the student's own stream. Empty: done; else why not, in a sentence.
    QString write(const std::vector<journal::Payload>& payloads);
    /// After something was written or taken in by another way.
    void refresh();

    /// Small things of this phone that are not part of the journal, sealed like it.
    [[nodiscard]] QByteArray kept(const char* name) const;
    QString keep(const char* name, const QByteArray& value);

Q_SIGNALS:
    void changed();

private:
    [[nodiscard]] const base::Result<requirement::RequirementSet>& setInForce() const;

    std::unique_ptr<session::Session> m_session;
    Shelf& m_shelf;
    record::StudentRecord m_record;
    record::ShortNames m_names;
    std::optional<Counted> m_counted;
    mutable std::optional<base::Result<requirement::RequirementSet>> m_set; ///< in force, once somebody asked
    QString m_countError;
    bool m_countTried = false;
};

} // namespace peelpack::student
