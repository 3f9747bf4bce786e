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
    CardFrame {
        Words {
            objectName: "signingVaultCode"
            Layout.fillWidth: true
            text: page.starting.vaultCode.replace(/-/g, "-\u200b") // a line ends between groups only
            font.pixelSize: Look.cardTitleSize
            font.weight: Font.DemiBold
        }
        Words {
            Layout.fillWidth: true
            text: qsTr("Shown only now. It opens this phone's vault when you have forgotten your PIN or passphrase: keep it on paper, not on this phone.")
            font.pixelSize: Look.secondarySize
            color: Look.colors.quietInk
        }
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
