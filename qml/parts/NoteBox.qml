import QtQuick
import QtQuick.Layouts
import Peelpack.Parts

// A sentence that the person should see. `grave`: a caution.
Rectangle {
    id: box

    property alias text: label.text
    property bool grave: false

    Layout.fillWidth: true
    visible: text.length > 0
    implicitHeight: label.implicitHeight + 22
    radius: Look.radius
    color: grave ? Look.colors.cautionWash : Look.colors.wash

    Words {
        id: label
        anchors.fill: parent
        anchors.margins: 11
        font.pixelSize: Look.secondarySize
        font.weight: Font.Medium
        color: box.grave ? Look.colors.caution : Look.colors.onWash
        Accessible.role: box.grave ? Accessible.AlertMessage : Accessible.StaticText
    }
}
