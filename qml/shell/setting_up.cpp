#include "qml/shell/setting_up.h"

#include "platform/session/setup.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"
#include "sync/keys/code.h"
#include "sync/merge/record_content.h"

namespace peelpack::shell {

SettingUp::SettingUp(Surroundings& surroundings, QObject* parent)
    : FirstStart(surroundings, parent), m_rules([clock = surroundings.clock] { return merge::timeOf(clock()).day(); })
{
    m_rules.begin();
}

void SettingUp::go(Step step)
{
    m_programCode.fill(QLatin1Char('0'));
    m_programCode.clear();
    m_step = step;
    fail({});
}

void SettingUp::showCode()
{
    m_code = surroundings().random.secret(keys::codeSecretBytes);
    go(CodeShown);
    m_programCode = words::shown(keys::codeText(keys::CodeSort::Program, m_code.view()));
    fail({});
}

void SettingUp::next()
{
    switch (m_step) {
    case Rules:
        if (const base::Result<session::Rules> rules = m_rules.rules(); !rules) {
            fail(words::why(rules.error()));
        } else {
            go(ReadBack);
        }
        break;
    case ReadBack:
        showCode();
        break;
    case CodeShown:
        go(TypingBack);
        break;
    case TypingBack:
    case Director:
    case Made:
        break;
    }
}

void SettingUp::back()
{
    switch (m_step) {
    case Rules:
        fail({});
        Q_EMIT left();
        break;
    case ReadBack:
        go(Rules);
        break;
    case CodeShown:
        m_code = keys::Secret();
        go(ReadBack);
        break;
    case TypingBack: // what was shown once is not shown again: another one
        showCode();
        break;
    case Director:
        go(TypingBack);
        break;
    case Made:
        break;
    }
}

void SettingUp::typeBack(const QString& code)
{
    if (m_step != TypingBack) {
        return;
    }
    const base::Result<bool> same = session::checkTypedBack(m_code, code.trimmed().toStdString());
    if (!same) {
        fail(words::why(same.error()));
        return;
    }
    go(Director);
}

void SettingUp::make(const QString& name, const QString& secret, const QString& again, bool pin)
{
    const std::string called = words::line(name, mostName);
    const base::Result<session::Rules> rules = m_rules.rules();
    if (m_step != Director || !rules) {
        return;
    }
    if (called.empty()) {
        fail(tr("Write your name as the program knows it."));
        return;
    }
    FirstStart::make({secret, again, pin},
                     [this, called, rules](std::unique_ptr<vault::SqliteVault>& vault) -> base::Result<bool> {
                         const base::Result<keys::SigningKey> key = keys::programKey(m_code.view());
                         if (!key) {
                             return key.error();
                         }
                         const base::Result<bool> begun = session::beginProgram(
                             *vault, key.value(), called, rules.value(), surroundings().clock, surroundings().random);
                         if (begun) {
                             m_code = keys::Secret();
                             m_program = words::fromUtf8(keys::hex(key.value().verifyKey().view()));
                             m_step = Made;
                         }
                         return begun;
                     });
}

} // namespace peelpack::shell
