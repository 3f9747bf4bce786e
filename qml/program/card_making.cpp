#include "qml/program/card_making.h"

#include "qml/parts/after_frame.h"
#include "qml/words/bridge.h"
#include "qml/words/words.h"
#include "sync/keys/code.h"

#include <algorithm>

namespace peelpack::program {
namespace {

constexpr qsizetype mostName = 80;
constexpr qsizetype mostCredential = 40;

} // namespace

QString CardMaking::holder() const
{
    return m_credential.isEmpty() ? m_name : m_name + QStringLiteral(", ") + m_credential;
}

void CardMaking::begin()
{
    forget();
    m_preceptor = {};
    m_name.clear();
    m_credential.clear();
    m_site.clear();
    Q_EMIT changed();
}

void CardMaking::beginFor(const QString& preceptor)
{
    begin();
    const keys::Id wanted = idFrom(preceptor);
    const session::Directory directory(m_desk.session());
    for (const session::Preceptor& one : directory.preceptors()) {
        if (one.id == wanted) {
            m_preceptor = one.id;
            m_name = words::fromUtf8(one.name);
            m_credential = words::fromUtf8(one.credential);
            m_site = words::fromUtf8(one.site);
        }
    }
    Q_EMIT changed();
}

bool CardMaking::take(const QString& name, const QString& credential, const QString& site)
{
    if (m_busy || made()) {
        return false;
    }
    m_error.clear();
    if (!known()) {
        m_name = words::fromUtf8(words::line(name, mostName));
        m_credential = words::fromUtf8(words::line(credential, mostCredential));
        m_site = words::fromUtf8(words::line(site, mostName));
    }
    if (m_name.isEmpty()) {
        m_error = tr("Write the name of the preceptor.");
    }
    Q_EMIT changed();
    return m_error.isEmpty();
}

keys::SigningCard CardMaking::cardFor(const session::Directory& directory) const
{
    const auto& all = directory.preceptors();
    const auto same = std::find_if(all.begin(), all.end(), [&](const session::Preceptor& one) {
        return known() ? one.id == m_preceptor : words::fromUtf8(one.name) == m_name;
    });
    return same == all.end() ? session::newCard(m_desk.session()) : session::nextCard(m_desk.session(), *same);
}

void CardMaking::make(const QString& name, const QString& credential, const QString& site, const QString& pin,
                      const QString& again)
{
    if (!take(name, credential, site)) {
        return;
    }
    if (pin != again) {
        m_error = tr("The two PINs differ.");
        Q_EMIT changed();
        return;
    }
    m_busy = true;
    Q_EMIT changed();
    parts::afterFrame(this, [this, pin] {
        m_busy = false;
        makeNow(pin);
        Q_EMIT changed();
    });
}

void CardMaking::makeNow(const QString& pin)
{
    session::Session& session = m_desk.session();
    const session::Directory directory(session);
    const keys::SigningCard card = cardFor(directory);
    const base::Result<keys::SigningKey> key = session::keyOfNewCard(session, card, words::secret(pin));
    if (!key) {
        m_error = words::why(key.error());
        return;
    }
    const session::PreceptorNames names{m_name.toStdString(), m_credential.toStdString(), m_site.toStdString(),
                                        m_preceptor};
    m_error = m_desk.write([&] {
        return words::problem(session::vouchFor(session, names, {key.value().verifyKey(), card.card, card.epoch}));
    });
    if (m_error.isEmpty()) {
        m_vouched = true;
        show(card);
    }
}

void CardMaking::makeWithoutPin(const QString& name, const QString& credential)
{
    if (take(name, credential, m_site)) {
        const session::Directory directory(m_desk.session());
        show(cardFor(directory));
    }
}

void CardMaking::show(const keys::SigningCard& card)
{
    m_code = words::toArray(card.code().view());
    m_typed = words::shown(keys::codeText(keys::CodeSort::Card, card.secret.view()));
    Q_EMIT changed();
}

void CardMaking::forget()
{
    wipe(m_code);
    wipe(m_typed);
    m_vouched = false;
    m_error.clear();
    Q_EMIT changed();
}

} // namespace peelpack::program
