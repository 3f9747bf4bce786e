import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Shell

// A preceptor's own phone, for the first time: who signs, and what opens it.
PageFrame {
    id: page

    required property StartingToSign starting

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
    NewSecret {
        id: secret
        Layout.fillWidth: true
        what: "signing"
    }

    actions: [
        ActionButton {
            objectName: "signingMake"
            Layout.fillWidth: true
            main: true
            enabled: !page.starting.busy && name.text.trim().length > 0 && secret.complete
            text: page.starting.busy ? qsTr("Making your key") : qsTr("Make my signing key")
            onClicked: {
                const typed = secret.take()
                page.starting.make(name.text, credential.text, typed.secret, typed.again, secret.pin)
            }
        }
    ]
}
