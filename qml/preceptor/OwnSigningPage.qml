import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Preceptor

// What opens this phone, once more: then it is signed.
PageFrame {
    id: page

    required property SigningPhone signing
    required property OwnSheet sheet

    kicker: sheet.title
    title: qsTr("Sign")
    backText: qsTr("Back")
    onBack: sheet.back()

    CardFrame {
        Words {
            Layout.fillWidth: true
            text: page.signing.who
            font.pixelSize: Look.cardTitleSize
            font.weight: Font.DemiBold
        }
        Words {
            Layout.fillWidth: true
            text: qsTr("for %1").arg(page.sheet.student)
            color: Look.colors.quietInk
        }
    }
    NoteBox {
        text: page.sheet.error
        grave: true
    }
    SecretField {
        id: secret
        objectName: "ownSecret"
        label: qsTr("The PIN or passphrase of this phone")
        Component.onCompleted: field.forceActiveFocus()
        onAccepted: if (signButton.enabled) page.signing.sign(secret.take())
    }

    actions: [
        ActionButton {
            id: signButton
            objectName: "ownSign"
            Layout.fillWidth: true
            main: true
            enabled: !page.signing.busy && secret.text.length > 0
            text: page.signing.busy ? qsTr("Signing") : qsTr("Sign")
            onClicked: page.signing.sign(secret.take())
        }
    ]
}
