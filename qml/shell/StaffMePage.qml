import QtQuick
import QtQuick.Layouts
import Peelpack.Evidence
import Peelpack.Instructor
import Peelpack.Parts
import Peelpack.Shell

// The instructor, the rules and how they want the app.
PageFrame {
    id: page

    required property Phone phone
    required property StaffPages staff
    signal openRules
    signal openPhone
    signal openEvidence(string page)

    title: staff.name

    ChoiceRow {
        objectName: "rulesRow"
        Layout.fillWidth: true
        text: qsTr("Rules in force")
        detail: qsTr("What is required, who may sign")
        opens: true
        onClicked: page.openRules()
    }
    ChoiceRow {
        objectName: "myPhoneRow"
        Layout.fillWidth: true
        text: qsTr("This device")
        detail: qsTr("PIN or passphrase, vault code, when it locks")
        opens: true
        onClicked: page.openPhone()
    }
    EvidenceRows {
        Layout.fillWidth: true
        onGo: name => page.openEvidence(name)
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("Setting up a program and adding people and cards is done with the peelpack command on this vault.")
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }
    LooksRows {
        Layout.fillWidth: true
        settings: page.phone.settings
    }

    actions: [
        ActionButton {
            objectName: "lockButton"
            Layout.fillWidth: true
            text: page.phone.demo ? qsTr("Leave the demo") : qsTr("Lock now")
            onClicked: page.phone.lock()
        }
    ]
}
