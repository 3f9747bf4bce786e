import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Shell

// How the app looks, and its language.
Pile {
    id: look

    required property Settings settings

    Layout.fillWidth: true
    spacing: Look.gap
    fromRight: Look.leftHand

    SectionTitle { text: qsTr("How it looks") }
    OnOffRow {
        objectName: "darkRow"
        Layout.fillWidth: true
        text: qsTr("Dark")
        on: look.settings.theme === Settings.Dark
        onTurned: on => look.settings.theme = on ? Settings.Dark : Settings.Light
    }
    CardFrame {
        Words {
            Layout.fillWidth: true
            text: qsTr("Text size: %1 %").arg(look.settings.textPercent)
        }
        RowLayout {
            Layout.fillWidth: true
            spacing: 8
            ActionButton {
                Layout.fillWidth: true
                enabled: look.settings.textPercent > 100
                text: qsTr("Smaller")
                onClicked: look.settings.textPercent = look.settings.textPercent - 25
            }
            ActionButton {
                Layout.fillWidth: true
                enabled: look.settings.textPercent < 200
                text: qsTr("Larger")
                onClicked: look.settings.textPercent = look.settings.textPercent + 25
            }
        }
    }
    OnOffRow {
        Layout.fillWidth: true
        text: qsTr("Left hand")
        detail: qsTr("What you tap moves to the left.")
        on: look.settings.leftHand
        onTurned: on => look.settings.leftHand = on
    }
    OnOffRow {
        Layout.fillWidth: true
        text: qsTr("No motion")
        on: look.settings.calm
        onTurned: on => look.settings.calm = on
    }
    SectionTitle { text: qsTr("Language") }
    PickLanguage {
        Layout.fillWidth: true
        settings: look.settings
    }
}
