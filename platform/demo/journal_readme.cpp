#include "platform/demo/journal_readme.h"

#include "platform/demo/journal_term.h"
#include "platform/demo/journal_troubles.h"
#include "platform/session/sheets.h"
#include "sync/keys/code.h"

namespace peelpack::demo {
namespace {

std::string padded(std::string text, std::size_t width)
{
    text.append(width > text.size() ? width - text.size() : 1, ' ');
    return text;
}

std::string vaultOf(const World& world, const Installation& home)
{
    return home.file().substr(world.folder.size() + 1);
}

std::string secret(const keys::Secret& text)
{
    return {text.view().begin(), text.view().end()};
}

std::string firstInstructorFile(const World& world)
{
    return vaultOf(world, world.staff[1].home);
}

/// The only place that names commands.
std::string commands(const World& world)
{
    std::string waiting;
    for (const Student& student : world.students) {
        if (student.instructor == 1 && student.waits) {
            waiting = fileNameOf(student.name);
        }
    }
    return "Try, in this folder:\n"
           "  peelpack queue --vault " +
           firstInstructorFile(world) + "\n      what waits for " + world.staff[1].name + "\n  peelpack take parcels/" +
           waiting + ".peelparcel --vault " + firstInstructorFile(world) +
           "\n      takes in what a student sent last\n"
           "  peelpack sheet list --vault student-" +
           fileNameOf(trouble::wrongPins) +
           ".peelvault\n      a student's sheets, and how each stands\n"
           "  peelpack tally director.peelvault\n      what everybody has, and what is short\n"
           "  peelpack check director.peelvault\n      verifies every entry from nothing\n";
}

std::string staffPart(const World& world)
{
    std::string text = "Staff\n";
    for (const Staff& one : world.staff) {
        text +=
            "  " + padded(one.name, 20) + padded(vaultOf(world, one.home), 42) +
            (one.role == journal::Role::Director ? "director" : "instructor, " + one.scopes[0] + ", " + one.scopes[1]) +
            "\n";
    }
    return text;
}

std::string preceptorPart(const World& world)
{
    std::string text = "Preceptors, their signing cards and PINs\n";
    for (const Preceptor& preceptor : world.preceptors) {
        const std::string who =
            "  " + padded(preceptor.name + ", " + preceptor.credential, 22) + padded(preceptor.site, 21);
        if (preceptor.phone) {
            text += who + "signs on their own phone, which is not here\n";
        }
        for (const Card& card : preceptor.cards) {
            text += who + padded("cards/" + card.file, 28) + "PIN " + card.pin +
                    (card.remark.empty() ? "" : "  (" + card.remark + ")") + "\n";
        }
    }
    return text;
}

std::string studentPart(const World& world)
{
    std::string text = "Students\n";
    for (const Student& student : world.students) {
        text += "  " + padded(student.name, 20) + padded(student.className, 14) + "instructor " +
                padded(world.staff[student.instructor].name, 18) + (student.waits ? "last parcel not taken in" : "") +
                "\n";
    }
    for (std::size_t at = text.find(" \n"); at != std::string::npos; at = text.find(" \n")) {
        text.erase(at, 1);
    }
    return text;
}

struct Story {
    std::string who;
    std::vector<std::string> lines;
};

std::vector<Story> stories(const World& world)
{
    using S = std::string;
    std::size_t unsent = 0;
    for (const Student& student : world.students) {
        if (student.name == trouble::neverSent) {
            unsent = session::onlyHere(student.home.session());
        }
    }
    return {
        {S(trouble::forked),
         {"the phone was set back to an older state with its keys and wrote on, so its record split in",
          "the ninth week; the instructor holds the evidence and let the sheet of the first history count;",
          "the second history is aside, and the student went on with new keys"}},
        {S(trouble::lostPhone),
         {"lost the phone in the seventh week; it was revoked and replaced, with the history back; the old",
          "one (lost-phone.peelvault) opened one more sheet, which is aside"}},
        {world.preceptors[trouble::losesCard].name,
         {"lost the signing card; it was revoked in the tenth week, and a new one is in use"}},
        {S(trouble::revokedCard), {"had a sheet signed with the lost card two days later: aside"}},
        {S(trouble::unknownCard),
         {"had a sheet signed with a card that nobody vouches for (" + S(trouble::newcomer) + ")"}},
        {S(trouble::late[0]), {"opened two sheets five weeks after their dates, beyond receipts"}},
        {S(trouble::late[1]), {"the same"}},
        {S(trouble::contradiction),
         {"one sheet was initialed by one instructor and returned by another, who had not met; the return",
          "stands, the initial is beside it"}},
        {S(trouble::wrongPins), {"three wrong PINs in a hand-over in the twelfth week, and no signature"}},
        {S(trouble::neverSent),
         {"has sent nothing since the tenth week: " + std::to_string(unsent) + " entries are only on that phone"}},
    };
}

std::string troublePart(const World& world)
{
    std::string text = "What went wrong\n";
    for (const Story& story : stories(world)) {
        std::string who = story.who;
        for (const std::string& line : story.lines) {
            text += "  " + padded(std::move(who), 16) + line + "\n";
            who.clear();
        }
    }
    return text;
}

std::string codePart(const World& world)
{
    std::string text = "Vault codes: open a vault on another device, where it can be read and signs nothing\n";
    const auto line = [&](const Installation& home) {
        text += "  " + padded(vaultOf(world, home), 42) +
                secret(keys::codeText(keys::CodeSort::Vault, home.code().view())) + "\n";
    };
    for (const Staff& one : world.staff) {
        line(one.home);
    }
    for (const Student& student : world.students) {
        line(student.home);
    }
    line(*world.lostPhone);
    return text;
}

} // namespace

std::string readmeOf(const World& world, const JournalFigures& figures)
{
    return "An invented program on real vaults: the spring term of 2026, as it stood on its last Sunday.\n"
           "People, sites and cases are made up; it shows the tool and proves nothing. Each making has other keys.\n"
           "\n" +
           std::to_string(figures.students) + " students of two classes, " + std::to_string(figures.staff) +
           " members of the staff, three sites, " + std::to_string(figures.sheets) + " case sheets, " +
           std::to_string(figures.entries) +
           " entries in the director's vault.\n"
           "\n"
           "Passphrase of every vault: " +
           demoPassphrase +
           "\n"
           "Program code: " +
           secret(keys::codeText(keys::CodeSort::Program, world.programCode.view())) +
           "\n"
           "The install marks of these vaults are with those of your own, in " +
           vault::FolderMarkStore::usualFolder() +
           ".\nOn another device, or as copies, the vaults open with their codes (at the end) and sign nothing.\n"
           "\n" +
           commands(world) + "\n" + staffPart(world) + "\n" + preceptorPart(world) + "\n" + studentPart(world) + "\n" +
           troublePart(world) +
           "\n"
           "Files\n"
           "  *.peelvault           everybody's sealed vault\n"
           "  cards/*.card          what the QR code of a signing card holds\n"
           "  parcels/*.peelparcel  what each student sent last, sealed to the staff\n"
           "  program.id            the program's public key, with which anybody can verify an export\n"
           "\n" +
           codePart(world);
}

} // namespace peelpack::demo
