import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Shell

// A preceptor's own phone, for the first time: who signs, and what opens it.
PageFrame {
    id: page

    required property StartingToSign starting
    property bool pin: false

    kicker: qsTr("For preceptors")
    title: qsTr("Sign on this phone")
    backText: starting.busy ? "" : qsTr("Back")

    Words {
        Layout.fillWidth: true
        text: qsTr("This phone gets a signing key of its own. Then you scan the code on a student's phone, mark the sheet here and sign it. It keeps what you signed and nothing else.")
        color: Look.colors.quietInk
    }
    NoteBox {
        text: page.starting.error
        grave: true
    }
    EntryField {
        id: name
        objectName: "signingName"
        label: qsTr("Your name, as it stands under what you sign")
        most: 80
    }
    EntryField {
        id: credential
        objectName: "signingCredential"
        label: qsTr("Your credential, such as CST or RN")
        most: 40
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
        objectName: "signingSecret"
        digits: page.pin
        label: page.pin ? qsTr("PIN, 6 to 12 digits") : qsTr("Passphrase, at least 8 characters; four odd words are good")
    }
    SecretField {
        id: again
        objectName: "signingAgain"
        digits: page.pin
        label: qsTr("The same again")
    }

    actions: [
        ActionButton {
            objectName: "signingMake"
            Layout.fillWidth: true
            main: true
            enabled: !page.starting.busy && name.text.trim().length > 0 && secret.text.length > 0 && again.text.length > 0
            text: page.starting.busy ? qsTr("Making your key") : qsTr("Make my signing key")
            onClicked: page.starting.make(name.text, credential.text, secret.take(), again.take(), page.pin)
        }
    ]
}
