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
    SectionTitle { text: qsTr("How it looks") }
    OnOffRow {
        objectName: "darkRow"
        Layout.fillWidth: true
        text: qsTr("Dark")
        on: page.settings.theme === Settings.Dark
        onTurned: on => page.settings.theme = on ? Settings.Dark : Settings.Light
    }
    CardFrame {
        Words {
            Layout.fillWidth: true
            text: qsTr("Text size: %1 %").arg(page.settings.textPercent)
        }
        RowLayout {
            Layout.fillWidth: true
            spacing: 8
            ActionButton {
                Layout.fillWidth: true
                enabled: page.settings.textPercent > 100
                text: qsTr("Smaller")
                onClicked: page.settings.textPercent = page.settings.textPercent - 25
            }
            ActionButton {
                Layout.fillWidth: true
                enabled: page.settings.textPercent < 200
                text: qsTr("Larger")
                onClicked: page.settings.textPercent = page.settings.textPercent + 25
            }
        }
    }
    OnOffRow {
        Layout.fillWidth: true
        text: qsTr("Left hand")
        detail: qsTr("What you tap moves to the left.")
        on: page.settings.leftHand
        onTurned: on => page.settings.leftHand = on
    }
    OnOffRow {
        Layout.fillWidth: true
        text: qsTr("No motion")
        on: page.settings.calm
        onTurned: on => page.settings.calm = on
    }
    SectionTitle { text: qsTr("Language") }
    PickLanguage {
        Layout.fillWidth: true
        settings: page.settings
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
