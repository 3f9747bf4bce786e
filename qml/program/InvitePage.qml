import QtQuick
import Peelpack.Parts
import Peelpack.Program

// Who is invited, as what, into which class.
PageFrame {
    id: page

    required property Inviting inviting
    property int role: 0
    signal invited

    title: qsTr("Invite somebody")
    backText: qsTr("Back")
    Component.onCompleted: inviting.forget()

    NoteBox {
        text: page.inviting.error
        grave: true
    }
    EntryField {
        id: name
        objectName: "inviteName"
        label: qsTr("Name, as it stands in the program")
        most: 80
    }
    SectionTitle { text: qsTr("As what") }
    Repeater {
        model: page.inviting.roles
        ChoiceRow {
            required property string modelData
            required property int index
            text: modelData
            chosen: page.role === index
            onClicked: page.role = index
        }
    }
    EntryField {
        id: scopes
        objectName: "inviteScopes"
        label: page.role === 0 ? qsTr("Class") : qsTr("Classes or sites, with semicolons between; for an instructor of the whole program none")
        most: 200
    }
    Suggestions {
        choices: page.inviting.classes
        onPicked: words => scopes.text = page.role === 0 || scopes.text.trim().length === 0 ? words : scopes.text + "; " + words
    }

    actions: [
        ActionButton {
            objectName: "inviteNow"
            main: true
            enabled: name.text.trim().length > 0
            text: qsTr("Make the invitation")
            onClicked: {
                if (page.inviting.invite(page.role, name.text, scopes.text))
                    page.invited()
            }
        }
    ]
}
