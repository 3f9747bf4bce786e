import QtQuick
import QtTest
import Peelpack.Shell

// A director declares a completion by exception, makes its record and saves papers; an instructor admits one version of a
// record that split, draws sheets to confirm, and takes in files that are dropped on the window.
ClassJourney {
    name: "Evidence"

    readonly property string ines: "Ines Duarte"
    readonly property string caleb: "Caleb Nwosu"

    function init() {
        begin()
    }
    function cleanup() {
        end()
    }
    function openStudent(name) {
        tap("tab-1")
        tryVerify(() => seek(item => item.row !== undefined && item.row && item.row.name === name && item.clicked !== undefined) !== null, 8000, words())
        tapItem(seek(item => item.row !== undefined && item.row && item.row.name === name && item.clicked !== undefined))
    }

    function test_completeByExceptionWithRecordAndProof() {
        world.signedSheet(ines, "Laparoscopic appendectomy")
        world.initialAtInstructor(ines)
        world.bringToDirector()
        hold("director")
        openStudent(ines)
        tap("completionRow")
        awaitWords("1 of 120 cases count, as initialed.")
        verify(find("decideComplete") === null) // only by exception
        tap("decideException")
        giveReason("the site closed its rooms")
        awaitWords("Ines Duarte is complete by exception")
        awaitWords("Your reason: the site closed its rooms")
        compare(world.decisionsAbout(ines), 0)
        tap("signCompletion")
        awaitWords("Complete by exception under")
        compare(world.decisionsAbout(ines), 1)
        tapInside(await("programCode"))
        type("AAAAA-AAAAA")
        tap("makeRecord")
        wait(50)
        verify(find("saveRecord") === null) // not the program's code
        tapInside(await("programCode"))
        type(world.programCode())
        tap("makeRecord")
        await("saveRecord")
        tap("saveRecord")
        awaitWords("Saved as")
        compare(world.verifiedRecord(".record.json"), "Ines Duarte, exception: the site closed its rooms")
        compare(world.provenSheets(".proofs.json"), 1)
        verify(world.isPdf(".record.pdf"))
        tap("prove-0")
        awaitWords("Saved as proof-")
        compare(world.provenSheets("proof-"), 1)
        tapWords("Back")
        awaitWords("Complete by exception under")
        tapWords("Class")
        awaitWords("complete by exception")
    }

    function test_theStudentSeesThatItIsAnException() {
        world.signedSheet(ines, "Laparoscopic appendectomy")
        world.initialAtInstructor(ines)
        world.bringToDirector()
        hold("director")
        openStudent(ines)
        tap("completionRow")
        tap("decideException")
        giveReason("the site closed its rooms")
        tap("signCompletion")
        awaitWords("Complete by exception under")
        tapWords("Back")
        tapWords("Class")
        tap("tab-2")
        tap("sendTo-" + ines)
        awaitWords("Saved as")
        verify(world.readyAnswer(ines))

        hold(ines)
        tap("tab-2")
        verify(find("completionCard") === null)
        tap("tab-3")
        tap("parcelsRow")
        tap("takeInButton")
        awaitWords("taken in")
        tapWords("Back")
        tap("tab-2")
        compare((await("completionTitle")).text, "Complete by exception")
        awaitWords("by Director, under")
        awaitWords("1 of 120 cases counted when it was decided.")
        awaitWords("Why: the site closed its rooms")
    }

    function test_onlyTheDirectorDecides() {
        world.signedSheet(ines, "Laparoscopic appendectomy")
        hold("instructor")
        takeIn([ines])
        openStudent(ines)
        tap("completionRow")
        awaitWords("Only the director decides")
        verify(find("decideException") === null)
        verify(find("decideComplete") === null)
        const completion = world.phone.evidence.completion
        verify(!completion.decide("I say so"))
        verify(!completion.makeRecord(world.programCode()))
        compare(world.decisionsAbout(ines), 0)
    }

    function test_papersAreMadeAsideAndSaved() {
        const sheet = world.signedSheet(ines, "Laparoscopic appendectomy")
        hold("instructor")
        takeIn([ines])
        look(world.keyOf(ines, sheet))
        tap("printSheet")
        awaitWords("Saved as case-sheet-", 30000)
        verify(world.isPdf("case-sheet-"))
        tapWords("Back")
        tap("tab-3")
        tap("papersRow")
        for (const [row, file] of [["paperLog", "case-log-"], ["paperBoard", "class-board-"], ["paperReport", "program-report-"]]) {
            tap(row)
            awaitWords("Saved as " + file, 30000)
            verify(world.isPdf(file))
        }
        tap("paperRows")
        awaitWords("Saved as case-sheets-", 30000)
        verify(world.savedText("case-sheets-").indexOf("Laparoscopic appendectomy") > 0)
        const papers = world.phone.evidence.papers
        papers.make(0)
        verify(papers.busy)
        papers.cancel()
        verify(!papers.busy)
        wait(500)
        compare(papers.name, "") // nothing is kept of it
        compare(papers.done, "")
        awaitWords("Stopped; nothing was made.")
    }

    function test_sheetsToConfirm() {
        const sheets = ["Laparoscopic appendectomy", "Tonsillectomy"].map(procedure => world.signedSheet(ines, procedure))
        hold("instructor")
        takeIn([ines])
        tap("tab-3")
        tap("confirmRow")
        tap("drawButton")
        awaitWords("of 2 that are not confirmed yet")
        awaitWords("Ask A. Ferro")
        tap("theirs-0")
        tap("reasonDone")
        verify(staff.pending.writeNow())
        awaitWords("confirmed with the preceptor")
        tap("notTheirs-1")
        verify(staff.pending.writeNow())
        awaitWords("Preceptors say that these are not theirs")
        compare(sheets.filter(sheet => world.standingOf(ines, sheet) === "initialed").length, 1)
        tap("drawButton")
        awaitWords("No signed sheet is left to confirm.")
    }

    function test_aRecordThatSplit() {
        const [one, other] = world.splitRecord(ines, "Tonsillectomy", "Cesarean section")
        hold("instructor")
        tap("tab-2")
        tap("takeInFiles")
        awaitWords("The record of Ines Duarte split", 20000)
        awaitWords("Tonsillectomy")
        awaitWords("Cesarean section")
        verify(world.standingOf(ines, one) !== "signed")
        tap("tab-3")
        tap("asideRow")
        awaitWords("It came after the record split.")
        const before = world.actsAbout(ines)
        tap("admit-0")
        giveReason("looked into it with the student")
        awaitWords("Admitted: it counts from now on.")
        compare(world.actsAbout(ines), before + 1)
        for (const reason of ["", "   "])
            verify(!world.phone.evidence.aside.admit(0, reason))
        compare(world.actsAbout(ines), before + 1)
    }

    function test_filesDroppedOnTheWindow() {
        world.signedSheet(ines, "Laparoscopic appendectomy")
        world.signedSheet(caleb, "Tonsillectomy")
        hold("instructor")
        tap("tab-2")
        verify(world.dropParcels(window, [ines, caleb], false))
        awaitWords("Duarte.peelparcel", 20000)
        awaitWords("Nwosu.peelparcel")
        awaitWords("taken in")
        verify(world.dropParcels(window, [ines, caleb], true)) // a folder of them
        awaitWords("Nothing new.", 20000)
    }
}
