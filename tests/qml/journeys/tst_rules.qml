import QtQuick
import QtTest
import Peelpack.Shell

// What the program accepts is said before the first mark, and at each way of signing.
Journey {
    name: "Rules"

    function init() {
        begin()
        world.setUp()
        show()
        unlock()
    }
    function cleanup() {
        end()
    }
    function give() {
        const sheet = world.openSheet("Appendectomy", 0)
        world.phone.giveAway([sheet])
        await("performedButton")
        return sheet
    }

    function test_drawnIsRefusedBeforehand() {
        world.setCounted(3) // own phone and card
        const sheet = give()
        awaitWords("What counts here: on the preceptor's own phone and signing card and PIN.")
        awaitWords("Does not count here: new signing card, not vouched for yet, drawn on this phone, the weakest way and pen-signed stub.")
        verify(words().indexOf("Only once an instructor has confirmed") < 0)
        tap("performedButton")
        markAllYes()
        tap("readBackButton")
        tap("toSigning")
        const draw = await("drawButton")
        compare(draw.detail, "Does not count here, by your program's rules.")
        tap("drawButton")
        awaitWords("Does not count here, by your program's rules.")
    }

    function test_cardsAreRefusedBeforehand() {
        world.setCounted(9) // own phone; drawn once it is confirmed
        give()
        awaitWords("What counts here: on the preceptor's own phone.")
        awaitWords("Only once an instructor has confirmed it with you: drawn on this phone, the weakest way.")
        tap("performedButton")
        markAllYes()
        tap("readBackButton")
        tap("toSigning")
        compare((await("makeCard")).detail, "Does not count here, by your program's rules.")
        compare((await("drawButton")).detail, "The weakest way: it counts only once an instructor has asked you about it.")
    }

    function test_ownPhoneIsRefusedBeforehand() {
        world.setCounted(2)
        give()
        compare((await("ownPhoneButton")).detail, "Does not count here, by your program's rules.")
    }

    function test_listOfWhoMaySignIsSaidBeforehand() {
        world.expectSigner("RN", 1)
        give()
        awaitWords("Who may sign which role, by the program's list: RN (observation).")
        tap("performedButton")
        markAllYes()
        tap("readBackButton")
        tap("toSigning")
        world.readyCard(0) // of a CST
        tap("pictureOfCard")
        await("cardPin")
        awaitWords("CST is not on the program's list of who may sign: nothing is refused")
    }

    function test_listedCredential() {
        world.expectSigner("CST", 7)
        give()
        tap("performedButton")
        markAllYes()
        tap("readBackButton")
        tap("toSigning")
        verify(find("listedSigner") === null)
        world.readyCard(0)
        tap("pictureOfCard")
        awaitWords("By the program's list, CST may sign every role.")
    }

    function test_clinicalDayOfToday() {
        verify(find("clinicalDay") === null)
        world.listDayToday("North Campus", 2)
        compare((await("clinicalDay")).text, "Clinical day: today · 07:00 to 15:30 · North Campus · Phones in the lounge only")
    }

    function test_bothTallies() {
        tap("tab-2")
        verify(find("otherSet") === null)
        world.changeRequirements("cap15", 30)
        const line = (await("otherSet")).text
        verify(line.indexOf("in force now: 0 of 120.") > 0, line)
        verify(line.indexOf("on: 0 of 120.") > 0, line)
    }
}
