import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Shell

// The invitation, then a name and what opens this phone.
PageFrame {
    id: page

    required property Joining joining
    required property Camera camera
    required property Share share

    property bool scanning: false
    property bool pin: false

    kicker: joining.invited ? qsTr("Program %1").arg(joining.program) : qsTr("First start")
    title: joining.invited ? qsTr("You and this phone") : qsTr("Your invitation")
    backText: qsTr("Back")

    NoteBox {
        text: page.joining.error
        grave: true
    }
    Pile {
        Layout.fillWidth: true
        visible: !page.joining.invited
        spacing: Look.gap
        Words {
            Layout.fillWidth: true
            text: qsTr("Your instructor gives it to you: a code to scan, a file, or a text.")
            color: Look.colors.quietInk
        }
        QrScanner {
            id: scanner
            Layout.fillWidth: true
            visible: page.scanning
            camera: page.camera
            scanning: page.scanning && !page.joining.invited
            onFound: bytes => page.joining.read(bytes)
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("What the camera sees")
        }
        NoteBox {
            text: scanner.problem
            grave: true
        }
        ChoiceRow {
            Layout.fillWidth: true
            visible: page.camera.available
            text: qsTr("Scan the code")
            onClicked: {
                page.scanning = true
                scanner.scanning = Qt.binding(() => page.scanning && !page.joining.invited) // again, after another code
            }
        }
        ChoiceRow {
            objectName: "invitationFile"
            Layout.fillWidth: true
            text: qsTr("Open the file, or a picture of the code")
            opens: true
            onClicked: page.share.open("invitation")
        }
        EntryField {
            id: pasted
            objectName: "invitationText"
            label: qsTr("Or paste the text")
            most: 4096
            inputMethodHints: Qt.ImhNoPredictiveText
        }
        ActionButton {
            objectName: "readInvitation"
            Layout.fillWidth: true
            visible: pasted.text.length > 0
            text: qsTr("Use this text")
            onClicked: page.joining.readText(pasted.text)
        }
    }
    Pile {
        Layout.fillWidth: true
        visible: page.joining.invited
        spacing: Look.gap
        EntryField {
            id: name
            objectName: "joinName"
            label: qsTr("Your name, as your instructor knows it")
            most: 80
        }
        OnOffRow {
            Layout.fillWidth: true
            text: qsTr("Open with a PIN")
            detail: qsTr("Quicker and weaker than a passphrase: whoever copies this phone's storage can try PINs.")
            on: page.pin
            onTurned: on => page.pin = on
        }
        SecretField {
            id: secret
            objectName: "joinSecret"
            digits: page.pin
            label: page.pin ? qsTr("PIN, 6 to 12 digits") : qsTr("Passphrase, at least 8 characters; four odd words are good")
        }
        SecretField {
            id: again
            objectName: "joinAgain"
            digits: page.pin
            label: qsTr("The same again")
        }
    }
    Connections {
        target: page.share
        function onOpened(what, name, bytes) {
            if (what === "invitation")
                scanner.readFile(name, bytes)
        }
    }

    actions: [
        ActionButton {
            objectName: "joinNow"
            Layout.fillWidth: true
            visible: page.joining.invited
            main: true
            enabled: !page.joining.busy && name.text.trim().length > 0 && secret.text.length > 0 && again.text.length > 0
            text: page.joining.busy ? qsTr("Making your record") : qsTr("Join")
            onClicked: page.joining.join(name.text, secret.take(), again.take(), page.pin)
        }
    ]
}
