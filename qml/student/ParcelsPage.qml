import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Student

// What goes to the instructor and what comes back.
PageFrame {
    id: page

    required property Parcels parcels
    required property Share share

    property string sent
    signal showCodes
    signal readCodes

    kicker: parcels.with
    title: qsTr("Send and take in")
    backText: qsTr("Back")

    NoteBox {
        text: page.parcels.onlyHere
        grave: true
    }
    NoteBox {
        visible: page.parcels.onlyHere.length === 0
        text: qsTr("Everything is with your instructor.")
    }
    NoteBox {
        text: page.sent
    }
    NoteBox {
        text: page.parcels.error
        grave: true
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("A parcel is sealed: only your program's instructors can open it, so it may travel any way you like, by message or on a USB stick. Sending it again does no harm.")
        color: Look.colors.quietInk
    }
    SectionTitle {
        text: qsTr("Taken in")
        visible: reportList.count > 0
    }
    Repeater {
        id: reportList
        model: page.parcels.report
        Words {
            required property string modelData
            Layout.fillWidth: true
            text: modelData
        }
    }

    SectionTitle { text: qsTr("From screen to camera") }
    Words {
        Layout.fillWidth: true
        text: qsTr("Without a file and without a network, when you stand beside each other: one screen shows the parcel as codes, the other device's camera reads them.")
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }
    ChoiceRow {
        objectName: "showCodesRow"
        Layout.fillWidth: true
        text: qsTr("Show my parcel as codes")
        detail: qsTr("for your instructor's camera")
        opens: true
        onClicked: {
            page.sent = ""
            if (page.parcels.packAsCodes())
                page.showCodes()
        }
    }
    ChoiceRow {
        objectName: "readCodesRow"
        Layout.fillWidth: true
        text: qsTr("Read codes with the camera")
        detail: qsTr("from your instructor's screen")
        opens: true
        onClicked: page.readCodes()
    }

    Connections {
        target: page.share
        function onSaved(where) {
            page.sent = qsTr("Saved as %1. Once your instructor has it, their answer comes back in a parcel.").arg(where)
        }
        function onFailed(why) {
            page.sent = why
        }
        function onOpened(what, name, bytes) {
            if (what === "parcel")
                page.parcels.takeIn(name, bytes)
        }
    }

    actions: [
        ActionButton {
            objectName: "sendButton"
            Layout.fillWidth: true
            main: true
            text: qsTr("Send to my instructor")
            onClicked: {
                page.sent = ""
                const bytes = page.parcels.pack()
                if (page.parcels.error.length === 0)
                    page.share.save(page.parcels.suggestedName, bytes)
            }
        },
        ActionButton {
            objectName: "takeInButton"
            Layout.fillWidth: true
            text: qsTr("Take in what came from my instructor")
            onClicked: page.share.open("parcel")
        }
    ]
}
