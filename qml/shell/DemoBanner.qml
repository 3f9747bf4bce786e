import QtQuick
import QtQuick.Layouts
import Peelpack.Parts

// Over every page of the demo.
Rectangle {
    id: banner

    property bool handedOver: false
    signal leave

    implicitHeight: Math.max(Look.touch, line.implicitHeight + 4)
    color: Look.colors.wash

    RowLayout {
        id: line
        anchors.fill: parent
        anchors.leftMargin: Look.margin
        anchors.rightMargin: 4
        spacing: 8
        Words {
            Layout.fillWidth: true
            text: banner.handedOver ? qsTr("Demo. The student's PIN is 246813.") : qsTr("Demo: all of it is invented, and none of it can enter a real record.")
            font.pixelSize: Look.smallSize
            font.weight: Font.Medium
            color: Look.colors.onWash
        }
        LinkButton {
            objectName: "leaveDemo"
            text: qsTr("Leave")
            Accessible.name: qsTr("Leave the demo")
            onClicked: banner.leave()
        }
    }
}
