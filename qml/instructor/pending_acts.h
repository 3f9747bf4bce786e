#pragma once

#include "qml/instructor/staff_desk.h"

#include <QQmlEngine>

namespace peelpack::instructor {

/// What was decided a moment ago and is not written yet: it can be undone until the next decision, for a few seconds,
/// or until the desk is left. Then it is written, once; what is in the journal stays there.
class PendingActs : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the staff's desk")
    Q_PROPERTY(QString text READ text NOTIFY changed)
    Q_PROPERTY(bool waiting READ waiting NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)

public:
    explicit PendingActs(StaffDesk& desk, QObject* parent = nullptr);
    ~PendingActs() override;

    static constexpr int undoMs = 10'000;

    /// What was decided, in words; empty: nothing waits.
    [[nodiscard]] const QString& text() const { return m_text; }
    [[nodiscard]] bool waiting() const { return !m_writings.empty(); }
    /// Why what was decided could not be written; empty: it was.
    [[nodiscard]] const QString& error() const { return m_error; }
    [[nodiscard]] bool concerns(const SheetKey& key) const { return m_sheets.contains(key); }

    /// Writes what waited, and lets this wait. False: what waited could not be written, and this is dropped.
    bool decide(std::vector<session::Writing> writings, std::set<SheetKey> sheets, const QString& text);
    /// Takes back what waits; nothing was written.
    Q_INVOKABLE void undo();
    /// True when nothing waits any more.
    Q_INVOKABLE bool writeNow();

Q_SIGNALS:
    void changed();
    /// The sheets of a decision are there again: it was undone, or could not be written.
    void cameBack(const QString& sheet);

private:
    void clear();

    StaffDesk& m_desk;
    std::vector<session::Writing> m_writings;
    std::set<SheetKey> m_sheets;
    QString m_text;
    QString m_error;
    QTimer m_time;
};

} // namespace peelpack::instructor
