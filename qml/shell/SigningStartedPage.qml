import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Shell

// The vault code of a preceptor's own phone, which is shown only now.
PageFrame {
    id: page

    required property StartingToSign starting

    kicker: qsTr("Your signing key is made")
    title: qsTr("Write down your vault code")

    NoteBox {
        text: page.starting.error
        grave: true
    }
    PaperCodeCard {
        code: page.starting.vaultCode
        codeName: "signingVaultCode"
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("Next you see your signing key: show it to an instructor, who vouches for it.")
        color: Look.colors.quietInk
    }

    actions: [
        ActionButton {
            objectName: "signingStarted"
            Layout.fillWidth: true
            main: true
            text: qsTr("The code is on paper, go on")
            onClicked: page.starting.finish()
        }
    ]
}
