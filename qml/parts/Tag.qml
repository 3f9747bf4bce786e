import QtQuick
import Peelpack.Parts

// A word about a case: its role, its specialty, where it is.
Rectangle {
    id: tag

    property alias text: label.text
    property bool filled: false
    property bool grave: false

    visible: text.length > 0
    implicitWidth: label.implicitWidth + 16
    implicitHeight: label.implicitHeight + 6
    radius: 6
    color: grave ? Look.colors.cautionWash : (filled ? Look.colors.wash : "transparent")
    border.color: Look.colors.edge
    border.width: filled || grave ? 0 : 1

    Text {
        id: label
        anchors.centerIn: parent
        width: Math.min(implicitWidth, tag.width - 16)
        elide: Text.ElideRight
        font.pixelSize: Look.smallSize
        font.weight: Font.DemiBold
        textFormat: Text.PlainText
        color: tag.grave ? Look.colors.caution : (tag.filled ? Look.colors.onWash : Look.colors.quietInk)
    }
}
