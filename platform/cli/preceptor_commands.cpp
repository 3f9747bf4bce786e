#include "platform/cli/commands.h"

#include "core/base/text.h"
#include "platform/cli/answer.h"
#include "platform/cli/bytes_file.h"
#include "platform/cli/short_id.h"
#include "platform/cli/vault_access.h"
#include "platform/session/cards.h"
#include "platform/session/repudiations.h"
#include "sync/keys/card.h"

#include <algorithm>

namespace peelpack::cli {
namespace {

base::Error usage(const char* sentence)
{
    return {base::ErrorCode::BadUsage, sentence};
}

/// A new card, or the next epoch of a lost one. By staff it is vouched for at once.
base::Result<Answer> makeCard(const Arguments& arguments)
{
    const auto out = arguments.value("out");
    if (!out) {
        return usage("Where shall the card's code go? Give --out FILE.");
    }
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!opened) {
        return opened.error();
    }
    OpenedVault parts = std::move(opened).value();
    session::Session& session = *parts.session;
    const session::Directory directory(session);
    keys::SigningCard card = session::newCard(session);
    journal::Vouch vouch;
    vouch.person = session.random().id();
    vouch.name = typed(arguments, "name");
    vouch.credential = typed(arguments, "credential");
    vouch.site = typed(arguments, "site");
    if (const auto again = arguments.value("again")) {
        const base::Result<const session::Preceptor*> known = directory.findPreceptor(*again);
        if (!known) {
            return known.error();
        }
        vouch.person = known.value()->id;
        vouch.name = known.value()->name;
        vouch.credential = known.value()->credential;
        vouch.site = known.value()->site;
        card = session::nextCard(session, *known.value());
    }
    const bool staff = session.role() != journal::Role::Student;
    if (staff && vouch.name.empty()) {
        return usage("Whose card is it? Give --name, or --again for somebody who is known.");
    }
    const base::Result<keys::Secret> pin = parts.secrets.askNew("New PIN of the card, chosen by the preceptor");
    if (!pin) {
        return pin.error();
    }
    const base::Result<keys::SigningKey> key = session::keyOfNewCard(session, card, textOf(pin.value()));
    if (!key) {
        return key.error();
    }
    if (const base::Result<bool> kept = writeNewFile(*out, card.code().view()); !kept) {
        return kept.error();
    }
    if (staff) {
        session::nameCard(vouch, card.card, card.epoch, key.value().verifyKey());
        const auto written = session.append(session.programStream(), vouch);
        if (!written) {
            return written.error();
        }
    }
    Answer answer;
    answer.json = {{"card", keys::hex(card.card.view())},
                   {"epoch", card.epoch},
                   {"key", keys::hex(key.value().verifyKey().view())},
                   {"vouched", staff}};
    answer.text =
        "The card's code is in " + *out + ": print it, or let the preceptor photograph it, and delete the file.\n" +
        (staff ? "It is vouched for.\n"
               : "Nobody vouches for it yet; what it signs is shown as card-new until an instructor does:\n  "
                 "peelpack preceptor vouch --card " +
                     keys::hex(card.card.view()) + " --key " + keys::hex(key.value().verifyKey().view()) + "\n");
    return answer;
}

base::Result<Answer> vouch(const Arguments& arguments)
{
    const auto keyBytes = keys::fromHex(arguments.value("key").value_or(std::string()));
    const auto key = keyBytes ? keys::VerifyKey::from(*keyBytes) : std::nullopt;
    const auto cardText = arguments.value("card");
    const auto cardBytes = keys::fromHex(cardText.value_or(std::string()));
    const auto card = cardBytes ? keys::Id::from(*cardBytes) : std::nullopt;
    const session::PreceptorNames names{
        typed(arguments, "name"), typed(arguments, "credential"), typed(arguments, "site"), {}};
    if (!key || names.name.empty() || (cardText && !card)) {
        return usage(
            "Give --name and the --key that \"preceptor phone\" or \"preceptor card\" showed (64 digits); for a card "
            "also --card (32 digits).");
    }
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!opened) {
        return opened.error();
    }
    const base::Result<keys::Id> preceptor = session::vouchFor(*opened.value().session, names, {*key, card, 1});
    if (!preceptor) {
        return preceptor.error();
    }
    Answer answer;
    answer.json = {{"preceptor", keys::hex(preceptor.value().view())}};
    answer.text = "Vouched for.\n";
    return answer;
}

base::Result<Answer> revoke(const Arguments& arguments)
{
    const base::Result<std::string> reason = requiredReason(arguments);
    if (!reason) {
        return reason.error();
    }
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!opened) {
        return opened.error();
    }
    session::Session& session = *opened.value().session;
    const session::Directory directory(session);
    const base::Result<const session::Preceptor*> preceptor = directory.findPreceptor(arguments.operands.front());
    if (!preceptor) {
        return preceptor.error();
    }
    const base::Result<std::size_t> ended = session::endSigningKeys(session, *preceptor.value(), reason.value());
    if (!ended) {
        return ended.error();
    }
    Answer answer;
    answer.json = {{"revoked", ended.value()}};
    answer.text = "Ended: " + base::counted(ended.value(), "card or phone", "cards and phones") +
                  ". What you had received before stays good; the rest is aside until admitted.\n";
    return answer;
}

/// What a card signed, for its owner to look through; with --send written into the students' streams.
base::Result<Answer> statement(const Arguments& arguments)
{
    base::Result<OpenedVault> opened = openVault(arguments);
    if (!opened) {
        return opened.error();
    }
    session::Session& session = *opened.value().session;
    const session::Directory directory(session);
    const base::Result<const session::Preceptor*> preceptor = directory.findPreceptor(arguments.operands.front());
    const auto from = dateOption(arguments, "from");
    const auto to = dateOption(arguments, "to");
    if (const base::Error* error = base::firstError(preceptor, from, to)) {
        return *error;
    }
    const std::vector<std::string>& repudiated = arguments.list("not-mine");
    Answer answer;
    answer.json["signed"] = nlohmann::ordered_json::array();
    std::map<keys::Id, std::map<std::pair<keys::Id, std::uint32_t>, std::vector<journal::StatementItem>>> items;
    std::optional<base::Date> first;
    std::optional<base::Date> last;
    std::map<keys::Id, std::set<base::EntryHash>> notTheirs; // by student
    const auto wanted = journal::ofKind({journal::Kind::Attestation});
    for (const auto& [id, feed] : session.ledger().feeds()) {
        const auto [saidOf, isNew] = notTheirs.try_emplace(id.stream);
        if (isNew) {
            saidOf->second = session::repudiatedIn(session, id.stream);
        }
        const std::set<base::EntryHash>& said = saidOf->second;
        journal::eachTrunkEntry(feed, feed.count(), wanted, [&, stream = id.stream](const journal::Decoded& entry) {
            const auto signedText = journal::decodeStatement(std::get<journal::Attestation>(entry.payload).statement);
            if (!signedText || session.authority().personOf(signedText.value().signer) != preceptor.value()->id) {
                return;
            }
            const base::Date day = signedText.value().head.date;
            if ((from.value() && day < *from.value()) || (to.value() && *to.value() < day)) {
                return;
            }
            const std::string hash = keys::hex(entry.position.hash.view());
            const bool notMine = said.contains(base::EntryHash{entry.position.hash.bytes}) ||
                                 std::any_of(repudiated.begin(), repudiated.end(),
                                             [&](const std::string& digits) { return hash.starts_with(digits); });
            const journal::Signer& signer = signedText.value().signer;
            items[stream][{signer.card, signer.epoch}].push_back({entry.position.hash, notMine});
            first = std::min(first.value_or(day), day);
            last = std::max(last.value_or(day), day);
            const session::Person* student = directory.person(stream);
            const std::string name = student == nullptr ? shortId(stream) : student->name;
            answer.json["signed"].push_back({{"entry", hash},
                                             {"student", name},
                                             {"date", day.iso()},
                                             {"procedures", signedText.value().procedures},
                                             {"notMine", notMine}});
            answer.text += "  " + hash.substr(0, shortDigits) + "  " + day.iso() + "  " + name + "  " +
                           base::listed(signedText.value().procedures, "and") + (notMine ? "  NOT MINE" : "") + "\n";
        });
    }
    if (arguments.has("keep")) {
        std::vector<session::Writing> writings;
        for (const auto& [student, cards] : items) {
            for (const auto& [card, list] : cards) {
                if (!card.first.isZero()) {
                    writings.push_back({student, journal::CardStatement{card.first, card.second, *first, *last, list}});
                }
            }
        }
        const auto written = session.append(writings);
        if (!written) {
            return written.error();
        }
        answer.text += "Kept in the journal: " + base::counted(writings.size(), "statement", "statements") + ".\n";
    }
    if (answer.text.empty()) {
        answer.text = "Nothing that came in here was signed by this preceptor in that time.\n";
    }
    return answer;
}

} // namespace

std::vector<Command> preceptorCommands()
{
    return {
        {{"preceptor card",
          "Make a signing card; by an instructor it is vouched for, on a student's phone it is new. Secrets: the "
          "vault's "
          "passphrase, the card's new PIN.",
          {},
          withVaultOptions(
              {{"name", "NAME", "the preceptor"},
               {"credential", "TEXT", "such as CST or RN"},
               {"site", "NAME", "where they work"},
               {"again", "NAME|ID", "another card for somebody who is known; end the lost one with preceptor end"},
               {"out", "FILE", "where the card's code goes"}}),
          "peelpack preceptor card --name \"L. Brandt\" --credential CST --site \"North Campus\" --out brandt.card\n  "
          "the "
          "preceptor chooses the PIN and tells nobody"},
         [](const Arguments& arguments) { return give(arguments, makeCard(arguments)); }},
        {{"preceptor vouch",
          "Vouch for a preceptor's own phone, or for a card that was made on the spot.",
          {},
          withVaultOptions({{"name", "NAME", "the preceptor"},
                            {"credential", "TEXT", "such as CST or RN"},
                            {"site", "NAME", "where they work"},
                            {"key", "HEX", "the signing key"},
                            {"card", "HEX", "the card's id; not for a phone"}}),
          "peelpack preceptor vouch --name \"L. Brandt\" --credential CST --key 577b...\n  what it signed counts from "
          "now on"},
         [](const Arguments& arguments) { return give(arguments, vouch(arguments)); }},
        {{"preceptor end",
          "End the cards and phones of a preceptor: lost, or somebody else knows the PIN.",
          {"NAME|ID"},
          withVaultOptions({{"reason", "TEXT", "why"}}),
          "peelpack preceptor end \"L. Brandt\" --reason \"card lost\"\n  then: preceptor card --again"},
         [](const Arguments& arguments) { return give(arguments, revoke(arguments)); }},
        {{"preceptor statement",
          "List what a preceptor's cards and phones signed, for the preceptor to look through.",
          {"NAME|ID"},
          withVaultOptions({{"from", "DATE", "first day"},
                            {"to", "DATE", "last day"},
                            {"not-mine", "ENTRY", "an entry that the preceptor says is not theirs", true},
                            {"keep", "", "keep the statement in the journal"}}),
          "peelpack preceptor statement \"L. Brandt\" --from 2026-03-01 --to 2026-03-31\n  samples are confirmed with "
          "it"},
         [](const Arguments& arguments) { return give(arguments, statement(arguments)); }},
    };
}

} // namespace peelpack::cli
