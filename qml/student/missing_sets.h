#pragma once

#include "platform/session/session.h"

#include <QByteArray>
#include <QObject>
#include <QQmlEngine>
#include <QStringList>

#include <functional>

namespace peelpack::student {

/// Requirement sets that the rules name, that do not ship with the app, and whose file is not at hand: nothing is
/// counted under them until somebody opens it. For students and staff alike.
class MissingSets : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by a desk's pages")
    Q_PROPERTY(QStringList missing READ missing NOTIFY changed)
    Q_PROPERTY(QStringList faults READ faults NOTIFY changed)
    Q_PROPERTY(QString done READ done NOTIFY changed)

public:
    /// `counted`: everything is to be counted anew. The session must outlive it.
    MissingSets(session::Session& session, std::function<void()> counted, QObject* parent = nullptr);

    /// A sentence for each; empty: every set is at hand.
    [[nodiscard]] const QStringList& missing() const { return m_missing; }
    /// What is wrong with the file that was opened, line by line; and that it is kept now.
    [[nodiscard]] const QStringList& faults() const { return m_faults; }
    [[nodiscard]] const QString& done() const { return m_done; }

    /// After something was written or taken in, or another language was chosen.
    void read();
    /// The file of such a set; it is kept in the vault, and compared to the byte with what the rules name.
    Q_INVOKABLE void open(const QByteArray& file);

Q_SIGNALS:
    void changed();

private:
    session::Session& m_session;
    std::function<void()> m_counted;
    QStringList m_missing;
    QStringList m_faults;
    QString m_done;
};

} // namespace peelpack::student
