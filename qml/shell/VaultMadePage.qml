import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Shell

// The program of a new director and their vault code, which is shown only now.
PageFrame {
    id: page

    required property FirstStart start
    required property string program
    required property string next

    title: qsTr("Write down your vault code")

    NoteBox {
        text: page.start.error
        grave: true
    }
    PaperCodeCard {
        code: page.start.vaultCode
        codeName: "directorVaultCode"
    }
    SectionTitle { text: qsTr("The program's id, which anybody may know") }
    CardFrame {
        Words {
            objectName: "programId"
            Layout.fillWidth: true
            text: page.program
            font.pixelSize: Look.secondarySize
            wrapMode: Text.WrapAnywhere
        }
    }
    Words {
        Layout.fillWidth: true
        text: page.next
        color: Look.colors.quietInk
    }

    actions: [
        ActionButton {
            objectName: "directorDone"
            Layout.fillWidth: true
            main: true
            text: qsTr("The code is on paper, go on")
            onClicked: page.start.finish()
        }
    ]
}
