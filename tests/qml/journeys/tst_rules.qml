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
}
