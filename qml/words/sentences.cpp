#include "qml/words/sentences.h"

#include "qml/words/words.h"

#include <QCoreApplication>

#include <array>
#include <optional>

namespace peelpack::words {
namespace {

/// What the parts below the screens say in English, with %1, %2, ... for what they fill in.
constexpr std::array texts = std::to_array<const char*>({
    QT_TRANSLATE_NOOP("Sentences",
                      "The requirement set is no JSON: look at line %1 for a missing comma, quote or bracket."),
    QT_TRANSLATE_NOOP("Sentences", "The requirement set has the member \"%1\" twice; keep one of them."),
    QT_TRANSLATE_NOOP("Sentences", "There is no requirement set \"%1\"; use %2, or the name of a file."),
    QT_TRANSLATE_NOOP("Sentences", "The program's own file %1 is missing; install the program again."),
    QT_TRANSLATE_NOOP("Sentences", "Cannot read %1: %2."),
    QT_TRANSLATE_NOOP("Sentences", "%1 is larger than %2 bytes; check that it is the right file."),
    QT_TRANSLATE_NOOP("Sentences", "Cannot write %1: %2."),
    QT_TRANSLATE_NOOP("Sentences", "The sheet was initialed before this; an instructor decides."),
    QT_TRANSLATE_NOOP("Sentences", "The instructor whose action is in force had not seen this."),
    QT_TRANSLATE_NOOP("Sentences", "Another action was taken in its place."),
    QT_TRANSLATE_NOOP("Sentences", "This is larger than the format allows."),
    QT_TRANSLATE_NOOP("Sentences", "This ends before it is complete; get it again."),
    QT_TRANSLATE_NOOP("Sentences", "There are bytes after the end; get it again."),
    QT_TRANSLATE_NOOP("Sentences", "This was made by a newer version of Peelpack; update this one."),
    QT_TRANSLATE_NOOP("Sentences", "The contents are not in the byte order of the format."),
    QT_TRANSLATE_NOOP("Sentences", "A yes-or-no value is neither yes nor no."),
    QT_TRANSLATE_NOOP("Sentences", "A number is outside what the format allows."),
    QT_TRANSLATE_NOOP("Sentences", "A text holds bytes or control characters that no text has."),
    QT_TRANSLATE_NOOP("Sentences", "A text is longer than the format allows."),
    QT_TRANSLATE_NOOP("Sentences", "A text that must be given, such as a reason, is empty."),
    QT_TRANSLATE_NOOP("Sentences", "A list claims more items than the format or the file has room for."),
    QT_TRANSLATE_NOOP("Sentences", "A list has fewer items than it must have."),
    QT_TRANSLATE_NOOP("Sentences", "The contents are nested too deep."),
    QT_TRANSLATE_NOOP("Sentences", "Items are not in order, or one is there twice."),
    QT_TRANSLATE_NOOP("Sentences", "Two values do not go together."),
    QT_TRANSLATE_NOOP("Sentences", "This kind of entry does not belong in this stream."),
    QT_TRANSLATE_NOOP("Sentences", "This is not a Peelpack file of this sort."),
    QT_TRANSLATE_NOOP("Sentences", "The file was damaged on its way; get it again."),
    QT_TRANSLATE_NOOP("Sentences", "Earlier entries are missing; this waits until they come."),
    QT_TRANSLATE_NOOP("Sentences", "The signature does not fit: this was altered, or signed by another."),
    QT_TRANSLATE_NOOP("Sentences", "A public key in this cannot be used."),
    QT_TRANSLATE_NOOP("Sentences", "This belongs to another program."),
    QT_TRANSLATE_NOOP("Sentences", "This attestation was made for another student."),
    QT_TRANSLATE_NOOP("Sentences", "The attestation is not signed by who it names."),
    QT_TRANSLATE_NOOP("Sentences", "The evidence of a split record does not hold."),
    QT_TRANSLATE_NOOP("Sentences", "This phone's record split here, often after a restore."),
    QT_TRANSLATE_NOOP("Sentences", "This record split so often that this branch is not kept; the evidence is."),
    QT_TRANSLATE_NOOP("Sentences", "Nobody in the program has granted this device anything yet."),
    QT_TRANSLATE_NOOP("Sentences", "Made by a newer Peelpack; kept and passed on."),
    QT_TRANSLATE_NOOP("Sentences", "Who wrote this may not write this kind of entry."),
    QT_TRANSLATE_NOOP("Sentences", "This device writes under another student's id."),
    QT_TRANSLATE_NOOP("Sentences", "This concerns a class or site that its writer has no say in."),
    QT_TRANSLATE_NOOP("Sentences", "This came after the device was revoked."),
    QT_TRANSLATE_NOOP("Sentences", "This comes after the place where the record split."),
    QT_TRANSLATE_NOOP("Sentences", "The signing card was revoked before this was delivered."),
    QT_TRANSLATE_NOOP("Sentences", "Nobody has vouched for who signed this."),
    QT_TRANSLATE_NOOP("Sentences", "Only an entry of a student that is set aside can be admitted."),
    QT_TRANSLATE_NOOP("Sentences", "This parcel is not for this device."),
    QT_TRANSLATE_NOOP("Sentences", "This parcel's key does not fit its commitment; it was damaged or tampered with."),
    QT_TRANSLATE_NOOP("Sentences", "The head of this parcel was altered; get it again."),
    QT_TRANSLATE_NOOP("Sentences", "The contents of this parcel were altered or cut off; get it again."),
    QT_TRANSLATE_NOOP("Sentences", "This brings more unknown devices than a program has."),
    QT_TRANSLATE_NOOP("Sentences", "This brings more entries than one parcel may."),
    QT_TRANSLATE_NOOP("Sentences", "This is not a signing card; scan the card's own code."),
    QT_TRANSLATE_NOOP("Sentences", "This signing card belongs to another program."),
    QT_TRANSLATE_NOOP("Sentences", "A signing card has 16 secret bytes."),
    QT_TRANSLATE_NOOP("Sentences", "The PIN does not fit this signing card; try again."),
    QT_TRANSLATE_NOOP("Sentences", "A code has 128 bits."),
    QT_TRANSLATE_NOOP("Sentences", "A code has 7 groups of 5 letters and digits; check what you typed."),
    QT_TRANSLATE_NOOP("Sentences", "A code has 7 groups of 5 letters and digits; some are missing."),
    QT_TRANSLATE_NOOP("Sentences", "Group %1 of the code is mistyped; compare it again."),
    QT_TRANSLATE_NOOP("Sentences", "This is not a program code; it may be a vault code or a card's."),
    QT_TRANSLATE_NOOP("Sentences", "This is not a vault code; it may be a program code or a card's."),
    QT_TRANSLATE_NOOP("Sentences", "This is not the code of a signing card; it may be a program or vault code."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The stored public keys do not belong to the stored seeds; nothing is signed with them."),
    QT_TRANSLATE_NOOP("Sentences", "This is not an invitation; ask for a new one."),
    QT_TRANSLATE_NOOP("Sentences", "This is not a reply to an invitation; scan it again."),
    QT_TRANSLATE_NOOP("Sentences", "The invitation has expired; make a new one."),
    QT_TRANSLATE_NOOP("Sentences", "The reply is from somebody else's invitation."),
    QT_TRANSLATE_NOOP("Sentences", "The reply was not made with this invitation."),
    QT_TRANSLATE_NOOP("Sentences", "Nothing can be sealed to the key in the reply."),
    QT_TRANSLATE_NOOP("Sentences", "The reply was not signed by the device that it names."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The cost asked for unlocking is above 64 MiB or 4 passes; this is not one of our files."),
    QT_TRANSLATE_NOOP("Sentences", "The cost asked for unlocking is too low to protect anything."),
    QT_TRANSLATE_NOOP("Sentences", "A salt has 16 bytes and a stretched key 16 to 1024."),
    QT_TRANSLATE_NOOP("Sentences", "There is not enough memory to check the PIN; close other apps and try again."),
    QT_TRANSLATE_NOOP("Sentences", "A PIN has digits only."),
    QT_TRANSLATE_NOOP("Sentences", "A PIN has 6 to 12 digits."),
    QT_TRANSLATE_NOOP("Sentences", "That PIN is guessed first; choose digits without a pattern."),
    QT_TRANSLATE_NOOP("Sentences", "A sealing key has 32 bytes and a nonce 24."),
    QT_TRANSLATE_NOOP("Sentences", "A sealing seed has 32 bytes."),
    QT_TRANSLATE_NOOP("Sentences", "The other side's sealing key is of small order and is refused."),
    QT_TRANSLATE_NOOP("Sentences", "The sealed bytes were damaged, or the key is another."),
    QT_TRANSLATE_NOOP("Sentences", "A signing seed has 32 bytes."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The stored public key does not belong to the stored seed; nothing is signed with it."),
    QT_TRANSLATE_NOOP("Sentences", "The PDF cannot be drawn."),
    QT_TRANSLATE_NOOP("Sentences", "Printing was canceled; nothing was written."),
    QT_TRANSLATE_NOOP("Sentences", "Only an instructor or the director can do this."),
    QT_TRANSLATE_NOOP("Sentences", "This needs a reason; it stays beside the sheet for good."),
    QT_TRANSLATE_NOOP("Sentences", "The sheet is void; nothing more can be done with it."),
    QT_TRANSLATE_NOOP("Sentences", "There is no such sheet here."),
    QT_TRANSLATE_NOOP("Sentences", "The student took the sheet back; void it, or ask them to open another."),
    QT_TRANSLATE_NOOP("Sentences", "Nothing is changed."),
    QT_TRANSLATE_NOOP("Sentences", "Nobody has asked for a review of that mark, or it was answered already."),
    QT_TRANSLATE_NOOP("Sentences", "The requirement set in force, %1, is not a shipped one; give its file with --set."),
    QT_TRANSLATE_NOOP("Sentences", "The requirement set at hand is not the one in force as %1. Give its file with "
                                   "--set, or put the set in force again with \"program rules\"."),
    QT_TRANSLATE_NOOP("Sentences", "No rules are in force."),
    QT_TRANSLATE_NOOP("Sentences", "Nothing of this student is here."),
    QT_TRANSLATE_NOOP("Sentences", "Only the director decides who has met the requirements."),
    QT_TRANSLATE_NOOP("Sentences", "Nothing is short: leave the exception out."),
    QT_TRANSLATE_NOOP("Sentences", "Cases are short: a completion needs an exception with its reason."),
    QT_TRANSLATE_NOOP("Sentences", "This device's decisions do not count any more: another is the director's. Take in "
                                   "a colleague's parcel, or see \"program show\"."),
    QT_TRANSLATE_NOOP("Sentences", "That is not the code of this program."),
    QT_TRANSLATE_NOOP("Sentences",
                      "A later record of this student was made with this vault; it is superseded without being named."),
    QT_TRANSLATE_NOOP("Sentences", "No instructor is known here yet."),
    QT_TRANSLATE_NOOP("Sentences", "This student has no phone that is still granted."),
    QT_TRANSLATE_NOOP("Sentences", "No other instructor is known here."),
    QT_TRANSLATE_NOOP("Sentences",
                      "This vault is somebody's record in a program; a preceptor's phone has one of its own."),
    QT_TRANSLATE_NOOP("Sentences", "Damaged: %1."),
    QT_TRANSLATE_NOOP("Sentences", "Not readable: number %1 of what was signed here."),
    QT_TRANSLATE_NOOP("Sentences", "What was signed cannot be read back; nothing was signed."),
    QT_TRANSLATE_NOOP("Sentences", "This vault belongs to no program yet."),
    QT_TRANSLATE_NOOP("Sentences", "The settings of this vault are damaged."),
    QT_TRANSLATE_NOOP("Sentences", "Damaged: the certificates of the program."),
    QT_TRANSLATE_NOOP("Sentences",
                      "Not readable in its place: what follows entry %1 of a feed that is damaged before it."),
    QT_TRANSLATE_NOOP("Sentences", "This phone's record split, often after a restore, so nothing more is signed with "
                                   "its keys: join again, and go on where you are."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "A part of this device's own record is damaged: take in a parcel that has your history, and join again."),
    QT_TRANSLATE_NOOP("Sentences", "This vault belongs to somebody or some program already; join with a new vault."),
    QT_TRANSLATE_NOOP("Sentences", "A director invites anybody, an instructor everybody but instructors; a new "
                                   "director takes over with the program code."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "An invitation needs a name, and a class or site unless it is for an instructor of the whole program."),
    QT_TRANSLATE_NOOP("Sentences", "This reply answers no invitation that is open here: it was answered already, has "
                                   "expired, or was given out on another device."),
    QT_TRANSLATE_NOOP("Sentences", "A sheet is named by at least 4 digits of its id."),
    QT_TRANSLATE_NOOP("Sentences", "Several sheets begin with %1; give more digits."),
    QT_TRANSLATE_NOOP("Sentences", "There is no sheet %1 here."),
    QT_TRANSLATE_NOOP("Sentences", "The sheet was withdrawn; there is nothing to sign."),
    QT_TRANSLATE_NOOP("Sentences", "Nothing is marked; mark at least one skill, or decline with a reason."),
    QT_TRANSLATE_NOOP("Sentences", "The signer's name is missing."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "Too many wrong PINs on this phone: wait %1 seconds, or let the preceptor sign on their own phone."),
    QT_TRANSLATE_NOOP("Sentences", "That is not the PIN of this card. The try is kept in the journal."),
    QT_TRANSLATE_NOOP("Sentences", "This card was revoked; the preceptor needs a new one."),
    QT_TRANSLATE_NOOP("Sentences", "This answer is for another sheet."),
    QT_TRANSLATE_NOOP("Sentences", "This answer was taken in already."),
    QT_TRANSLATE_NOOP("Sentences", "There is no such student here."),
    QT_TRANSLATE_NOOP("Sentences", "This file is not a Peelpack vault."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "The vault's tables are damaged; use a copy of the file, or join anew and have your history sent back."),
    QT_TRANSLATE_NOOP("Sentences", "Another Peelpack has this vault open; close it first."),
    QT_TRANSLATE_NOOP("Sentences", "There is no space left; nothing was saved. Free some space and try again."),
    QT_TRANSLATE_NOOP("Sentences", "The vault cannot be written: its file or folder is read-only."),
    QT_TRANSLATE_NOOP("Sentences", "The vault cannot be opened; check that you may read and write its folder."),
    QT_TRANSLATE_NOOP("Sentences", "The vault's storage failed; what was not said to be saved was not saved."),
    QT_TRANSLATE_NOOP("Sentences", "The vault cannot be used: %1."),
    QT_TRANSLATE_NOOP("Sentences", "There is no vault in %1."),
    QT_TRANSLATE_NOOP("Sentences", "This vault was made by a newer Peelpack; use that one. Nothing was changed."),
    QT_TRANSLATE_NOOP("Sentences", "There is a file %1 already."),
    QT_TRANSLATE_NOOP("Sentences", "Cannot make the file %1."),
    QT_TRANSLATE_NOOP("Sentences", "Qt's SQLite driver is not installed."),
    QT_TRANSLATE_NOOP("Sentences", "The vault's storage failed before; close Peelpack and open it again."),
    QT_TRANSLATE_NOOP("Sentences", "row %1 (a certificate)"),
    QT_TRANSLATE_NOOP("Sentences", "row %1 (which feed %2 is)"),
    QT_TRANSLATE_NOOP("Sentences", "row %1 (entry %2 of feed %3)"),
    QT_TRANSLATE_NOOP("Sentences", "row %1 (missing)"),
    QT_TRANSLATE_NOOP("Sentences", "rows %1 to %2 (missing)"),
    QT_TRANSLATE_NOOP("Sentences", "The list of the vault's rows is damaged."),
    QT_TRANSLATE_NOOP("Sentences", "the list of rows"),
    QT_TRANSLATE_NOOP("Sentences", "The list of the vault's rows is damaged, so nothing more is written to it: join "
                                   "anew and have your history sent back."),
    QT_TRANSLATE_NOOP("Sentences", "What was saved does not read back; check the device's storage."),
    QT_TRANSLATE_NOOP("Sentences", "Cannot read the install mark in %1."),
    QT_TRANSLATE_NOOP("Sentences", "Cannot write the install mark in %1."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "The start of the vault is damaged; use a copy of the file, or join anew and have your history sent back."),
    QT_TRANSLATE_NOOP("Sentences", "the settings of this device"),
    QT_TRANSLATE_NOOP("Sentences", "the parcels that wait"),
    QT_TRANSLATE_NOOP("Sentences", "the list of settings and of parcels that wait"),
    QT_TRANSLATE_NOOP("Sentences", "a setting of this device"),
    QT_TRANSLATE_NOOP("Sentences", "a parcel that waits"),
    QT_TRANSLATE_NOOP("Sentences", "What opens the vault is damaged; use the vault code, or a copy of the file."),
    QT_TRANSLATE_NOOP("Sentences", "This vault is a copy, or was moved here from another device: it opens with its "
                                   "vault code only, and cannot sign until it is set up anew."),
    QT_TRANSLATE_NOOP("Sentences", "That is not the PIN."),
    QT_TRANSLATE_NOOP("Sentences", "That is not the passphrase."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "The part that the vault code opens is damaged; use the passphrase or PIN, or a copy of the file."),
    QT_TRANSLATE_NOOP("Sentences", "That is the code of another vault."),
    QT_TRANSLATE_NOOP("Sentences", "This vault is a copy, or was moved here from another device: it can be read, and "
                                   "cannot sign until it is set up anew."),
    QT_TRANSLATE_NOOP("Sentences", "Too many wrong tries: wait %1 seconds."),
    QT_TRANSLATE_NOOP("Sentences", "Too many wrong tries: wait %1 minutes."),
    QT_TRANSLATE_NOOP("Sentences", "After 10 wrong tries only the vault code opens this vault."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The new vault could not be written in full; check the space that is left, and try again."),
    QT_TRANSLATE_NOOP("Sentences", "The keys of this device are damaged: join anew, and your history is kept."),
    QT_TRANSLATE_NOOP("Sentences",
                      "A passphrase has at least 8 characters; a few words that do not belong together are good."),
    QT_TRANSLATE_NOOP("Sentences", "A passphrase has at most 200 characters."),
    QT_TRANSLATE_NOOP("Sentences", "That passphrase is guessed first; take a few words that do not belong together."),
    QT_TRANSLATE_NOOP("Sentences", "A passphrase has more than digits; digits alone are a PIN, which is weaker."),
    QT_TRANSLATE_NOOP("Sentences", "The case was canceled before incision."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "Another student has a first scrub on this operation. Say why both count; it stays beside the sheet for good."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "You signed this sheet yourself. Nobody initials alone what they signed: another instructor initials it."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "The sheet was imported from a paper log and has no marks to change; void it if its role is wrong."),
    QT_TRANSLATE_NOOP("Sentences", "Only an instructor or the director can admit an entry."),
    QT_TRANSLATE_NOOP("Sentences", "There is no such entry here."),
    QT_TRANSLATE_NOOP("Sentences", "This entry counts already."),
    QT_TRANSLATE_NOOP(
        "Sentences",
        "Only what a student's own device wrote can be admitted; anything else is written again by whoever may."),
    QT_TRANSLATE_NOOP("Sentences", "A student cannot vouch for a preceptor."),
    QT_TRANSLATE_NOOP("Sentences", "Only an instructor or the director can end a card."),
    QT_TRANSLATE_NOOP("Sentences", "This preceptor has no card or phone that is still good."),
    QT_TRANSLATE_NOOP("Sentences",
                      "An exception needs its reason; it stands in the journal and in the record for good."),
    QT_TRANSLATE_NOOP("Sentences", "Only an instructor or the director can end a device."),
    QT_TRANSLATE_NOOP("Sentences", "This person has no device that is still granted."),
    QT_TRANSLATE_NOOP("Sentences", "Only the program code ends a director's device."),
    QT_TRANSLATE_NOOP("Sentences", "Only a director ends another director's device."),
    QT_TRANSLATE_NOOP("Sentences",
                      "The table has more than 48 KiB; leave out what the shipped catalogue says already."),
    QT_TRANSLATE_NOOP("Sentences", "No table of procedures is in force: there is nothing to take away."),
    QT_TRANSLATE_NOOP("Sentences", "This table is in force already."),
    QT_TRANSLATE_NOOP("Sentences", "This invitation is not open any more."),
    QT_TRANSLATE_NOOP("Sentences", "Only an instructor or the director imports a paper log."),
    QT_TRANSLATE_NOOP("Sentences", "Only an instructor or the director keeps what a preceptor says."),
    QT_TRANSLATE_NOOP("Sentences", "There is no such signature here."),
    QT_TRANSLATE_NOOP("Sentences",
                      "Only of what a card signed can its preceptor say so here; void the sheet with a reason."),
    QT_TRANSLATE_NOOP("Sentences", "Only the director changes this rule."),
    QT_TRANSLATE_NOOP("Sentences", "Only the director, an instructor or a coordinator changes this rule."),
    QT_TRANSLATE_NOOP("Sentences", "The clinical day of %1 at %2 stands twice with different ends."),
    QT_TRANSLATE_NOOP("Sentences", "\"%1\" stands twice; say it once."),
    QT_TRANSLATE_NOOP("Sentences", "Only an instructor or the director draws sheets to confirm."),
    QT_TRANSLATE_NOOP("Sentences", "That is another code; nothing was made."),
    QT_TRANSLATE_NOOP("Sentences", "The sheet was imported from a paper log; nobody signs it here."),
    QT_TRANSLATE_NOOP("Sentences", "The sheet was imported: the student can only withdraw it."),
    QT_TRANSLATE_NOOP("Sentences", "The sheet is the student's own."),
    QT_TRANSLATE_NOOP("Sentences", "The sheet was imported before."),
    QT_TRANSLATE_NOOP("Sentences", "The sheet was imported: it has no marks to change."),
    QT_TRANSLATE_NOOP("Sentences", "the name is missing; fill it in."),
    QT_TRANSLATE_NOOP("Sentences", "the class is missing; fill it in."),
    QT_TRANSLATE_NOOP("Sentences", "this name stands twice; tell the two apart, by an initial for instance."),
    QT_TRANSLATE_NOOP("Sentences", "the list needs a header row with the columns name and class."),
    QT_TRANSLATE_NOOP("Sentences", "No site of that name is listed."),
    QT_TRANSLATE_NOOP("Sentences", "That credential is not on the list."),
    QT_TRANSLATE_NOOP("Sentences", "%1: The calendar is larger than 16 MiB."),
    QT_TRANSLATE_NOOP("Sentences", "%1: The calendar is not UTF-8 text; export it as iCalendar (.ics)."),
    QT_TRANSLATE_NOOP("Sentences", "%1: That is no calendar; export it as iCalendar (.ics)."),
    QT_TRANSLATE_NOOP("Sentences", "%1: There is no time zone \"%2\"; name one like America/Chicago."),
    QT_TRANSLATE_NOOP("Sentences", "%1: the day %2 names no place; fill it in, or say the site of such days."),
    QT_TRANSLATE_NOOP("Sentences", "The name of a site is not well-formed text."),
    QT_TRANSLATE_NOOP("Sentences", "It has no day on which it starts."),
    QT_TRANSLATE_NOOP("Sentences", "Its time is in UTC; say in which time zone the site is."),
    QT_TRANSLATE_NOOP("Sentences", "It ends before it starts, or lasts longer than a day; make an event of each day."),
    QT_TRANSLATE_NOOP("Sentences", "the date is none; write it like 2026-03-12."),
    QT_TRANSLATE_NOOP("Sentences", "the site is missing; fill it in, or say the site of such days."),
    QT_TRANSLATE_NOOP("Sentences", "a time is none; write it like 07:30."),
    QT_TRANSLATE_NOOP("Sentences", "the end stands without a start; fill the start in."),
    QT_TRANSLATE_NOOP("Sentences", "the table needs a header row with the column %1."),
    QT_TRANSLATE_NOOP("Sentences", "the file is UTF-16; save it as CSV UTF-8."),
    QT_TRANSLATE_NOOP("Sentences", "the bytes are not UTF-8; save the file as CSV UTF-8."),
    QT_TRANSLATE_NOOP("Sentences", "there is a NUL byte; save the file as CSV UTF-8."),
    QT_TRANSLATE_NOOP("Sentences", "a quoted field is never closed; add the closing quote, or remove the opening one."),
    QT_TRANSLATE_NOOP("Sentences", "a carriage return stands alone; end lines with CRLF or LF."),
    QT_TRANSLATE_NOOP("Sentences",
                      "a field is longer than %1 bytes; shorten it, or look for a quote that is never closed."),
    QT_TRANSLATE_NOOP("Sentences", "there is a quote inside a field that is not quoted; quote the whole field and "
                                   "double the quote."),
    QT_TRANSLATE_NOOP("Sentences", "there is text after a closing quote; double a quote that belongs to the text."),
    QT_TRANSLATE_NOOP("Sentences", "%1, line %2: %3"),
    QT_TRANSLATE_NOOP("Sentences", "%1, event \"%2\": %3"),
});

/// What stands in `english` for %1, %2, ... of `text`; empty: it is another sentence.
std::optional<std::vector<std::string_view>> argumentsOf(std::string_view text, std::string_view english)
{
    std::vector<std::string_view> found;
    std::size_t mark = text.find('%');
    if (!english.starts_with(text.substr(0, mark))) {
        return std::nullopt;
    }
    english.remove_prefix(std::min(mark, text.size()));
    while (mark != std::string_view::npos) {
        text.remove_prefix(mark + 2); // a mark has one digit
        mark = text.find('%');
        const std::string_view next = text.substr(0, mark);
        const bool last = mark == std::string_view::npos;
        const std::size_t end = last && next.empty() ? english.size() : last ? english.rfind(next) : english.find(next);
        if (end == std::string_view::npos || (last && end + next.size() != english.size())) {
            return std::nullopt;
        }
        found.push_back(english.substr(0, end));
        english.remove_prefix(end + next.size());
    }
    return english.empty() ? std::optional(found) : std::nullopt;
}

} // namespace

std::span<const char* const> sentenceTexts()
{
    return texts;
}

QString said(std::string_view english)
{
    for (const char* text : texts) {
        const auto arguments = argumentsOf(text, english);
        if (!arguments) {
            continue;
        }
        const QString translated = QCoreApplication::translate("Sentences", text);
        QString filled;
        for (qsizetype i = 0; i < translated.size(); ++i) {
            const bool mark = translated[i] == QLatin1Char('%') && i + 1 < translated.size();
            const int number = mark ? translated[i + 1].digitValue() : 0;
            if (number > 0 && static_cast<std::size_t>(number) <= arguments->size()) {
                filled += said((*arguments)[static_cast<std::size_t>(number) - 1]);
                ++i;
            } else {
                filled += translated[i];
            }
        }
        return filled;
    }
    return fromUtf8(english);
}

QString of(sheet::IdentifierKind kind)
{
    static constexpr std::array names = std::to_array<const char*>({
        QT_TRANSLATE_NOOP("Words", "a record number"),
        QT_TRANSLATE_NOOP("Words", "a date"),
        QT_TRANSLATE_NOOP("Words", "an age over 89"),
        QT_TRANSLATE_NOOP("Words", "a phone number"),
        QT_TRANSLATE_NOOP("Words", "an e-mail address"),
        QT_TRANSLATE_NOOP("Words", "a social security number"),
        QT_TRANSLATE_NOOP("Words", "a patient's name"),
    });
    return QCoreApplication::translate("Words", names.at(static_cast<std::size_t>(kind)));
}

} // namespace peelpack::words
