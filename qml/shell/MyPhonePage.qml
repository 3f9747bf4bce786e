import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Shell

// What opens this phone, and its code for the day it is forgotten.
PageFrame {
    id: page
    objectName: "myPhonePage"

    required property Phone phone

    property bool withLooks: false ///< how the app looks has no page of its own
    property string doing ///< "secret" or "code"
    property bool pin: phone.opensWithPin

    title: qsTr("My phone")
    backText: qsTr("Back")

    NoteBox {
        text: page.phone.error
        grave: true
    }
    CardFrame {
        visible: page.phone.newVaultCode.length > 0
        Words {
            Layout.fillWidth: true
            text: page.phone.newVaultCode.replace(/-/g, "-\u200b") // a line ends between groups only
            font.pixelSize: Look.cardTitleSize
            font.weight: Font.DemiBold
        }
        Words {
            Layout.fillWidth: true
            text: qsTr("Your new vault code, shown only now. The old one opens nothing any more. Keep it on paper, not on this phone.")
            font.pixelSize: Look.secondarySize
            color: Look.colors.quietInk
        }
        ActionButton {
            Layout.fillWidth: true
            text: qsTr("It is on paper")
            onClicked: page.phone.forgetVaultCode()
        }
    }
    CardFrame {
        Words {
            Layout.fillWidth: true
            text: qsTr("Locks after %n minute(s) without a touch", "", page.phone.settings.lockMinutes)
        }
        RowLayout {
            Layout.fillWidth: true
            spacing: 8
            ActionButton {
                Layout.fillWidth: true
                enabled: page.phone.settings.lockMinutes > 1
                text: qsTr("Sooner")
                onClicked: page.phone.settings.lockMinutes = page.phone.settings.lockMinutes - 1
            }
            ActionButton {
                Layout.fillWidth: true
                enabled: page.phone.settings.lockMinutes < 30
                text: qsTr("Later")
                onClicked: page.phone.settings.lockMinutes = page.phone.settings.lockMinutes + 1
            }
        }
    }
    ActionButton {
        objectName: "changeSecret"
        Layout.fillWidth: true
        visible: page.doing !== "secret"
        text: qsTr("Change PIN or passphrase")
        onClicked: page.doing = "secret"
    }
    ActionButton {
        objectName: "newCode"
        Layout.fillWidth: true
        visible: page.doing !== "code"
        text: qsTr("Make a new vault code")
        onClicked: page.doing = "code"
    }
    SecretField {
        id: now
        objectName: "secretNow"
        visible: page.doing.length > 0
        label: qsTr("Your PIN or passphrase now")
    }
    Pile {
        Layout.fillWidth: true
        visible: page.doing === "secret"
        spacing: Look.gap
        OnOffRow {
            Layout.fillWidth: true
            text: qsTr("Open with a PIN")
            detail: qsTr("Quicker and weaker than a passphrase: whoever copies this phone's storage can try PINs.")
            on: page.pin
            onTurned: on => page.pin = on
        }
        SecretField {
            id: next
            digits: page.pin
            label: page.pin ? qsTr("New PIN, 6 to 12 digits") : qsTr("New passphrase, at least 8 characters")
        }
        SecretField {
            id: again
            digits: page.pin
            label: qsTr("The same again")
        }
    }

    LooksRows {
        Layout.fillWidth: true
        visible: page.withLooks
        settings: page.phone.settings
    }

    actions: [
        ActionButton {
            objectName: "doSecret"
            Layout.fillWidth: true
            main: true
            visible: page.doing.length > 0
            enabled: !page.phone.busy && now.text.length > 0 && (page.doing === "code" || (next.text.length > 0 && again.text.length > 0))
            text: page.phone.busy ? qsTr("Working") : (page.doing === "code" ? qsTr("Make the code") : qsTr("Change it"))
            onClicked: {
                if (page.doing === "code")
                    page.phone.makeVaultCode(now.take())
                else
                    page.phone.changeSecret(now.take(), next.take(), again.take(), page.pin)
                page.doing = ""
            }
        }
    ]
}
