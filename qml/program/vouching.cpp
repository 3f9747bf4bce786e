#include "qml/program/vouching.h"

#include "qml/words/bridge.h"
#include "qml/words/words.h"

#include <algorithm>

namespace peelpack::program {
namespace {

constexpr qsizetype mostName = 80;
constexpr qsizetype mostCredential = 40;
constexpr qsizetype keyGroup = 8;

} // namespace

Vouching::Vouching(ProgramDesk& desk, QObject* parent) : QObject(parent), m_desk(desk)
{
    connect(&desk, &ProgramDesk::written, this, &Vouching::read);
}

QString Vouching::kindOf(const journal::Signer& signer) const
{
    return signer.kind == journal::SignerKind::Device ? tr("own phone") : tr("signing card made on the spot");
}

void Vouching::read()
{
    m_signers = session::waitingSigners(m_desk.session());
    std::vector<WaitingSignerRow> rows;
    for (const session::WaitingSigner& waiting : m_signers) {
        QStringList title{words::fromUtf8(waiting.signer.name)};
        if (!waiting.signer.credential.empty()) {
            title.append(words::fromUtf8(waiting.signer.credential));
        }
        rows.push_back({title.join(QStringLiteral(", ")),
                        kindOf(waiting.signer) + QStringLiteral(" · ") +
                            tr("%n sheet(s) wait for it", nullptr, static_cast<int>(waiting.sheets.size()))});
    }
    m_waiting.put(std::move(rows));
    m_known.clear();
    const session::Directory directory(m_desk.session());
    for (const session::Preceptor& preceptor : directory.preceptors()) {
        m_known.append(words::fromUtf8(preceptor.name));
    }
    Q_EMIT changed();
}

void Vouching::take(const session::WaitingSigner& waiting)
{
    const journal::Signer& signer = waiting.signer;
    const bool card = signer.kind == journal::SignerKind::Card;
    m_key = session::VouchedKey{signer.key, card ? std::optional(signer.card) : std::nullopt, signer.epoch};
    m_what = words::capitalized(kindOf(signer));
    m_claimedName = words::fromUtf8(signer.name);
    m_claimedCredential = words::fromUtf8(signer.credential);
    const session::Directory directory(m_desk.session());
    for (const session::WaitingSheet& sheet : waiting.sheets) {
        const session::Person* student = directory.person(sheet.student);
        m_sheets.append(tr("%1, %2: %3")
                            .arg(student == nullptr ? tr("A student") : words::fromUtf8(student->name),
                                 words::day(sheet.date, m_desk.today()), words::listed(sheet.procedures)));
    }
}

void Vouching::choose(int index)
{
    drop();
    if (index >= 0 && index < static_cast<int>(m_signers.size())) {
        take(m_signers[static_cast<std::size_t>(index)]);
    }
    Q_EMIT changed();
}

void Vouching::readKey(const QByteArray& code)
{
    drop();
    QByteArray digits;
    for (const char letter : code) {
        if (letter != ' ' && letter != '\n' && letter != '\r') {
            digits.append(letter);
        }
    }
    const auto bytes = keys::fromHex(digits.toStdString());
    const auto key = bytes ? keys::VerifyKey::from(*bytes) : std::nullopt;
    if (!key) {
        m_error = tr("This is not a signing key. On the preceptor's phone: Your signing key.");
        Q_EMIT changed();
        return;
    }
    const auto waits = std::find_if(m_signers.begin(), m_signers.end(), [&](const session::WaitingSigner& one) {
        return one.signer.kind == journal::SignerKind::Device && one.signer.key == *key;
    });
    if (waits != m_signers.end()) {
        take(*waits);
    } else {
        m_key = session::VouchedKey{*key, std::nullopt, 0};
        m_what = words::capitalized(tr("own phone"));
    }
    Q_EMIT changed();
}

QString Vouching::keyText() const
{
    QStringList groups;
    if (m_key && !m_key->card) {
        const QString digits = QString::fromStdString(keys::hex(m_key->key.view()));
        for (qsizetype at = 0; at < digits.size(); at += keyGroup) {
            groups.append(digits.mid(at, keyGroup));
        }
    }
    return groups.join(QLatin1Char(' '));
}

bool Vouching::vouch(const QString& name, const QString& credential, const QString& site)
{
    const session::PreceptorNames names{
        words::line(name, mostName), words::line(credential, mostCredential), words::line(site, mostName), {}};
    if (!m_key) {
        return false;
    }
    if (names.name.empty()) {
        m_error = tr("Write the name of the preceptor.");
        Q_EMIT changed();
        return false;
    }
    const session::VouchedKey key = *m_key;
    const QString problem =
        m_desk.write([&] { return words::problem(session::vouchFor(m_desk.session(), names, key)); });
    if (problem.isEmpty()) {
        drop();
    }
    m_error = problem;
    Q_EMIT changed();
    return problem.isEmpty();
}

void Vouching::drop()
{
    m_key.reset();
    m_what.clear();
    m_claimedName.clear();
    m_claimedCredential.clear();
    m_sheets.clear();
    m_error.clear();
    Q_EMIT changed();
}

} // namespace peelpack::program
