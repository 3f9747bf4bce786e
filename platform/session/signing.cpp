#include "platform/session/signing.h"

#include "core/base/text.h"
#include "core/role/classifier.h"
#include "platform/session/refusal.h"
#include "platform/vault/unlock_rules.h"

#include <algorithm>

namespace peelpack::session {
namespace {

base::Error bad(std::string sentence)
{
    return {base::ErrorCode::BadValue, std::move(sentence)};
}

/// True when the statement was signed with this very card and its right PIN.
bool signedWith(const journal::Attestation& attestation, const keys::SigningCard& card,
                const std::optional<keys::VerifyKey>& expected)
{
    const auto statement = journal::decodeStatement(attestation.statement);
    return statement && statement.value().signer.card == card.card && statement.value().signer.epoch == card.epoch &&
           statement.value().signer.key == expected;
}

/// Wrong PINs on this phone, of whatever card, since this card signed here. Another card's signature gives no tries
/// back: the phone's owner may have made that card.
vault::WrongTries wrongTriesOf(const Session& session, const keys::SigningCard& card,
                               const std::optional<keys::VerifyKey>& expected)
{
    vault::WrongTries tries;
    const auto own = session.ownFeed(session.person());
    const journal::Feed* feed = own ? session.ledger().feed(own.value()) : nullptr;
    if (feed == nullptr) {
        return tries;
    }
    journal::eachTrunkEntry(*feed, feed->count(), nullptr, [&](const journal::Decoded& entry) {
        const auto* attestation = std::get_if<journal::Attestation>(&entry.payload);
        if (attestation != nullptr && signedWith(*attestation, card, expected)) {
            tries = {};
        } else if (const auto* ended = std::get_if<journal::HandOverEnded>(&entry.payload)) {
            tries.count += ended->wrongTries;
            tries.lastAt = entry.context.time.seconds;
        }
    });
    return tries;
}

/// The public half that the card must have: from the roster, or from what it signed on this phone before.
std::optional<keys::VerifyKey> expectedKey(const Session& session, const keys::SigningCard& card)
{
    const Directory directory(session);
    if (const Preceptor* preceptor = directory.ofCard(card.card)) {
        for (const SigningKeyOf& key : preceptor->keys) {
            if (key.card == card.card && key.epoch == card.epoch) {
                return key.key;
            }
        }
    }
    std::optional<keys::VerifyKey> used;
    const auto wanted = journal::ofKind({journal::Kind::Attestation});
    for (const auto& [id, feed] : session.ledger().feeds()) {
        journal::eachTrunkEntry(feed, feed.count(), wanted, [&](const journal::Decoded& entry) {
            const auto statement = journal::decodeStatement(std::get<journal::Attestation>(entry.payload).statement);
            if (statement && statement.value().signer.card == card.card &&
                statement.value().signer.epoch == card.epoch) {
                used = statement.value().signer.key;
            }
        });
    }
    return used;
}

journal::Statement statementFor(const Session& session, const SheetMarks& sheet, const keys::Id& operation,
                                journal::Signer signer)
{
    return {session.program(), session.person(),  operation,      sheet.sheet,   sheet.procedures,
            sheet.head,        sheet.marks,       sheet.feedback, wordingLocale, wordingVersion,
            meaningOfSigning,  std::move(signer), session.now()};
}

journal::Signer signerAs(journal::SignerKind kind, const keys::VerifyKey& key, const SignerName& signer)
{
    journal::Signer by;
    by.kind = kind;
    by.key = key;
    by.name = signer.name;
    by.credential = signer.credential;
    return by;
}

base::Result<keys::Id> operationOf(const record::StudentRecord& student, const keys::Id& sheet)
{
    for (const record::SheetRecord& record : student.sheets) {
        if (record.id == idOf(sheet)) {
            if (record.standing == record::SheetStanding::Withdrawn || record.standing == record::SheetStanding::Void) {
                return bad("The sheet was withdrawn; there is nothing to sign.");
            }
            if (record.imported) {
                return bad("The sheet was imported from a paper log; nobody signs it here.");
            }
            return idOf(record.operation);
        }
    }
    return base::Error{base::ErrorCode::NotFound, "There is no such sheet here."};
}

base::Result<bool> complete(const SheetMarks& sheet, const SignerName& signer)
{
    if (sheet.marks.empty() && !sheet.head.canceled) {
        return bad("Nothing is marked; mark at least one skill, or decline with a reason.");
    }
    if (signer.name.empty()) {
        return bad("The signer's name is missing.");
    }
    return true;
}

} // namespace

base::Result<UnlockedCard> unlockCard(Session& session, const keys::SigningCard& card, std::string_view pin,
                                      const keys::Id& sheet)
{
    const journal::Time began = session.now();
    const std::optional<keys::VerifyKey> expected = expectedKey(session, card);
    const vault::WrongTries tries = wrongTriesOf(session, card, expected);
    if (const std::int64_t wait = tries.waitLeft(began.seconds); wait > 0) {
        return bad("Too many wrong PINs on this phone: wait " + std::to_string(wait) +
                   " seconds, or let the preceptor sign on their own phone.");
    }
    base::Result<keys::SigningKey> key = keys::cardKey(card, session.program(), pin);
    if (!key) {
        return key.error();
    }
    if (expected && key.value().verifyKey() != *expected) {
        const auto kept = endHandOver(session, sheet, began, 1, journal::HandOverCause::WrongPin);
        return kept ? bad("That is not the PIN of this card. The try is kept in the journal.") : kept.error();
    }
    if (session.authority().signerRevoked(journal::KeyKind::Card, key.value().verifyKey(), card.card, card.epoch)) {
        return bad("This card was revoked; the preceptor needs a new one.");
    }
    return UnlockedCard{std::move(key).value(), card.card, card.epoch, expected.has_value()};
}

base::Result<std::vector<journal::Position>> signWithCard(Session& session, const UnlockedCard& card,
                                                          const SignerName& signer,
                                                          const std::vector<SheetMarks>& sheets)
{
    std::vector<Writing> writings;
    const record::StudentRecord student = session.recordOf(session.person());
    for (const SheetMarks& sheet : sheets) {
        if (const base::Result<bool> ready = complete(sheet, signer); !ready) {
            return ready.error();
        }
        const base::Result<keys::Id> operation = operationOf(student, sheet.sheet);
        if (!operation) {
            return operation.error();
        }
        journal::Signer by = signerAs(journal::SignerKind::Card, card.key.verifyKey(), signer);
        by.card = card.card;
        by.epoch = card.epoch;
        auto attestation = journal::attest(statementFor(session, sheet, operation.value(), std::move(by)), card.key);
        if (!attestation) {
            return refused(attestation.reason());
        }
        writings.push_back({session.person(), std::move(attestation).value()});
    }
    return session.append(writings);
}

base::Result<journal::Position> signWeakly(Session& session, const SignerName& signer, const SheetMarks& sheet,
                                           keys::Bytes strokes, std::string stub)
{
    if (const base::Result<bool> ready = complete(sheet, signer); !ready) {
        return ready.error();
    }
    const base::Result<keys::Id> operation = operationOf(session.recordOf(session.person()), sheet.sheet);
    if (!operation) {
        return operation.error();
    }
    const base::Result<const keys::DeviceKey*> device = session.device();
    if (!device) {
        return device.error();
    }
    journal::Signer by = signerAs(stub.empty() ? journal::SignerKind::Drawn : journal::SignerKind::Paper,
                                  device.value()->signing.verifyKey(), signer);
    by.strokes = std::move(strokes);
    by.stub = std::move(stub);
    const auto attestation =
        journal::attest(statementFor(session, sheet, operation.value(), std::move(by)), device.value()->signing);
    if (!attestation) {
        return refused(attestation.reason());
    }
    return session.append(session.person(), attestation.value());
}

base::Result<journal::SigningRequest> signingRequest(const Session& session, const SheetPlace& place)
{
    const record::StudentRecord student = session.recordOf(place.student);
    const std::optional<keys::Bytes> name = session.note(notes::name);
    std::string shown = student.name.empty() && name ? std::string(name->begin(), name->end()) : student.name;
    return journal::SigningRequest{session.program(),
                                   place.student,
                                   shown.empty() ? "Student" : std::move(shown),
                                   idOf(place.record.operation),
                                   place.sheet,
                                   place.record.content.procedures,
                                   headOf(place.record.content.head),
                                   wordingLocale,
                                   wordingVersion,
                                   meaningOfSigning};
}

base::Result<keys::Bytes> answerRequest(const keys::DeviceKey& device, const journal::SigningRequest& request,
                                        const SignerName& signer, const SheetMarks& sheet, journal::Time time)
{
    if (const base::Result<bool> ready = complete(sheet, signer); !ready) {
        return ready.error();
    }
    journal::Signer by = signerAs(journal::SignerKind::Device, device.signing.verifyKey(), signer);
    const journal::Statement statement{
        request.program, request.student, request.operation, request.sheet,   sheet.procedures, sheet.head, sheet.marks,
        sheet.feedback,  request.locale,  request.wording,   request.meaning, std::move(by),    time};
    const auto attestation = journal::attest(statement, device.signing);
    if (!attestation) {
        return refused(attestation.reason());
    }
    return journal::signingAnswer(attestation.value());
}

base::Result<journal::Checked<journal::Attestation>> checkAnswer(const Session& session, const SheetPlace& place,
                                                                 keys::ByteView answer)
{
    const base::Result<journal::SigningRequest> request = signingRequest(session, place);
    const base::Result<journal::FeedId> feed = session.ownFeed(session.person());
    if (!request || !feed) {
        return request ? feed.error() : request.error();
    }
    return journal::acceptAnswer(request.value(), answer, feed.value());
}

base::Result<journal::Position> takeAnswer(Session& session, const SheetPlace& place, keys::ByteView answer)
{
    const auto checked = checkAnswer(session, place, answer);
    if (!checked) {
        return checked.error();
    }
    const auto& attestation = checked.value();
    if (!attestation) {
        return attestation.reason() == journal::Reason::BadCombination ? bad("This answer is for another sheet.")
                                                                       : refused(attestation.reason());
    }
    const base::Result<journal::FeedId> feed = session.ownFeed(session.person());
    if (!feed) {
        return feed.error();
    }
    const journal::Feed* own = session.ledger().feed(feed.value());
    bool known = false;
    if (own != nullptr) {
        const auto wanted = journal::ofKind({journal::Kind::Attestation});
        journal::eachTrunkEntry(*own, own->count(), wanted, [&](const journal::Decoded& entry) {
            known = known || std::get<journal::Attestation>(entry.payload) == attestation.value();
        });
    }
    if (known) {
        return bad("This answer was taken in already.");
    }
    return session.append(session.person(), attestation.value());
}

base::Result<journal::Position> endHandOver(Session& session, const keys::Id& sheet, journal::Time began,
                                            std::uint8_t wrongTries, journal::HandOverCause cause)
{
    return session.append(session.person(), journal::HandOverEnded{sheet, began, session.now(), wrongTries, cause});
}

std::vector<std::string> readBack(const SheetMarks& sheet, const SignerName& signer)
{
    std::vector<std::string> lines;
    lines.push_back("Performed on " + sheet.head.date.iso() + ": " + base::listed(sheet.procedures, "and") + ".");
    if (sheet.head.canceled) {
        lines.emplace_back("The case was canceled before incision.");
    }
    sheet::Marks marks;
    for (const journal::SkillMark& mark : sheet.marks) {
        marks.set(mark.skill, mark.mark);
        lines.push_back(std::string(sheet::label(mark.skill)) + ": " + std::string(sheet::inWords(mark.mark)) +
                        (mark.reason.empty() ? "" : " (" + mark.reason + ")"));
    }
    for (const sheet::Skill skill : sheet::allSkills) {
        if (marks.of(skill) == sheet::Mark::Unmarked) {
            lines.push_back(std::string(sheet::label(skill)) + ": not seen, not marked");
        }
    }
    if (!sheet.feedback.empty()) {
        lines.push_back("Feedback: " + sheet.feedback);
    }
    lines.push_back("Signed by " + signer.name + (signer.credential.empty() ? "" : ", " + signer.credential) + ".");
    lines.emplace_back(meaningOfSigning);
    return lines;
}

} // namespace peelpack::session
