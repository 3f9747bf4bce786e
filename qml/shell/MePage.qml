import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Shell
import Peelpack.Student

// The student, their parcels and how they want the app.
PageFrame {
    id: page

    required property Phone phone
    required property StudentPages student
    signal openParcels
    signal openPhone

    readonly property Settings settings: phone.settings

    kicker: student.parcels.with
    title: student.name

    ChoiceRow {
        objectName: "parcelsRow"
        Layout.fillWidth: true
        text: qsTr("Send and take in")
        detail: page.student.parcels.onlyHere
        opens: true
        onClicked: page.openParcels()
    }
    ChoiceRow {
        objectName: "myPhoneRow"
        Layout.fillWidth: true
        text: qsTr("My phone")
        detail: qsTr("PIN or passphrase, vault code, when it locks")
        opens: true
        onClicked: page.openPhone()
    }
    LookSettings { settings: page.settings }

    actions: [
        ActionButton {
            objectName: "lockButton"
            Layout.fillWidth: true
            text: page.phone.demo ? qsTr("Leave the demo") : qsTr("Lock now")
            onClicked: page.phone.lock()
        }
    ]
}
