import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Preceptor

// The code on the student's phone: before the camera, in a picture, or as a file.
PageFrame {
    id: page

    required property SigningPhone signing
    required property Camera camera
    required property Share share

    kicker: signing.who
    title: camera.available ? qsTr("Scan the sheet's code") : qsTr("Open the sheet's code")
    backText: qsTr("Back")

    NoteBox {
        text: page.signing.error
        grave: true
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("On the student's phone, after \"Was this performed?\": Mark and sign on my own phone. It shows a code, and can send it as a file.")
        color: Look.colors.quietInk
    }
    QrScanner {
        id: scanner
        Layout.fillWidth: true
        visible: page.camera.available
        camera: page.camera
        scanning: page.camera.available
        onFound: bytes => page.signing.read(bytes)
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("What the camera sees")
    }
    NoteBox {
        text: scanner.problem
        grave: true
    }
    ActionButton {
        objectName: "scanAgain"
        Layout.fillWidth: true
        visible: page.camera.available && !scanner.scanning
        text: qsTr("Scan again")
        onClicked: scanner.scanning = true
    }
    ChoiceRow {
        objectName: "requestPicture"
        Layout.fillWidth: true
        text: qsTr("A picture or file of the code")
        opens: true
        onClicked: page.share.open("request")
    }
    Connections {
        target: page.share
        function onOpened(what, name, bytes) {
            if (what === "request")
                scanner.readFile(name, bytes)
        }
    }
}
