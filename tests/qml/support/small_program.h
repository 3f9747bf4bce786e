#pragma once

#include "platform/files/resources.h"
#include "platform/session/program_rules.h"
#include "platform/session/setup.h"
#include "sync/keys/code.h"

#include <QDateTime>

namespace peelpack::test {

/// A test cannot go on without it.
template <class T, class E>
T need(base::Result<T, E> result)
{
    if (!result) {
        qFatal("%s", result.error().sentence.c_str());
    }
    return std::move(result).value();
}

/// The clock of the machine, in a zone that is not UTC.
inline journal::Time now()
{
    return {QDateTime::currentSecsSinceEpoch(), -300};
}

/// Makes a fresh vault the director's of a program whose term holds every day, and opens it.
inline std::unique_ptr<session::Session> beginSmallProgram(std::unique_ptr<vault::Vault> vault,
                                                           keys::RandomSource& random)
{
    session::Rules rules = need(session::rulesOfShippedSet(files::usualSetId));
    rules.firstDay = base::Date::fromDays(0);
    rules.lastDay = base::Date::fromDays(60'000);
    rules.counted = session::countsAllButNewCards;
    const keys::Secret code = random.secret(keys::codeSecretBytes);
    need(session::beginProgram(*vault, need(keys::programKey(code.view())), "Director", rules, now, random));
    return need(session::Session::open(std::move(vault), now, random));
}

} // namespace peelpack::test
