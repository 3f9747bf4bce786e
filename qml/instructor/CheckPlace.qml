import QtQuick
import Peelpack.Parts
import Peelpack.Instructor

// The sheets that wait, and the one that is looked at: beside each other where there is room, one over the other on a
// phone. On a desk every decision has a key.
FocusScope {
    id: place
    objectName: "checkPlace"

    required property StaffPages staff
    signal printSheet(string key)
    readonly property bool wide: width >= 900 * (0.4 + 0.6 * Look.textScale)
    readonly property bool looking: staff.sheet.key.length > 0

    function takeKeys() {
        keys.forceActiveFocus()
    }

    Component.onCompleted: Qt.callLater(takeKeys)

    Keys.onPressed: event => {
        if (event.modifiers & (Qt.ControlModifier | Qt.AltModifier | Qt.MetaModifier))
            return
        const page = sheetLoader.item
        const idle = !page || page.doing === ""
        event.accepted = true
        switch (event.key) {
        case Qt.Key_Escape:
            if (!idle)
                page.close()
            else if (!place.wide && place.looking)
                place.staff.list.leave()
            else
                place.takeKeys()
            return
        case Qt.Key_J:
        case Qt.Key_Down:
            if (idle)
                place.staff.list.step(1)
            return
        case Qt.Key_K:
        case Qt.Key_Up:
            if (idle)
                place.staff.list.step(-1)
            return
        case Qt.Key_U:
            place.staff.pending.undo()
            return
        case Qt.Key_L:
            place.staff.list.initialLooked()
            return
        case Qt.Key_PageDown:
        case Qt.Key_PageUp:
            if (page)
                page.scroll(event.key === Qt.Key_PageDown ? 1 : -1)
            return
        }
        const acts = { [Qt.Key_I]: "initial", [Qt.Key_R]: "return", [Qt.Key_F]: "refile", [Qt.Key_A]: "amend", [Qt.Key_V]: "void" }
        if (page && idle && place.staff.sheet.canAct) {
            if (acts[event.key] !== undefined && (event.key !== Qt.Key_I || place.staff.sheet.canInitial)) {
                page.ask(acts[event.key])
                return
            }
            if (event.key === Qt.Key_Y && place.staff.sheet.reviews.rowCount() > 0) {
                page.answerFirst()
                return
            }
        }
        event.accepted = false
    }

    // Holds the focus while no field or button has it.
    Item {
        id: keys
        focus: true
    }
    Rectangle {
        anchors.fill: parent
        color: Look.colors.paper
    }
    Loader {
        id: listLoader
        active: place.wide || !place.looking
        x: 0
        width: place.wide ? Math.min(480 * Look.textScale, place.width * 0.4) : place.width
        height: place.height
        sourceComponent: WaitingListPage {
            staff: place.staff
            hints: place.wide
        }
    }
    Rectangle {
        visible: place.wide
        x: listLoader.width
        width: 1
        height: place.height
        color: Look.colors.hairline
    }
    Loader {
        id: sheetLoader
        active: place.looking
        x: place.wide ? listLoader.width + 1 : 0
        width: place.width - x
        height: place.height
        sourceComponent: CheckedSheetPage {
            staff: place.staff
            hints: place.wide
            swipes: !place.wide
            backText: place.wide ? "" : qsTr("All that wait")
            onBack: place.staff.list.leave()
            onPrintSheet: place.printSheet(place.staff.sheet.key)
            onSettled: place.takeKeys()
        }
    }
    Words {
        visible: place.wide && !place.looking
        x: listLoader.width + 40
        width: place.width - x - 40
        y: place.height * 0.3
        horizontalAlignment: Text.AlignHCenter
        color: Look.colors.quietInk
        text: qsTr("Choose a sheet, or press J for the first one. J and K or the arrows go on and back; the letters beside the buttons decide.")
    }
}
