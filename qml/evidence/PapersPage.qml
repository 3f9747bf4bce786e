import QtQuick
import Peelpack.Parts
import Peelpack.Evidence

// Papers as PDF, and rows for a spreadsheet: for whom, which, and what lies ready.
PageFrame {
    id: page
    objectName: "papersPage"

    required property Papers papers
    required property Share share
    property string told ///< what became of a saving

    title: qsTr("Papers and rows")
    kicker: papers.student
    backText: qsTr("Back")

    function save() {
        told = ""
        share.save(papers.name, papers.bytes())
    }

    NoteBox {
        text: page.papers.error
        grave: true
    }
    NoteBox { text: page.told }
    CardFrame {
        visible: page.papers.busy
        spacing: 8
        Words {
            objectName: "paperProgress"
            text: page.papers.progress
            font.weight: Font.DemiBold
            Accessible.role: Accessible.ProgressBar
        }
        ActionButton {
            objectName: "cancelPaper"
            text: qsTr("Stop")
            onClicked: page.papers.cancel()
        }
    }
    CardFrame {
        visible: page.papers.done.length > 0
        spacing: 8
        Words {
            text: page.papers.name
            font.weight: Font.DemiBold
            wrapMode: Text.WrapAnywhere
        }
        Words {
            text: page.papers.done
            font.pixelSize: Look.secondarySize
            color: Look.colors.quietInk
        }
        ActionButton {
            objectName: "savePaper"
            main: true
            text: qsTr("Save it")
            onClicked: page.save()
        }
    }
    Flow {
        spacing: 8
        PickList {
            width: Math.min(implicitWidth, parent.width)
            visible: page.papers.student.length === 0
            label: qsTr("Class")
            choices: page.papers.classes
            current: page.papers.ofClass
            onPicked: index => page.papers.ofClass = index
        }
        PickList {
            width: Math.min(implicitWidth, parent.width)
            label: qsTr("Paper")
            choices: page.papers.sizes
            current: page.papers.size
            onPicked: index => page.papers.size = index
        }
    }
    LinkButton {
        visible: page.papers.student.length > 0
        text: qsTr("For the whole class instead")
        onClicked: page.papers.choose("")
    }
    component Kind: ChoiceRow {
        property int kind
        opens: true
        enabled: !page.papers.busy
        onClicked: {
            page.told = ""
            page.papers.make(kind)
        }
    }
    Kind {
        objectName: "paperLog"
        kind: Papers.Log
        text: qsTr("Case log")
        detail: qsTr("Cases by specialty, what does not count and why; a student begins a page")
    }
    Kind {
        objectName: "paperBoard"
        kind: Papers.Board
        text: qsTr("Class board")
        detail: qsTr("Students and targets, as initialed")
    }
    Kind {
        objectName: "paperReport"
        kind: Papers.Report
        visible: page.papers.student.length === 0
        text: qsTr("Report for the accreditor")
        detail: qsTr("Cases by student and target, sites, preceptors, what was changed")
    }
    Kind {
        objectName: "paperRows"
        kind: Papers.Rows
        text: qsTr("Rows of the case sheets")
        detail: qsTr("CSV, for a spreadsheet or for counting again")
    }
    ChoiceRow {
        objectName: "paperRecord"
        visible: page.papers.student.length === 0
        enabled: !page.papers.busy
        text: qsTr("Paper of a completion record")
        detail: qsTr("Open the record's file; it is verified first")
        opens: true
        onClicked: {
            page.told = ""
            page.share.open("record")
        }
    }
    Words {
        text: qsTr("Papers are in English. They are not de-identified: a date, a site and a rare procedure can point at one patient.")
        font.pixelSize: Look.smallSize
        color: Look.colors.quietInk
    }
    Connections {
        target: page.papers
        function onReady(name) {
            page.save()
        }
    }
    Connections {
        target: page.share
        function onSaved(where) {
            page.told = qsTr("Saved as %1.").arg(where)
        }
        function onFailed(why) {
            page.told = why
        }
        function onOpened(what, name, bytes) {
            if (what === "record")
                page.papers.makeRecord(bytes)
        }
    }
}
