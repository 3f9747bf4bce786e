import QtQuick
import QtTest
import Peelpack.Shell
import Peelpack.Test

// A director's way: a program is set up, people and cards are added, rules changed, and the program handed over.
Journey {
    id: journey
    name: "Program"

    readonly property var pages: world && world.phone ? world.phone.program : null

    Component {
        id: worldMaker
        ProgramWorld {}
    }
    function init() {
        world = worldMaker.createObject(journey)
        taps = 0
    }
    function cleanup() {
        end()
    }
    function enter(name, text) {
        tapInside(await(name))
        type(text)
    }
    function openAsDirector() {
        world.setUp()
        show()
        enter("unlockSecret", "amber walnut lantern")
        tap("unlockButton")
        await("staffHome", 20000)
        tap("tab-3")
    }
    // From the director's "Me": Ines is invited, joins, and is let in.
    function letInesIn() {
        tap("peopleRow")
        tap("inviteButton")
        enter("inviteName", "Ines Duarte")
        enter("inviteScopes", "Spring class")
        tap("inviteNow")
        tap("saveInvitation")
        compare(world.lastSavedName(), "Ines Duarte.invitation")
        const digits = world.studentJoins("Ines Duarte")
        tap("toGrant")
        tap("replyFile")
        compare((await("grantDigits")).text, digits)
        compare(world.peopleCount(), 1)
        tap("sameDigits")
        awaitWords("Ines Duarte is in.")
        compare(world.peopleCount(), 2)
    }

    function test_setUp() {
        show()
        tap("setUpStart")
        tap("rulesNext")
        awaitWords("Choose the requirement set that is in force.")
        enter("termField", "Spring 2027")
        enter("firstDayField", "2027-05-14")
        enter("lastDayField", "2027-01-11")
        tap("set-spread10")
        tap("rulesNext")
        awaitWords("The term ends before it begins")
        find("firstDayField").field.clear()
        enter("firstDayField", "2027-01-11")
        find("lastDayField").field.clear()
        enter("lastDayField", "2027-05-14")
        tap("rulesNext")
        awaitWords("Are these the rules?")
        awaitWords("Spring 2027")
        awaitWords("Signing card and PIN · counts")
        tap("rulesNext")

        // The code is shown once, and nothing is made before it was typed back.
        const first = (await("programCode")).text.replace(/\u200b/g, "")
        compare(first.length, 41)
        tap("codeNext")
        verify(words().indexOf(first) < 0)
        enter("typedCode", world.otherCode())
        tap("codeNext")
        awaitWords("That is another code; nothing was made.")
        verify(!world.vaultIsThere())
        tap("otherCode")
        const code = (await("programCode")).text.replace(/\u200b/g, "")
        verify(code !== first, "a code is shown once only")
        tap("codeNext")
        enter("typedCode", first)
        tap("codeNext")
        awaitWords("That is another code; nothing was made.")
        enter("typedCode", code)
        tap("codeNext")
        enter("directorName", "Nora Stone")
        enter("directorSecret", "amber walnut lantern")
        enter("directorAgain", "amber walnut candle")
        tap("directorMake")
        awaitWords("The two passphrases differ.")
        verify(!world.vaultIsThere())
        enter("directorSecret", "amber walnut lantern")
        enter("directorAgain", "amber walnut lantern")
        tap("directorMake")
        compare((await("directorVaultCode", 20000)).text.replace(/\u200b/g, "").length, 41)
        tap("directorDone")
        await("staffHome", 20000)
        compare(world.setInForce(), "spread10")
        compare(world.phone.program.director, true)

        // A student joins on a device of their own.
        tap("tab-3")
        letInesIn()
        tap("toParcels")
        tap("sendTo-Ines Duarte")
        verify(world.studentTakesIn())

        // A signing card, with the preceptor's own PIN.
        tap("tab-3")
        tap("preceptorsRow")
        tap("makeCardButton")
        enter("cardName", "L. Brandt")
        enter("cardCredential", "CST")
        enter("cardSite", "North Campus")
        enter("cardPinField", "123456")
        enter("cardPinAgain", "123456")
        tap("makeCardNow")
        tryVerify(() => pages.cardMaking.error.length > 0 && !pages.cardMaking.busy, 8000, "a PIN that anybody would guess")
        enter("cardPinField", "482913")
        enter("cardPinAgain", "482913")
        tap("makeCardNow")
        compare((await("cardTyped", 20000)).text.length, 41)
        verify(world.cardIsVouched(pages.cardMaking.code, "482913", "L. Brandt"))
        tap("printCard")
        verify(world.savedIsPdf())
        tap("cardDone")
        await("preceptor-L. Brandt")
        compare(pages.cardMaking.typed, "")
        tapWords("Back")

        // Other rules, read back before they are signed.
        tap("rulesRow")
        tap("otherRules")
        tap("changeRules")
        tap("set-cap15")
        tap("readRulesBack")
        awaitWords("at most 15")
        compare(world.setInForce(), "spread10")
        tap("signRules")
        awaitWords("Signed: these rules are in force from now on.")
        awaitWords("Before, the newest first")
        compare(world.setInForce(), "cap15")
    }

    function test_digitsThatDiffer() {
        openAsDirector()
        tap("peopleRow")
        tap("inviteButton")
        enter("inviteName", "Ines Duarte")
        enter("inviteScopes", "Spring class")
        tap("inviteNow")
        tap("saveInvitation")
        world.studentJoins("Ines Duarte")
        tap("toGrant")
        enter("replyText", world.replyAsText().slice(0, 60))
        tap("readReply")
        verify(find("sameDigits") === null)
        enter("replyText", world.replyAsText())
        tap("readReply")
        await("sameDigits")
        tap("otherDigits")
        awaitWords("Nothing was granted")
        compare(world.peopleCount(), 1)
    }

    function test_cardMadeOnTheSpot() {
        openAsDirector()
        letInesIn()
        tap("toParcels")
        tap("sendTo-Ines Duarte")
        verify(world.studentTakesIn())
        world.studentHasNewCardSign("A. Ferro")
        tap("takeInFiles")
        awaitWords("taken in", 20000)
        compare(world.strengthOfSheet(), "card-new")
        tap("tab-3")
        tap("preceptorsRow")
        awaitWords("1 sheet(s) wait for it")
        tap("waiting-0")
        awaitWords("Ines Duarte")
        awaitWords("Appendectomy")
        tap("vouchNow")
        await("preceptor-A. Ferro")
        compare(world.strengthOfSheet(), "card")

        // The card is lost.
        tap("preceptor-A. Ferro")
        tap("endKey")
        tapWords("The card is lost")
        tap("reasonDone")
        tryVerify(() => world.goodKeysOf("A. Ferro") === 0)
        awaitWords("ended; signs nothing that counts any more")
        tapWords("Back")
        awaitWords("may not sign any more")
        tapWords("Back")

        // And the phone, too.
        tap("peopleRow")
        tap("person-Ines Duarte")
        tap("endDevice")
        verify(!find("reasonDone").enabled, "not without a reason")
        tapWords("The phone is lost")
        tap("reasonDone")
        tryVerify(() => world.goodDevicesOf("Ines Duarte") === 0)
        tap("inviteAgain")
        awaitWords("for another device")
    }

    function test_classList() {
        openAsDirector()
        world.readyText("spring.csv", "name,class\r\nInes Duarte,Spring class\r\n,Spring class\r\nCaleb Nwosu,Spring class\r\nInes Duarte,Spring class\r\n")
        tap("peopleRow")
        tap("classListButton")
        tap("openList")
        awaitWords("Line 3: the name is missing; fill it in.")
        awaitWords("Line 5: this name stands twice")
        tap("inviteListed")
        awaitWords("Invited: 2 student(s)")
        tap("saveClass")
        compare(world.savedFiles(), 2)
        tap("printClass")
        verify(world.savedIsPdf())
        tapWords("Back")
        await("open-Caleb Nwosu")
        tapWords("Back")
        tap("toCutRow")
        tap("printStubs")
        compare(world.lastSavedName(), "stubs.pdf")
        verify(world.savedIsPdf())
    }

    function test_newDirector() {
        openAsDirector()
        letInesIn()
        tapWords("Back")
        tapWords("Back")
        tap("handProgramOverRow")
        awaitWords("director number 2")
        tap("saveRecord")
        world.readySaved()
        window.destroy()
        window = null
        wait(0)
        world.takeNewDevice()
        show()
        tap("setUpStart")
        tap("takeOverRow")
        enter("takeOverCode", world.otherCode().slice(0, 40) + "!")
        enter("takeOverName", "Olga Reyes")
        enter("takeOverSecret", "amber walnut lantern")
        enter("takeOverAgain", "amber walnut lantern")
        tap("takeOverMake")
        tryVerify(() => world.phone.first.takingOver.error.length > 0)
        verify(!world.vaultIsThere())
        enter("takeOverCode", world.programCode())
        enter("takeOverSecret", "amber walnut lantern")
        enter("takeOverAgain", "amber walnut lantern")
        tap("takeOverMake")
        await("directorVaultCode", 20000)
        tap("directorDone")
        await("staffHome", 20000)
        compare(world.peopleCount(), 1)
        tap("tab-2")
        tap("takeInFiles")
        awaitWords("taken in", 20000)
        compare(world.peopleCount(), 3)
        compare(world.setInForce(), "spread10")
        compare(world.phone.program.nextDirector, 3)
        tap("sendStaff")
        verify(world.savedFiles() > 0)
    }
}
