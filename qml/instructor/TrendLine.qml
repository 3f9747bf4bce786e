import QtQuick
import Peelpack.Parts
import Peelpack.Instructor

// One skill over the months: how often it was Yes, as bars and in words.
Pile {
    id: line

    required property trendRow row

    spacing: 2
    Words {
        text: line.row.label
        font.pixelSize: Look.secondarySize
        font.weight: Font.Medium
    }
    Row {
        spacing: 6
        height: 28
        Accessible.role: Accessible.Graphic
        Accessible.name: line.row.label + ": " + line.row.words
        Repeater {
            model: line.row.marked.length
            Rectangle {
                required property int index
                readonly property real part: line.row.marked[index] > 0 ? line.row.yes[index] / line.row.marked[index] : 0
                width: 24
                height: 28
                radius: 4
                color: "transparent"
                border.color: Look.colors.edge
                border.width: 1
                Rectangle {
                    anchors.bottom: parent.bottom
                    width: parent.width
                    height: Math.round(parent.height * parent.part)
                    radius: 4
                    color: Look.colors.drape
                }
            }
        }
    }
    Words {
        text: line.row.words
        font.pixelSize: Look.smallSize
        color: Look.colors.quietInk
    }
}
