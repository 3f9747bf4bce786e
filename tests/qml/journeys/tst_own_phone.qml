import QtQuick
import QtTest
import Peelpack.Shell
import Peelpack.Preceptor

// The preceptor's own phone beside the student's: two real vaults, two windows, codes from screen to camera or as files.
Journey {
    name: "OwnPhone"

    readonly property string secret: "harbor linen oak"

    function init() {
        begin()
        world.setUp()
        show()
        unlock()
    }
    function cleanup() {
        end()
    }
    // On a new phone: the preceptor's vault, named and with its key.
    function startPreceptor() {
        showPreceptor()
        tap("ownPhoneStart")
        tapInside(await("signingName"))
        type("L. Brandt")
        tapInside(await("signingCredential"))
        type("CST")
        tapInside(await("signingSecret"))
        type(secret)
        tapInside(await("signingAgain"))
        type(secret)
        tap("signingMake")
        compare(await("signingVaultCode", 20000).text.replace(/\u200b/g, "").length, 41)
        tap("signingStarted")
        await("keyText", 20000)
    }
    function goHome() {
        tapWords("Back")
        await("scanButton")
    }
    function vouchForIt() {
        verify(world.vouchFor("L. Brandt", world.preceptorPhone.signing.keyCode))
    }
    // The student's phone: the sheet is given away and shows its code.
    function offer(procedure) {
        const sheet = world.openSheet(procedure, 0)
        world.phone.giveAway([sheet])
        tap("ownPhoneButton")
        await("requestFile")
        return sheet
    }
    function markHere() {
        tap("performedButton")
        markAllYes()
        tap("readBackButton")
        tap("toSigning")
    }
    function signHere() {
        tapInside(await("ownSecret"))
        type(secret)
        tap("ownSign")
        await("saveAnswer", 20000)
    }
    // From the student's code to the answer, by files; ends with the student's phone in hand, asking for the answer.
    function signByFiles(mark) {
        tap("requestFile")
        world.carryToPreceptor()
        swapPhones()
        tap("scanButton")
        tap("requestPicture")
        mark()
        signHere()
        tap("saveAnswer")
        world.carryToStudent()
        tap("answerDone")
        swapPhones()
        tap("toAnswer")
    }

    function test_fromScreenToCamera() {
        world.cameraIsThere(true)
        world.preceptorCameraIsThere(true)
        startPreceptor()
        tap("saveKey")
        verify(world.vouchFor("L. Brandt", world.lastSavedBy(true)))
        compare(find("keyText").text.replace(/ /g, ""), String(world.lastSavedBy(true)))
        goHome()
        swapPhones()
        const sheet = offer("Appendectomy")
        world.preceptorCameraSees(photograph("request.png"))
        swapPhones()
        tap("scanButton")
        awaitWords("Was this performed?")
        awaitWords("Appendectomy")
        verify(find("ownPhoneButton") === null && find("giveBackButton") === null)
        tapWords("Correct it")
        const field = seek(item => item.Accessible && item.Accessible.name === "What was performed instead")
        verify(field)
        field.forceActiveFocus()
        field.selectAll()
        type("Laparoscopic appendectomy")
        tapWords("This was performed")
        tap("performedButton")
        tap("allYesButton")
        mark(2, 3)
        verify(!find("readBackButton").enabled)
        tapWords("No countable items were used")
        for (let skill = 5; skill < 9; ++skill)
            mark(skill, 2)
        tap("addFeedback")
        tapInside(await("feedbackField"))
        type("Steady hands")
        tap("readBackButton")
        awaitWords("Laparoscopic appendectomy for Ines Duarte")
        awaitWords("You did not see: handling the camera")
        awaitWords("Feedback: Steady hands")
        tap("toSigning")
        // A wrong passphrase signs nothing.
        tapInside(await("ownSecret"))
        type("not this one")
        tap("ownSign")
        tryVerify(() => world.preceptorPhone.signing.sheet.error.length > 0, 20000)
        compare(world.preceptorPhone.signing.count, 0)
        signHere()
        compare(world.preceptorPhone.signing.count, 1)
        const answer = photograph("answer.png")
        tap("answerDone")
        swapPhones()
        compare(world.standingOf(sheet), "open")
        world.studentCameraSees(world.file("request.png")) // its own code in a mirror
        tap("toAnswer")
        awaitWords("This is not the answer of a preceptor's phone.")
        world.studentCameraSees(answer)
        tap("scanAgain")
        await("returnSecret", 20000)
        awaitWords("Signed by L. Brandt, CST")
        takeBack()
        compare(world.standingOf(sheet), "signed")
        compare(world.strengthOf(sheet), "own-phone")
        awaitWords("Steady hands")
    }

    function test_byFilesAndLookedThrough() {
        startPreceptor()
        goHome()
        swapPhones()
        const sheet = offer("Appendectomy")
        signByFiles(markHere)
        tap("answerFile")
        awaitWords("Nobody vouches for this preceptor's phone yet.")
        takeBack()
        compare(world.standingOf(sheet), "open")
        awaitWords("Signed with a phone that your program does not know yet: it counts once an instructor vouches for it.")
        awaitWords("Signed, not vouched for yet")
        vouchForIt()
        compare(world.standingOf(sheet), "signed")
        compare(world.strengthOf(sheet), "own-phone")
        // The phone that signed is locked and opened again: what it signed is there, with its code.
        swapPhones()
        tap("lockButton")
        tapInside(await("unlockSecret"))
        type(secret)
        tap("unlockButton")
        tap("signedRow")
        const row = await("signed-0")
        compare(row.title, "Appendectomy")
        verify(row.detail.indexOf("Ines Duarte") > 0, row.detail)
        tap("signed-0")
        awaitWords("Yes: checking supplies and equipment")
        compare(world.preceptorPhone.signing.answer, world.lastSavedBy(true))
        tap("answerDone")
        await("signed-0")
    }

    function test_foreignCodesWriteNothing() {
        startPreceptor()
        goHome()
        tap("scanButton")
        world.readyBytes(true, world.cardBytes(0))
        tap("requestPicture")
        awaitWords("This is not the code of a case sheet.")
        world.readyBytes(true, "https://example.org/menu")
        tap("requestPicture")
        awaitWords("This is not the code of a case sheet.")
        swapPhones()
        const first = offer("Appendectomy")
        tap("requestFile")
        const request = world.lastSavedBy(false)
        swapPhones()
        world.readyBytes(true, world.changedAt(request, 53)) // the length of the student's name
        tap("requestPicture")
        awaitWords("This code is damaged")
        compare(world.preceptorPhone.signing.count, 0)
        goHome()
        swapPhones()
        signByFiles(markHere)
        // An altered answer, another code, an answer to another sheet: the student's phone takes none of them.
        const answer = world.lastSavedBy(true)
        world.readyBytes(false, world.changedAt(answer, 200))
        tap("answerFile")
        tryVerify(() => world.phone.handOver.error.indexOf("Nothing was taken in") > 0 || world.phone.handOver.error.indexOf("damaged") > 0)
        world.readyBytes(false, world.cardBytes(1))
        tap("answerFile")
        awaitWords("This is not the answer of a preceptor's phone.")
        tapWords("Back")
        tapWords("Back")
        tap("giveBackButton")
        takeBack()
        compare(world.standingOf(first), "open")
        const second = offer("Tonsillectomy")
        tap("toAnswer")
        world.readyBytes(false, answer)
        tap("answerFile")
        awaitWords("This answer is for another sheet. Nothing was taken in.")
        tapWords("Back")
        tapWords("Back")
        tap("giveBackButton")
        takeBack()
        compare(world.standingOf(first), "open")
        compare(world.standingOf(second), "open")
    }

    function test_severalSheetsOfOneSitting() {
        startPreceptor()
        vouchForIt()
        goHome()
        swapPhones()
        const sheets = [world.openSheet("Appendectomy", 0), world.openSheet("Tonsillectomy", 0)]
        world.phone.giveAway(sheets)
        tap("ownPhoneButton")
        awaitWords("Sheet 1 of 2")
        signByFiles(markHere)
        tap("answerFile")
        tryVerify(() => world.phone.handOver.total === 1)
        compare(world.standingOf(sheets[0]), "signed")
        compare(world.standingOf(sheets[1]), "open")
        awaitWords("Scan the answer")
        tapWords("Back")
        signByFiles(markHere)
        tap("answerFile")
        takeBack()
        compare(world.standingOf(sheets[1]), "signed")
        compare(world.handOversOf(sheets[0]) + world.handOversOf(sheets[1]), 0)
    }

    function test_tooMuchTextForOneCode() {
        startPreceptor()
        vouchForIt()
        goHome()
        swapPhones()
        const endless = "長い手術の名前".repeat(17).substring(0, 118)
        const draft = world.phone.student.newSheet
        for (let i = 0; i < 4; ++i)
            draft.take(i + endless)
        for (const field of ["surgeon", "site", "room"])
            draft[field] = endless
        const sheet = draft.save()
        verify(sheet.length > 0, draft.error)
        world.phone.giveAway([sheet])
        tap("ownPhoneButton")
        verify(world.phone.handOver.request.byteLength > 1732) // what version 30-L holds in byte mode (ISO/IEC 18004, table 7; from memory)
        awaitWords("This sheet has too much text for one code. Send the request as a file: it works the same.")
        signByFiles(markHere)
        tap("answerFile")
        takeBack()
        compare(world.standingOf(sheet), "signed")
        swapPhones()
        tap("signedRow")
        tap("signed-0")
        awaitWords("What you signed has too much text for one code. Send it as a file: it works the same.")
    }

    function test_signedTwiceIsSaidBeforehand() {
        startPreceptor()
        goHome()
        swapPhones()
        offer("Appendectomy")
        tap("requestFile")
        world.carryToPreceptor()
        swapPhones()
        tap("scanButton")
        tap("requestPicture")
        verify(words().indexOf("You signed this sheet on") < 0)
        markHere()
        signHere()
        tap("answerDone")
        tap("scanButton")
        tap("requestPicture")
        awaitWords("You signed this sheet on")
        tapWords("Back")
        await("scanButton")
        compare(world.preceptorPhone.signing.count, 1)
    }

    function test_locksByItselfInTheMiddle() {
        startPreceptor()
        goHome()
        swapPhones()
        offer("Appendectomy")
        tap("requestFile")
        world.carryToPreceptor()
        swapPhones()
        tap("scanButton")
        tap("requestPicture")
        tap("performedButton")
        tap("allYesButton")
        world.phone.lock() // the student's is out of the way
        world.turnClock(3 * 60)
        await("unlockSecret", 5000)
        tapInside(find("unlockSecret"))
        type(secret)
        tap("unlockButton")
        await("keyText", 20000) // nothing signed, no marks kept
        compare(world.preceptorPhone.signing.count, 0)
        verify(world.preceptorPhone.signing.sheet === null)
    }
}
