#include "platform/print/papers.h"

namespace peelpack::print {
namespace {

void addCode(Document& document, const CarriedCode& code, const QString& what, const QString& howTo)
{
    document.add(Style::Heading, code.name.isEmpty() ? what : QStringLiteral("%1: %2").arg(what, code.name));
    QString caption = howTo;
    if (!code.typed.isEmpty()) {
        caption += QStringLiteral("\nTo be typed where there is no camera: ") + code.typed;
    }
    document.blocks.emplace_back(Code{code.bytes, caption});
}

} // namespace

Document signingCards(const std::vector<CarriedCode>& cards)
{
    Document document{QStringLiteral("Signing cards"), {}};
    for (const CarriedCode& card : cards) {
        addCode(document, card, QStringLiteral("Signing card"),
                QStringLiteral("Carry this card and keep its PIN in your head; together they sign as you. Never write "
                               "the PIN on it. Lost, or seen by somebody who knows your PIN: tell an instructor, who "
                               "ends it and makes another."));
    }
    return document;
}

Document invitations(const std::vector<CarriedCode>& codes)
{
    Document document{QStringLiteral("Invitations"), {}};
    for (const CarriedCode& code : codes) {
        addCode(document, code, QStringLiteral("Invitation"),
                QStringLiteral("Open Peelpack on your own phone, choose to join a program, and scan this code. It "
                               "serves one person once. Show the answer to whoever invited you; both of you see the "
                               "same six digits."));
    }
    return document;
}

} // namespace peelpack::print
