import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Peelpack.Parts

// Four places, at the thumb's end; at the side where the window is wide. Those of the student unless others are named.
Rectangle {
    id: bar

    property int current: 0
    property bool upright: false
    signal go(int place)

    property var names: [qsTr("Today"), qsTr("Sheets"), qsTr("Tally"), qsTr("Me")]
    property var signs: [0, 1, 2, 3]

    implicitHeight: Math.max(60, 34 + Look.smallSize * 1.6)
    implicitWidth: Math.max(84, 60 + Look.smallSize * 2)
    color: Look.colors.card

    Rectangle {
        width: bar.upright ? 1 : parent.width
        height: bar.upright ? parent.height : 1
        x: bar.upright && !Look.leftHand ? parent.width - 1 : 0
        color: Look.colors.hairline
    }
    GridLayout {
        anchors.fill: parent
        anchors.margins: 2
        columns: bar.upright ? 1 : 4
        rowSpacing: 0
        columnSpacing: 0
        Repeater {
            model: 4
            AbstractButton {
                id: tab
                required property int index
                readonly property bool on: bar.current === index
                Layout.fillWidth: true
                Layout.fillHeight: !bar.upright
                implicitHeight: Math.max(Look.touch, 34 + Look.smallSize * 1.6)
                implicitWidth: 60
                objectName: "tab-" + index
                text: bar.names[index]
                Accessible.role: Accessible.PageTab
                Accessible.name: text
                Accessible.checked: on
                onClicked: bar.go(index)
                background: Rectangle {
                    radius: Look.radius
                    color: tab.down ? Look.colors.wash : "transparent"
                    border.color: Look.colors.ink
                    border.width: tab.visualFocus ? 2 : 0
                }
                contentItem: ColumnLayout {
                    spacing: 2
                    Item { Layout.fillHeight: true }
                    TabSign {
                        Layout.alignment: Qt.AlignHCenter
                        which: bar.signs[tab.index]
                        color: tab.on ? Look.colors.drape : Look.colors.quietInk
                    }
                    Text {
                        Layout.fillWidth: true
                        horizontalAlignment: Text.AlignHCenter
                        text: tab.text
                        textFormat: Text.PlainText
                        // A long word in large type grows smaller, never below 12.
                        fontSizeMode: Text.HorizontalFit
                        minimumPixelSize: 12
                        font.pixelSize: Look.smallSize
                        font.weight: tab.on ? Font.Bold : Font.Medium
                        font.underline: tab.on
                        color: tab.on ? Look.colors.drape : Look.colors.quietInk
                    }
                    Item { Layout.fillHeight: true }
                }
            }
        }
    }
}
