import QtQuick
import Peelpack.Parts
import Peelpack.Instructor

// What was decided a moment ago, while it can be taken back.
Rectangle {
    id: bar

    required property PendingActs pending
    property bool hints: false

    visible: pending.waiting
    implicitHeight: Math.max(Look.touch, words.implicitHeight + 16)
    color: Look.colors.wash

    Words {
        id: words
        anchors.left: parent.left
        anchors.leftMargin: Look.margin
        anchors.right: undo.left
        anchors.rightMargin: 8
        anchors.verticalCenter: parent.verticalCenter
        text: bar.pending.text
        font.pixelSize: Look.secondarySize
        font.weight: Font.Medium
        color: Look.colors.onWash
        Accessible.role: Accessible.AlertMessage
    }
    LinkButton {
        id: undo
        objectName: "undoButton"
        anchors.right: parent.right
        anchors.rightMargin: 4
        anchors.verticalCenter: parent.verticalCenter
        text: qsTr("Undo") + (bar.hints ? "  [U]" : "")
        Accessible.name: qsTr("Undo: %1").arg(bar.pending.text)
        onClicked: bar.pending.undo()
    }
}
