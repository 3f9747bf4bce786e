import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Preceptor

// First: is this what was performed?
PageFrame {
    id: page

    required property Sitting sitting
    property string notice ///< something that happened before
    property HandOver handOver: null ///< of a phone in other hands; null on the preceptor's own
    signal giveBack
    signal leave ///< back from the first sheet, on the preceptor's own phone

    property int correcting: -1

    kicker: sitting.total > 1 ? qsTr("For %1 · sheet %2 of %3").arg(sitting.student).arg(sitting.place + 1).arg(sitting.total)
                               : qsTr("For %1").arg(sitting.student)
    title: qsTr("Was this performed?")
    backText: sitting.place > 0 || !handOver ? qsTr("Back") : ""
    onBack: {
        if (sitting.place > 0)
            sitting.back()
        else
            leave()
    }

    NoteBox {
        text: page.notice
        grave: true
    }

    Repeater {
        model: page.sitting.procedures
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
                        page.correcting = -1 // correcting makes this card anew: it comes last
                        page.sitting.correct(procedure.index, correction.text)
                    }
                }
            }
        }
    }
    Words {
        Layout.fillWidth: true
        text: page.sitting.head
        color: Look.colors.quietInk
    }
    OnOffRow {
        Layout.fillWidth: true
        text: qsTr("Canceled before incision")
        on: page.sitting.canceled
        onTurned: on => page.sitting.canceled = on
    }
    NoteBox {
        text: page.sitting.beforehand
    }
    NoteBox {
        text: page.sitting.error
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
        visible: page.handOver !== null
        text: qsTr("Mark and sign on my own phone")
        detail: page.handOver ? page.handOver.ownPhoneWord : ""
        opens: true
        onClicked: page.handOver.go(HandOver.OwnPhone)
    }
    ChoiceRow {
        objectName: "declineButton"
        Layout.fillWidth: true
        visible: page.handOver !== null
        text: qsTr("I am not signing this")
        detail: qsTr("With a reason; the sheet stays open.")
        opens: true
        onClicked: page.handOver.go(HandOver.Declining)
    }
    ChoiceRow {
        objectName: "giveBackButton"
        Layout.fillWidth: true
        visible: page.handOver !== null
        text: qsTr("Give the phone back")
        detail: qsTr("Nothing is signed; %1 unlocks it.").arg(page.sitting.student)
        opens: true
        onClicked: page.giveBack()
    }

    actions: [
        ActionButton {
            objectName: "performedButton"
            Layout.fillWidth: true
            main: true
            enabled: page.correcting < 0
            text: page.sitting.canceled ? qsTr("Yes, and it was canceled") : qsTr("Yes, mark the skills")
            onClicked: page.sitting.next()
        }
    ]
}
