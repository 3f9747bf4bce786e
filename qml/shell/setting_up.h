#pragma once

#include "qml/program/rules_draft.h"
#include "qml/shell/first_start.h"

namespace peelpack::shell {

/// The first start of a director who sets up a program: its rules, read back; the program code, shown once and typed
/// back before anything is kept; who the director is; the vault.
class SettingUp : public FirstStart {
    Q_OBJECT
    QML_ELEMENT
    QML_UNCREATABLE("made by the app")
    Q_PROPERTY(peelpack::shell::SettingUp::Step step READ step NOTIFY changed)
    Q_PROPERTY(peelpack::program::RulesDraft* rules READ rules CONSTANT)
    Q_PROPERTY(QString programCode READ programCode NOTIFY changed)
    Q_PROPERTY(QString program READ program NOTIFY changed)

public:
    enum Step { Rules, ReadBack, CodeShown, TypingBack, Director, Made };
    Q_ENUM(Step)

    explicit SettingUp(Surroundings& surroundings, QObject* parent = nullptr);

    [[nodiscard]] Step step() const { return m_step; }
    [[nodiscard]] program::RulesDraft* rules() { return &m_rules; }
    /// Shown once, at CodeShown; empty elsewhere.
    [[nodiscard]] const QString& programCode() const { return m_programCode; }
    /// The id of the program that was made, which anybody may know; empty before.
    [[nodiscard]] const QString& program() const { return m_program; }

    /// To the next step, as far as what was said is enough. From TypingBack: typeBack(); from Director: make().
    Q_INVOKABLE void next();
    /// To the step before. A code that was shown is good for nothing then.
    Q_INVOKABLE void back();
    /// On to the director when it is the program code that was shown.
    Q_INVOKABLE void typeBack(const QString& code);
    Q_INVOKABLE void make(const QString& name, const QString& secret, const QString& again, bool pin);

Q_SIGNALS:
    /// There is nothing before the first step.
    void left();

private:
    void go(Step step);
    void showCode();

    Step m_step = Rules;
    program::RulesDraft m_rules;
    keys::Secret m_code; ///< of the program; empty before it is shown and after it was used
    QString m_programCode;
    QString m_program;
};

} // namespace peelpack::shell
