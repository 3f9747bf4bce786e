import QtQuick
import Peelpack.Parts
import Peelpack.Instructor

// What can be decided about the sheet: the usual decision large, the others beside each other.
Pile {
    id: bar

    required property CheckedSheet sheet
    property bool hints: false ///< which key does it
    property bool all: false   ///< also what is seldom
    signal asked(string what)

    function hint(key) { return hints ? "  [" + key + "]" : "" }

    spacing: 8
    ActionButton {
        objectName: "initialButton"
        visible: bar.sheet.canInitial
        main: true
        text: (bar.sheet.row.specialty.length > 0 && bar.sheet.row.roleCounts
               ? qsTr("Initial as %1, %2").arg(bar.sheet.row.role).arg(bar.sheet.row.specialty)
               : qsTr("Initial it")) + bar.hint("I")
        onClicked: bar.asked("initial")
    }
    Flow {
        spacing: 8
        visible: bar.sheet.canAct
        ActionButton {
            objectName: "returnButton"
            text: qsTr("Return with a question") + bar.hint("R")
            width: Math.min(implicitWidth, bar.width)
            onClicked: bar.asked("return")
        }
        ActionButton {
            objectName: "moreButton"
            visible: !bar.all
            text: qsTr("More")
            Accessible.name: qsTr("More decisions")
            onClicked: bar.asked("more")
        }
        ActionButton {
            objectName: "refileButton"
            visible: bar.all
            text: qsTr("File elsewhere") + bar.hint("F")
            width: Math.min(implicitWidth, bar.width)
            onClicked: bar.asked("refile")
        }
        ActionButton {
            objectName: "amendButton"
            visible: bar.all
            text: qsTr("Change") + bar.hint("A")
            width: Math.min(implicitWidth, bar.width)
            onClicked: bar.asked("amend")
        }
        ActionButton {
            objectName: "voidButton"
            visible: bar.all
            grave: true
            text: qsTr("Void") + bar.hint("V")
            width: Math.min(implicitWidth, bar.width)
            onClicked: bar.asked("void")
        }
    }
}
