import QtQuick
import Peelpack.Parts
import Peelpack.Program

// The program's own procedures: in from a table, read back, out as a table.
PageFrame {
    id: page
    objectName: "ownProceduresPage"

    required property OwnProcedures procedures
    required property Share share
    property bool emptying: false ///< the table is about to be taken away
    property string told

    kicker: procedures.file
    title: procedures.file.length > 0 ? qsTr("Are these the procedures?") : qsTr("Own procedures")
    backText: qsTr("Back")
    Component.onCompleted: procedures.read()
    Component.onDestruction: procedures.forget()

    component Listed: CardFrame {
        property alias rows: repeater.model
        readonly property int count: repeater.count
        visible: count > 0
        spacing: 12
        Repeater {
            id: repeater
            Pile {
                id: one
                required property namedRow row
                spacing: 2
                Words { text: one.row.name }
                Words {
                    text: one.row.detail
                    font.pixelSize: Look.secondarySize
                    color: Look.colors.quietInk
                }
            }
        }
    }

    NoteBox { text: page.emptying ? "" : page.procedures.done.length > 0 ? page.procedures.done : page.told }
    NoteBox {
        text: page.procedures.error
        grave: true
    }

    // A file, before it is signed.
    Pile {
        visible: page.procedures.file.length > 0
        spacing: Look.gap
        SectionTitle {
            visible: inFile.count > 0
            text: qsTr("In the file: %n procedure(s), in place of those that are listed", "", inFile.count)
        }
        Listed {
            id: inFile
            rows: page.procedures.inFile
        }
    }

    // What is in force.
    Pile {
        visible: page.procedures.file.length === 0
        spacing: Look.gap
        Words {
            text: qsTr("Procedures that the catalogue does not have, or that your program calls or files otherwise. Sheets already logged stay where they were filed.")
            font.pixelSize: Look.secondarySize
            color: Look.colors.quietInk
        }
        Listed {
            id: inForce
            rows: page.procedures.inForce
        }
        Words {
            visible: inForce.count === 0 && !page.procedures.misfits
            text: qsTr("The catalogue is in force as it is shipped.")
            color: Look.colors.quietInk
        }
        NoteBox {
            visible: page.procedures.misfits
            text: qsTr("The table in force does not fit this version of Peelpack and is left out. Save it, mend it and take it in again.")
            grave: true
        }
        Words {
            visible: !page.procedures.mayChange
            text: qsTr("Only the director changes them.")
            font.pixelSize: Look.secondarySize
            color: Look.colors.quietInk
        }
        NoteBox {
            visible: page.emptying
            text: qsTr("Take the table away? Sheets of procedures that only it has do not count any more until they are logged.")
            grave: true
        }
    }
    Connections {
        target: page.share
        function onOpened(what, name, bytes) {
            if (what === "ownProcedures")
                page.procedures.open(name, bytes)
        }
        function onSaved(where) {
            page.told = qsTr("Saved as %1.").arg(where)
        }
        function onFailed(why) {
            page.told = why
        }
    }

    readonly property bool hasTable: procedures.file.length === 0 && (inForce.count > 0 || procedures.misfits)

    actions: [
        ActionButton {
            objectName: "signProcedures"
            visible: inFile.count > 0
            main: true
            text: qsTr("Sign: put them in force")
            onClicked: page.procedures.takeIn()
        },
        ActionButton {
            objectName: "openProcedures"
            visible: page.procedures.mayChange && !page.emptying
            main: page.procedures.file.length === 0
            text: page.procedures.file.length > 0 ? qsTr("Choose another file") : qsTr("Take them in from a table")
            onClicked: page.share.open("ownProcedures")
        },
        ActionButton {
            objectName: "saveProcedures"
            visible: !page.emptying && (page.hasTable || (page.procedures.mayChange && page.procedures.file.length === 0))
            text: page.hasTable ? qsTr("Save the table") : qsTr("Save an empty table to fill in")
            onClicked: page.share.save("procedures.tsv", page.hasTable ? page.procedures.table() : page.procedures.emptyTable())
        },
        ActionButton {
            objectName: "takeProceduresAway"
            visible: page.hasTable && page.procedures.mayChange
            grave: true
            text: page.emptying ? qsTr("Sign: take the table away") : qsTr("Take the table away")
            onClicked: {
                if (page.emptying)
                    page.procedures.takeAway()
                page.emptying = !page.emptying
            }
        },
        ActionButton {
            visible: page.procedures.file.length > 0 || page.emptying
            text: qsTr("Leave them as they are")
            onClicked: {
                page.emptying = false
                page.procedures.forget()
            }
        }
    ]
}
