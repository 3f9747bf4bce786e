import QtQuick
import Peelpack.Parts

// The ways into the pages of evidence.
Pile {
    id: rows

    signal go(string page) ///< "papers", "confirm", "aside"

    spacing: 8
    ChoiceRow {
        objectName: "papersRow"
        text: qsTr("Papers and rows")
        detail: qsTr("Case log, class board, report for the accreditor, completion record")
        opens: true
        onClicked: rows.go("papers")
    }
    ChoiceRow {
        objectName: "confirmRow"
        text: qsTr("Sheets to confirm")
        detail: qsTr("Drawn at random, to be asked of their preceptors")
        opens: true
        onClicked: rows.go("confirm")
    }
    ChoiceRow {
        objectName: "asideRow"
        text: qsTr("What does not count yet")
        detail: qsTr("After a record split, or from a device that was ended")
        opens: true
        onClicked: rows.go("aside")
    }
}
