import QtQuick
import QtQuick.Layouts
import Peelpack.Parts

// A code that is shown only now and kept on paper, and what it is for.
CardFrame {
    id: card

    required property string code
    property alias codeName: shown.objectName
    property string use: qsTr("Shown only now. It opens this device's vault when you have forgotten your PIN or passphrase: keep it on paper, not on this device.")

    Words {
        id: shown
        Layout.fillWidth: true
        text: card.code.replace(/-/g, "-\u200b") // a line ends between groups only
        font.pixelSize: Look.cardTitleSize
        font.weight: Font.DemiBold
    }
    Words {
        Layout.fillWidth: true
        text: card.use
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }
}
