import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Peelpack.Parts

// A named field for a line of text. Line breaks become spaces, and what is over `most` characters is not taken.
Pile {
    id: entry

    property string label
    property alias text: field.text
    property alias hint: field.placeholderText
    property alias inputMethodHints: field.inputMethodHints
    property alias echoMode: field.echoMode
    property alias field: field
    property int most: 120
    signal edited(string text)
    signal accepted

    Layout.fillWidth: true
    spacing: 4

    SectionTitle {
        text: entry.label
        visible: text.length > 0
        Layout.fillWidth: true
    }
    TextField {
        id: field
        Layout.fillWidth: true
        implicitHeight: Math.max(Look.touch, contentHeight + 22)
        leftPadding: 14
        rightPadding: 14
        maximumLength: entry.most
        font.pixelSize: Look.bodySize
        color: Look.colors.ink
        placeholderTextColor: Look.colors.quietInk
        selectionColor: Look.colors.drape
        selectedTextColor: Look.colors.onDrape
        selectByMouse: true
        Accessible.role: Accessible.EditableText
        Accessible.name: entry.label.length > 0 ? entry.label : placeholderText
        onTextEdited: {
            const clean = text.replace(/[\r\n\t\u2028\u2029]+/g, " ")
            if (clean !== text)
                text = clean
            entry.edited(text)
        }
        onAccepted: entry.accepted()
        background: Rectangle {
            radius: Look.radius
            color: Look.colors.card
            border.color: field.activeFocus ? Look.colors.drape : Look.colors.edge
            border.width: field.activeFocus ? 2 : 1
        }
    }
}
