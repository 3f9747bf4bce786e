import QtQuick
import Peelpack.Parts

// A word about a case: its role, its specialty, where it is.
Rectangle {
    id: tag

    property alias text: label.text
    property bool filled: false
    property bool grave: false

    visible: text.length > 0
    implicitWidth: Math.ceil(natural.advanceWidth) + 18
    implicitHeight: label.height + 6
    radius: 6
    color: grave ? Look.colors.cautionWash : (filled ? Look.colors.wash : "transparent")
    border.color: Look.colors.edge
    border.width: filled || grave ? 0 : 1

    // The width that the word has on one line, whatever width it gets.
    TextMetrics {
        id: natural
        font: label.font
        text: label.text
    }
    Text {
        id: label
        anchors.centerIn: parent
        width: tag.width - 16
        wrapMode: Text.Wrap
        font.pixelSize: Look.smallSize
        font.weight: Font.DemiBold
        textFormat: Text.PlainText
        color: tag.grave ? Look.colors.caution : (tag.filled ? Look.colors.onWash : Look.colors.quietInk)
    }
}
