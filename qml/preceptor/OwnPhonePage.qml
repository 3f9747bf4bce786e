import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Preceptor

// The preceptor marks and signs on their own phone: it scans this code, and this phone scans its answer.
PageFrame {
    id: page

    required property HandOver handOver
    required property Camera camera
    required property Share share

    property bool answering: false

    kicker: handOver.total > 1 ? qsTr("Sheet %1 of %2").arg(handOver.place + 1).arg(handOver.total) : handOver.title
    title: answering ? qsTr("Scan the answer") : (code.fits ? qsTr("Scan this with your phone") : qsTr("Send this to your phone"))
    backText: qsTr("Back")
    onBack: {
        if (answering)
            answering = false
        else
            handOver.back()
    }

    NoteBox {
        text: page.handOver.error
        grave: true
    }
    QrCode {
        id: code
        visible: !page.answering && fits
        implicitHeight: Math.min(420, page.width - 2 * Look.margin)
        bytes: page.handOver.request
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("Code of the sheet to be signed")
    }
    NoteBox {
        visible: !page.answering && !code.fits
        grave: true
        text: qsTr("This sheet has too much text for one code. Send the request as a file: it works the same.")
    }
    Words {
        Layout.fillWidth: true
        text: page.answering ? qsTr("Hold the code on your phone before this camera, or choose a picture or file of it.")
                             : qsTr("Open Peelpack on your phone, scan this code, mark the ten skills and sign there. Then show its answer to this phone.")
        color: Look.colors.quietInk
    }
    Pile {
        Layout.fillWidth: true
        visible: page.answering
        spacing: Look.gap
        QrScanner {
            id: scanner
            Layout.fillWidth: true
            visible: page.camera.available
            camera: page.camera
            scanning: page.answering && page.camera.available
            onFound: bytes => page.handOver.takeAnswer(bytes)
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
            onClicked: scanner.scanning = Qt.binding(() => page.answering && page.camera.available)
        }
        ChoiceRow {
            objectName: "answerFile"
            Layout.fillWidth: true
            text: qsTr("A picture or file of the answer")
            opens: true
            onClicked: page.share.open("answer")
        }
    }
    ChoiceRow {
        objectName: "requestFile"
        Layout.fillWidth: true
        visible: !page.answering
        text: qsTr("Send the request as a file instead")
        opens: true
        detail: saved.where
        onClicked: page.share.save("request.peelsign", page.handOver.request)
    }
    Connections {
        id: saved
        property string where
        target: page.share
        function onSaved(where) {
            saved.where = qsTr("Saved as %1").arg(where)
        }
        function onFailed(why) {
            saved.where = why
        }
        function onOpened(what, name, bytes) {
            if (what === "answer")
                scanner.readFile(name, bytes)
        }
    }

    actions: [
        ActionButton {
            objectName: "toAnswer"
            Layout.fillWidth: true
            visible: !page.answering
            main: true
            text: qsTr("I signed on my phone")
            onClicked: page.answering = true
        }
    ]
}
