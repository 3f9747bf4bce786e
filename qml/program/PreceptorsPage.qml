import QtQuick
import Peelpack.Parts
import Peelpack.Program

// Who may sign, and who waits for somebody to vouch for them.
PageFrame {
    id: page

    required property Preceptors preceptors
    required property Vouching vouching
    signal openPreceptor(string id)
    signal openWaiting(int index)
    signal openPhone
    signal makeCard

    title: qsTr("Preceptors and cards")
    backText: qsTr("Back")
    Component.onCompleted: {
        preceptors.read()
        vouching.read()
    }

    SectionTitle {
        visible: waiting.count > 0
        text: qsTr("Nobody vouches for these yet")
    }
    Repeater {
        id: waiting
        model: page.vouching.waiting
        ChoiceRow {
            required property waitingSignerRow row
            required property int index
            objectName: "waiting-" + index
            text: row.title
            detail: row.detail
            opens: true
            onClicked: page.openWaiting(index)
        }
    }
    SectionTitle { text: qsTr("Who may sign") }
    NoteBox {
        visible: known.count === 0
        text: qsTr("No preceptor is known yet. Make a signing card for each, or vouch for their own phone.")
    }
    Repeater {
        id: known
        model: page.preceptors.rows
        ChoiceRow {
            required property preceptorRow row
            objectName: "preceptor-" + row.name
            text: row.name
            detail: row.detail
            opens: true
            onClicked: page.openPreceptor(row.id)
        }
    }

    actions: [
        ActionButton {
            objectName: "makeCardButton"
            main: true
            text: qsTr("Make a signing card")
            onClicked: page.makeCard()
        },
        ActionButton {
            objectName: "ownPhoneVouch"
            text: qsTr("Vouch for a preceptor's own phone")
            onClicked: page.openPhone()
        }
    ]
}
