#pragma once

#include "platform/session/rule_writing.h"
#include "qml/program/program_desk.h"
#include "qml/program/set_rows.h"

namespace peelpack::program {

/// Requirement sets that are put in force for a class from a day on: those so far and coming, and, for the director,
/// another one in the making, read back before it is signed.
class RequirementChanges : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made when a vault of staff opens")
    Q_PROPERTY(bool mayChange READ mayChange CONSTANT)
    Q_PROPERTY(QStringList coming READ coming NOTIFY changed)
    Q_PROPERTY(QStringList soFar READ soFar NOTIFY changed)
    Q_PROPERTY(QStringList classes READ classes NOTIFY changed)
    Q_PROPERTY(int ofClass READ ofClass WRITE setOfClass NOTIFY changed)
    Q_PROPERTY(QString from READ from WRITE setFrom NOTIFY changed)
    Q_PROPERTY(QString reason READ reason WRITE setReason NOTIFY changed)
    Q_PROPERTY(peelpack::program::SetRows* sets READ sets CONSTANT)
    Q_PROPERTY(bool readingBack READ readingBack NOTIFY changed)
    Q_PROPERTY(QString line READ line NOTIFY changed)
    Q_PROPERTY(QStringList targets READ targets NOTIFY changed)
    Q_PROPERTY(QString error READ error NOTIFY changed)
    Q_PROPERTY(QString done READ done NOTIFY changed)

public:
    explicit RequirementChanges(ProgramDesk& desk, QObject* parent = nullptr);

    [[nodiscard]] bool mayChange();
    /// A line each: class, first day, set and reason; the next first, and the latest first.
    [[nodiscard]] const QStringList& coming() const { return m_coming; }
    [[nodiscard]] const QStringList& soFar() const { return m_soFar; }
    /// To choose from; the first is every class.
    [[nodiscard]] const QStringList& classes() const { return m_names; }
    [[nodiscard]] int ofClass() const { return m_ofClass; }
    void setOfClass(int index);
    /// "2027-01-11", as it was typed.
    [[nodiscard]] const QString& from() const { return m_from; }
    void setFrom(const QString& day);
    [[nodiscard]] const QString& reason() const { return m_reason; }
    void setReason(const QString& reason);
    [[nodiscard]] SetRows* sets() { return &m_sets; }
    /// The draft is complete, and is read back before it is signed: the line that it will be, and what the set
    /// requires.
    [[nodiscard]] bool readingBack() const { return m_told.has_value(); }
    [[nodiscard]] QString line() const;
    [[nodiscard]] QStringList targets() const;
    [[nodiscard]] const QString& error() const { return m_error; }
    [[nodiscard]] const QString& done() const { return m_done; }

    /// When the page is shown.
    Q_INVOKABLE void read();
    Q_INVOKABLE void beginDraft();
    Q_INVOKABLE void choose(const QString& set);
    /// Offers the set in a file and chooses it, when it can be used; else see the sets' faults.
    Q_INVOKABLE void openSet(const QByteArray& file);
    Q_INVOKABLE void readBack();
    Q_INVOKABLE void backToDraft();
    /// Signs what was read back. True: it is written.
    Q_INVOKABLE bool sign();

Q_SIGNALS:
    void changed();

private:
    /// BadInput says what is still missing.
    [[nodiscard]] base::Result<session::ToldChange> told() const;

    ProgramDesk& m_desk;
    QStringList m_coming;
    QStringList m_soFar;
    std::vector<std::string> m_classes{std::string()};
    QStringList m_names;
    int m_ofClass = -1; ///< not chosen
    QString m_from;
    QString m_reason;
    SetRows m_sets;
    std::optional<session::ToldChange> m_told; ///< what is read back
    QString m_error;
    QString m_done;
};

} // namespace peelpack::program
