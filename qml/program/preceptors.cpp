#include "qml/program/preceptors.h"

#include "platform/session/program_rules.h"
#include "platform/session/rule_writing.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"

#include <algorithm>

namespace peelpack::program {
namespace {

QString titleOf(const session::SigningKeyOf& key)
{
    return key.kind == journal::KeyKind::Device ? Preceptors::tr("Own phone")
                                                : Preceptors::tr("Signing card no. %1").arg(key.epoch);
}

QStringList partsOf(const session::Preceptor& preceptor)
{
    QStringList parts;
    for (const std::string* part : {&preceptor.credential, &preceptor.site}) {
        if (!part->empty()) {
            parts.append(words::fromUtf8(*part));
        }
    }
    return parts;
}

const session::Preceptor* find(const session::Directory& directory, const QString& id)
{
    const keys::Id wanted = idFrom(id);
    const auto& all = directory.preceptors();
    const auto found =
        std::find_if(all.begin(), all.end(), [&](const session::Preceptor& one) { return one.id == wanted; });
    return found == all.end() ? nullptr : &*found;
}

} // namespace

Preceptors::Preceptors(ProgramDesk& desk, QObject* parent) : QObject(parent), m_desk(desk)
{
    connect(&desk, &ProgramDesk::written, this, [this] {
        read();
        show(m_preceptor);
    });
}

void Preceptors::read()
{
    std::vector<PreceptorRow> rows;
    const session::Directory directory(m_desk.session());
    for (const session::Preceptor& preceptor : directory.preceptors()) {
        QStringList parts = partsOf(preceptor);
        QStringList good;
        for (const session::SigningKeyOf& key : preceptor.keys) {
            if (!key.revoked) {
                good.append(titleOf(key));
            }
        }
        parts.append(good.isEmpty() ? tr("may not sign any more") : words::listed(good));
        rows.push_back({digitsOf(preceptor.id), words::fromUtf8(preceptor.name), parts.join(QStringLiteral(" · ")),
                        !good.isEmpty()});
    }
    m_rows.put(std::move(rows));
    Q_EMIT changed();
}

void Preceptors::show(const QString& preceptor)
{
    if (preceptor != m_preceptor) {
        m_error.clear();
    }
    m_preceptor = preceptor;
    const session::Directory directory(m_desk.session());
    std::vector<SigningKeyRow> rows;
    if (const session::Preceptor* found = find(directory, preceptor)) {
        m_name = words::fromUtf8(found->name);
        m_what = partsOf(*found).join(QStringLiteral(" · "));
        for (const session::SigningKeyOf& key : found->keys) {
            rows.push_back({static_cast<int>(rows.size()), titleOf(key),
                            key.revoked ? tr("ended; signs nothing that counts any more") : tr("in use"),
                            !key.revoked && session::mayEnd(m_desk.session(), key)});
        }
    }
    m_keys.put(std::move(rows));
    readStanding();
    Q_EMIT changed();
}

bool Preceptors::mayStand()
{
    return session::mayWriteRule(m_desk.session(), journal::Kind::PreceptorStanding);
}

void Preceptors::readStanding()
{
    const auto found = session::standingOf(m_desk.session(), idFrom(m_preceptor));
    m_oriented = found && found->oriented ? words::fromUtf8(found->oriented->iso()) : QString();
    m_active = !found || found->active;
    const QString oriented = found && found->oriented
                                 ? tr("Oriented on %1").arg(words::day(*found->oriented, m_desk.today()))
                                 : tr("Not oriented yet");
    m_standing = found ? oriented + QStringLiteral(" · ") + (found->active ? tr("active") : tr("not active any more"))
                       : tr("The program has said nothing about orientation yet.");
}

void Preceptors::setOriented(const QString& day)
{
    if (day != m_oriented) {
        m_oriented = day;
        Q_EMIT changed();
    }
}

void Preceptors::setActive(bool active)
{
    m_active = active;
    Q_EMIT changed();
}

bool Preceptors::standsOtherwise()
{
    const auto found = session::standingOf(m_desk.session(), idFrom(m_preceptor));
    const QString oriented = found && found->oriented ? words::fromUtf8(found->oriented->iso()) : QString();
    return m_oriented.trimmed() != oriented || m_active != (!found || found->active);
}

void Preceptors::signStanding()
{
    const std::string typed = m_oriented.trimmed().toStdString();
    const std::optional<base::Date> oriented = base::Date::fromIso(typed);
    m_error = !oriented && !typed.empty()
                  ? tr("Say the day as year, month, day: 2027-01-11. Leave it empty when there was none yet.")
                  : m_desk.write([&] {
                        return words::problem(
                            session::setStanding(m_desk.session(), idFrom(m_preceptor), oriented, m_active));
                    });
    Q_EMIT changed();
}

void Preceptors::end(int key, const QString& reason)
{
    constexpr qsizetype mostReason = 400;
    const std::string why = words::line(reason, mostReason);
    const session::Directory directory(m_desk.session());
    const session::Preceptor* found = find(directory, m_preceptor);
    if (found == nullptr || key < 0 || key >= static_cast<int>(found->keys.size()) || why.empty()) {
        return;
    }
    m_error = m_desk.write([&] {
        return words::problem(
            session::endSigningKeys(m_desk.session(), *found, why, found->keys[static_cast<std::size_t>(key)]));
    });
    Q_EMIT changed();
}

} // namespace peelpack::program
