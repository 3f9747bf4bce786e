import QtQuick
import Peelpack.Parts
import Peelpack.Program

// The requirement sets to choose from, and the way to one that is in a file.
Pile {
    id: choice

    required property SetRows sets
    required property Share share
    required property string called ///< tells the rows and the file of two such lists apart
    signal choose(string id)
    signal openSet(var file)

    spacing: Look.gap

    Repeater {
        model: choice.sets
        ChoiceRow {
            required property setRow row
            objectName: choice.called + "-" + row.id
            text: row.title
            detail: row.asks.join("\n")
            chosen: row.chosen
            onClicked: choice.choose(row.id)
        }
    }
    ChoiceRow {
        objectName: choice.called + "-file"
        text: qsTr("Another set, from a file")
        detail: qsTr("A requirement set written as JSON; it is checked before it is offered here.")
        opens: true
        onClicked: choice.share.open(choice.called)
    }
    Repeater {
        model: choice.sets.faults
        NoteBox {
            required property string modelData
            objectName: "setFault"
            text: modelData
            grave: true
        }
    }
    Connections {
        target: choice.share
        enabled: choice.visible
        function onOpened(what, name, bytes) {
            if (what === choice.called)
                choice.openSet(bytes)
        }
    }
}
