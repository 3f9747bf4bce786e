import QtQuick
import QtTest
import Peelpack.Shell

// Two students' parcels come in; an instructor decides about each sheet by touch; the answers go back to the students'
// phones.
ClassJourney {
    name: "Instructor"

    readonly property string ines: "Ines Duarte"
    readonly property string caleb: "Caleb Nwosu"

    function init() {
        begin()
    }
    function cleanup() {
        end()
    }

    function test_aWeek() {
        const plain = world.signedSheet(ines, "Laparoscopic cholecystectomy")
        const asked = world.signedSheet(ines, "Laparoscopic appendectomy")
        const changed = world.signedSheet(ines, "Tonsillectomy")
        const filed = world.signedSheet(caleb, "Carpal tunnel release")
        const reviewed = world.signedSheet(caleb, "Cesarean section", ["verify"])
        const voided = world.signedSheet(caleb, "Total knee arthroplasty")
        world.askReview(caleb, reviewed, 0, "I picked the case the evening before.")
        hold("instructor")
        takeIn([ines, caleb])
        awaitWords("6 sheet")
        const receipts = [world.actsAbout(ines), world.actsAbout(caleb)]

        look(world.keyOf(ines, plain))
        awaitWords("All five first-scrub skills are Yes")
        tap("initialButton")
        verify(staff.pending.waiting)
        compare(world.standingOf(ines, plain), "signed") // not written yet
        compare(world.actsAbout(ines), receipts[0])
        tap("undoButton")
        verify(!staff.pending.waiting)
        compare(staff.sheet.key, world.keyOf(ines, plain)) // there again
        tap("initialButton")

        look(world.keyOf(ines, asked))
        tap("returnButton")
        giveReason("which hernia?")
        compare(world.standingOf(ines, plain), "initialed") // written with the next decision
        verify(staff.pending.waiting)

        look(world.keyOf(ines, changed))
        decide("amendButton")
        const three = await("amendMark-7")
        tapItem(three.children[1])
        awaitWords("Cut suture: \"Yes\" becomes \"No\"")
        giveReason("told by the preceptor")

        look(world.keyOf(caleb, filed))
        decide("refileButton")
        tap("refile-0-general")
        giveReason("done by the general service")

        look(world.keyOf(caleb, reviewed))
        awaitWords("If you accept it, the role becomes: First scrub.")
        tap("acceptReview-0")
        giveReason("the circulator confirms it")

        look(world.keyOf(caleb, voided))
        decide("voidButton")
        giveReason("opened twice")

        verify(staff.pending.writeNow())
        compare(world.actsAbout(ines), receipts[0] + 3)
        compare(world.actsAbout(caleb), receipts[1] + 3)
        compare(world.standingOf(ines, asked), "returned")
        compare(world.standingOf(ines, changed), "amended")
        compare(world.categoryOf(caleb, filed), "general")
        compare(world.standingOf(caleb, filed), "amended")
        compare(world.roleOf(caleb, reviewed), "first")
        compare(world.standingOf(caleb, voided), "void")

        // What the preceptor gave stays in sight.
        look(world.keyOf(ines, changed))
        awaitWords("A. Ferro: Yes")
        tap("initialButton")
        tap("tab-2")
        tap("sendTo-" + ines)
        awaitWords("Saved as")
        verify(world.readyAnswer(ines))
        verify(find("sendTo-" + ines) === null) // there is nothing more for her
        verify(find("sendTo-" + caleb) !== null)

        hold(ines)
        tap("tab-3")
        tap("parcelsRow")
        tap("takeInButton")
        awaitWords("taken in")
        awaitWords("Everything is with your instructor.")
        compare(world.standingOf(ines, plain), "initialed")
        compare(world.standingOf(ines, asked), "returned")
        compare(world.standingOf(ines, changed), "initialed")
        tapWords("Back")
        tap("tab-0")
        awaitWords("Your instructor asks: which hernia?")
    }

    function test_nothingWithoutAReason() {
        const sheet = world.signedSheet(ines, "Laparoscopic appendectomy", ["verify"])
        world.askReview(ines, sheet, 0, "I picked the case.")
        hold("instructor")
        takeIn([ines])
        const before = world.actsAbout(ines)
        look(world.keyOf(ines, sheet))
        for (const button of ["returnButton", "voidButton"]) {
            decide(button)
            verify(!await("reasonDone").enabled)
            tapWords("Cancel")
        }
        decide("refileButton")
        tap("refile-0-orthopedics")
        verify(!await("reasonDone").enabled)
        tapWords("Cancel")
        decide("amendButton")
        tapItem(await("amendMark-1").children[1])
        verify(!await("reasonDone").enabled)
        tap("dropAmend")
        tap("acceptReview-0")
        verify(!await("reasonDone").enabled)
        tapWords("Cancel")

        // Nor behind the screens, nor with spaces alone.
        for (const reason of ["", "   ", "\n\t"]) {
            verify(!staff.sheet.giveBack(reason))
            verify(!staff.sheet.voidSheet(reason))
            verify(!staff.sheet.refile(0, "orthopedics", reason))
            verify(!staff.sheet.acceptReview(0, reason))
            verify(!staff.sheet.initial(reason, false)) // it declines the review
            staff.amending.begin()
            staff.amending.mark(1, 2)
            verify(!staff.amending.done(reason))
        }
        verify(!staff.pending.waiting)
        verify(staff.pending.writeNow())
        compare(world.actsAbout(ines), before)
        compare(world.standingOf(ines, sheet), "signed")
    }

    function test_nobodyInitialsAloneWhatTheySigned() {
        const own = world.sheetSignedByInstructor(ines, "Laparoscopic appendectomy")
        hold("instructor")
        takeIn([ines])
        look(world.keyOf(ines, own))
        awaitWords("Nobody initials alone what they signed")
        verify(find("initialButton") === null)
        verify(!staff.sheet.initial("", false))
        verify(!staff.pending.waiting)
        compare(world.standingOf(ines, own), "signed")
    }

    function test_twoFirstScrubsNeedAReason() {
        const one = world.signedSheetIn(ines, "Laparoscopic appendectomy", "Room 4")
        const other = world.signedSheetIn(caleb, "Laparoscopic appendectomy", "Room 4")
        hold("instructor")
        takeIn([ines, caleb])
        look(world.keyOf(ines, one))
        awaitWords("Both are first scrub: initialing needs a reason.")
        awaitWords(caleb)
        verify(!staff.sheet.initial("", false))
        tap("initialButton")
        giveReason("they changed places at the relief")
        verify(staff.pending.writeNow())
        compare(world.standingOf(ines, one), "initialed")
        compare(world.standingOf(caleb, other), "signed")
    }

    function test_plainOnesTogetherOnceTheyWereOnScreen() {
        const sheets = ["Laparoscopic appendectomy", "Tonsillectomy", "Cesarean section"].map(procedure => world.signedSheet(ines, procedure))
        hold("instructor")
        takeIn([ines])
        verify(!staff.list.initialLooked()) // none was on screen
        look(world.keyOf(ines, sheets[0]))
        look(world.keyOf(ines, sheets[1]))
        tapWords("All that wait")
        tap("initialLooked")
        verify(staff.pending.writeNow())
        compare(world.standingOf(ines, sheets[0]), "initialed")
        compare(world.standingOf(ines, sheets[1]), "initialed")
        compare(world.standingOf(ines, sheets[2]), "signed")
    }

    function test_onePreceptorInTwoRooms() {
        world.signedSheetIn(ines, "Tonsillectomy", "Room 4")
        hold("instructor")
        takeIn([ines])
        tap("aboutPreceptors")
        awaitWords("Nothing stands out about the preceptors' signatures.")
        hold(caleb)
        world.signedSheetIn(ines, "Cesarean section", "Room 9")
        hold("instructor")
        takeIn([ines])
        tap("aboutPreceptors")
        awaitWords("overlap in time")
        awaitWords("Room 9")
    }
    function test_swipeGoesOnAndBack() {
        const sheets = ["Tonsillectomy", "Cesarean section"].map(procedure => world.keyOf(ines, world.signedSheet(ines, procedure)))
        hold("instructor")
        takeIn([ines])
        look(sheets[0])
        const first = staff.list.at
        swipe(first === 0 ? -1 : 1)
        tryCompare(staff.sheet, "key", sheets[1])
        swipe(first === 0 ? 1 : -1)
        tryCompare(staff.sheet, "key", sheets[0])
    }
    function swipe(way) {
        const page = await("checkedSheet")
        const touch = touchEvent(page)
        const from = page.width / 2 - way * 120
        touch.press(0, page, from, 400).commit()
        for (let i = 1; i <= 10; ++i) {
            wait(12)
            touch.move(0, page, from + way * 24 * i, 400).commit()
        }
        touch.release(0, page, from + way * 240, 400).commit()
        wait(50)
    }

    function test_filesThatCannotBeUsed() {
        hold("instructor")
        world.readyBroken()
        tap("tab-2")
        tap("takeInFiles")
        awaitWords("Not used.")
        awaitWords("holiday.jpg")
        awaitWords("Nothing new.")
    }

    function test_lockingWritesWhatWasDecided() {
        const sheet = world.signedSheet(ines, "Laparoscopic appendectomy")
        hold("instructor")
        takeIn([ines])
        look(world.keyOf(ines, sheet))
        tap("initialButton")
        tapWords("Me")
        tap("lockButton")
        await("unlockSecret")
        hold("instructor")
        compare(world.standingOf(ines, sheet), "initialed")
    }
}
