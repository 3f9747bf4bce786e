import QtQuick
import Peelpack.Parts
import Peelpack.Program

// What is printed for the program, as PDF.
PageFrame {
    id: page

    required property PaperToCut paperToCut
    required property Share share
    property string saved

    title: qsTr("To print and cut")
    backText: qsTr("Back")

    function give(name, pdf) {
        if (pdf.byteLength > 0)
            share.save(name, pdf)
    }

    Words {
        text: qsTr("They are in English. A signing card is printed when it is made: its code is kept nowhere.")
        color: Look.colors.quietInk
    }
    NoteBox {
        text: page.paperToCut.error
        grave: true
    }
    NoteBox { text: page.saved }
    OnOffRow {
        text: qsTr("A4 paper instead of letter")
        on: page.paperToCut.a4
        onTurned: on => page.paperToCut.a4 = on
    }
    ChoiceRow {
        objectName: "printInvitations"
        visible: page.paperToCut.invitations > 0
        text: qsTr("Open invitations")
        detail: qsTr("%n invitation(s), to be cut apart and given out. Whoever has one can join in that name.", "", page.paperToCut.invitations)
        opens: true
        onClicked: page.give("invitations.pdf", page.paperToCut.invitationsPdf())
    }
    SectionTitle { text: qsTr("Pocket stubs, for sites where phones are not allowed") }
    EntryField {
        id: count
        objectName: "stubCount"
        label: qsTr("How many, a page each")
        text: "4"
        most: 3
        inputMethodHints: Qt.ImhDigitsOnly
    }
    EntryField {
        id: first
        objectName: "stubFirst"
        label: qsTr("Number of the first; they go on from there")
        text: "1"
        most: 8
        inputMethodHints: Qt.ImhDigitsOnly
    }
    Connections {
        target: page.share
        function onSaved(where) {
            page.saved = qsTr("Saved as %1.").arg(where)
        }
        function onFailed(why) {
            page.saved = why
        }
    }

    actions: [
        ActionButton {
            objectName: "printStubs"
            main: true
            text: qsTr("Save the stubs as PDF")
            onClicked: page.give("stubs.pdf", page.paperToCut.stubsPdf(count.text, first.text))
        }
    ]
}
