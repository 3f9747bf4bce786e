import QtQuick
import QtQuick.Layouts
import Peelpack.Light
import Peelpack.Parts

// The camera reads the running codes of a parcel from another screen; ends by itself when it is whole.
PageFrame {
    id: page
    objectName: "readCodesPage"

    required property CodeReading reading
    required property Camera camera
    signal takeFile
    signal whole

    property bool looking: camera.available

    title: qsTr("Read the codes")
    backText: qsTr("Back")
    Component.onCompleted: reading.begin()

    NoteBox {
        visible: !page.camera.available
        grave: true
        text: qsTr("This device has no camera that can be used. Have the parcel sent as a file, and take in the file.")
    }
    NoteBox {
        text: page.camera.available ? scanner.problem : ""
        grave: true
    }
    NoteBox {
        objectName: "readingRemark"
        text: page.camera.available ? page.reading.remark : ""
        grave: true
    }
    Words {
        objectName: "readingProgress"
        Layout.fillWidth: true
        visible: page.camera.available && text.length > 0
        text: page.reading.progress
        font.pixelSize: Look.cardTitleSize
        font.weight: Font.DemiBold
        Accessible.role: Accessible.ProgressBar
    }
    Rectangle {
        Layout.fillWidth: true
        visible: page.camera.available && page.reading.of > 0
        implicitHeight: 10
        radius: 5
        color: Look.colors.card
        border.color: Look.colors.edge
        border.width: 1
        Rectangle {
            height: parent.height
            width: parent.width * page.reading.have / Math.max(1, page.reading.of)
            radius: parent.radius
            color: Look.colors.drape
        }
    }
    QrScanner {
        id: scanner
        Layout.fillWidth: true
        implicitHeight: Math.min(width, Math.max(150, page.height * 0.45))
        visible: page.camera.available
        camera: page.camera
        goesOn: true
        scanning: page.looking
        onFound: bytes => page.reading.read(bytes)
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("What the camera sees")
    }
    Words {
        Layout.fillWidth: true
        visible: page.camera.available
        text: page.reading.missing
        color: Look.colors.quietInk
    }
    Connections {
        target: page.reading
        function onCame() {
            page.looking = false
            page.whole()
        }
    }

    actions: [
        ActionButton {
            objectName: "fileInstead"
            Layout.fillWidth: true
            main: !page.camera.available
            text: qsTr("Take in a file instead")
            onClicked: page.takeFile()
        }
    ]
}
