import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Preceptor

// The ways to a signing card: scanned, from a picture, typed, or made now; or a drawn signature instead.
Pile {
    id: ways
    objectName: "cardWays"

    required property HandOver handOver
    required property Camera camera
    required property Share share
    required property var demoCards ///< null: it is no demo
    required property var demoCard

    property string way ///< "scan", "type" or "make"

    spacing: Look.gap
    Component.onCompleted: if (camera.available) way = "scan"

    QrScanner {
        id: scanner
        Layout.fillWidth: true
        visible: ways.way === "scan"
        camera: ways.camera
        scanning: ways.way === "scan" && !ways.handOver.cardHeld
        onFound: bytes => ways.handOver.takeCard(bytes)
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("What the camera sees")
    }
    NoteBox {
        text: scanner.problem
        grave: true
    }
    ActionButton {
        objectName: "scanAgain"
        Layout.fillWidth: true
        visible: ways.way === "scan" && !scanner.scanning
        text: qsTr("Scan again")
        onClicked: scanner.scanning = Qt.binding(() => ways.way === "scan" && !ways.handOver.cardHeld)
    }
    ChoiceRow {
        objectName: "scanCard"
        Layout.fillWidth: true
        visible: ways.camera.available && ways.way !== "scan"
        text: qsTr("Scan my signing card")
        onClicked: ways.way = "scan"
    }
    ChoiceRow {
        objectName: "pictureOfCard"
        Layout.fillWidth: true
        text: qsTr("A picture of my signing card")
        opens: true
        onClicked: ways.share.open("card")
    }
    ChoiceRow {
        objectName: "typeCard"
        Layout.fillWidth: true
        text: qsTr("Type the code of my signing card")
        chosen: ways.way === "type"
        onClicked: ways.way = ways.way === "type" ? "" : "type"
    }
    Pile {
        Layout.fillWidth: true
        visible: ways.way === "type"
        spacing: 8
        Repeater {
            id: people
            property int chosen: -1
            model: ways.handOver.people
            ChoiceRow {
                required property int index
                required property string modelData
                Layout.fillWidth: true
                text: modelData
                chosen: people.chosen === index
                onClicked: people.chosen = index
            }
        }
        EntryField {
            id: code
            objectName: "cardCode"
            label: qsTr("The code printed on the card, 7 groups of 5")
            most: 60
            inputMethodHints: Qt.ImhNoPredictiveText | Qt.ImhSensitiveData
        }
        ActionButton {
            Layout.fillWidth: true
            enabled: people.chosen >= 0 && code.text.trim().length > 0
            text: qsTr("Use this card")
            onClicked: {
                ways.handOver.typeCard(people.chosen, code.text)
                code.text = ""
            }
        }
    }
    ChoiceRow {
        objectName: "makeCard"
        Layout.fillWidth: true
        text: qsTr("I have no signing card: make one now")
        detail: ways.handOver.newCardWord
        chosen: ways.way === "make"
        onClicked: ways.way = ways.way === "make" ? "" : "make"
    }
    Pile {
        Layout.fillWidth: true
        visible: ways.way === "make"
        spacing: 8
        EntryField {
            id: name
            objectName: "signerName"
            label: qsTr("Your name")
            most: 80
        }
        EntryField {
            id: credential
            objectName: "signerCredential"
            label: qsTr("Your credential, such as CST or RN")
            most: 40
        }
        NoteBox { text: ways.handOver.listedAs(credential.text) }
        ActionButton {
            objectName: "makeCardNow"
            Layout.fillWidth: true
            enabled: name.text.trim().length > 0
            text: qsTr("Make my card")
            onClicked: ways.handOver.makeCard(name.text, credential.text)
        }
    }
    ChoiceRow {
        objectName: "drawButton"
        Layout.fillWidth: true
        text: qsTr("Draw my signature")
        detail: ways.handOver.drawnWord
        opens: true
        onClicked: ways.handOver.go(HandOver.Drawing)
    }
    SectionTitle {
        visible: ways.demoCards !== null
        text: qsTr("Demo: hold one of these cards before the camera")
    }
    Repeater {
        model: ways.demoCards
        ChoiceRow {
            required property int index
            required property string modelData
            objectName: "demoCard-" + index
            Layout.fillWidth: true
            text: modelData
            onClicked: ways.handOver.takeCard(ways.demoCard(index))
        }
    }
    Connections {
        target: ways.share
        function onOpened(what, name, bytes) {
            if (what === "card")
                scanner.readPicture(bytes)
        }
    }
}
