import QtQuick
import Peelpack.Parts
import Peelpack.Student

// That the file of a requirement set is not at hand, and the way to open it.
Pile {
    id: card

    required property MissingSets sets
    required property Share share

    visible: sets.missing.length > 0 || sets.done.length > 0
    spacing: 8

    Repeater {
        model: card.sets.missing
        NoteBox {
            required property string modelData
            objectName: "missingSet"
            text: modelData
            grave: true
        }
    }
    Repeater {
        model: card.sets.faults
        NoteBox {
            required property string modelData
            objectName: "missingSetFault"
            text: modelData
        }
    }
    NoteBox { text: card.sets.done }
    ActionButton {
        objectName: "openMissingSet"
        visible: card.sets.missing.length > 0
        text: qsTr("Open the set's file")
        onClicked: card.share.open("missingSet")
    }
    Connections {
        target: card.share
        enabled: card.visible
        function onOpened(what, name, bytes) {
            if (what === "missingSet")
                card.sets.open(bytes)
        }
    }
}
