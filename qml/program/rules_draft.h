#pragma once

#include "platform/session/program_rules.h"
#include "qml/program/set_rows.h"

#include <functional>

namespace peelpack::program {

/// A strength of signature that counts or does not.
struct StrengthRow {
    Q_GADGET
    QML_VALUE_TYPE(strengthRow)
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString detail MEMBER detail)
    Q_PROPERTY(bool on MEMBER on)

public:
    QString id; ///< "own-phone"
    QString name;
    QString detail;
    bool on = false;
    bool operator==(const StrengthRow&) const = default;
};

class StrengthRows : public parts::RowList<StrengthRow> {
    Q_OBJECT
    QML_ANONYMOUS
public:
    using RowList::RowList;
};

/// Rules of a program while they are put together, and how they are read back. The set ships with
/// Peelpack or comes from a file, and is never chosen beforehand.
class RulesDraft : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the app")
    Q_PROPERTY(peelpack::program::SetRows* sets READ sets CONSTANT)
    Q_PROPERTY(peelpack::program::StrengthRows* strengths READ strengths CONSTANT)
    Q_PROPERTY(QString term READ term WRITE setTerm NOTIFY changed)
    Q_PROPERTY(QString firstDay READ firstDay WRITE setFirstDay NOTIFY changed)
    Q_PROPERTY(QString lastDay READ lastDay WRITE setLastDay NOTIFY changed)
    Q_PROPERTY(QString setTitle READ setTitle NOTIFY changed)
    Q_PROPERTY(QString termLine READ termLine NOTIFY changed)
    Q_PROPERTY(QStringList targets READ targets NOTIFY changed)
    Q_PROPERTY(QStringList signatures READ signatures NOTIFY changed)

public:
    using Today = std::function<base::Date()>;
    explicit RulesDraft(Today today, QObject* parent = nullptr);

    [[nodiscard]] SetRows* sets() { return &m_sets; }
    [[nodiscard]] StrengthRows* strengths() { return &m_strengths; }
    [[nodiscard]] const QString& term() const { return m_term; }
    void setTerm(const QString& term);
    /// "2027-01-11", as it was typed.
    [[nodiscard]] const QString& firstDay() const { return m_firstDay; }
    void setFirstDay(const QString& day);
    [[nodiscard]] const QString& lastDay() const { return m_lastDay; }
    void setLastDay(const QString& day);
    /// Of the chosen set; empty while none is.
    [[nodiscard]] QString setTitle() const;
    /// What is read back: the term, what is required, how each signature counts.
    [[nodiscard]] QString termLine() const;
    [[nodiscard]] QStringList targets() const;
    [[nodiscard]] QStringList signatures() const;

    /// Empty, with the usual signatures: own phone and signing card.
    void begin();
    /// As a policy has it, to be changed.
    void begin(const journal::Policy& policy);
    Q_INVOKABLE void choose(const QString& set);
    /// Offers the set in a file and chooses it, when it can be used; else see the sets' faults.
    Q_INVOKABLE void openSet(const QByteArray& file);
    Q_INVOKABLE void turn(const QString& strength, bool on);

    /// BadInput says what is still missing.
    [[nodiscard]] base::Result<session::Rules> rules() const;
    /// The same values in other words.
    void speakAnew();

Q_SIGNALS:
    void changed();

private:
    void put(QString& member, const QString& value);
    void begun();
    void showStrengths();

    Today m_today;
    std::uint8_t m_counted = 0;
    QString m_term;
    QString m_firstDay;
    QString m_lastDay;
    SetRows m_sets;
    StrengthRows m_strengths;
};

} // namespace peelpack::program
