import QtQuick
import QtQuick.Layouts
import Peelpack.Parts

// Takes a code: the camera sees it, a file or picture holds it, or its text is pasted.
Pile {
    id: reader

    required property Camera camera
    required property Share share
    required property string what ///< in one word; comes back from the share with the file
    property string fileText: qsTr("Open the file, or a picture of the code")
    property string textLabel: qsTr("Or paste the text")
    readonly property string capitalized: what.charAt(0).toUpperCase() + what.slice(1)
    property bool looking: false
    signal found(var bytes)
    signal pasted(string text)

    spacing: Look.gap
    onVisibleChanged: {
        if (!visible)
            looking = false
    }

    QrScanner {
        id: scanner
        Layout.fillWidth: true
        visible: reader.looking
        camera: reader.camera
        scanning: reader.looking && reader.visible
        onFound: bytes => reader.found(bytes)
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("What the camera sees")
    }
    NoteBox {
        text: scanner.problem
        grave: true
    }
    ChoiceRow {
        objectName: reader.what + "Scan"
        Layout.fillWidth: true
        visible: reader.camera.available
        text: qsTr("Scan the code")
        onClicked: {
            reader.looking = true
            scanner.scanning = Qt.binding(() => reader.looking && reader.visible) // again, after another code
        }
    }
    ChoiceRow {
        objectName: reader.what + "File"
        Layout.fillWidth: true
        text: reader.fileText
        opens: true
        onClicked: reader.share.open(reader.what)
    }
    EntryField {
        id: text
        objectName: reader.what + "Text"
        label: reader.textLabel
        most: 4096
        inputMethodHints: Qt.ImhNoPredictiveText
    }
    ActionButton {
        objectName: "read" + reader.capitalized
        Layout.fillWidth: true
        visible: text.text.length > 0
        text: qsTr("Use this text")
        onClicked: {
            const typed = text.text
            text.text = ""
            reader.pasted(typed)
        }
    }
    Connections {
        target: reader.share
        function onOpened(what, name, bytes) {
            if (what === reader.what)
                scanner.readFile(name, bytes)
        }
    }
}
