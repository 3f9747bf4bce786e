import QtQuick
import QtQuick.Layouts
import Peelpack.Parts

// A few words and what is done with them.
Pile {
    id: form

    property string prompt
    property string doText
    property bool grave: false
    property bool mayBeEmpty: false
    property var suggestions: []
    signal done(string reason)
    signal dropped

    Layout.fillWidth: true
    spacing: 8
    onVisibleChanged: if (visible) entry.field.forceActiveFocus(); else entry.text = ""

    Words {
        Layout.fillWidth: true
        text: form.prompt
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }
    Suggestions {
        choices: form.suggestions
        onPicked: words => entry.text = words
    }
    EntryField {
        id: entry
        objectName: "reasonField"
        most: 400
        field.Accessible.name: form.prompt
    }
    RowLayout {
        Layout.fillWidth: true
        spacing: 8
        ActionButton {
            text: qsTr("Cancel")
            onClicked: form.dropped()
        }
        ActionButton {
            objectName: "reasonDone"
            Layout.fillWidth: true
            main: true
            grave: form.grave
            enabled: form.mayBeEmpty || entry.text.trim().length > 0
            text: form.doText
            onClicked: form.done(entry.text)
        }
    }
}
