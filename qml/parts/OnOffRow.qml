import QtQuick
import QtQuick.Controls.Basic
import Peelpack.Parts

// A setting that is on or off, said in words as well.
AbstractButton {
    id: row

    property string detail
    property bool on: false
    signal turned(bool on)

    implicitHeight: Math.max(Look.touch, texts.implicitHeight + 22)
    implicitWidth: 200
    leftPadding: 14
    rightPadding: 14
    Accessible.role: Accessible.CheckBox
    Accessible.name: detail.length > 0 ? text + ", " + detail : text
    Accessible.checkable: true
    Accessible.checked: on
    onClicked: turned(!on)

    contentItem: Item {
        implicitHeight: texts.implicitHeight
        Column {
            id: texts
            anchors.left: parent.left
            anchors.right: track.left
            anchors.rightMargin: 10
            anchors.verticalCenter: parent.verticalCenter
            spacing: 2
            Words {
                width: parent.width
                text: row.text
            }
            Words {
                width: parent.width
                visible: text.length > 0
                text: row.detail
                font.pixelSize: Look.secondarySize
                color: Look.colors.quietInk
            }
        }
        Rectangle {
            id: track
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            width: 46
            height: 28
            radius: 14
            color: row.on ? Look.colors.drape : "transparent"
            border.color: row.on ? Look.colors.drape : Look.colors.edge
            border.width: 2
            Rectangle {
                width: 18
                height: 18
                radius: 9
                anchors.verticalCenter: parent.verticalCenter
                x: row.on ? parent.width - width - 5 : 5
                color: row.on ? Look.colors.onDrape : Look.colors.edge
            }
        }
    }
    background: Rectangle {
        radius: Look.radius
        color: Look.colors.card
        border.color: row.visualFocus ? Look.colors.ink : Look.colors.hairline
        border.width: row.visualFocus ? 2 : 1
    }
}
