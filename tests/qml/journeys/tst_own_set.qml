import QtQuick
import QtTest
import Peelpack.Shell

// A director puts a requirement set in force that does not ship with the app; a student, who has its name only, is told
// that nothing counts under it, and opens its file.
ClassJourney {
    name: "OwnSet"

    readonly property string ines: "Ines Duarte"
    readonly property string file: JSON.stringify({
        id: "two-rooms", title: "Two rooms of general surgery", source: "Invented for this test",
        notApplicable: ["counts"], assistCounts: false,
        targets: [{ id: "first-general", roles: ["first"], categories: ["general"], required: 4 }], limits: []
    })

    function init() {
        begin()
    }
    function cleanup() {
        end()
    }
    function openRules() {
        world.bringToDirector()
        hold("director")
        tap("tab-3")
        tap("rulesRow")
        tap("otherRules")
        tap("changeRules")
    }
    function choose(name, text) {
        world.readyText(name, text)
        tap("set-file")
    }
    function takeInAtStudent() {
        verify(world.readyAnswer(ines))
        hold(ines)
        tap("tab-3")
        tap("parcelsRow")
        tap("takeInButton")
        awaitWords("taken in")
        tapWords("Back")
        tap("tab-2")
    }

    function test_setThatDoesNotShip() {
        openRules()
        choose("two-rooms.json", file.replace(":4", ":0"))
        awaitWords("The requirement set cannot be used:")
        awaitWords("targets[0].required: 0 cases are required; require 1 to 1000")
        choose("two-rooms.json", file.replace("two-rooms", "cap15"))
        awaitWords("A set that ships with Peelpack has the id cap15.")
        choose("two-rooms.json", "{")
        awaitWords("The requirement set is no JSON: look at line 1")
        verify(!words().includes("Two rooms of general surgery"))
        choose("two-rooms.json", file)
        awaitWords("Two rooms of general surgery")
        awaitWords("From a file: two-rooms, Invented for this test")
        verify(find("setFault") === null)
        tap("readRulesBack")
        awaitWords("Requirements: Two rooms of general surgery")
        awaitWords("General, first scrub · 4 case")
        tap("signRules")
        awaitWords("Signed: these rules are in force from now on.")
        tapWords("Back")
        awaitWords("General, first scrub · 4 case") // the rules page counts by it
        tapWords("Back")
        tap("tab-2")
        tap("sendTo-" + ines)
        awaitWords("Saved as")

        takeInAtStudent()
        verify((await("missingSet")).text.indexOf("two-rooms") > 0)
        world.readyText("another.json", file.replace(":4", ":5"))
        tap("openMissingSet")
        awaitWords("The rules name no set that is just this file, to the byte.")
        verify(words().indexOf("0 of 5") < 0)
        world.readyText("two-rooms.json", file)
        tap("openMissingSet")
        awaitWords("Kept on this device: Two rooms of general surgery.")
        awaitWords("0 of 4")
        verify(find("missingSet") === null)

        hold(ines) // it is kept in the vault
        tap("tab-2")
        awaitWords("0 of 4")
        verify(find("missingSet") === null)
    }

    function test_aPlainCompletionIsInTheStudentsTally() {
        world.signedSheet(ines, "Laparoscopic appendectomy")
        world.initialAtInstructor(ines)
        openRules()
        choose("two-rooms.json", file.replace(":4", ":1"))
        tap("readRulesBack")
        tap("signRules")
        tapWords("Back")
        tapWords("Back")
        tap("tab-1")
        const row = () => seek(item => item.row !== undefined && item.row && item.row.name === ines && item.clicked !== undefined)
        tryVerify(() => row() !== null, 8000, words())
        tapItem(row())
        tap("completionRow")
        awaitWords("1 of 1 cases count, as initialed.")
        tap("decideComplete")
        tap("signCompletion")
        awaitWords("Complete under two-rooms")
        tapWords("Back")
        tapWords("Class")
        tap("tab-2")
        tap("sendTo-" + ines)
        awaitWords("Saved as")
        takeInAtStudent()
        compare((await("completionTitle")).text, "Complete")
        awaitWords("by Director, under two-rooms.")
        verify(words().indexOf("Why:") < 0)
    }

    function test_anotherSetForAClass() {
        world.bringToDirector()
        hold("director")
        tap("tab-3")
        tap("rulesRow")
        tap("requirementsRow")
        tap("beginChange")
        tapWords("spring-class")
        tapInside(await("changeFrom"))
        type("2020-01-06")
        world.readyText("two-rooms.json", file)
        tap("changeTo-file")
        awaitWords("Two rooms of general surgery")
        tapInside(await("changeReason"))
        type("Two rooms only")
        tap("readChangeBack")
        awaitWords("General, first scrub · 4 case")
        tap("signChange")
        awaitWords("So far, the latest first")
        tapWords("Back")
        tapWords("Back")
        tap("tab-1")
        awaitWords("General, first scrub")
        compare(world.phone.staff.board.error, "")
        // Kept, it is offered again.
        tap("tab-3")
        tap("rulesRow")
        tap("otherRules")
        tap("changeRules")
        awaitWords("From a file: two-rooms")
    }
}
