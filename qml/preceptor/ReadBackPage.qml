import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Preceptor

// What will be signed, in words.
PageFrame {
    id: page

    required property Sitting sitting

    kicker: qsTr("Before you sign")
    title: qsTr("This is what you sign")
    backText: qsTr("Back")
    onBack: sitting.back()

    CardFrame {
        spacing: 8
        Repeater {
            model: page.sitting.readBack
            Words {
                required property string modelData
                Layout.fillWidth: true
                text: modelData
            }
        }
    }
    Words {
        Layout.fillWidth: true
        font.weight: Font.Medium
        text: qsTr("I scrubbed on this case with this student. These are my own marks for what I saw.")
    }

    actions: [
        ActionButton {
            objectName: "toSigning"
            Layout.fillWidth: true
            main: true
            text: qsTr("That is right, sign")
            onClicked: page.sitting.next()
        }
    ]
}
