import QtQuick
import QtQuick.Layouts
import Peelpack.Light
import Peelpack.Parts

// A parcel as codes one after another, for another device's camera.
PageFrame {
    id: page
    objectName: "showCodesPage"

    required property RunningCodes codes
    property string whom ///< for whom the parcel is; empty: the title says enough
    property string doneText: qsTr("Done")
    signal done

    kicker: whom
    title: qsTr("Show the codes")
    backText: qsTr("Back")
    Component.onCompleted: codes.begin(Look.calm)
    Component.onDestruction: codes.end()

    // On a low screen or with large text: the whole code in sight until somebody scrolls.
    property bool scrolled: false
    function bringIntoSight() {
        const top = place.mapToItem(flickable.contentItem, 0, 0).y
        if (!scrolled && top + place.side > flickable.height)
            flickable.contentY = Math.min(top, flickable.contentHeight - flickable.height)
    }
    Connections {
        target: page.flickable
        function onContentHeightChanged() { Qt.callLater(page.bringIntoSight) }
        function onHeightChanged() { Qt.callLater(page.bringIntoSight) }
        function onMovementStarted() { page.scrolled = true }
    }

    // As large as the screen allows, its white edge over the page's margins.
    Item {
        id: place
        readonly property real side: Math.min(page.width, width + 2 * Look.margin, Math.max(240, page.height - Look.margin))
        Layout.fillWidth: true
        implicitHeight: side
        QrCode {
            objectName: "runningCode"
            x: (place.width - width) / 2
            width: place.side
            height: place.side
            bytes: page.codes.code
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("A code of the parcel, for the other device's camera")
        }
    }
    Words {
        objectName: "codePlace"
        Layout.fillWidth: true
        text: page.codes.running ? qsTr("%1 · %2").arg(page.codes.place).arg(page.codes.pace)
                                 : qsTr("%1 · paused").arg(page.codes.place)
        font.weight: Font.DemiBold
        horizontalAlignment: Text.AlignHCenter
    }
    Flow {
        id: buttons
        Layout.fillWidth: true
        spacing: 8
        ActionButton {
            objectName: "runCodes"
            width: Math.min(implicitWidth, buttons.width)
            text: page.codes.running ? qsTr("Pause") : qsTr("Run")
            onClicked: page.codes.running ? page.codes.pause() : page.codes.run()
        }
        ActionButton {
            objectName: "slowerCodes"
            width: Math.min(implicitWidth, buttons.width)
            text: qsTr("Slower")
            enabled: page.codes.canBeSlower
            onClicked: page.codes.slower()
        }
        ActionButton {
            objectName: "fasterCodes"
            width: Math.min(implicitWidth, buttons.width)
            text: qsTr("Faster")
            enabled: page.codes.canBeFaster
            onClicked: page.codes.faster()
        }
        ActionButton {
            objectName: "nextCode"
            width: Math.min(implicitWidth, buttons.width)
            visible: !page.codes.running
            text: qsTr("Next")
            onClicked: page.codes.step()
        }
    }
    Words {
        Layout.fillWidth: true
        text: page.codes.enough
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("The picture changes quickly. If that bothers you, choose slower, or pause and go on code by code. The codes are sealed like the file: who films them cannot open them.")
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }

    actions: [
        ActionButton {
            objectName: "codesDone"
            Layout.fillWidth: true
            main: true
            text: page.doneText
            onClicked: page.done()
        }
    ]
}
