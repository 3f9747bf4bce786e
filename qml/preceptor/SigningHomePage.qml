import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Preceptor

// What a preceptor does with their own phone.
PageFrame {
    id: page

    required property SigningPhone signing
    property string notice
    signal scan
    signal openSigned
    signal openKey
    signal openName
    signal openPhone
    signal lock

    kicker: qsTr("This phone signs")
    title: signing.who

    NoteBox {
        text: page.notice
        grave: true
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("Scan the code on a student's phone, mark what you saw, sign here, and show the answer to that phone. Neither needs a network.")
        color: Look.colors.quietInk
    }
    ChoiceRow {
        objectName: "signedRow"
        Layout.fillWidth: true
        text: qsTr("Signed on this phone")
        detail: page.signing.count === 0 ? qsTr("Nothing yet") : qsTr("%n sheet(s)", "", page.signing.count)
        opens: true
        onClicked: page.openSigned()
    }
    ChoiceRow {
        objectName: "keyRow"
        Layout.fillWidth: true
        text: qsTr("Your signing key")
        detail: qsTr("For an instructor to vouch for")
        opens: true
        onClicked: page.openKey()
    }
    ChoiceRow {
        objectName: "nameRow"
        Layout.fillWidth: true
        text: qsTr("Your name and credential")
        detail: page.signing.who
        opens: true
        onClicked: page.openName()
    }
    ChoiceRow {
        objectName: "ownSettingsRow"
        Layout.fillWidth: true
        text: qsTr("This phone")
        detail: qsTr("PIN or passphrase, vault code, when it locks, how it looks")
        opens: true
        onClicked: page.openPhone()
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("Use the phone after degowning and hand washing, never at the field. Counts, sterile technique and what a student may do follow your facility's policy.")
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }

    actions: [
        ActionButton {
            objectName: "scanButton"
            Layout.fillWidth: true
            main: true
            text: qsTr("Scan a student's code")
            onClicked: page.scan()
        },
        ActionButton {
            objectName: "lockButton"
            Layout.fillWidth: true
            text: qsTr("Lock now")
            onClicked: page.lock()
        }
    ]
}
