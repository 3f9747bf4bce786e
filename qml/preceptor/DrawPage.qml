import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Preceptor

// A drawn signature: the weakest way, and said so.
PageFrame {
    id: page

    required property HandOver handOver

    kicker: qsTr("The weakest way")
    title: qsTr("Draw your signature")
    backText: qsTr("Back")
    onBack: handOver.back()

    NoteBox {
        grave: true
        text: qsTr("Nobody can tell later who drew it.") + " " + page.handOver.drawnWord
    }
    NoteBox {
        text: page.handOver.error
        grave: true
    }
    EntryField {
        id: name
        objectName: "drawnName"
        label: qsTr("Your name")
        most: 80
    }
    EntryField {
        id: credential
        objectName: "drawnCredential"
        label: qsTr("Your credential, such as CST or RN")
        most: 40
    }
    NoteBox { text: page.handOver.listedAs(credential.text) }
    SectionTitle { text: qsTr("Signature") }
    Rectangle {
        Layout.fillWidth: true
        implicitHeight: 160
        radius: Look.radius
        color: Look.colors.card
        border.color: Look.colors.edge
        SignaturePad {
            id: pad
            objectName: "signaturePad"
            anchors.fill: parent
            anchors.margins: 2
            color: Look.colors.ink
            Accessible.role: Accessible.Canvas
            Accessible.name: qsTr("Signature area")
        }
    }
    LinkButton {
        visible: !pad.empty
        text: qsTr("Draw it again")
        onClicked: pad.clear()
    }

    actions: [
        ActionButton {
            objectName: "signDrawn"
            Layout.fillWidth: true
            main: true
            enabled: name.text.trim().length > 0 && !pad.empty
            text: qsTr("Sign with this drawing")
            onClicked: page.handOver.signDrawn(name.text, credential.text, pad.strokes())
        }
    ]
}
