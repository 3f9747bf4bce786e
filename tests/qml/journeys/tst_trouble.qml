import QtQuick
import QtTest
import Peelpack.Shell

// A phone in trouble: closed in the middle, the storage full, the clock wrong, the wrong hands, odd text.
Journey {
    name: "Trouble"

    function init() {
        begin()
        world.setUp()
        show()
        unlock()
    }
    function cleanup() {
        end()
    }
    function again() {
        window.destroy()
        window = null
        wait(0)
        world.restart()
        show()
        unlock()
    }

    function test_draftIsThereAgain() {
        tap("newSheetButton")
        tapInside(await("procedureSearch"))
        type("lap c")
        tapWords("Laparoscopic cholecystectomy")
        tapInside(await("surgeonField"))
        type("Dr Ok")
        again()
        tap("newSheetButton")
        awaitWords("Laparoscopic cholecystectomy")
        compare(find("surgeonField").text, "Dr Ok")
        compare(world.sheetCount(), 0)
    }

    function test_handOverIsThereAgainWithoutMarks() {
        const sheet = world.openSheet("Appendectomy", 0)
        world.phone.giveAway([sheet])
        tap("performedButton")
        markAllYes()
        window.destroy()
        window = null
        wait(0)
        world.restart()
        show()
        tapInside(await("unlockSecret"))
        type("amber walnut lantern")
        tap("unlockButton")
        await("performedButton", 20000)
        tap("performedButton")
        compare(find("mark-0").mark, 0)
        tapWords("Back")
        tap("giveBackButton")
        takeBack()
        compare(world.standingOf(sheet), "open")
        compare(world.handOversOf(sheet), 1)
    }

    function test_noWayBackWithoutTheSecret() {
        const sheet = world.openSheet("Appendectomy", 0)
        world.phone.giveAway([sheet])
        tap("giveBackButton")
        tapInside(await("returnSecret"))
        type("something else")
        tap("takeBackButton")
        tryVerify(() => world.phone.error.length > 0, 20000)
        compare(world.phone.stage, Phone.HandedOver)
        compare(world.handOversOf(sheet), 0)
        takeBack()
        compare(world.handOversOf(sheet), 1)
    }

    function test_storageFull() {
        tap("newSheetButton")
        tapInside(await("procedureSearch"))
        type("lap c")
        tapWords("Laparoscopic cholecystectomy")
        world.fillStorage(true)
        tap("saveForLater")
        tryVerify(() => world.phone.student.newSheet.error.length > 0, 8000)
        compare(world.sheetCount(), 0)
        world.fillStorage(false)
        again()
        compare(world.sheetCount(), 0)
    }

    function test_clockSetBack() {
        const first = world.openSheet("Appendectomy", 0)
        world.signSheet(first)
        world.turnClock(-40 * 86400)
        const second = world.openSheet("Tonsillectomy", 0)
        world.signSheet(second)
        compare(world.standingOf(first), "signed")
        compare(world.standingOf(second), "signed")
        again()
        compare(world.sheetCount(), 2)
    }

    function test_wrongPassphraseTenTimes() {
        tap("tab-3")
        tap("lockButton")
        for (let i = 0; i < 6; ++i) {
            tapInside(await("unlockSecret"))
            type("wrong wrong")
            tap("unlockButton")
            tryVerify(() => !world.phone.busy && world.phone.error.length > 0, 20000)
        }
        verify(world.phone.error.indexOf("wait") >= 0, world.phone.error)
        world.turnClock(3600)
        unlock()
    }

    function test_oddTextLeavesTheJournalSmall() {
        const before = world.journalBytes()
        const draft = world.phone.student.newSheet
        const odd = ["x".repeat(10000), "👩‍⚕️".repeat(200), "\u202Eيمين إلى يسار", "a\r\nb\tc\u2028d", "sheet,date,student\r\n=1+1,2027-01-01,\"x\""]
        tap("newSheetButton")
        for (const text of odd) {
            draft.query = text
            draft.take(text)
            draft.surgeon = text
            draft.site = text
            draft.room = text
            draft.start = text
            wait(50)
            verify(find("saveAndGive").width <= window.width)
            verify(find("surgeonField").width <= window.width)
        }
        verify(draft.procedures.length <= 4)
        for (const procedure of draft.procedures) {
            verify(procedure.length <= 120)
            verify(procedure.indexOf("\n") < 0 && procedure.indexOf("\r") < 0)
        }
        tap("saveForLater")
        tryVerify(() => world.sheetCount() === 1, 8000)
        verify(world.journalBytes() - before < 400000, "the journal grew by " + (world.journalBytes() - before))
    }

    function test_demoStaysApart() {
        tap("tab-3")
        tap("lockButton")
        await("unlockSecret")
        tapWords("Look around in the demo")
        await("home", 60000)
        awaitWords("Demo: all of it is invented, and none of it can enter a real record.")
        tap("tab-3")
        tap("parcelsRow")
        tap("sendButton")
        awaitWords("Saved as")
        verify(!world.instructorAnswers(false), "no real program opens a parcel of the demo")
        tap("leaveDemo")
        unlock()
        compare(world.sheetCount(), 0)
    }
}
