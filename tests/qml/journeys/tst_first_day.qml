import QtQuick
import QtTest
import Peelpack.Shell

// Join, the first sheet, hand-over, signature with a card, the role, the specialty, the parcel out and the answer back.
Journey {
    name: "FirstDay"

    function test_firstDay() {
        begin()
        show()
        tap("joinButton")
        world.readyInvitation()
        tap("invitationFile")
        tapInside(await("joinName"))
        type("Ines Duarte")
        tapInside(await("joinSecret"))
        type("amber walnut lantern")
        tapInside(await("joinAgain"))
        type("amber walnut lantern")
        tap("joinNow")
        const code = await("vaultCode", 20000)
        compare(code.text.replace(/\u200b/g, "").length, 41)
        tap("saveReply")
        const digits = world.grant()
        compare(digits.length, 6)
        verify(find("joinDigits").text.indexOf(digits) > 0)
        tap("joinedDone")
        await("home", 20000)

        // The usual sheet; surgeon and site are typed once and remembered.
        tap("newSheetButton")
        tapInside(await("procedureSearch"))
        type("lap c")
        tapWords("Laparoscopic cholecystectomy")
        tapInside(await("surgeonField"))
        type("Dr Okafor")
        tap("saveAndGive")
        await("performedButton")
        const sheet = world.lastSheet()
        compare(world.standingOf(sheet), "open")

        world.readyCard(0)
        markAndSign(0)
        compare(world.standingOf(sheet), "signed")
        compare(world.strengthOf(sheet), "card-new") // nobody has told this phone who the card is
        takeBack()
        awaitWords("First scrub")
        compare(world.roleOf(sheet), "first")
        tapWords("Back")

        tap("tab-3")
        tap("parcelsRow")
        tap("sendButton")
        awaitWords("Saved as")
        verify(world.instructorAnswers(true))
        tap("takeInButton")
        awaitWords("taken in")
        compare(world.standingOf(sheet), "initialed")
        compare(world.strengthOf(sheet), "card")
        awaitWords("Everything is with your instructor.")
        end()
    }
}
