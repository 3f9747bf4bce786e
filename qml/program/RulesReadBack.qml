import QtQuick
import Peelpack.Parts
import Peelpack.Program

// Rules as they will be in force, in words.
Pile {
    id: readBack

    required property RulesDraft draft

    spacing: Look.gap

    component Lines: CardFrame {
        property alias lines: repeater.model
        visible: repeater.count > 0
        spacing: 8
        Repeater {
            id: repeater
            Words {
                required property string modelData
                text: modelData
                font.pixelSize: Look.secondarySize
            }
        }
    }

    Words {
        objectName: "readBackTerm"
        text: readBack.draft.termLine
        font.weight: Font.DemiBold
    }
    SectionTitle { text: qsTr("Requirements: %1").arg(readBack.draft.setTitle) }
    Lines { lines: readBack.draft.targets }
    SectionTitle { text: qsTr("How signatures count") }
    Lines { lines: readBack.draft.signatures }
    Words {
        text: qsTr("You decide as director which set is in force; this app sets no rule.")
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }
}
