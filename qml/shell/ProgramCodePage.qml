import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Shell

// The program code, shown once and then typed back.
PageFrame {
    id: page

    required property SettingUp settingUp
    readonly property bool typing: settingUp.step === SettingUp.TypingBack

    kicker: qsTr("Step 3 of 4")
    title: typing ? qsTr("Type the program code back") : qsTr("Write down the program code")
    backText: qsTr("Back")
    onBack: settingUp.back()

    PaperCodeCard {
        visible: !page.typing
        code: page.settingUp.programCode
        codeName: "programCode"
        use: qsTr("Shown only now. Whoever has it can name the director: write it on paper and lock it away. Without it nobody can take the program over from you, and no completion record can be made.")
    }
    Words {
        Layout.fillWidth: true
        visible: page.typing
        text: qsTr("From your paper, so that it is known to be there. Nothing has been made yet.")
        color: Look.colors.quietInk
    }
    EntryField {
        id: typed
        objectName: "typedCode"
        visible: page.typing
        label: qsTr("Program code")
        most: 80
        inputMethodHints: Qt.ImhSensitiveData | Qt.ImhNoPredictiveText
    }
    NoteBox {
        text: page.settingUp.error
        grave: true
    }
    ActionButton {
        objectName: "otherCode"
        Layout.fillWidth: true
        visible: page.typing
        text: qsTr("It is not on paper: show another code")
        onClicked: {
            typed.text = ""
            page.settingUp.back()
        }
    }

    actions: [
        ActionButton {
            objectName: "codeNext"
            Layout.fillWidth: true
            main: true
            enabled: !page.typing || typed.text.trim().length > 0
            text: page.typing ? qsTr("This is the code") : qsTr("It is on paper")
            onClicked: {
                if (!page.typing) {
                    page.settingUp.next()
                    return
                }
                const code = typed.text
                typed.text = ""
                page.settingUp.typeBack(code)
            }
        }
    ]
}
