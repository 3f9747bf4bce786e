import QtQuick
import QtQuick.Controls.Basic
import Peelpack.Parts

// One of a few words, from a list that opens.
ComboBox {
    id: pick

    property string label
    property var choices: []
    property int current: 0
    signal picked(int index)

    implicitHeight: Math.max(Look.touch, Look.secondarySize + 30)
    implicitWidth: Math.max(112, shown.implicitWidth + 52)
    model: choices
    currentIndex: current
    font.pixelSize: Look.secondarySize
    Accessible.name: label + ": " + displayText
    onActivated: index => pick.picked(index)

    contentItem: Text {
        id: shown
        leftPadding: 12
        text: pick.displayText
        font: pick.font
        color: pick.current > 0 ? Look.colors.drape : Look.colors.ink
        verticalAlignment: Text.AlignVCenter
        elide: Text.ElideRight
        textFormat: Text.PlainText
    }
    indicator: Chevron {
        x: pick.width - width - 12
        y: (pick.height - height) / 2
        down: true
    }
    background: Rectangle {
        radius: Look.radius
        color: Look.colors.card
        border.color: pick.visualFocus ? Look.colors.ink : (pick.current > 0 ? Look.colors.drape : Look.colors.edge)
        border.width: pick.visualFocus || pick.current > 0 ? 2 : 1
    }
    delegate: ItemDelegate {
        id: line
        required property int index
        required property string modelData
        width: pick.popup.availableWidth
        topPadding: 10
        bottomPadding: 10
        height: Math.max(Look.touch, said.implicitHeight + 22)
        text: modelData
        font.pixelSize: Look.bodySize
        highlighted: pick.highlightedIndex === index
        Accessible.name: modelData
        contentItem: Text {
            id: said
            text: line.text
            font: line.font
            color: Look.colors.ink
            verticalAlignment: Text.AlignVCenter
            wrapMode: Text.Wrap
            textFormat: Text.PlainText
        }
        background: Rectangle {
            color: line.highlighted ? Look.colors.wash : Look.colors.card
        }
    }
    popup: Popup {
        y: pick.height + 4
        margins: 8
        width: Math.max(pick.width, Math.min(240 * Look.textScale, pick.Window.width - 16))
        implicitHeight: Math.min(lines.contentHeight + 8, 420)
        padding: 4
        contentItem: ListView {
            id: lines
            clip: true
            model: pick.popup.visible ? pick.delegateModel : null
            currentIndex: pick.highlightedIndex
            ScrollBar.vertical: ScrollBar {}
        }
        background: Rectangle {
            radius: Look.radius
            color: Look.colors.card
            border.color: Look.colors.edge
        }
    }
}
