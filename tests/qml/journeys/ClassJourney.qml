import QtQuick
import QtTest
import Peelpack.Shell
import Peelpack.Test

// An instructor's way, with the devices of two students beside it.
Journey {
    id: journey

    readonly property var staff: world && world.phone ? world.phone.staff : null

    Component {
        id: classMaker
        ClassWorld {}
    }
    function begin() {
        world = classMaker.createObject(journey)
        taps = 0
    }
    function hold(whose) {
        if (window)
            window.destroy()
        window = null
        wait(0)
        world.hold(whose)
        show()
        tapInside(await("unlockSecret"))
        type("amber walnut lantern")
        tap("unlockButton")
        await(whose === "instructor" || whose === "director" ? "staffHome" : "home", 20000)
    }
    function takeIn(students) {
        world.readyParcels(students)
        tap("tab-2")
        tap("takeInFiles")
        awaitWords("taken in", 20000)
        tap("tab-0")
        wait(50)
    }
    function card(key) {
        return seek(item => item.row !== undefined && item.row && item.row.key === key && item.clicked !== undefined)
    }
    function look(key) {
        if (card(key) === null && says("All that wait"))
            tapWords("All that wait")
        tryVerify(() => card(key) !== null, 8000, "the sheet waits in the list:\n" + words())
        tapItem(card(key))
        tryVerify(() => staff.sheet.key === key)
    }
    // What is seldom done is behind "More" on a phone.
    function decide(button) {
        if (find(button) === null)
            tap("moreButton")
        tap(button)
    }
    function giveReason(reason) {
        const done = await("reasonDone")
        verify(!done.enabled, "not without a reason")
        const field = seek(item => item.objectName === "reasonField" && item.field !== undefined)
        tapInside(field)
        type(reason)
        tryVerify(() => find("reasonDone").enabled)
        tap("reasonDone")
    }
}
