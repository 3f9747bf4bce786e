import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Shell

// A new director of a program that exists.
PageFrame {
    id: page

    required property TakingOver takingOver

    kicker: qsTr("For a new director")
    title: qsTr("Take over a program")
    backText: takingOver.busy ? "" : qsTr("Back")

    Words {
        Layout.fillWidth: true
        text: qsTr("You need the program code from its paper, and a file with the record from the director before you or an instructor: you take it in afterwards.")
        color: Look.colors.quietInk
    }
    NoteBox {
        text: page.takingOver.error
        grave: true
    }
    EntryField {
        id: code
        objectName: "takeOverCode"
        label: qsTr("Program code")
        most: 80
        inputMethodHints: Qt.ImhSensitiveData | Qt.ImhNoPredictiveText
    }
    EntryField {
        id: number
        objectName: "takeOverNumber"
        label: qsTr("Which director of the program are you? The second is 2")
        text: "2"
        most: 5
        inputMethodHints: Qt.ImhDigitsOnly
    }
    EntryField {
        id: name
        objectName: "takeOverName"
        label: qsTr("Your name, as it stands under what you decide")
        most: 80
    }
    NewSecret {
        id: secret
        Layout.fillWidth: true
        what: "takeOver"
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("The device of the director before you keeps its rights until it is ended.")
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }

    actions: [
        ActionButton {
            objectName: "takeOverMake"
            Layout.fillWidth: true
            main: true
            enabled: !page.takingOver.busy && code.text.trim().length > 0 && name.text.trim().length > 0 && secret.complete
            text: page.takingOver.busy ? qsTr("Making your record") : qsTr("Take over the program")
            onClicked: {
                const typed = secret.take()
                const programCode = code.text
                code.text = ""
                page.takingOver.make(programCode, number.text, name.text, typed.secret, typed.again, secret.pin)
            }
        }
    ]
}
