#include "qml/preceptor/signer_words.h"

#include "platform/session/program_rules.h"
#include "qml/preceptor/hand_over.h"
#include "qml/words/rules.h"
#include "qml/words/words.h"

namespace peelpack::preceptor {

QString rulesInWords(const session::Session& session)
{
    const std::optional<journal::Policy> policy = session::policyInForce(session);
    QStringList counted;
    QStringList confirmed;
    QStringList never;
    for (const sheet::Strength strength : session::strengths) {
        switch (session::acceptance(policy, strength)) {
        case session::Acceptance::AsItIs:
            counted.append(words::of(strength));
            break;
        case session::Acceptance::OnceConfirmed:
            confirmed.append(words::of(strength));
            break;
        case session::Acceptance::Never:
            never.append(words::of(strength));
            break;
        }
    }
    QStringList sentences;
    if (!counted.isEmpty()) {
        sentences.append(HandOver::tr("What counts here: %1.").arg(words::listed(counted)));
    }
    if (!confirmed.isEmpty()) {
        sentences.append(
            HandOver::tr("Only once an instructor has confirmed it with you: %1.").arg(words::listed(confirmed)));
    }
    if (!never.isEmpty()) {
        sentences.append(HandOver::tr("Does not count here: %1.").arg(words::listed(never)));
    }
    QStringList expected;
    for (const journal::MaySign& signer : session::whoMaySign(session)) {
        expected.append(HandOver::tr("%1 (%2)").arg(words::fromUtf8(signer.credential), words::roles(signer.roles)));
    }
    if (!expected.isEmpty()) {
        sentences.append(
            HandOver::tr("Who may sign which role, by the program's list: %1.").arg(words::listed(expected)));
    }
    return sentences.join(QLatin1Char(' '));
}

QString inWords(const session::MaySignHere& may, const QString& credential)
{
    QStringList sentences;
    if (!may.anybody && !credential.isEmpty()) {
        const auto bit = [](bool on, std::uint8_t role) { return on ? role : std::uint8_t{0}; };
        const auto roles = static_cast<std::uint8_t>(bit(may.first, journal::signsFirstScrub) |
                                                     bit(may.second, journal::signsSecondScrub) |
                                                     bit(may.observation, journal::signsObservation));
        sentences.append(
            roles == journal::signsEveryRole
                ? HandOver::tr("By the program's list, %1 may sign every role.").arg(credential)
            : roles == 0 ? HandOver::tr("%1 is not on the program's list of who may sign: nothing is refused, and "
                                        "instructors see a question.")
                               .arg(credential)
                         : HandOver::tr("By the program's list, %1 may sign: %2. For another role nothing is refused, "
                                        "and instructors see a question.")
                               .arg(credential, words::roles(roles)));
    }
    if (may.standing && !may.standing->active) {
        sentences.append(HandOver::tr("The program lists you as not active."));
    } else if (may.standing && !may.standing->oriented) {
        sentences.append(HandOver::tr("The program has not oriented you yet."));
    }
    return sentences.join(QLatin1Char(' '));
}

} // namespace peelpack::preceptor
