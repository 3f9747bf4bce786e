#include "qml/program/site_list.h"

#include "platform/session/program_rules.h"
#include "platform/session/rule_writing.h"
#include "qml/words/bridge.h"
#include "qml/words/rules.h"
#include "qml/words/words.h"

#include <algorithm>

namespace peelpack::program {
namespace {

constexpr qsizetype mostName = 80;
constexpr qsizetype mostNote = 200;
constexpr std::array phoneRulesInOrder{journal::PhoneRule::NotSaid, journal::PhoneRule::Core,
                                       journal::PhoneRule::LoungeOnly, journal::PhoneRule::NotAtAll};

} // namespace

SiteList::SiteList(ProgramDesk& desk, QObject* parent) : QObject(parent), m_desk(desk)
{
    connect(&desk, &ProgramDesk::written, this, &SiteList::read);
}

bool SiteList::mayChange()
{
    return session::mayWriteRule(m_desk.session(), journal::Kind::Sites);
}

QStringList SiteList::phoneRules()
{
    QStringList rules;
    for (const journal::PhoneRule rule : phoneRulesInOrder) {
        rules.append(words::of(rule));
    }
    return rules;
}

void SiteList::setName(const QString& name)
{
    if (name != m_name) {
        m_name = name;
        Q_EMIT changed();
    }
}

void SiteList::setNote(const QString& note)
{
    if (note != m_note) {
        m_note = note;
        Q_EMIT changed();
    }
}

void SiteList::setPhones(int rule)
{
    if (rule >= 0 && rule < static_cast<int>(phoneRulesInOrder.size())) {
        m_phones = phoneRulesInOrder.at(static_cast<std::size_t>(rule));
        Q_EMIT changed();
    }
}

void SiteList::read()
{
    std::vector<NamedRow> rows;
    for (const journal::Site& site : session::sites(m_desk.session())) {
        QStringList detail{words::of(site.phones)};
        if (!site.note.empty()) {
            detail.append(words::fromUtf8(site.note));
        }
        rows.push_back({static_cast<int>(rows.size()), words::fromUtf8(site.name), detail.join(QStringLiteral(" · "))});
    }
    m_rows.put(std::move(rows));
    Q_EMIT changed();
}

void SiteList::begin(const journal::Site& site)
{
    m_before = site.name;
    m_name = words::fromUtf8(site.name);
    m_phones = site.phones;
    m_note = words::fromUtf8(site.note);
    m_error.clear();
    m_editing = true;
    Q_EMIT changed();
}

void SiteList::begin()
{
    begin(journal::Site());
}

void SiteList::change(int row)
{
    const std::vector<journal::Site> sites = session::sites(m_desk.session());
    if (mayChange() && row >= 0 && row < static_cast<int>(sites.size())) {
        begin(sites[static_cast<std::size_t>(row)]);
    }
}

void SiteList::leave()
{
    m_editing = false;
    m_error.clear();
    Q_EMIT changed();
}

void SiteList::write(std::vector<journal::Site> sites)
{
    m_error = m_desk.write([&] { return words::problem(session::setSites(m_desk.session(), std::move(sites))); });
    m_editing = !m_error.isEmpty();
    Q_EMIT changed();
}

void SiteList::sign()
{
    journal::Site site{words::line(m_name, mostName), m_phones, words::line(m_note, mostNote)};
    std::vector<journal::Site> sites = session::sites(m_desk.session());
    const bool listed =
        std::any_of(sites.begin(), sites.end(), [&](const journal::Site& one) { return one.name == site.name; });
    if (site.name.empty() || (listed && site.name != m_before)) {
        m_error = site.name.empty() ? tr("What is the site called? Its name is missing.")
                                    : tr("A site of this name is on the list: change that one.");
        Q_EMIT changed();
        return;
    }
    if (auto others = session::withoutSite(sites, m_before)) {
        sites = std::move(others).value();
    }
    write(session::withSite(std::move(sites), std::move(site)));
}

void SiteList::remove()
{
    auto sites = session::withoutSite(session::sites(m_desk.session()), m_before);
    if (!sites) {
        m_error = words::why(sites.error());
        Q_EMIT changed();
        return;
    }
    write(std::move(sites).value());
}

} // namespace peelpack::program
