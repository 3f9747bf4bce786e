import QtQuick
import Peelpack.Parts
import Peelpack.Program

// Who is in the program, by class, and who is invited.
PageFrame {
    id: page

    required property People people
    required property Inviting inviting
    signal openPerson(string id)
    signal openInvitation(int index)
    signal go(string page)

    title: qsTr("People")
    backText: qsTr("Back")
    Component.onCompleted: {
        people.read()
        inviting.read()
    }

    component Rows: Pile {
        id: rows
        property alias model: repeater.model
        readonly property alias count: repeater.count
        spacing: 8
        visible: repeater.count > 0
        Repeater {
            id: repeater
            Pile {
                id: line
                required property personRow row
                spacing: 8
                SectionTitle {
                    visible: text.length > 0
                    text: line.row.heading
                }
                ChoiceRow {
                    objectName: "person-" + line.row.name
                    text: line.row.name
                    detail: line.row.detail
                    opens: true
                    onClicked: page.openPerson(line.row.id)
                }
            }
        }
    }

    NoteBox {
        visible: students.count === 0
        text: qsTr("No student is in yet. Invite them one by one, or all at once from a class list.")
    }
    SectionTitle {
        visible: open.count > 0
        text: qsTr("Invited, not answered yet")
    }
    Repeater {
        id: open
        model: page.inviting.open
        ChoiceRow {
            required property openInvitationRow row
            required property int index
            objectName: "open-" + row.name
            text: row.name
            detail: row.detail
            opens: true
            onClicked: page.openInvitation(index)
        }
    }
    Rows {
        id: students
        model: page.people.students
    }
    SectionTitle { text: qsTr("Staff") }
    Rows { model: page.people.staff }

    actions: [
        ActionButton {
            objectName: "inviteButton"
            main: true
            text: qsTr("Invite somebody")
            onClicked: page.go("invite")
        },
        ActionButton {
            objectName: "grantButton"
            text: qsTr("Take an answer, let somebody in")
            onClicked: page.go("grant")
        },
        ActionButton {
            objectName: "classListButton"
            text: qsTr("Invite a whole class")
            onClicked: page.go("classList")
        }
    ]
}
