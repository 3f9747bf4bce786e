import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Preceptor

// First: is this what was performed?
PageFrame {
    id: page

    required property HandOver handOver
    signal giveBack

    property int correcting: -1

    kicker: handOver.total > 1 ? qsTr("For %1 · sheet %2 of %3").arg(handOver.student).arg(handOver.place + 1).arg(handOver.total)
                               : qsTr("For %1").arg(handOver.student)
    title: qsTr("Was this performed?")
    backText: handOver.place > 0 ? qsTr("Back") : ""
    onBack: handOver.back()

    Repeater {
        model: page.handOver.procedures
        CardFrame {
            id: procedure
            required property int index
            required property string modelData
            Words {
                Layout.fillWidth: true
                text: procedure.modelData
                font.pixelSize: Look.cardTitleSize
                font.weight: Font.DemiBold
            }
            LinkButton {
                visible: page.correcting !== procedure.index
                text: qsTr("Correct it")
                Accessible.name: qsTr("Correct %1").arg(procedure.modelData)
                onClicked: page.correcting = procedure.index
            }
            Pile {
                Layout.fillWidth: true
                visible: page.correcting === procedure.index
                EntryField {
                    id: correction
                    field.Accessible.name: qsTr("What was performed instead")
                    text: procedure.modelData
                }
                ActionButton {
                    Layout.fillWidth: true
                    text: qsTr("This was performed")
                    onClicked: {
                        page.handOver.correct(procedure.index, correction.text)
                        page.correcting = -1
                    }
                }
            }
        }
    }
    Words {
        Layout.fillWidth: true
        text: page.handOver.head
        color: Look.colors.quietInk
    }
    OnOffRow {
        Layout.fillWidth: true
        text: qsTr("Canceled before incision")
        on: page.handOver.canceled
        onTurned: on => page.handOver.canceled = on
    }
    NoteBox {
        text: page.handOver.policy
    }
    NoteBox {
        text: page.handOver.error
        grave: true
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("Use the phone after degowning and hand washing, never at the field. Counts, sterile technique and what a student may do follow your facility's policy.")
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }
    ChoiceRow {
        objectName: "ownPhoneButton"
        Layout.fillWidth: true
        text: qsTr("Mark and sign on my own phone")
        detail: qsTr("The strongest way, when an instructor knows your phone.")
        opens: true
        onClicked: page.handOver.go(HandOver.OwnPhone)
    }
    ChoiceRow {
        objectName: "declineButton"
        Layout.fillWidth: true
        text: qsTr("I am not signing this")
        detail: qsTr("With a reason; the sheet stays open.")
        opens: true
        onClicked: page.handOver.go(HandOver.Declining)
    }
    ChoiceRow {
        objectName: "giveBackButton"
        Layout.fillWidth: true
        text: qsTr("Give the phone back")
        detail: qsTr("Nothing is signed; %1 unlocks it.").arg(page.handOver.student)
        opens: true
        onClicked: page.giveBack()
    }

    actions: [
        ActionButton {
            objectName: "performedButton"
            Layout.fillWidth: true
            main: true
            enabled: page.correcting < 0
            text: page.handOver.canceled ? qsTr("Yes, and it was canceled") : qsTr("Yes, mark the skills")
            onClicked: page.handOver.next()
        }
    ]
}
