import QtQuick
import QtQuick.Controls.Basic
import Peelpack.Parts

// One of several ways, over the whole width: a title, a line under it, perhaps a mark that it is chosen.
AbstractButton {
    id: row

    property string detail
    property bool chosen: false
    property bool opens: false ///< leads on to a page of its own

    implicitHeight: Math.max(Look.touch, texts.implicitHeight + 22)
    implicitWidth: 200
    Accessible.role: Accessible.Button
    Accessible.name: detail.length > 0 ? text + ", " + detail : text
    Accessible.checkable: !opens
    Accessible.checked: chosen

    contentItem: Item {
        implicitHeight: texts.implicitHeight
        Column {
            id: texts
            anchors.left: parent.left
            anchors.leftMargin: 2
            anchors.right: sign.left
            anchors.rightMargin: 8
            anchors.verticalCenter: parent.verticalCenter
            spacing: 2
            Words {
                width: parent.width
                text: row.text
                font.weight: Font.DemiBold
            }
            Words {
                width: parent.width
                visible: text.length > 0
                text: row.detail
                font.pixelSize: Look.secondarySize
                color: Look.colors.quietInk
            }
        }
        Chevron {
            id: sign
            anchors.right: parent.right
            anchors.verticalCenter: parent.verticalCenter
            tick: !row.opens
            visible: row.opens || row.chosen
        }
    }
    background: Rectangle {
        radius: Look.radius
        color: row.down ? Look.colors.wash : Look.colors.card
        border.color: row.chosen ? Look.colors.drape : (row.visualFocus ? Look.colors.ink : Look.colors.edge)
        border.width: row.chosen || row.visualFocus ? 2 : 1
    }
    leftPadding: 14
    rightPadding: 14
}
