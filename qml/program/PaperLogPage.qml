import QtQuick
import Peelpack.Parts
import Peelpack.Program

// An earlier paper log: where it comes from, what of its file will be imported and what cannot be, and what was done.
PageFrame {
    id: page
    objectName: "paperLogPage"

    required property PaperLogImport log
    required property Share share
    readonly property bool reading: log.file.length > 0
    readonly property bool done: log.report.length > 0
    property string told

    kicker: log.file
    title: reading ? qsTr("Is this the paper log?") : done ? qsTr("What was imported") : qsTr("Earlier paper log")
    backText: qsTr("Back")
    Component.onCompleted: log.begin()
    Component.onDestruction: log.begin()

    component Lines: CardFrame {
        property alias lines: repeater.model
        readonly property int count: repeater.count
        visible: count > 0
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

    // What is asked for first.
    Pile {
        visible: !page.reading && !page.done
        spacing: Look.gap
        Words { text: qsTr("What a class logged on paper comes in from a table (CSV). Such a sheet has no marks, says \"imported, not attested\" wherever it is shown, and counts only once an instructor has initialed it.") }
        Words {
            text: qsTr("The header row names the columns sheet, date, student, procedure and role (first, second or observed); beside them may stand categories, surgeon, site, room, start, end, preceptor, credential, operation and canceled. Nothing that points at a patient.")
            font.pixelSize: Look.secondarySize
            color: Look.colors.quietInk
        }
        EntryField {
            objectName: "logSource"
            label: qsTr("Where the rows come from, such as paper log of spring, page 3; it stays with each sheet")
            most: 400
            text: page.log.source
            onEdited: text => page.log.source = text
        }
    }

    // The file, before anything is imported; after it what could not be.
    NoteBox {
        objectName: "logError"
        text: page.log.error.length > 0 ? page.log.error : page.told
        grave: true
    }
    Lines {
        objectName: "logReport"
        lines: page.log.report
    }
    Words {
        visible: page.reading
        text: qsTr("Comes from: %1").arg(page.log.source)
        font.weight: Font.DemiBold
    }
    SectionTitle {
        visible: !page.done && page.log.owners.length > 2
        text: qsTr("Whose log it is: by the name in each row, or of one student alone")
    }
    PickList {
        objectName: "logOwner"
        visible: !page.done && page.log.owners.length > 2
        width: Math.min(implicitWidth, page.width - 2 * Look.margin)
        label: qsTr("Whose log it is")
        choices: page.log.owners
        current: page.log.owner
        onPicked: index => page.log.owner = index
    }
    SectionTitle { text: page.log.refusedLine; visible: text.length > 0 }
    Repeater {
        model: page.log.refused
        NoteBox {
            required property string modelData
            objectName: "logRefused"
            text: modelData
            grave: true
        }
    }
    OnOffRow {
        objectName: "logChecked"
        visible: page.reading && page.log.suspected
        text: qsTr("I looked at it: none of this points at a patient")
        detail: qsTr("What looked like a patient identifier is imported then, and stays.")
        on: page.log.checked
        onTurned: on => page.log.checked = on
    }
    Repeater {
        model: page.log.warnings
        NoteBox {
            required property string modelData
            text: modelData
        }
    }
    SectionTitle {
        visible: students.count > 0
        text: qsTr("Will be imported, not attested: %n sheet(s)", "", page.log.sheets)
    }
    Repeater {
        id: students
        model: page.log.students
        Pile {
            id: one
            required property importRow row
            property bool open: false
            spacing: 6
            ChoiceRow {
                objectName: "logOf-" + one.row.name
                text: one.row.name
                detail: one.row.summary
                opens: true
                onClicked: one.open = !one.open
            }
            Lines { lines: one.open ? one.row.sheets : [] }
        }
    }
    SectionTitle {
        visible: here.count > 0
        text: qsTr("Left out, here already: %n sheet(s)", "", here.count)
    }
    Lines {
        id: here
        lines: page.log.alreadyHere
    }
    Connections {
        target: page.share
        function onOpened(what, name, bytes) {
            if (what === "paperLog")
                page.log.open(name, bytes)
        }
        function onFailed(why) {
            page.told = why
        }
    }

    actions: [
        ActionButton {
            objectName: "importLog"
            visible: page.log.sheets > 0
            main: true
            text: qsTr("Import these %n sheet(s)", "", page.log.sheets)
            onClicked: page.log.importThem()
        },
        ActionButton {
            objectName: "openLog"
            main: page.log.sheets === 0
            visible: !page.done
            text: page.reading ? qsTr("Choose another file") : qsTr("Choose the file")
            onClicked: {
                page.told = ""
                if (page.log.ready())
                    page.share.open("paperLog")
            }
        },
        ActionButton {
            objectName: "leaveLog"
            visible: page.reading || page.done
            text: page.done ? qsTr("Import another file") : qsTr("Change where it comes from")
            onClicked: page.log.forget()
        }
    ]
}
