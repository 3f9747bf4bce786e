#include "qml/program/program_rules.h"

#include "platform/session/rule_writing.h"
#include "qml/words/bridge.h"
#include "qml/words/rules.h"
#include "qml/words/words.h"

namespace peelpack::program {
namespace {

QString countedWords(const journal::Policy& policy)
{
    QStringList counted;
    for (const sheet::Strength strength : session::strengths) {
        if ((policy.counted & session::countedBit(strength)) != 0) {
            counted.append(words::of(strength));
        }
    }
    return words::listed(counted);
}

} // namespace

ProgramRules::ProgramRules(ProgramDesk& desk, QObject* parent)
    : QObject(parent), m_desk(desk), m_draft([&desk] { return desk.today(); })
{
    connect(&desk, &ProgramDesk::written, this, &ProgramRules::read);
}

QString ProgramRules::lineOf(const journal::Policy& policy)
{
    const QString term = policy.term.empty() ? tr("A term without a name") : words::fromUtf8(policy.term);
    return tr("%1, %2 to %3. Requirements: %4. What counts: %5.")
        .arg(term, words::day(policy.firstDay, m_desk.today()), words::day(policy.lastDay, m_desk.today()),
             words::setTitle(policy.requirementSet), countedWords(policy));
}

void ProgramRules::read()
{
    m_inForce.clear();
    m_older.clear();
    for (const journal::Policy& policy : session::policiesSoFar(m_desk.session())) {
        m_older.prepend(lineOf(policy));
    }
    if (!m_older.isEmpty()) {
        m_inForce.append(m_older.takeFirst());
    }
    m_draft.speakAnew();
    Q_EMIT changed();
}

void ProgramRules::beginDraft()
{
    m_draft.sets()->offer(session::keptSetFiles(m_desk.session()));
    if (const std::optional<journal::Policy> policy = session::policyInForce(m_desk.session())) {
        m_draft.begin(*policy);
    } else {
        m_draft.begin();
    }
    m_readingBack = false;
    m_error.clear();
    m_done.clear();
    Q_EMIT changed();
}

void ProgramRules::readBack()
{
    const base::Result<session::Rules> rules = m_draft.rules();
    m_error = words::problem(rules);
    m_readingBack = rules.ok();
    Q_EMIT changed();
}

void ProgramRules::backToDraft()
{
    m_readingBack = false;
    m_error.clear();
    Q_EMIT changed();
}

bool ProgramRules::sign()
{
    const base::Result<session::Rules> rules = m_draft.rules();
    if (!m_readingBack || !rules) {
        return false;
    }
    m_error = m_desk.write([&] { return words::problem(session::changeRules(m_desk.session(), rules.value())); });
    if (m_error.isEmpty()) {
        m_readingBack = false;
        m_done = tr("Signed: these rules are in force from now on. They reach the others with your next parcels.");
    }
    Q_EMIT changed();
    return m_error.isEmpty();
}

} // namespace peelpack::program
