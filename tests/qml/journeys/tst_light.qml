import QtQuick
import QtTest
import Peelpack.Parts

// Parcels from screen to camera: a student's device shows codes, the instructor's camera sees pictures of that very
// window, and the receipts go back the same way.
ClassJourney {
    name: "Light"

    readonly property string ines: "Ines Duarte"

    function init() {
        begin()
    }
    function cleanup() {
        Look.calm = false
        end()
    }
    function openCarrying() {
        tap("tab-3")
        tap("parcelsRow")
    }
    // The codes that the window shows, code by code, without those that nobody photographs.
    function photographCodes(codes, missed, spare) {
        if (codes.running)
            tap("runCodes")
        const pictures = []
        for (let number = codes.number; number < codes.count + spare; ++number) {
            compare(codes.number, number)
            if (missed.indexOf(number) < 0)
                pictures.push(photograph("code-" + number + ".png"))
            tap("nextCode")
        }
        return pictures
    }
    // The same while they run, as fast as pictures can be taken of them.
    function filmCodes(codes) {
        const pictures = []
        let last = -1
        for (let waited = 0; waited < 60000 && pictures.length < codes.count + 12; waited += 20) {
            wait(20)
            if (codes.number === last)
                continue
            last = codes.number
            wait(40) // drawn by now
            const file = world.file("film-" + pictures.length + ".png")
            grabImage(window.contentItem).save(file)
            pictures.push(file)
        }
        return pictures
    }

    function test_fromPhoneToDeskAndBack() {
        const sheets = [world.signedSheet(ines, "Laparoscopic cholecystectomy"), world.signedSheet(ines, "Tonsillectomy")]
        hold(ines)
        openCarrying()
        awaitWords("only on this phone")
        tap("showCodesRow")
        const codes = world.phone.student.parcels.codes
        await("runningCode")
        verify(codes.count > 5)
        awaitWords("codes a second")
        tap("runCodes")
        awaitWords("paused")
        while (codes.number !== 0) // it ran for a moment
            codes.step()
        const pictures = photographCodes(codes, [0, 3, 4], 10)
        const count = codes.count
        tap("codesDone")
        await("showCodesRow")

        // A first look that sees too little, and says so; nothing comes in.
        hold("instructor")
        world.cameraIsThere(true)
        verify(world.cameraSees(pictures.slice(0, 4)))
        tap("tab-2")
        tap("readCodesRow")
        awaitWords("4 of " + count)
        awaitWords((count - 4) + " code")
        compare(staff.parcels.summary, "")
        tapWords("Back")
        // The second goes on from there, from the other end, and ends by itself.
        verify(world.cameraSees(pictures.slice(4).reverse()))
        tap("readCodesRow")
        awaitWords("taken in", 20000)
        verify(find("readCodesPage") === null)
        awaitWords("Codes")
        for (const sheet of sheets)
            compare(world.standingOf(ines, sheet), "signed")

        // The receipts go back as running codes.
        tap("asCodesRow")
        tap("sendTo-" + ines)
        awaitWords("For Ines Duarte")
        const film = filmCodes(staff.parcels.codes)
        tapWords("Back") // not given: it may be shown again
        verify(find("sendTo-" + ines) !== null)
        tap("asCodesRow")
        tap("sendTo-" + ines)
        tap("codesDone")
        tryVerify(() => find("sendTo-" + ines) === null)

        hold(ines)
        openCarrying()
        verify(world.cameraSees(film))
        tap("readCodesRow")
        awaitWords("taken in", 20000)
        awaitWords("Everything is with your instructor.")
        // Seen again it brings nothing, and says so.
        tap("readCodesRow")
        awaitWords("Nothing new: you have it already.", 20000)
    }

    function test_otherCodesAndFalseOnes() {
        world.signedSheet(ines, "Laparoscopic appendectomy")
        hold(ines)
        openCarrying()
        tap("showCodesRow")
        const codes = world.phone.student.parcels.codes
        tap("runCodes")
        const first = codes.code
        const pictures = [world.pictureOf(first, "true.png"), world.pictureOf(world.lieAbout(first), "false.png")]
        const menu = world.pictureOf("https://example.org/menu", "menu.png")
        const all = photographCodes(codes, [], 8)
        tap("codesDone")
        hold("instructor")
        world.cameraIsThere(true)
        tap("tab-2")
        verify(world.cameraSees([menu]))
        tap("readCodesRow")
        awaitWords("This is another sort of code")
        tapWords("Back")
        verify(world.cameraSees(pictures))
        tap("readCodesRow")
        awaitWords("The reading starts anew")
        compare(staff.parcels.reading.have, 0)
        compare(staff.parcels.summary, "")
        tapWords("Back")
        verify(world.cameraSees(all.concat(all.slice(0, 4), all)))
        tap("readCodesRow")
        awaitWords("taken in", 20000)
    }

    function test_withoutACameraTheFileIsTheWay() {
        world.signedSheet(ines, "Laparoscopic appendectomy")
        world.readyParcels([ines])
        hold("instructor")
        world.cameraIsThere(false)
        tap("tab-2")
        tap("readCodesRow")
        awaitWords("This device has no camera that can be used.")
        tap("fileInstead")
        awaitWords("taken in", 20000)
    }

    function test_pacesAndPause() {
        world.signedSheet(ines, "Laparoscopic appendectomy")
        hold(ines)
        openCarrying()
        tap("showCodesRow")
        const codes = world.phone.student.parcels.codes
        awaitWords("5 codes a second")
        tap("fasterCodes")
        awaitWords("8 codes a second")
        verify(!find("fasterCodes").enabled)
        const begun = codes.number
        wait(1500)
        verify(codes.number - begun >= 6 && codes.number - begun <= 13, "about 8 a second: " + (codes.number - begun))
        // Nobody can still be reading after three rounds and half a minute.
        tryVerify(() => !codes.running, 60000)
        verify(codes.number > 3 * codes.count + 100, "it paused at " + codes.number)
        tap("runCodes")
        tap("slowerCodes")
        tap("slowerCodes")
        awaitWords("2 codes a second")
        verify(!find("slowerCodes").enabled)
        tap("runCodes")
        const stood = codes.number
        wait(1200)
        compare(codes.number, stood)
        // With reduced motion nothing runs by itself.
        tapWords("Back")
        Look.calm = true
        tap("showCodesRow")
        awaitWords("paused")
        wait(1200)
        compare(codes.number, 0)
        tap("nextCode")
        compare(codes.number, 1)
        tap("runCodes")
        awaitWords("2 codes a second")
    }
}
