import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Shell

// Who the director is, and what opens this device.
PageFrame {
    id: page

    required property SettingUp settingUp

    kicker: qsTr("Step 4 of 4")
    title: qsTr("You and this device")
    backText: settingUp.busy ? "" : qsTr("Back")
    onBack: settingUp.back()

    NoteBox {
        text: page.settingUp.error
        grave: true
    }
    EntryField {
        id: name
        objectName: "directorName"
        label: qsTr("Your name, as it stands under what you decide")
        most: 80
    }
    NewSecret {
        id: secret
        Layout.fillWidth: true
        what: "director"
    }

    actions: [
        ActionButton {
            objectName: "directorMake"
            Layout.fillWidth: true
            main: true
            enabled: !page.settingUp.busy && name.text.trim().length > 0 && secret.complete
            text: page.settingUp.busy ? qsTr("Setting up the program") : qsTr("Set up the program")
            onClicked: {
                const typed = secret.take()
                page.settingUp.make(name.text, typed.secret, typed.again, secret.pin)
            }
        }
    ]
}
