import QtQuick
import QtTest
import Peelpack.Shell

// The whole of Check without a touch: on a desk, by keys alone.
ClassJourney {
    name: "InstructorKeys"

    readonly property string ines: "Ines Duarte"

    function init() {
        begin()
    }
    function cleanup() {
        end()
    }
    function key(key) {
        keyClick(key)
        wait(40)
    }

    function test_checkByKeys() {
        const names = ["Laparoscopic appendectomy", "Carpal tunnel release", "Cesarean section", "Laparoscopic cholecystectomy", "Tonsillectomy", "Total knee arthroplasty"]
        const sheets = {}
        for (const name of names)
            sheets[world.signedSheet(ines, name, name === "Laparoscopic appendectomy" ? ["verify"] : [])] = name
        const review = Object.keys(sheets).find(id => sheets[id] === "Laparoscopic appendectomy")
        world.askReview(ines, review, 0, "I picked the case.")
        hold("instructor")
        takeIn([ines])
        window.width = 1280
        window.height = 800
        wait(200)
        awaitWords("press J for the first one")

        const done = {}
        const acts = ["i", "r", "f", "a", "v"]
        key("j")
        tryVerify(() => staff.sheet.key.length > 0)
        // On and back.
        const first = staff.sheet.key
        key("j")
        verify(staff.sheet.key !== first)
        key("k")
        compare(staff.sheet.key, first)
        key(Qt.Key_Down)
        key(Qt.Key_Up)
        compare(staff.sheet.key, first)

        for (let i = 0; i < names.length; ++i) {
            toUndecided(done)
            const sheet = staff.sheet.key.substr(33)
            if (sheet === review) {
                key("y")
                type("the circulator confirms it")
                key(Qt.Key_Return)
                done[sheet] = "amended"
            } else {
                const act = acts.shift()
                key(act)
                if (act === "i") {
                    done[sheet] = "initialed"
                } else if (act === "r") {
                    key(Qt.Key_Return) // nothing is written without a word
                    verify(staff.sheet.key.endsWith(sheet))
                    type("which room, j or k") // letters are letters in a field
                    key(Qt.Key_Return)
                    done[sheet] = "returned"
                } else if (act === "f") {
                    tabTo(item => item.objectName === "refile-0-cardiothoracic")
                    key(Qt.Key_Space)
                    type("the other service")
                    key(Qt.Key_Return)
                    done[sheet] = "amended"
                } else if (act === "a") {
                    tabTo(item => item.objectName === "" && item.parent && item.parent.objectName === "amendMark-7" && item.text === "No")
                    key(Qt.Key_Space)
                    tabTo(item => item.parent && item.parent.objectName === "reasonField")
                    type("told by the preceptor")
                    key(Qt.Key_Return)
                    done[sheet] = "amended"
                } else {
                    key(Qt.Key_Escape) // thought otherwise
                    key("v")
                    type("opened twice")
                    key(Qt.Key_Return)
                    done[sheet] = "void"
                }
            }
            verify(staff.pending.waiting, sheets[sheet] + ": " + staff.sheet.error + " " + window.activeFocusItem + "\n" + words())
            // What was decided can be taken back, and is decided again.
            if (done[sheet] === "initialed") {
                key("u")
                verify(!staff.pending.waiting)
                verify(staff.sheet.key.endsWith(sheet))
                key("i")
                verify(staff.pending.waiting)
            }
        }
        verify(staff.pending.writeNow())
        for (const sheet of Object.keys(sheets))
            compare(world.standingOf(ines, sheet), done[sheet], sheets[sheet])
    }

    // What was changed or filed elsewhere waits again, for initials: it is passed over.
    function toUndecided(done) {
        for (let i = 0; i < 8; ++i)
            key("k")
        for (let i = 0; i < 8 && done[staff.sheet.key.substr(33)] !== undefined; ++i)
            key("j")
        verify(done[staff.sheet.key.substr(33)] === undefined)
    }
    function tabTo(fits) {
        for (let i = 0; i < 200; ++i) {
            if (fits(window.activeFocusItem))
                return
            key(Qt.Key_Tab)
        }
        verify(false, "Tab comes to it")
    }
}
