import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Shell

// How this person wants the app to look and speak.
Pile {
    id: rows

    required property Settings settings

    spacing: Look.gap

    SectionTitle { text: qsTr("How it looks") }
    OnOffRow {
        objectName: "darkRow"
        Layout.fillWidth: true
        text: qsTr("Dark")
        on: rows.settings.theme === Settings.Dark
        onTurned: on => rows.settings.theme = on ? Settings.Dark : Settings.Light
    }
    CardFrame {
        Words {
            Layout.fillWidth: true
            text: qsTr("Text size: %1 %").arg(rows.settings.textPercent)
        }
        RowLayout {
            Layout.fillWidth: true
            spacing: 8
            ActionButton {
                Layout.fillWidth: true
                enabled: rows.settings.textPercent > 100
                text: qsTr("Smaller")
                onClicked: rows.settings.textPercent = rows.settings.textPercent - 25
            }
            ActionButton {
                Layout.fillWidth: true
                enabled: rows.settings.textPercent < 200
                text: qsTr("Larger")
                onClicked: rows.settings.textPercent = rows.settings.textPercent + 25
            }
        }
    }
    OnOffRow {
        Layout.fillWidth: true
        text: qsTr("Left hand")
        detail: qsTr("What you tap moves to the left.")
        on: rows.settings.leftHand
        onTurned: on => rows.settings.leftHand = on
    }
    OnOffRow {
        Layout.fillWidth: true
        text: qsTr("No motion")
        on: rows.settings.calm
        onTurned: on => rows.settings.calm = on
    }
    SectionTitle { text: qsTr("Language") }
    PickLanguage {
        Layout.fillWidth: true
        settings: rows.settings
    }
}
