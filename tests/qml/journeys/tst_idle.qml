import QtQuick
import QtTest
import Peelpack.Shell

// Nobody touches the phone: it locks, a hand-over ends with its time, and what was typed is there again. The clock is
// turned; nothing waits for minutes.
Journey {
    name: "Idle"

    function init() {
        begin()
        world.setUp()
        show()
        unlock()
    }
    function cleanup() {
        world.fillStorage(false)
        end()
    }

    function test_locksAndTheDraftIsThereAgain() {
        tap("newSheetButton")
        tapInside(await("procedureSearch"))
        type("lap c")
        tapWords("Laparoscopic cholecystectomy")
        tapInside(await("surgeonField"))
        type("Dr Ok")
        world.turnClock(60)
        wait(1500)
        compare(world.phone.stage, Phone.Open) // two minutes are usual
        world.turnClock(61)
        await("unlockSecret", 5000)
        verify(world.phone.student === null)
        unlock()
        tap("newSheetButton")
        awaitWords("Laparoscopic cholecystectomy")
        compare(find("surgeonField").text, "Dr Ok")
        compare(world.sheetCount(), 0)
    }

    function test_aTouchKeepsItOpen() {
        for (let i = 0; i < 4; ++i) {
            world.turnClock(100)
            tap("tab-" + (i % 2))
        }
        wait(1200)
        compare(world.phone.stage, Phone.Open)
    }

    function test_runningCodesKeepItOpenWhileTheyRun() {
        tap("tab-3")
        tap("parcelsRow")
        tap("showCodesRow")
        for (let i = 0; i < 3; ++i) {
            world.turnClock(100)
            wait(700) // a few codes, nobody touches anything
        }
        wait(1200)
        compare(world.phone.stage, Phone.Open)
        tap("runCodes") // paused
        world.turnClock(121)
        await("unlockSecret", 5000)
        verify(world.phone.student === null)
    }

    function test_theTouchThatWakesASleepingPhoneOpensNothing() {
        world.turnClock(3600)
        tapItem(find("newSheetButton"))
        await("unlockSecret", 5000)
        verify(world.phone.student === null)
        unlock()
        await("newSheetButton")
    }

    function test_aClockSetBackDoesNotKeepItOpen() {
        world.turnClock(-86400)
        tap("tab-1")
        world.turnClock(121)
        await("unlockSecret", 5000)
    }

    function test_handOverTimesOut() {
        const sheet = world.openSheet("Appendectomy", 0)
        world.phone.giveAway([sheet])
        tap("performedButton")
        markAllYes()
        world.turnClock(9 * 60)
        wait(1500)
        compare(world.phone.stage, Phone.HandedOver)
        world.turnClock(61)
        await("unlockSecret", 5000)
        unlock()
        awaitWords("The hand-over ended after 10 minute")
        awaitWords("What was marked and not signed is gone.")
        compare(world.standingOf(sheet), "open")
        compare(world.handOversOf(sheet), 1)
        compare(world.lastHandOverOf(sheet), "timed out after 10")
        // Given away again it begins without marks.
        world.phone.giveAway([sheet])
        tap("performedButton")
        compare(find("mark-0").mark, 0)
    }

    function test_handOverThatCouldNotBeEndedIsTold() {
        const sheet = world.openSheet("Appendectomy", 0)
        world.phone.giveAway([sheet])
        tap("performedButton")
        markAllYes()
        world.fillStorage(true)
        world.turnClock(601)
        await("unlockSecret", 5000)
        verify(world.phone.error.length > 0)
        world.fillStorage(false)
        tapInside(await("unlockSecret"))
        type("amber walnut lantern")
        tap("unlockButton")
        await("performedButton", 20000) // it goes on, without marks, and says why
        awaitWords("That the hand-over ended could not be recorded, and it goes on:")
        compare(world.handOversOf(sheet), 0)
        tap("giveBackButton")
        takeBack()
        compare(world.handOversOf(sheet), 1)
    }
}
