import QtQuick
import QtQuick.Controls.Basic
import Peelpack.Parts

// Something that can be done. `main`: the one main action of a page; `grave`: takes something away.
Button {
    id: control

    property bool main: false
    property bool grave: false
    readonly property color tint: grave ? Look.colors.caution : Look.colors.drape

    implicitHeight: Math.max(main ? Look.mainTouch : Look.touch, label.implicitHeight + 20)
    implicitWidth: Math.max(Look.touch, label.implicitWidth + 36)
    font.pixelSize: Look.bodySize
    font.weight: Font.DemiBold
    opacity: enabled ? 1 : 0.55
    Accessible.name: text

    contentItem: Text {
        id: label
        text: control.text
        font: control.font
        color: control.main ? Look.colors.onDrape : control.tint
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        wrapMode: Text.Wrap
        textFormat: Text.PlainText
    }
    background: Rectangle {
        radius: Look.radius
        color: control.main ? control.tint : (control.down ? Look.colors.wash : Look.colors.card)
        border.color: control.tint
        border.width: control.main ? 0 : 1.5
        opacity: control.main && control.down ? 0.85 : 1
        Rectangle {
            anchors.fill: parent
            anchors.margins: -3
            radius: parent.radius + 3
            color: "transparent"
            border.color: Look.colors.ink
            border.width: 2
            visible: control.visualFocus
        }
    }
}
