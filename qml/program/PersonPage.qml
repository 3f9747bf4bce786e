import QtQuick
import Peelpack.Parts
import Peelpack.Program

// One person: their devices, and another one for them.
PageFrame {
    id: page
    objectName: "personPage"

    required property People people
    required property Inviting inviting
    property string ending ///< the device that is about to be ended
    signal invited

    kicker: people.what
    title: people.name
    backText: qsTr("Back")

    NoteBox {
        text: page.people.error.length > 0 ? page.people.error : page.inviting.error
        grave: true
    }
    SectionTitle { text: qsTr("Devices") }
    Repeater {
        model: page.people.devices
        CardFrame {
            id: device
            required property deviceRow row
            spacing: 8
            Words {
                text: device.row.title
                font.weight: Font.DemiBold
            }
            Words {
                text: device.row.detail
                font.pixelSize: Look.secondarySize
                color: Look.colors.quietInk
            }
            ActionButton {
                objectName: "endDevice"
                visible: device.row.mayEnd && page.ending !== device.row.id
                grave: true
                text: qsTr("End this device")
                onClicked: page.ending = device.row.id
            }
            ReasonForm {
                visible: page.ending === device.row.id
                prompt: qsTr("What was received before stays good; what comes later is not counted. Why is it ended?")
                doText: qsTr("End it")
                grave: true
                takesFocus: false
                suggestions: [qsTr("The phone is lost"), qsTr("Has left the program")]
                onDropped: page.ending = ""
                onDone: reason => {
                    page.ending = ""
                    page.people.end(device.row.id, reason)
                }
            }
        }
    }
    CardFrame {
        visible: page.people.endsByCode
        spacing: 8
        Words {
            text: qsTr("Has handed the program over, or lost the device? Take their last parcel in first: what is here stays good, what comes later is not counted.")
            font.pixelSize: Look.secondarySize
            color: Look.colors.quietInk
        }
        SecretField {
            id: code
            objectName: "endingCode"
            label: qsTr("Program code")
            onAccepted: if (endThem.enabled) endThem.clicked()
        }
        ActionButton {
            id: endThem
            objectName: "endDirector"
            grave: true
            enabled: code.text.length > 0
            text: qsTr("End this director's devices")
            onClicked: page.people.endDirector(code.take())
        }
    }
    Words {
        visible: page.people.mayInviteAgain
        text: qsTr("A new phone goes on where the old one was: end the lost one, then invite again.")
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }

    actions: [
        ActionButton {
            objectName: "inviteAgain"
            visible: page.people.mayInviteAgain
            main: true
            text: qsTr("Invite for another device")
            onClicked: {
                if (page.inviting.inviteAgain(page.people.person))
                    page.invited()
            }
        }
    ]
}
