import QtQuick
import QtQuick.Controls.Basic
import Peelpack.Parts

// A quiet way on: back, cancel, more.
AbstractButton {
    id: control

    readonly property bool hugs: true ///< in a pile: not over the whole width

    implicitHeight: Math.max(Look.touch, label.implicitHeight + 16)
    implicitWidth: Math.max(Look.touch, label.implicitWidth + 16)
    font.pixelSize: Look.bodySize
    font.weight: Font.Medium
    Accessible.role: Accessible.Button
    Accessible.name: text

    contentItem: Text {
        id: label
        text: control.text
        font: control.font
        color: Look.colors.drape
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        wrapMode: Text.Wrap
        textFormat: Text.PlainText
    }
    background: Rectangle {
        radius: Look.radius
        color: control.down ? Look.colors.wash : "transparent"
        border.color: Look.colors.ink
        border.width: control.visualFocus ? 2 : 0
    }
}
