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
    property bool takesFocus: true ///< as soon as it is there
    property var suggestions: []
    signal done(string reason)
    signal dropped

    Layout.fillWidth: true
    spacing: 8
    onVisibleChanged: {
        if (!visible)
            entry.text = ""
        else if (takesFocus)
            entry.field.forceActiveFocus()
    }

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
        onAccepted: if (doIt.enabled) form.done(entry.text)
    }
    RowLayout {
        Layout.fillWidth: true
        spacing: 8
        ActionButton {
            text: qsTr("Cancel")
            onClicked: form.dropped()
        }
        ActionButton {
            id: doIt
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
