import QtQuick
import Peelpack.Parts
import Peelpack.Evidence

// The completion record: made with the program code, and saved while it is here.
CardFrame {
    id: card

    required property Completion completion
    signal save

    spacing: 8
    Words {
        text: qsTr("The completion record")
        font.weight: Font.DemiBold
    }
    Words {
        text: qsTr("Signed by the program itself, so that anybody can verify it without this app. It shows no case sheet; each can be proven alone, with the file of proofs that the student keeps.")
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }
    Words {
        visible: text.length > 0
        text: card.completion.earlier
        font.pixelSize: Look.secondarySize
    }
    SecretField {
        id: code
        objectName: "programCode"
        visible: card.completion.made.length === 0
        label: qsTr("Program code")
        onAccepted: if (makeIt.enabled) makeIt.clicked()
    }
    ActionButton {
        id: makeIt
        objectName: "makeRecord"
        visible: card.completion.made.length === 0
        main: true
        enabled: code.text.length > 0
        text: qsTr("Make the record")
        onClicked: card.completion.makeRecord(code.take())
    }
    Words {
        visible: text.length > 0
        text: card.completion.made.length > 0 ? qsTr("Made: %1. Save it now; it is nowhere else yet.").arg(card.completion.made) : ""
        wrapMode: Text.WrapAtWordBoundaryOrAnywhere
        font.weight: Font.Medium
    }
    ActionButton {
        objectName: "saveRecord"
        visible: card.completion.made.length > 0
        main: true
        text: qsTr("Save record, proofs and paper")
        onClicked: card.save()
    }
}
