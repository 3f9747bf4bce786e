#pragma once

#include "qml/instructor/pending_acts.h"

#include <functional>

namespace peelpack::program {

/// The staff's desk as the program's pages use it: they write rules, people and keys, of which no decision about a
/// sheet may be in the way.
class ProgramDesk : public QObject {
    Q_OBJECT

public:
    ProgramDesk(instructor::StaffDesk& desk, instructor::PendingActs& pending, QObject* parent = nullptr)
        : QObject(parent), m_desk(desk), m_pending(pending)
    {
    }

    [[nodiscard]] instructor::StaffDesk& staff() { return m_desk; }
    [[nodiscard]] session::Session& session() { return m_desk.session(); }
    [[nodiscard]] base::Date today() const { return m_desk.today(); }
    [[nodiscard]] bool isDirector() { return session().role() == journal::Role::Director; }

    /// Writes what waits, does this, and has everything read anew. Empty: done; else why not, in a sentence.
    QString write(const std::function<QString()>& act);

Q_SIGNALS:
    /// People, keys or rules have changed.
    void written();

private:
    instructor::StaffDesk& m_desk;
    instructor::PendingActs& m_pending;
};

/// The 32 digits of an id, as QML keeps it, and back; zero: there is none.
QString digitsOf(const keys::Id& id);
keys::Id idFrom(const QString& digits);
/// Wipes what is in it and empties it.
void wipe(QString& text);
void wipe(QByteArray& bytes);

} // namespace peelpack::program
