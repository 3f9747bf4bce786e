import QtQuick
import Peelpack.Parts
import Peelpack.Program

// A class list, what of it cannot be used, and the invitations of all others.
PageFrame {
    id: page

    required property ClassInviting inviting
    required property PaperToCut paperToCut
    required property Share share
    property string saved

    kicker: inviting.file
    title: qsTr("Invite a whole class")
    backText: qsTr("Back")
    Component.onDestruction: inviting.forget()

    Words {
        visible: page.inviting.file.length === 0
        text: qsTr("A table as CSV with a header row and the columns name and class; other columns are passed over.")
        color: Look.colors.quietInk
    }
    NoteBox {
        text: page.inviting.error.length > 0 ? page.inviting.error : page.paperToCut.error
        grave: true
    }
    NoteBox { text: page.saved }
    SectionTitle {
        visible: refused.count > 0
        text: qsTr("Cannot be used: %n line(s)", "", refused.count)
    }
    Repeater {
        id: refused
        model: page.inviting.refused
        NoteBox {
            required property string modelData
            text: modelData
            grave: true
        }
    }
    SectionTitle {
        visible: listed.count > 0
        text: page.inviting.invited > 0 ? qsTr("Invited: %n student(s)", "", page.inviting.invited)
                                        : qsTr("On the list: %n student(s)", "", listed.count)
    }
    CardFrame {
        visible: listed.count > 0
        spacing: 8
        Repeater {
            id: listed
            model: page.inviting.listed
            Words {
                required property string modelData
                text: modelData
                font.pixelSize: Look.secondarySize
            }
        }
    }
    Pile {
        visible: page.inviting.invited > 0
        spacing: Look.gap
        ChoiceRow {
            objectName: "printClass"
            text: qsTr("Print all open invitations: save them as PDF")
            opens: true
            onClicked: {
                const pdf = page.paperToCut.invitationsPdf()
                if (pdf.byteLength > 0)
                    page.share.save("invitations.pdf", pdf)
            }
        }
        ChoiceRow {
            objectName: "saveClass"
            text: qsTr("Save them as files, one for each student")
            opens: true
            onClicked: page.share.saveSome(page.inviting.fileNames(), page.inviting.files())
        }
    }
    Connections {
        target: page.share
        function onOpened(what, name, bytes) {
            if (what === "classList")
                page.inviting.read(name, bytes)
        }
        function onSaved(where) {
            page.saved = qsTr("Saved as %1.").arg(where)
        }
        function onFailed(why) {
            page.saved = why
        }
    }

    actions: [
        ActionButton {
            objectName: "inviteListed"
            visible: listed.count > page.inviting.invited
            main: true
            text: qsTr("Invite these %n student(s)", "", listed.count)
            onClicked: page.inviting.invite()
        },
        ActionButton {
            objectName: "openList"
            main: listed.count === 0
            visible: page.inviting.invited === 0
            text: page.inviting.file.length > 0 ? qsTr("Choose another list") : qsTr("Choose the class list")
            onClicked: page.share.open("classList")
        }
    ]
}
