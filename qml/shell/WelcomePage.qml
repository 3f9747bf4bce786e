import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Shell

PageFrame {
    id: page

    required property Phone phone
    signal join
    signal startToSign
    signal setUp

    kicker: "Peelpack"
    title: qsTr("Your case sheets, sealed")

    PackCard {
        Layout.fillWidth: true
        tappable: false
        title: qsTr("After the case")
        detail: qsTr("You open a case sheet, without a network, in half a minute.")
        seal: PackSeal.Open
    }
    PackCard {
        Layout.fillWidth: true
        tappable: false
        title: qsTr("Your preceptor signs")
        detail: qsTr("On your phone, with their own card: ten skills, one minute. Nobody can change it afterwards without it showing.")
        seal: PackSeal.Signed
    }
    PackCard {
        Layout.fillWidth: true
        tappable: false
        title: qsTr("Your instructor initials")
        detail: qsTr("And you always know what counts and what to ask for next.")
        seal: PackSeal.Initialed
    }
    NoteBox {
        text: page.phone.error
        grave: true
    }
    PickLanguage {
        Layout.fillWidth: true
        settings: page.phone.settings
    }

    actions: [
        ActionButton {
            objectName: "joinButton"
            Layout.fillWidth: true
            main: true
            text: qsTr("Join a program")
            onClicked: page.join()
        },
        ActionButton {
            objectName: "ownPhoneStart"
            Layout.fillWidth: true
            text: qsTr("I am a preceptor: sign on this phone")
            onClicked: page.startToSign()
        },
        ActionButton {
            objectName: "setUpStart"
            Layout.fillWidth: true
            text: qsTr("Set up a program")
            onClicked: page.setUp()
        },
        ActionButton {
            objectName: "demoButton"
            Layout.fillWidth: true
            enabled: !page.phone.busy
            text: page.phone.busy ? qsTr("Making the demo") : qsTr("Try it as a student")
            onClicked: page.phone.openDemo()
        },
        ActionButton {
            objectName: "instructorDemoButton"
            Layout.fillWidth: true
            enabled: !page.phone.busy
            text: page.phone.busy ? qsTr("Making the demo") : qsTr("Try it as an instructor")
            onClicked: page.phone.openInstructorDemo()
        }
    ]
}
