import QtQuick
import Peelpack.Parts
import Peelpack.Evidence

// One sheet of a record, proven without the others.
CardFrame {
    id: card

    required property Completion completion
    property int shown: 8
    signal openFile
    signal prove(int index)

    spacing: 8
    Words {
        text: qsTr("Prove one sheet")
        font.weight: Font.DemiBold
    }
    Words {
        text: qsTr("The proof holds the record and that sheet; no other sheet can be read or guessed from it.")
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }
    Repeater {
        model: card.completion.sheets.slice(0, card.shown)
        ChoiceRow {
            required property int index
            required property string modelData
            objectName: "prove-" + index
            text: modelData
            opens: true
            onClicked: card.prove(index)
        }
    }
    LinkButton {
        visible: card.shown < card.completion.sheets.length
        text: qsTr("Show more of %1").arg(card.completion.sheets.length)
        onClicked: card.shown += 24
    }
    ActionButton {
        objectName: "openProofs"
        text: qsTr("Open a file of proofs")
        onClicked: card.openFile()
    }
}
