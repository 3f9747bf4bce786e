import QtQuick
import Peelpack.Parts
import Peelpack.Program

// The answer to an invitation: whose it is, the digits, and in.
PageFrame {
    id: page

    required property Granting granting
    required property Camera camera
    required property Share share
    signal openParcels

    kicker: granting.matched ? granting.what : ""
    title: granting.matched ? granting.name : qsTr("Let somebody in")
    backText: qsTr("Back")
    Component.onCompleted: granting.forget()

    NoteBox {
        text: page.granting.error
        grave: true
    }
    NoteBox { text: page.granting.done }
    Words {
        visible: !page.granting.matched
        text: qsTr("Whoever you invited has joined on their own phone; it shows an answer.")
        color: Look.colors.quietInk
    }
    CodeReader {
        visible: !page.granting.matched
        camera: page.camera
        share: page.share
        what: "reply"
        onFound: bytes => page.granting.read(bytes)
        onPasted: text => page.granting.readText(text)
    }
    CardFrame {
        visible: page.granting.matched
        spacing: 8
        Words { text: qsTr("Their phone must show these six digits. Have them read to you.") }
        Words {
            objectName: "grantDigits"
            text: page.granting.digits
            font.pixelSize: Look.titleSize
            font.weight: Font.Bold
        }
    }

    actions: [
        ActionButton {
            objectName: "sameDigits"
            visible: page.granting.matched
            main: true
            text: qsTr("The same name and digits: let them in")
            onClicked: page.granting.grant()
        },
        ActionButton {
            objectName: "otherDigits"
            visible: page.granting.matched
            grave: true
            text: qsTr("Other digits: stop")
            onClicked: page.granting.refuse()
        },
        ActionButton {
            objectName: "toParcels"
            visible: page.granting.done.length > 0
            text: qsTr("Send them a parcel")
            onClicked: page.openParcels()
        }
    ]
}
