#include "qml/instructor/split_words.h"

#include "platform/session/directory.h"
#include "qml/words/words.h"

#include <QCoreApplication>

#include <algorithm>

namespace peelpack::instructor {
namespace {

/// Where the words of this file stand among the texts.
struct SplitWords {
    Q_DECLARE_TR_FUNCTIONS(SplitWords)
};

QString versionOf(const StaffDesk& desk, const journal::ForkEvidence& fork, const journal::Link& link)
{
    const journal::Feed* feed = desk.session().ledger().feed(fork.feed);
    const journal::KeptEntry* kept = feed == nullptr ? nullptr : feed->find(fork.seq, link.hash);
    if (kept == nullptr) {
        return SplitWords::tr("Not in the files that came in.");
    }
    int entries = 0;
    feed->eachSegment([&](std::uint32_t from, const journal::Segment& segment) {
        if (from == fork.seq && !segment.entries.empty() && segment.entries.front().link == link) {
            entries = static_cast<int>(segment.entries.size());
        }
    });
    const journal::Decoded entry = journal::decode(fork.feed, fork.seq, *kept);
    const record::Time time{entry.context.time.seconds, entry.context.time.zone};
    return words::moment(time, desk.today()) + QStringLiteral(": ") + entryInWords(entry.payload) +
           QStringLiteral(". ") + SplitWords::tr("%n item(s) in this version.", nullptr, std::max(1, entries));
}

} // namespace

QString writerInWords(const StaffDesk& desk, const journal::FeedId& feed)
{
    const session::Directory directory(desk.session());
    for (const session::Person& person : directory.people()) {
        for (const session::GrantedDevice& device : person.devices) {
            if (device.key == feed.device) {
                return words::fromUtf8(person.name);
            }
        }
    }
    return SplitWords::tr("somebody unknown");
}

QString entryInWords(const journal::Payload& payload)
{
    if (const auto* opened = std::get_if<journal::SheetOpened>(&payload)) {
        return SplitWords::tr("a case sheet opened") + QStringLiteral(", ") + words::listed(opened->draft.procedures);
    }
    if (const auto* changed = std::get_if<journal::HeadChanged>(&payload)) {
        return SplitWords::tr("a case sheet changed") + QStringLiteral(", ") + words::listed(changed->draft.procedures);
    }
    if (const auto* attestation = std::get_if<journal::Attestation>(&payload)) {
        const auto statement = journal::decodeStatement(attestation->statement);
        return SplitWords::tr("a preceptor's signature") +
               (statement ? QStringLiteral(", ") + words::fromUtf8(statement.value().signer.name) : QString());
    }
    if (std::holds_alternative<journal::Withdrawn>(payload)) {
        return SplitWords::tr("a case sheet taken back");
    }
    if (std::holds_alternative<journal::Logged>(payload)) {
        return SplitWords::tr("a case filed under a specialty");
    }
    if (std::holds_alternative<journal::ReviewAsked>(payload)) {
        return SplitWords::tr("a mark review asked for");
    }
    return SplitWords::tr("something else");
}

SplitRow splitInWords(const StaffDesk& desk, const journal::ForkEvidence& fork)
{
    return {SplitWords::tr("The record of %1 split at item %2, often after a restore.")
                .arg(writerInWords(desk, fork.feed))
                .arg(fork.seq),
            versionOf(desk, fork, fork.first), versionOf(desk, fork, fork.second)};
}

} // namespace peelpack::instructor
