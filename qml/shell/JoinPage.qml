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
        CodeReader {
            Layout.fillWidth: true
            visible: !page.joining.invited
            camera: page.camera
            share: page.share
            what: "invitation"
            onFound: bytes => page.joining.read(bytes)
            onPasted: text => page.joining.readText(text)
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
        NewSecret {
            id: secret
            Layout.fillWidth: true
            what: "join"
        }
    }

    actions: [
        ActionButton {
            objectName: "joinNow"
            Layout.fillWidth: true
            visible: page.joining.invited
            main: true
            enabled: !page.joining.busy && name.text.trim().length > 0 && secret.complete
            text: page.joining.busy ? qsTr("Making your record") : qsTr("Join")
            onClicked: {
                const typed = secret.take()
                page.joining.join(name.text, typed.secret, typed.again, secret.pin)
            }
        }
    ]
}
