import QtQuick
import Peelpack.Parts
import Peelpack.Instructor

// A change with old and new side by side, and its reason.
CardFrame {
    id: form

    required property Amending amending
    signal done(string reason)
    signal dropped

    spacing: 10
    Words {
        text: qsTr("Change the sheet")
        font.weight: Font.DemiBold
    }
    Words {
        text: form.amending.hasMarks ? qsTr("What the preceptor signed stays on the record beside it.")
                                     : qsTr("What was imported stays on the record beside it.")
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }
    Repeater {
        model: form.amending.hasMarks ? form.amending.skills : []
        Pile {
            id: line
            required property int index
            required property string modelData
            spacing: 4
            Words {
                text: line.modelData
                font.pixelSize: Look.secondarySize
            }
            ThreeWay {
                readonly property bool hugs: true
                objectName: "amendMark-" + line.index
                skill: line.modelData
                mark: form.amending.marks[line.index]
                onChosen: mark => form.amending.mark(line.index, mark)
            }
        }
    }
    EntryField {
        objectName: "amendProcedures"
        label: qsTr("Procedures, with semicolons between")
        most: 400
        text: form.amending.procedures
        onEdited: text => form.amending.procedures = text
    }
    EntryField {
        objectName: "amendDate"
        label: qsTr("Date, as 2026-03-12")
        most: 10
        text: form.amending.date
        onEdited: text => form.amending.date = text
    }
    EntryField {
        label: qsTr("Surgeon")
        text: form.amending.surgeon
        onEdited: text => form.amending.surgeon = text
    }
    EntryField {
        label: qsTr("Site")
        text: form.amending.site
        onEdited: text => form.amending.site = text
    }
    EntryField {
        objectName: "amendRoom"
        label: qsTr("Room")
        text: form.amending.room
        onEdited: text => form.amending.room = text
    }
    OnOffRow {
        text: qsTr("Canceled before incision")
        on: form.amending.canceled
        onTurned: on => form.amending.canceled = on
    }
    NoteBox {
        text: form.amending.problem
        grave: true
    }
    SectionTitle {
        visible: form.amending.changes.length > 0
        text: qsTr("What changes")
    }
    Repeater {
        model: form.amending.changes
        Words {
            required property string modelData
            text: modelData
            font.weight: Font.Medium
        }
    }
    ReasonForm {
        visible: form.visible && form.amending.changes.length > 0 && form.amending.problem.length === 0
        takesFocus: false
        prompt: qsTr("Why? It stays beside the sheet for good.")
        doText: qsTr("Change it")
        onDone: reason => form.done(reason)
        onDropped: form.dropped()
    }
    LinkButton {
        objectName: "dropAmend"
        text: qsTr("Leave it as it is")
        onClicked: form.dropped()
    }
}
