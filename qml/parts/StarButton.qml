import QtQuick
import QtQuick.Controls.Basic
import Peelpack.Parts

// A favorite or not: a star that is filled or empty. `text` says of what.
AbstractButton {
    id: star

    property bool on: false
    signal turned(bool on)

    implicitWidth: Look.touch
    implicitHeight: Look.touch
    Accessible.role: Accessible.CheckBox
    Accessible.name: text
    Accessible.checkable: true
    Accessible.checked: on
    onClicked: turned(!on)

    contentItem: Item {
        DrawnSign {
            anchors.centerIn: parent
            width: 28
            height: 28
            color: Look.colors.drape
            sign: star.on ? DrawnSign.Star : DrawnSign.EmptyStar
        }
    }
    background: Rectangle {
        radius: Look.radius
        color: star.down ? Look.colors.wash : "transparent"
        border.color: Look.colors.ink
        border.width: star.visualFocus ? 2 : 0
    }
}
