import QtQuick
import Peelpack.Parts

// What ever happened to a sheet, and the way to its paper.
Pile {
    id: history

    property alias lines: repeater.model
    signal paperWanted

    spacing: 8
    SectionTitle { text: qsTr("What happened") }
    Repeater {
        id: repeater
        Words {
            required property string modelData
            text: modelData
            font.pixelSize: Look.secondarySize
            color: Look.colors.quietInk
        }
    }
    LinkButton {
        objectName: "printSheet"
        text: qsTr("Paper of this sheet")
        onClicked: history.paperWanted()
    }
}
