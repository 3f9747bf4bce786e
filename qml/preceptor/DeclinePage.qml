import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Preceptor

// Not signing, with a reason.
PageFrame {
    id: page

    required property HandOver handOver

    kicker: handOver.title
    title: qsTr("Why are you not signing?")
    backText: qsTr("Back")
    onBack: handOver.back()

    NoteBox {
        text: page.handOver.error
        grave: true
    }
    Repeater {
        model: [qsTr("I was not there for most of the case."), qsTr("I was relieved before the case was over."), qsTr("This is not what was performed.")]
        ChoiceRow {
            required property string modelData
            Layout.fillWidth: true
            text: modelData
            chosen: reason.text === modelData
            onClicked: reason.text = modelData
        }
    }
    EntryField {
        id: reason
        objectName: "declineReason"
        label: qsTr("Your reason; the student and the instructor see it")
        most: 200
    }

    actions: [
        ActionButton {
            objectName: "declineNow"
            Layout.fillWidth: true
            main: true
            grave: true
            enabled: reason.text.trim().length > 0
            text: qsTr("Decline to sign")
            onClicked: page.handOver.decline(reason.text)
        }
    ]
}
