import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Program
import Peelpack.Shell

// The rules with which a program begins, and the same read back.
PageFrame {
    id: page

    required property SettingUp settingUp
    required property Share share
    readonly property bool readBack: settingUp.step === SettingUp.ReadBack
    signal takeOver

    kicker: readBack ? qsTr("Step 2 of 4") : qsTr("Step 1 of 4")
    title: readBack ? qsTr("Are these the rules?") : qsTr("Set up a program")
    backText: qsTr("Back")
    onBack: settingUp.back()

    Words {
        Layout.fillWidth: true
        visible: !page.readBack
        text: qsTr("For the director. It takes ten minutes: the rules, the program code, you. Have paper and a pen at hand.")
        color: Look.colors.quietInk
    }
    ChoiceRow {
        objectName: "takeOverRow"
        Layout.fillWidth: true
        visible: !page.readBack
        text: qsTr("The program exists already")
        detail: qsTr("Take it over as its new director, with the program code")
        opens: true
        onClicked: page.takeOver()
    }
    RulesForm {
        Layout.fillWidth: true
        visible: !page.readBack
        draft: page.settingUp.rules
        share: page.share
    }
    RulesReadBack {
        Layout.fillWidth: true
        visible: page.readBack
        draft: page.settingUp.rules
    }

    actions: [
        NoteBox {
            text: page.settingUp.error
            grave: true
        },
        ActionButton {
            objectName: "rulesNext"
            Layout.fillWidth: true
            main: true
            text: page.readBack ? qsTr("Yes, show the program code") : qsTr("Read the rules back")
            onClicked: page.settingUp.next()
        }
    ]
}
