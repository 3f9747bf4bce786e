#include "qml/instructor/rules_in_force.h"

#include "platform/session/program_rules.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"

namespace peelpack::instructor {

QStringList targetLines(const requirement::RequirementSet& set)
{
    QStringList lines;
    for (const requirement::Target& target : set.targets) {
        QStringList line{words::capitalized(words::of(target)),
                         RulesInForce::tr("%n case(s)", nullptr, static_cast<int>(target.required))};
        if (target.cap) {
            line.append(RulesInForce::tr("at most %1 of one specialty").arg(*target.cap));
        }
        if (target.spread) {
            line.append(RulesInForce::tr("%1 specialties with %2 each")
                            .arg(target.spread->specialties)
                            .arg(target.spread->each));
        }
        lines.append(line.join(QStringLiteral(" · ")));
    }
    for (const requirement::Limit& limit : set.limits) {
        lines.append(RulesInForce::tr("At most %1 of %2 over all").arg(limit.most).arg(words::of(limit.category)));
    }
    return lines;
}

QStringList signatureLines(const std::optional<journal::Policy>& policy)
{
    QStringList lines;
    for (const sheet::Strength strength : session::strengths) {
        const QString name = words::capitalized(words::of(strength));
        switch (session::acceptance(policy, strength)) {
        case session::Acceptance::AsItIs:
            lines.append(RulesInForce::tr("%1 · counts").arg(name));
            break;
        case session::Acceptance::OnceConfirmed:
            lines.append(RulesInForce::tr("%1 · counts once it is confirmed with the preceptor").arg(name));
            break;
        case session::Acceptance::Never:
            lines.append(RulesInForce::tr("%1 · does not count").arg(name));
            break;
        }
    }
    return lines;
}

RulesInForce::RulesInForce(StaffDesk& desk, QObject* parent) : QObject(parent), m_desk(desk) {}

void RulesInForce::read()
{
    m_targets.clear();
    m_signatures.clear();
    m_staff.clear();
    m_preceptors.clear();
    const std::optional<journal::Policy> policy = session::policyInForce(m_desk.session());
    m_term = policy
                 ? tr("%1: %2 to %3")
                       .arg(policy->term.empty() ? tr("This term") : words::fromUtf8(policy->term),
                            words::day(policy->firstDay, m_desk.today()), words::day(policy->lastDay, m_desk.today()))
                 : tr("No rules have come in yet: the usual ones are shown.");
    m_signatures = signatureLines(policy);
    const base::Result<requirement::RequirementSet> set = session::setOfPolicy(m_desk.session());
    m_title = set ? words::fromUtf8(set.value().title) : QString();
    if (set) {
        m_targets = targetLines(set.value());
    }
    m_error = words::problem(set);
    readChanges();
    readPeople();
    Q_EMIT changed();
}

void RulesInForce::readChanges()
{
    int coming = 0;
    int soFar = 0;
    for (const journal::RequirementsChange& change : session::requirementChanges(m_desk.session())) {
        ++(change.from > m_desk.today() ? coming : soFar);
    }
    QStringList parts;
    if (soFar > 0) {
        parts.append(tr("%n so far", nullptr, soFar));
    }
    if (coming > 0) {
        parts.append(tr("%n coming", nullptr, coming));
    }
    m_changes = parts.isEmpty() ? tr("None: this set is in force for every class") : parts.join(QStringLiteral(" · "));
}

void RulesInForce::readPeople()
{
    const session::Directory directory(m_desk.session());
    const auto append = [&](const session::Person& person, const QString& part) {
        QStringList line{words::fromUtf8(person.name), part};
        if (!person.scopes.empty()) {
            line.append(words::listed(person.scopes));
        }
        m_staff.append(line.join(QStringLiteral(" · ")));
    };
    for (const session::Person& person : directory.people()) {
        switch (person.role) {
        case journal::Role::Director:
            append(person, tr("director"));
            break;
        case journal::Role::Instructor:
            append(person, tr("instructor"));
            break;
        case journal::Role::Coordinator:
            append(person, tr("coordinator"));
            break;
        case journal::Role::Contact:
            append(person, tr("contact of a site"));
            break;
        case journal::Role::Student:
            break;
        }
    }
    for (const session::Preceptor& preceptor : directory.preceptors()) {
        QStringList line{words::fromUtf8(preceptor.name)};
        for (const std::string* part : {&preceptor.credential, &preceptor.site}) {
            if (!part->empty()) {
                line.append(words::fromUtf8(*part));
            }
        }
        bool good = false;
        for (const session::SigningKeyOf& key : preceptor.keys) {
            good = good || !key.revoked;
        }
        if (!good) {
            line.append(tr("may not sign any more"));
        }
        m_preceptors.append(line.join(QStringLiteral(" · ")));
    }
}

} // namespace peelpack::instructor
