#include "qml/preceptor/code_words.h"

#include "qml/words/words.h"

#include <QCoreApplication>

namespace peelpack::preceptor {
namespace {

QString say(const char* text)
{
    return QCoreApplication::translate("Codes", text);
}

} // namespace

QString whyNoRequest(journal::Reason reason)
{
    switch (reason) {
    case journal::Reason::NotOurs:
        return say(QT_TRANSLATE_NOOP("Codes", "This is not the code of a case sheet. On the student's phone: Mark and "
                                              "sign on my own phone."));
    case journal::Reason::UnknownVersion:
        return say(QT_TRANSLATE_NOOP("Codes", "This code was made by a newer Peelpack: update this one."));
    default:
        return say(QT_TRANSLATE_NOOP("Codes", "This code is damaged: scan it again, or open it as a file."));
    }
}

QString whyNoAnswer(journal::Reason reason)
{
    switch (reason) {
    case journal::Reason::NotOurs:
        return say(QT_TRANSLATE_NOOP("Codes", "This is not the answer of a preceptor's phone. Scan the code that it "
                                              "shows after signing."));
    case journal::Reason::WrongProgram:
        return say(QT_TRANSLATE_NOOP("Codes", "This answer belongs to another program. Nothing was taken in."));
    case journal::Reason::WrongStudent:
        return say(QT_TRANSLATE_NOOP("Codes", "This answer is for another student's sheet. Nothing was taken in."));
    case journal::Reason::BadCombination:
        return say(QT_TRANSLATE_NOOP("Codes", "This answer is for another sheet. Nothing was taken in."));
    case journal::Reason::BadSignature:
        return say(QT_TRANSLATE_NOOP("Codes", "The signature in this answer does not fit: it was altered. Nothing was "
                                              "taken in."));
    default:
        return say(QT_TRANSLATE_NOOP("Codes", "This answer is damaged: scan it again, or open it as a file."));
    }
}

} // namespace peelpack::preceptor
