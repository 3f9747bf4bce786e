#include "platform/print/papers.h"

namespace peelpack::print {
namespace {

/// A document of codes with the same words beside each.
Document codesOf(const QString& title, const QString& what, const QString& howTo, const std::vector<CarriedCode>& codes)
{
    Document document{title, {}};
    for (const CarriedCode& code : codes) {
        document.add(Style::Heading, code.name.isEmpty() ? what : QStringLiteral("%1: %2").arg(what, code.name));
        const QString typed =
            code.typed.isEmpty() ? QString() : QStringLiteral("\nTo be typed where there is no camera: ") + code.typed;
        document.blocks.emplace_back(Code{code.bytes, howTo + typed});
    }
    return document;
}

} // namespace

Document signingCards(const std::vector<CarriedCode>& cards)
{
    return codesOf(
        QStringLiteral("Signing cards"), QStringLiteral("Signing card"),
        QStringLiteral("Carry this card and keep its PIN in your head; together they sign as you. Never write "
                       "the PIN on it. Lost, or seen by somebody who knows your PIN: tell an instructor, who "
                       "ends it and makes another."),
        cards);
}

Document invitations(const std::vector<CarriedCode>& codes)
{
    return codesOf(QStringLiteral("Invitations"), QStringLiteral("Invitation"),
                   QStringLiteral("Open Peelpack on your own phone, choose to join a program, and scan this code. It "
                                  "serves one person once. Show the answer to whoever invited you; both of you see the "
                                  "same six digits."),
                   codes);
}

} // namespace peelpack::print
