import QtQuick
import Peelpack.Parts
import Peelpack.Program

// Whose signature is expected for which role, and one credential while it is changed.
PageFrame {
    id: page
    objectName: "signersPage"

    required property SignerList signers

    title: !signers.editing ? qsTr("Who may sign") : signers.isNew ? qsTr("Another credential") : qsTr("Change a credential")
    backText: qsTr("Back")
    Component.onCompleted: signers.read()
    Component.onDestruction: signers.leave()

    NoteBox {
        text: page.signers.error
        grave: true
    }
    Pile {
        visible: !page.signers.editing
        spacing: Look.gap
        NoteBox {
            objectName: "anybodySigns"
            visible: listed.count === 0
            text: qsTr("The list is empty: anybody for whom the program vouches may sign every role.")
        }
        Words {
            text: qsTr("A signature that is not on the list is never refused: instructors see a question at the sheet.")
            font.pixelSize: Look.secondarySize
            color: Look.colors.quietInk
        }
        Repeater {
            id: listed
            model: page.signers.rows
            ChoiceRow {
                required property namedRow row
                objectName: "signer-" + row.name
                text: row.name
                detail: row.detail
                opens: page.signers.mayChange
                enabled: page.signers.mayChange
                onClicked: page.signers.change(row.index)
            }
        }
        Words {
            visible: !page.signers.mayChange
            text: qsTr("Only the director changes this list.")
            font.pixelSize: Look.secondarySize
            color: Look.colors.quietInk
        }
    }
    Pile {
        visible: page.signers.editing
        spacing: Look.gap
        EntryField {
            objectName: "signingCredential"
            label: qsTr("Credential, such as CST or RN")
            most: 40
            text: page.signers.credential
            onEdited: text => page.signers.credential = text
        }
        SectionTitle { text: qsTr("Roles that it may sign") }
        OnOffRow {
            objectName: "signsObservation"
            text: qsTr("Observation")
            on: page.signers.observation
            onTurned: on => page.signers.observation = on
        }
        OnOffRow {
            objectName: "signsSecond"
            text: qsTr("Second scrub")
            on: page.signers.second
            onTurned: on => page.signers.second = on
        }
        OnOffRow {
            objectName: "signsFirst"
            text: qsTr("First scrub")
            on: page.signers.first
            onTurned: on => page.signers.first = on
        }
    }

    actions: [
        ActionButton {
            objectName: "addSigner"
            visible: page.signers.mayChange && !page.signers.editing
            main: true
            text: qsTr("Add a credential")
            onClicked: page.signers.begin()
        },
        ActionButton {
            objectName: "signSigner"
            visible: page.signers.editing
            main: true
            text: page.signers.isNew ? qsTr("Sign: add it") : qsTr("Sign: change it")
            onClicked: page.signers.sign()
        },
        ActionButton {
            objectName: "removeSigner"
            visible: page.signers.editing && !page.signers.isNew
            grave: true
            text: qsTr("Sign: take it off the list")
            onClicked: page.signers.remove()
        },
        ActionButton {
            visible: page.signers.editing
            text: qsTr("Leave it as it is")
            onClicked: page.signers.leave()
        }
    ]
}
