import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Preceptor

// The signing key of this phone, for an instructor who vouches for it.
PageFrame {
    id: page

    required property SigningPhone signing
    required property Share share

    property string saved ///< where to, or why not

    kicker: signing.who
    title: qsTr("Your signing key")
    backText: qsTr("Back")

    Words {
        Layout.fillWidth: true
        text: qsTr("Show it to an instructor of the program, in person. What you sign counts once they vouch for this key. It is no secret.")
        color: Look.colors.quietInk
    }
    QrCode {
        implicitHeight: Math.min(300, page.width - 2 * Look.margin)
        bytes: page.signing.keyCode
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("Code of your signing key")
    }
    CardFrame {
        Words {
            objectName: "keyText"
            Layout.fillWidth: true
            text: page.signing.keyText
        }
    }
    ChoiceRow {
        objectName: "saveKey"
        Layout.fillWidth: true
        text: qsTr("Save it as a text file")
        detail: page.saved
        opens: true
        onClicked: page.share.save("signing-key.txt", page.signing.keyCode)
    }
    Connections {
        target: page.share
        function onSaved(where) {
            page.saved = qsTr("Saved as %1").arg(where)
        }
        function onFailed(why) {
            page.saved = why
        }
    }
}
