#include "sync/journal/payload.h"

#include "sync/journal/coding.h"
#include "sync/journal/fork.h"

#include <algorithm>
#include <tuple>

namespace peelpack::journal {

Reason marksFault(const std::vector<SkillMark>& marks)
{
    for (std::size_t i = 0; i < marks.size(); ++i) {
        if (i > 0 && marks[i].skill <= marks[i - 1].skill) {
            return Reason::BadOrder;
        }
        if (marks[i].mark != sheet::Mark::NotApplicable && !marks[i].reason.empty()) {
            return Reason::BadCombination;
        }
    }
    return Reason::None;
}

namespace {

/// Whether the keys of a list ascend, each once.
template <class T, class KeyOf>
Reason ascendingBy(const std::vector<T>& items, const KeyOf& keyOf)
{
    const bool ascending = std::adjacent_find(items.begin(), items.end(), [&](const T& a, const T& b) {
                               return keyOf(a) >= keyOf(b);
                           }) == items.end();
    return ascending ? Reason::None : Reason::BadOrder;
}

Reason choicesFault(const std::vector<Choice>& choices)
{
    return ascendingBy(choices, [](const Choice& choice) { return choice.procedure; });
}

Reason reasonMissing(const Act& act)
{
    return act.reason.empty() ? Reason::TextMissing : Reason::None;
}

/// What the field limits alone do not say. None if the payload is as FORMAT.md wants it.
template <class T>
Reason fault(const T& /*payload*/)
{
    return Reason::None;
}

Reason fault(const Grant& grant)
{
    return keys::usable(grant.device) ? Reason::None : Reason::UnusableKey;
}

Reason fault(const Revoke& revoke)
{
    const bool device = revoke.target == KeyKind::Device;
    const bool cardEmpty = revoke.card.isZero() && revoke.epoch == 0;
    const bool deviceEmpty = revoke.feed == FeedId{} && revoke.accepted == 0;
    return (device ? cardEmpty && !deviceEmpty : deviceEmpty) ? Reason::None : Reason::BadCombination;
}

Reason fault(const Vouch& vouch)
{
    if (vouch.keyKind == KeyKind::Device && !(vouch.card.isZero() && vouch.epoch == 0)) {
        return Reason::BadCombination;
    }
    return keys::usable(vouch.key) ? Reason::None : Reason::UnusableKey;
}

Reason fault(const ClinicalDays& days)
{
    return ascendingBy(days.days, [](const ClinicalDay& one) { return std::tie(one.date, one.start, one.site); });
}

Reason fault(const Sites& sites)
{
    return ascendingBy(sites.sites, [](const Site& one) { return std::string_view(one.name); });
}

Reason fault(const WhoMaySign& who)
{
    return ascendingBy(who.signers, [](const MaySign& one) { return std::string_view(one.credential); });
}

template <Kind K>
Reason fault(const SheetVersion<K>& version)
{
    return marksFault(version.draft.marks);
}

Reason fault(const Logged& logged)
{
    return choicesFault(logged.choices);
}

template <Kind K>
Reason fault(const PlainAct<K>& plain)
{
    return reasonMissing(plain.act);
}

Reason fault(const Amend& amend)
{
    if (amend.marks.empty() && !amend.head && amend.procedures.empty()) {
        return Reason::TooFew;
    }
    const Reason marks = marksFault(amend.marks);
    return marks != Reason::None ? marks : reasonMissing(amend.act);
}

Reason fault(const Refile& refile)
{
    const Reason choices = choicesFault(refile.choices);
    return choices != Reason::None ? choices : reasonMissing(refile.act);
}

Reason fault(const Imported& imported)
{
    const Reason choices = choicesFault(imported.choices);
    if (choices != Reason::None) {
        return choices;
    }
    return imported.choices.back().procedure < imported.procedures.size() ? Reason::None : Reason::BadCombination;
}

Reason fault(const CompleteByException& complete)
{
    return complete.counted < complete.required ? Reason::None : Reason::BadCombination;
}

Reason fault(const Receipt& receipt)
{
    return ascendingBy(receipt.items, [](const ReceiptItem& item) { return item.device; });
}

Reason fault(const ForkFound& found)
{
    return found.evidence.first < found.evidence.second ? Reason::None : Reason::BadOrder;
}

Reason fault(const Attestation& attestation)
{
    return decodeStatement(attestation.statement).reason();
}

template <class T>
Checked<Payload> decodeAs(keys::ByteView bytes)
{
    auto value = decodeFields<T>(bytes);
    if (!value) {
        return value.reason();
    }
    if (const Reason wrong = fault(value.value()); wrong != Reason::None) {
        return wrong;
    }
    return Payload(std::move(value).value());
}

template <class T>
Checked<Payload> readAs(keys::ByteView bytes)
{
    auto value = decodeFields<T>(bytes);
    return value ? Checked<Payload>(Payload(std::move(value).value())) : value.reason();
}

/// Calls `visit` with the alternative of Payload whose kind it is; `otherwise` for none.
template <class Result, class Visit, std::size_t I = 1>
Result withKind(std::uint16_t kind, const Visit& visit, Result otherwise)
{
    if constexpr (I < std::variant_size_v<Payload>) {
        using T = std::variant_alternative_t<I, Payload>;
        if (static_cast<std::uint16_t>(T::kind) == kind) {
            return visit.template operator()<T>();
        }
        return withKind<Result, Visit, I + 1>(kind, visit, std::move(otherwise));
    } else {
        return otherwise;
    }
}

} // namespace

Checked<Payload> decodePayload(std::uint16_t kind, keys::ByteView bytes)
{
    const auto decode = [bytes]<class T>() { return decodeAs<T>(bytes); };
    return withKind(kind, decode, Checked<Payload>(Payload(Unread{})));
}

Checked<Payload> readPayload(std::uint16_t kind, keys::ByteView bytes)
{
    const auto read = [bytes]<class T>() { return readAs<T>(bytes); };
    return withKind(kind, read, Checked<Payload>(Payload(Unread{})));
}

keys::ByteView statementBytes(keys::ByteView attestation)
{
    InputArchive archive(attestation);
    const std::uint64_t size = archive.count(mostStatementBytes);
    return archive.view(static_cast<std::size_t>(size));
}

Checked<keys::Bytes> encode(const Payload& payload)
{
    return std::visit(
        []<class T>(const T& value) -> Checked<keys::Bytes> {
            if constexpr (std::is_same_v<T, Unread>) {
                return Reason::NewerKind;
            } else {
                keys::Bytes bytes = encodeFields(value);
                const auto readBack = decodeAs<T>(bytes);
                if (!readBack) {
                    return readBack.reason();
                }
                return bytes;
            }
        },
        payload);
}

bool isKnown(std::uint16_t kind)
{
    const auto known = []<class T>() { return true; };
    return withKind(kind, known, false);
}

bool isAct(std::uint16_t kind)
{
    return kind >= static_cast<std::uint16_t>(Kind::Initial) && kind <= static_cast<std::uint16_t>(Kind::Void);
}

bool belongsInProgramStream(std::uint16_t kind)
{
    switch (static_cast<Kind>(kind)) {
    case Kind::Grant:
    case Kind::Revoke:
    case Kind::Vouch:
    case Kind::Policy:
    case Kind::RequirementsChange:
    case Kind::ClinicalDays:
    case Kind::Sites:
    case Kind::WhoMaySign:
    case Kind::PreceptorStanding:
    case Kind::CatalogueOverlay:
    case Kind::Receipt:
    case Kind::ForkFound:
        return true;
    default:
        return !isKnown(kind);
    }
}

bool belongsInStudentStream(std::uint16_t kind)
{
    switch (static_cast<Kind>(kind)) {
    case Kind::Vouch:
    case Kind::Policy:
    case Kind::RequirementsChange:
    case Kind::ClinicalDays:
    case Kind::Sites:
    case Kind::WhoMaySign:
    case Kind::PreceptorStanding:
    case Kind::CatalogueOverlay:
        return false;
    default:
        return true;
    }
}

const Act* actOf(const Payload& payload)
{
    return std::visit(
        [](const auto& value) -> const Act* {
            if constexpr (requires { value.act; }) {
                return &value.act;
            } else {
                return nullptr;
            }
        },
        payload);
}

} // namespace peelpack::journal
