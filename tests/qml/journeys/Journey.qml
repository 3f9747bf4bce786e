import QtQuick
import QtTest
import Peelpack.Shell
import Peelpack.Test

// One person's way through the real window over a real vault, by touch and keys only. Counts the taps.
TestCase {
    id: journey

    property var window: null       ///< the one in hand
    property var otherWindow: null  ///< of two phones, the one that lies there
    property QtObject world: null
    property int taps: 0

    when: true

    Component {
        id: worldMaker
        PhoneWorld {}
    }
    Component {
        id: windowMaker
        AppWindow {
            width: 390
            height: 844
        }
    }

    function begin() {
        world = worldMaker.createObject(journey)
        taps = 0
    }
    function show() {
        if (window)
            window.destroy()
        wait(0)
        window = windowMaker.createObject(null, { phone: world.phone })
        verify(waitForRendering(window.contentItem, 5000))
    }
    // A preceptor's own phone beside the student's; it is in hand then.
    function showPreceptor() {
        otherWindow = window
        world.startPreceptorPhone()
        window = windowMaker.createObject(null, { phone: world.preceptorPhone })
        verify(waitForRendering(window.contentItem, 5000))
        takeInHand()
    }
    function swapPhones() {
        const lying = window
        window = otherWindow
        otherWindow = lying
        takeInHand()
    }
    function takeInHand() {
        window.requestActivate()
        tryVerify(() => window.active, 5000)
    }
    // What is on the screen now, as a picture file.
    function photograph(name) {
        wait(200) // whatever was still being drawn
        const file = world.file(name)
        grabImage(window.contentItem).save(file)
        return file
    }
    function end() {
        if (window)
            window.destroy()
        window = null
        if (otherWindow)
            otherWindow.destroy()
        otherWindow = null
        wait(0)
        world.destroy()
        world = null
        wait(0)
    }

    // The first visible item that fits.
    function seek(fits, item) {
        if (item === undefined)
            item = window.contentItem
        if (!item || !item.visible)
            return null
        if (fits(item))
            return item
        for (let i = 0; i < item.children.length; ++i) {
            const found = seek(fits, item.children[i])
            if (found)
                return found
        }
        return null
    }
    // The visible item of that name.
    function find(name) {
        return seek(item => item.objectName === name)
    }
    function await(name, ms) {
        const most = ms === undefined ? 8000 : ms
        for (let waited = 0; waited < most && find(name) === null; waited += 50)
            wait(50)
        verify(find(name) !== null, "\"" + name + "\" should be on the screen:\n" + words())
        return find(name)
    }
    // The visible item that says exactly this and can be touched.
    function says(text) {
        return seek(item => item.text === text && item.clicked !== undefined)
    }
    // All words on the screen, for looking for a sentence.
    function words() {
        const list = []
        seek(item => {
            if (typeof item.text === "string" && item.text.length > 0)
                list.push(item.text)
            return false
        })
        return list.join("\n")
    }
    function awaitWords(text, ms) {
        const most = ms === undefined ? 8000 : ms
        for (let waited = 0; waited < most && words().indexOf(text) < 0; waited += 50)
            wait(50)
        verify(words().indexOf(text) >= 0, "\"" + text + "\" should be on the screen:\n" + words())
    }

    // Scrolls as a thumb would until the item is in reach.
    function reach(item) {
        let flick = item.parent
        while (flick && flick.contentY === undefined)
            flick = flick.parent
        if (!flick)
            return
        for (let i = 0; i < 40; ++i) {
            const place = item.mapToItem(flick, 0, item.height / 2)
            if (place.y > 30 && place.y < flick.height - 30)
                return
            const step = Math.min(220, Math.abs(place.y - flick.height / 2)) * (place.y < flick.height / 2 ? 1 : -1)
            drag(flick, step)
        }
    }
    function drag(flick, dy) {
        const x = 8
        const from = flick.height / 2 - dy / 2
        const touch = touchEvent(flick)
        touch.press(0, flick, x, from).commit()
        for (let i = 1; i <= 8; ++i) {
            wait(12)
            touch.move(0, flick, x, from + dy * i / 8).commit()
        }
        wait(120) // no throw
        touch.release(0, flick, x, from + dy).commit()
        wait(20)
    }
    function tapItem(item) {
        verify(item, "there is something to tap")
        reach(item)
        verify(item.enabled, (item.objectName || item.text) + " can be tapped")
        const touch = touchEvent(item)
        touch.press(0, item).commit()
        touch.release(0, item).commit()
        ++taps
        wait(30)
    }
    function tap(name) {
        tapItem(await(name))
    }
    function tapWords(text) {
        tryVerify(() => says(text) !== null, 8000, "\"" + text + "\" can be tapped:\n" + words())
        tapItem(says(text))
    }
    // Into the field that has the focus; keys are no taps.
    function type(text) {
        for (const letter of text)
            keyClick(letter)
        wait(10)
    }
    function fill(name, text) {
        tap(name)
        const field = find(name)
        tapInside(field)
        type(text)
    }
    function tapInside(entry) {
        verify(entry.field)
        if (!entry.field.activeFocus) {
            reach(entry.field)
            const touch = touchEvent(entry.field)
            touch.press(0, entry.field).commit()
            touch.release(0, entry.field).commit()
        }
        tryVerify(() => entry.field.activeFocus)
    }
    function unlock() {
        tapInside(await("unlockSecret"))
        type("amber walnut lantern")
        tap("unlockButton")
        tryVerify(() => world.phone.stage !== Phone.Locked, 20000)
        await("home")
    }
    function takeBack() {
        tapInside(await("returnSecret"))
        type("amber walnut lantern")
        tap("takeBackButton")
        await("home", 20000)
    }
    // From "Was this performed?" with the skills marked Yes to the signature with a preceptor's card.
    function markAndSign(preceptor) {
        tap("performedButton")
        markAllYes()
        tap("readBackButton")
        tap("toSigning")
        sign(preceptor)
    }
    function markAllYes() {
        tap("allYesButton")
        for (let skill = 5; skill < 10; ++skill)
            mark(skill, 1)
    }
    function mark(skill, mark) {
        const three = await("mark-" + skill)
        let buttons = []
        for (let i = 0; i < three.children.length; ++i)
            if (three.children[i].clicked !== undefined)
                buttons.push(three.children[i])
        tapItem(buttons[mark - 1])
        tryCompare(three, "mark", mark)
    }
    function sign(preceptor) {
        world.readyCard(preceptor)
        tap("pictureOfCard")
        await("cardPin")
        if (find("strangerName")) {
            tapInside(find("strangerName"))
            type(world.nameOf(preceptor))
        }
        tapInside(find("cardPin"))
        type(world.pinOf(preceptor))
        tap("signButton")
        await("returnSecret", 20000)
    }
}
