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
    required property bool director
    signal openRules
    signal openPhone
    signal openEvidence(string page)
    signal openProgram(string page)

    title: staff.name

    ChoiceRow {
        objectName: "peopleRow"
        Layout.fillWidth: true
        text: qsTr("People")
        detail: qsTr("Students and staff, invitations, devices")
        opens: true
        onClicked: page.openProgram("people")
    }
    ChoiceRow {
        objectName: "preceptorsRow"
        Layout.fillWidth: true
        text: qsTr("Preceptors and cards")
        detail: qsTr("Who may sign, new cards, vouching, lost ones")
        opens: true
        onClicked: page.openProgram("preceptors")
    }
    ChoiceRow {
        objectName: "rulesRow"
        Layout.fillWidth: true
        text: qsTr("Rules in force")
        detail: qsTr("What is required, who may sign")
        opens: true
        onClicked: page.openRules()
    }
    EvidenceRows {
        Layout.fillWidth: true
        onGo: name => page.openEvidence(name)
    }
    ChoiceRow {
        objectName: "toCutRow"
        Layout.fillWidth: true
        text: qsTr("To print and cut")
        detail: qsTr("Invitations and pocket stubs")
        opens: true
        onClicked: page.openProgram("paperToCut")
    }
    ChoiceRow {
        objectName: "paperLogRow"
        Layout.fillWidth: true
        text: qsTr("Earlier paper log")
        detail: qsTr("Import what a class logged on paper")
        opens: true
        onClicked: page.openProgram("paperLog")
    }
    ChoiceRow {
        objectName: "handProgramOverRow"
        Layout.fillWidth: true
        visible: page.director
        text: qsTr("Hand the program over")
        detail: qsTr("To a new director")
        opens: true
        onClicked: page.openProgram("handOver")
    }
    ChoiceRow {
        objectName: "myPhoneRow"
        Layout.fillWidth: true
        text: qsTr("This device")
        detail: qsTr("PIN or passphrase, vault code, when it locks")
        opens: true
        onClicked: page.openPhone()
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
