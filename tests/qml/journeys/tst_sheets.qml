import QtQuick
import QtTest
import Peelpack.Shell

// What happens to sheets after the first day, each on a phone that is set up.
Journey {
    name: "Sheets"

    function init() {
        begin()
        world.setUp()
        show()
        unlock()
    }
    function cleanup() {
        end()
    }
    function openFromToday(title) {
        tapItem(cardOf(title))
        await("giveButton")
    }
    function cardOf(title) {
        const card = () => seek(item => item.title === title && item.clicked !== undefined)
        tryVerify(() => card() !== null, 8000, title + " is on the screen")
        return card()
    }

    function test_tapsOfAUsualSheet() {
        const before = world.openSheet("Appendectomy", 3) // surgeon and site are known from it
        world.signSheet(before)
        taps = 0
        tap("newSheetButton")
        await("procedureSearch")
        tryVerify(() => find("procedureSearch").field.activeFocus)
        type("lap c")
        tapWords("Laparoscopic cholecystectomy")
        tap("saveAndGive")
        await("performedButton")
        verify(taps <= 12, "taps to the hand-over: " + taps)
        console.log("taps to the hand-over: " + taps)
        taps = 0
        markAndSign(0)
        verify(taps <= 18, "taps to the signature: " + taps)
        console.log("taps to the signature: " + taps)
        takeBack()
    }

    function test_twoSpecialtiesOneOperation() {
        tap("newSheetButton")
        tapInside(await("procedureSearch"))
        type("kypho")
        tapWords("Kyphoplasty")
        tapWords("Add a procedure of the same operation")
        tapInside(await("procedureSearch"))
        type("bone biopsy")
        tap("takeTyped")
        tapWords("One pathology")
        tap("saveAndGive")
        const sheet = world.lastSheet()
        markAndSign(1)
        takeBack()
        compare(world.roleOf(sheet), "first")
        tap("fileUnder-neurosurgery")
        tryCompare(world.phone.student.sheet, "error", "")
        verify(world.categoriesOf(sheet).indexOf("neurosurgery") >= 0)
    }

    function test_notApplicableAsksWhy() {
        world.openSheet("Diagnostic EGD", 0)
        openFromToday("Diagnostic EGD")
        tap("giveButton")
        const sheet = world.lastSheet()
        tap("performedButton")
        tap("allYesButton")
        mark(2, 3)
        verify(!find("readBackButton").enabled)
        tapWords("No countable items were used")
        tryVerify(() => find("readBackButton").enabled)
        for (let skill = 5; skill < 10; ++skill)
            mark(skill, 2)
        tap("readBackButton")
        awaitWords("N/A: initial and closing counts (No countable items were used)")
        tap("toSigning")
        sign(0)
        takeBack()
        compare(world.roleOf(sheet), "first")
    }

    function test_observation() {
        world.openSheet("Appendectomy", 0)
        openFromToday("Appendectomy")
        tap("giveButton")
        const sheet = world.lastSheet()
        tap("performedButton")
        for (let skill = 0; skill < 10; ++skill)
            mark(skill, 2)
        tap("readBackButton")
        tap("toSigning")
        sign(0)
        takeBack()
        compare(world.roleOf(sheet), "observed")
        awaitWords("Observation")
    }

    function test_markReview() {
        world.openSheet("Appendectomy", 0)
        openFromToday("Appendectomy")
        tap("giveButton")
        const sheet = world.lastSheet()
        tap("performedButton")
        markAllYes()
        mark(3, 2)
        tap("readBackButton")
        tap("toSigning")
        sign(0)
        takeBack()
        compare(world.roleOf(sheet), "second")
        tap("askReview-3")
        tapInside(await("reasonField"))
        type("I passed from the second count on")
        tap("reasonDone")
        awaitWords("You asked for a review: I passed from the second count on")
        tapWords("Back")
        tap("tab-3")
        tap("parcelsRow")
        tap("sendButton")
        verify(world.instructorAnswers(false))
        verify(world.instructorAcceptsReview(sheet))
        verify(world.instructorAnswers(false))
        tap("takeInButton")
        tryVerify(() => world.roleOf(sheet) === "first", 8000)
    }

    function test_twoPreceptorsForOneSheet() {
        world.openSheet("Appendectomy", 0)
        openFromToday("Appendectomy")
        tap("giveButton")
        const sheet = world.lastSheet()
        tap("performedButton")
        tap("allYesButton")
        tap("readBackButton")
        awaitWords("You did not see: sponging the wound")
        tap("toSigning")
        sign(0)
        takeBack()
        compare(world.roleOf(sheet), "unmarked")
        tap("giveButton")
        tap("performedButton")
        for (let skill = 5; skill < 10; ++skill)
            mark(skill, 2)
        tap("readBackButton")
        tap("toSigning")
        sign(1)
        takeBack()
        compare(world.roleOf(sheet), "first")
        compare(world.signersOf(sheet), 2)
    }

    function test_fourSheetsInOneSitting() {
        const ids = []
        for (const procedure of ["Appendectomy", "Open inguinal hernia repair", "Carpal tunnel release", "Tonsillectomy"])
            ids.push(world.openSheet(procedure, 0))
        tap("tab-1")
        tap("pickForSitting")
        for (const title of ["Appendectomy", "Open inguinal hernia repair", "Carpal tunnel release", "Tonsillectomy"])
            tapItem(cardOf(title))
        tap("giveSitting")
        for (let i = 0; i < 4; ++i) {
            tap("performedButton")
            markAllYes()
            tap("readBackButton")
        }
        tap("toSigning")
        sign(0)
        takeBack()
        for (const id of ids) {
            compare(world.standingOf(id), "signed")
            compare(world.roleOf(id), "first")
        }
    }

    function test_ownPhone() {
        world.openSheet("Appendectomy", 0)
        openFromToday("Appendectomy")
        tap("giveButton")
        const sheet = world.lastSheet()
        tap("ownPhoneButton")
        verify(world.answerOnOwnPhone())
        tap("toAnswer")
        tap("answerFile")
        takeBack()
        compare(world.standingOf(sheet), "signed")
        compare(world.strengthOf(sheet), "own-phone")
    }

    function test_drawnSignatureIsWeak() {
        world.openSheet("Appendectomy", 0)
        openFromToday("Appendectomy")
        tap("giveButton")
        const sheet = world.lastSheet()
        tap("performedButton")
        markAllYes()
        tap("readBackButton")
        tap("toSigning")
        tap("drawButton")
        tapInside(await("drawnName"))
        type("D. Marlow")
        const pad = await("signaturePad")
        reach(pad)
        const touch = touchEvent(pad)
        touch.press(0, pad, 20, 60).commit()
        for (let i = 1; i < 20; ++i)
            touch.move(0, pad, 20 + 10 * i, 60 + 30 * Math.sin(i)).commit()
        touch.release(0, pad, 220, 60).commit()
        tap("signDrawn")
        takeBack()
        compare(world.strengthOf(sheet), "drawn")
        awaitWords("Drawn signature: it counts once your instructor has confirmed it.")
    }

    function test_newCardOnTheSpot() {
        world.openSheet("Appendectomy", 0)
        openFromToday("Appendectomy")
        tap("giveButton")
        const sheet = world.lastSheet()
        tap("performedButton")
        markAllYes()
        tap("readBackButton")
        tap("toSigning")
        tap("makeCard")
        tapInside(await("signerName"))
        type("E. Novak")
        tap("makeCardNow")
        tapInside(await("cardPin"))
        type("739154")
        tapInside(await("cardPinAgain"))
        type("739154")
        tap("signButton")
        takeBack()
        compare(world.strengthOf(sheet), "card-new")
    }

    function test_typedCardCode() {
        world.openSheet("Appendectomy", 0)
        openFromToday("Appendectomy")
        tap("giveButton")
        const sheet = world.lastSheet()
        tap("performedButton")
        markAllYes()
        tap("readBackButton")
        tap("toSigning")
        tap("typeCard")
        tapWords(world.nameOf(1) + ", CST")
        tapInside(await("cardCode"))
        type(world.codeOf(1).toLowerCase())
        tapWords("Use this card")
        tapInside(await("cardPin"))
        type(world.pinOf(1))
        tap("signButton")
        takeBack()
        compare(world.strengthOf(sheet), "card")
    }

    function test_declined() {
        world.openSheet("Appendectomy", 0)
        openFromToday("Appendectomy")
        tap("giveButton")
        const sheet = world.lastSheet()
        tap("declineButton")
        tapWords("This is not what was performed.")
        tap("declineNow")
        takeBack()
        compare(world.standingOf(sheet), "open")
        awaitWords("This is not what was performed.")
    }

    function test_wrongPinTenTimes() {
        world.openSheet("Appendectomy", 0)
        openFromToday("Appendectomy")
        tap("giveButton")
        const sheet = world.lastSheet()
        tap("performedButton")
        markAllYes()
        tap("readBackButton")
        tap("toSigning")
        world.readyCard(0)
        tap("pictureOfCard")
        for (let i = 0; i < 10; ++i) {
            tapInside(await("cardPin"))
            type("111222")
            tap("signButton")
            tryVerify(() => !world.phone.handOver.busy, 20000)
            tryVerify(() => world.phone.handOver.error.length > 0, 20000)
            if (i >= 5)
                verify(world.phone.handOver.error.indexOf("wait") >= 0, world.phone.handOver.error)
        }
        compare(world.wrongTriesOf(sheet), 5) // while it waits, a try is not even looked at
        compare(world.standingOf(sheet), "open")
        // Setting the clock back does not shorten the wait.
        world.turnClock(-86400)
        tapInside(await("cardPin"))
        type(world.pinOf(0))
        tap("signButton")
        tryVerify(() => world.phone.handOver.error.indexOf("wait") >= 0, 20000)
        world.turnClock(86400 + 3600)
        world.phone.touched() // the hour did not pass: nobody was away
        tapInside(await("cardPin"))
        type(world.pinOf(0))
        tap("signButton")
        takeBack()
        compare(world.standingOf(sheet), "signed")
    }

    function test_returnedSheetIsAnswered() {
        const sheet = world.openSheet("Appendectomy", 0)
        world.signSheet(sheet)
        tap("sendRow")
        tap("sendButton")
        verify(world.instructorAnswers(false))
        verify(world.instructorReturns(sheet, "Which room was it?"))
        verify(world.instructorAnswers(false))
        tap("takeInButton")
        tryVerify(() => world.standingOf(sheet) === "returned", 8000)
        tapWords("Back")
        awaitWords("Your instructor asks: Which room was it?")
    }

    function test_favoritesComeFirst() {
        world.openSheet("Carpal tunnel release", 3)
        tap("newSheetButton")
        tapInside(await("procedureSearch"))
        type("hernia")
        const rows = () => world.phone.student.newSheet.hits
        const at = index => rows().data(rows().index(index, 0), Qt.UserRole)
        tryVerify(() => rows().rowCount() > 2)
        const wanted = at(2)
        const star = await("star-" + wanted.id)
        verify(!star.on && star.width >= 48 && star.height >= 48)
        tap("star-" + wanted.id)
        tryVerify(() => at(0).id === wanted.id && at(0).favorite)
        tapInside(find("procedureSearch"))
        for (let i = 0; i < 6; ++i)
            keyClick(Qt.Key_Backspace)
        tryCompare(find("procedureSearch"), "text", "")
        compare(at(0).name, wanted.name)
        compare(at(1).name, "Carpal tunnel release")
        // It is kept on this phone.
        window.destroy()
        window = null
        wait(0)
        world.restart()
        show()
        unlock()
        tap("newSheetButton")
        verify((await("star-" + wanted.id)).on)
        tap("star-" + wanted.id)
        tryVerify(() => find("star-" + wanted.id) === null)
        compare(at(0).name, "Carpal tunnel release")
    }

    function test_withdrawn() {
        const sheet = world.openSheet("Appendectomy", 0)
        openFromToday("Appendectomy")
        tap("withdrawButton")
        tapInside(await("reasonField"))
        type("entered twice")
        tap("reasonDone")
        tryVerify(() => world.standingOf(sheet) === "withdrawn", 8000)
    }

    function test_cameraScansTheCard() {
        world.cameraIsThere(true)
        world.cameraSeesCard(0)
        world.openSheet("Appendectomy", 0)
        openFromToday("Appendectomy")
        tap("giveButton")
        const sheet = world.lastSheet()
        tap("performedButton")
        markAllYes()
        tap("readBackButton")
        tap("toSigning") // the camera is on at once
        tapInside(await("cardPin"))
        type(world.pinOf(0))
        tap("signButton")
        takeBack()
        compare(world.standingOf(sheet), "signed")
    }
}
