#include "qml/program/rules_draft.h"

#include "qml/instructor/rules_in_force.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"

namespace peelpack::program {
namespace {

constexpr qsizetype mostTerm = 80;
constexpr std::array usual{sheet::Strength::OwnPhone, sheet::Strength::Card};

std::optional<base::Date> dayFrom(const QString& text)
{
    return base::Date::fromIso(text.trimmed().toStdString());
}

} // namespace

RulesDraft::RulesDraft(Today today, QObject* parent) : QObject(parent), m_today(std::move(today)) {}

void RulesDraft::put(QString& member, const QString& value)
{
    if (member != value) {
        member = value;
        Q_EMIT changed();
    }
}

void RulesDraft::setTerm(const QString& term)
{
    put(m_term, term.left(mostTerm));
}

void RulesDraft::setFirstDay(const QString& day)
{
    put(m_firstDay, day);
}

void RulesDraft::setLastDay(const QString& day)
{
    put(m_lastDay, day);
}

void RulesDraft::begin()
{
    m_sets.choose({});
    m_counted = 0;
    for (const sheet::Strength strength : usual) {
        m_counted = static_cast<std::uint8_t>(m_counted | session::countedBit(strength));
    }
    m_term.clear();
    m_firstDay.clear();
    m_lastDay.clear();
    begun();
}

void RulesDraft::begin(const journal::Policy& policy)
{
    m_sets.choose(SetRows::rowId(policy.requirementSet, policy.setDigest));
    m_counted = policy.counted;
    m_term = words::fromUtf8(policy.term);
    m_firstDay = words::fromUtf8(policy.firstDay.iso());
    m_lastDay = words::fromUtf8(policy.lastDay.iso());
    begun();
}

void RulesDraft::choose(const QString& set)
{
    m_sets.choose(set);
    Q_EMIT changed();
}

void RulesDraft::openSet(const QByteArray& file)
{
    m_sets.open(file);
    Q_EMIT changed();
}

void RulesDraft::turn(const QString& strength, bool on)
{
    if (const auto found = sheet::strengthFromId(strength.toStdString())) {
        const std::uint8_t bit = session::countedBit(*found);
        m_counted = static_cast<std::uint8_t>(on ? m_counted | bit : m_counted & ~bit);
        showStrengths();
        Q_EMIT changed();
    }
}

void RulesDraft::begun()
{
    m_sets.read();
    showStrengths();
    Q_EMIT changed();
}

void RulesDraft::showStrengths()
{
    std::vector<StrengthRow> strengths;
    for (const sheet::Strength strength : session::strengths) {
        const bool weak = strength == sheet::Strength::Drawn || strength == sheet::Strength::Paper;
        strengths.push_back({words::fromUtf8(sheet::id(strength)), words::capitalized(words::of(strength)),
                             weak ? tr("Never before an instructor has confirmed it with the preceptor") : QString(),
                             (m_counted & session::countedBit(strength)) != 0});
    }
    m_strengths.put(std::move(strengths));
}

void RulesDraft::speakAnew()
{
    begun();
}

QString RulesDraft::setTitle() const
{
    const SetRow* set = m_sets.chosen();
    return set == nullptr ? QString() : set->title;
}

QString RulesDraft::termLine() const
{
    const auto first = dayFrom(m_firstDay);
    const auto last = dayFrom(m_lastDay);
    if (!first || !last) {
        return {};
    }
    const QString name = words::fromUtf8(words::line(m_term, mostTerm));
    return tr("%1: %2 to %3")
        .arg(name.isEmpty() ? tr("The term") : name, words::day(*first, m_today()), words::day(*last, m_today()));
}

QStringList RulesDraft::targets() const
{
    const SetRow* set = m_sets.chosen();
    return set == nullptr ? QStringList() : set->asks;
}

QStringList RulesDraft::signatures() const
{
    journal::Policy policy;
    policy.counted = m_counted;
    return instructor::signatureLines(policy);
}

base::Result<session::Rules> RulesDraft::rules() const
{
    const auto incomplete = [](const QString& sentence) {
        return base::Error{base::ErrorCode::BadInput, sentence.toStdString()};
    };
    if (setTitle().isEmpty()) {
        return incomplete(m_sets.wanted().isEmpty()
                              ? tr("Choose the requirement set that is in force.")
                              : tr("The file of the set in force is not at hand here: open it, or choose another "
                                   "set."));
    }
    if (m_counted == 0) {
        return incomplete(tr("At least one way of signing has to count."));
    }
    const auto first = dayFrom(m_firstDay);
    const auto last = dayFrom(m_lastDay);
    if (!first || !last) {
        return incomplete(tr("Say the first and the last day of the term as year, month, day: 2027-01-11."));
    }
    if (*last < *first) {
        return incomplete(tr("The term ends before it begins: look at the two days again."));
    }
    const session::SetFile& file = *m_sets.chosenFile();
    session::Rules rules;
    rules.requirementSet = file.set.id;
    rules.setDigest = file.digest;
    rules.setText = file.ships ? std::string() : file.text;
    rules.term = words::line(m_term, mostTerm);
    rules.firstDay = *first;
    rules.lastDay = *last;
    rules.counted = m_counted;
    return rules;
}

} // namespace peelpack::program
