import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Shell

// What opens this phone.
PageFrame {
    id: page

    required property Phone phone
    property bool byCode: false

    kicker: "Peelpack"
    title: qsTr("Locked")

    NoteBox {
        text: page.phone.error
        grave: true
    }
    SecretField {
        id: secret
        objectName: "unlockSecret"
        visible: !page.byCode
        label: qsTr("PIN or passphrase")
        onAccepted: page.phone.unlock(secret.take())
        Component.onCompleted: field.forceActiveFocus()
    }
    EntryField {
        id: code
        objectName: "unlockCode"
        visible: page.byCode
        label: qsTr("Vault code, 7 groups of 5")
        most: 60
        inputMethodHints: Qt.ImhNoPredictiveText | Qt.ImhSensitiveData
    }
    LinkButton {
        objectName: "byCodeButton"
        text: page.byCode ? qsTr("Use the PIN or passphrase") : qsTr("Forgotten? Use the vault code")
        onClicked: page.byCode = !page.byCode
    }

    actions: [
        ActionButton {
            objectName: "unlockButton"
            Layout.fillWidth: true
            main: true
            enabled: !page.phone.busy && (page.byCode ? code.text.length > 0 : secret.text.length > 0)
            text: page.phone.busy ? qsTr("Opening") : qsTr("Open")
            onClicked: {
                if (page.byCode) {
                    const typed = code.text
                    code.text = ""
                    page.phone.unlockWithCode(typed)
                } else {
                    page.phone.unlock(secret.take())
                }
            }
        },
        ActionButton {
            Layout.fillWidth: true
            enabled: !page.phone.busy
            text: qsTr("Look around in the demo")
            onClicked: page.phone.openDemo()
        }
    ]
}
