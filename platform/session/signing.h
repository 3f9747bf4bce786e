#pragma once

#include "platform/session/directory.h"
#include "platform/session/sheets.h"
#include "sync/journal/own_phone.h"
#include "sync/keys/card.h"

namespace peelpack::session {

/// The wording that is read back before a signature, and its version (FORMAT.md, statement).
inline constexpr std::uint16_t wordingVersion = 1;
inline constexpr const char* wordingLocale = "en-US";
inline constexpr const char* meaningOfSigning =
    "I scrubbed on this case with this student. These are my own marks for what I saw.";

/// What a preceptor marks on one sheet. Procedures and head are as performed: the preceptor may have corrected them.
struct SheetMarks {
    keys::Id sheet;
    std::vector<std::string> procedures;
    journal::Head head;
    std::vector<journal::SkillMark> marks; ///< only what they saw; skills ascending
    std::string feedback;
};

/// Who signs, as the statement says it.
struct SignerName {
    std::string name;
    std::string credential;
};

/// A card whose PIN fitted, for the seconds of a sitting: key and secret are wiped when it goes.
struct UnlockedCard {
    keys::SigningKey key;
    keys::Id card;
    std::uint32_t epoch = 0;
    bool known =
        false; ///< on the roster, or used on this phone before; else nobody can tell a wrong PIN from a right one
};

/// Opens a signing card with its PIN on a student's phone. A wrong PIN is an entry of the student's journal (a
/// hand-over that ended, at `sheet`), and after five of them waits grow. BadValue: wrong PIN, must wait, another
/// program's card, revoked.
base::Result<UnlockedCard> unlockCard(Session& session, const keys::SigningCard& card, std::string_view pin,
                                      const keys::Id& sheet);

/// Signs the sheets of one sitting, each on its own, in one transaction. BadValue when one cannot be signed as it is.
base::Result<std::vector<journal::Position>> signWithCard(Session& session, const UnlockedCard& card,
                                                          const SignerName& signer,
                                                          const std::vector<SheetMarks>& sheets);
/// The two weak ways, signed by the student's device: a drawn signature (`strokes`) or a pen-signed stub (`stub`).
base::Result<journal::Position> signWeakly(Session& session, const SignerName& signer, const SheetMarks& sheet,
                                           keys::Bytes strokes, std::string stub);

/// What is shown to the preceptor's own phone.
base::Result<journal::SigningRequest> signingRequest(const Session& session, const SheetPlace& place);
/// Signs a request with a preceptor's own device; `sheet` names the request's sheet.
base::Result<keys::Bytes> answerRequest(const keys::DeviceKey& device, const journal::SigningRequest& request,
                                        const SignerName& signer, const SheetMarks& sheet, journal::Time time);
/// What the answer attests when it is one for this sheet; the reason why not.
base::Result<journal::Checked<journal::Attestation>> checkAnswer(const Session& session, const SheetPlace& place,
                                                                 keys::ByteView answer);
/// Takes the answer into the student's journal.
base::Result<journal::Position> takeAnswer(Session& session, const SheetPlace& place, keys::ByteView answer);

/// A hand-over that ended without a signature; marks are not kept.
base::Result<journal::Position> endHandOver(Session& session, const keys::Id& sheet, journal::Time began,
                                            std::uint8_t wrongTries, journal::HandOverCause cause);

/// What is signed, as it is read back: one fact a line.
std::vector<std::string> readBack(const SheetMarks& sheet, const SignerName& signer);

} // namespace peelpack::session
