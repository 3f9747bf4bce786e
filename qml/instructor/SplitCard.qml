import QtQuick
import Peelpack.Parts
import Peelpack.Instructor

// A record that split: both versions beside each other, or one over the other where there is no room.
CardFrame {
    id: split

    required property splitRow row
    readonly property bool beside: width > 420 * Look.textScale

    spacing: 6
    Words {
        text: split.row.title
        font.weight: Font.DemiBold
    }
    Row {
        id: versions
        visible: split.beside
        spacing: Look.gap
        Words {
            width: (versions.width - versions.spacing) / 2
            text: qsTr("One version: %1").arg(split.row.one)
            font.pixelSize: Look.secondarySize
        }
        Words {
            width: (versions.width - versions.spacing) / 2
            text: qsTr("The other: %1").arg(split.row.other)
            font.pixelSize: Look.secondarySize
        }
    }
    Words {
        visible: !split.beside
        text: qsTr("One version: %1").arg(split.row.one)
        font.pixelSize: Look.secondarySize
    }
    Words {
        visible: !split.beside
        text: qsTr("The other: %1").arg(split.row.other)
        font.pixelSize: Look.secondarySize
    }
    Words {
        text: qsTr("Both are kept. What came after the split is not counted until somebody admits it, one by one, under Me, \"What does not count yet\".")
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }
}
