import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Preceptor

// Who signs on this phone, as it stands under every signature.
PageFrame {
    id: page

    required property SigningPhone signing
    property bool first: false ///< nobody has said it yet
    signal done

    kicker: qsTr("This phone signs")
    title: qsTr("Who are you?")
    backText: first ? "" : qsTr("Back")

    NoteBox {
        visible: page.first
        text: qsTr("This vault holds a preceptor's signing key and no student's record.")
    }
    NoteBox {
        text: page.signing.error
        grave: true
    }
    EntryField {
        id: name
        objectName: "ownerName"
        label: qsTr("Your name, as it stands under what you sign")
        most: 80
        text: page.signing.name
    }
    EntryField {
        id: credential
        objectName: "ownerCredential"
        label: qsTr("Your credential, such as CST or RN")
        most: 40
        text: page.signing.credential
    }

    actions: [
        ActionButton {
            objectName: "ownerDone"
            Layout.fillWidth: true
            main: true
            enabled: name.text.trim().length > 0
            text: qsTr("That is me")
            onClicked: {
                page.signing.introduce(name.text, credential.text)
                if (page.signing.error.length === 0)
                    page.done()
            }
        }
    ]
}
