import QtQuick
import QtQuick.Controls.Basic
import Peelpack.Parts

// Yes, No or N/A for one skill; none chosen: not marked. Choosing the chosen one again takes it back.
Row {
    id: three

    property int mark: 0 ///< 0 not marked, 1 Yes, 2 No, 3 N/A
    property string skill
    property real cell: Math.max(Look.touch, 46 * Look.textScale)
    signal chosen(int mark)

    spacing: -1

    Repeater {
        model: [qsTr("Yes"), qsTr("No"), qsTr("N/A")]
        AbstractButton {
            id: one
            required property int index
            required property string modelData
            readonly property bool on: three.mark === index + 1

            width: three.cell
            height: Math.max(Look.touch, label.implicitHeight + 16)
            text: modelData
            Accessible.role: Accessible.RadioButton
            Accessible.name: three.skill + ": " + modelData
            Accessible.checkable: true
            Accessible.checked: on
            onClicked: three.chosen(on ? 0 : index + 1)

            contentItem: Text {
                id: label
                text: one.text
                horizontalAlignment: Text.AlignHCenter
                verticalAlignment: Text.AlignVCenter
                font.pixelSize: Look.secondarySize
                font.weight: one.on ? Font.Bold : Font.Medium
                textFormat: Text.PlainText
                color: !one.on ? Look.colors.quietInk
                               : [Look.colors.onDrape, Look.colors.paper, Look.colors.onNotApplicable][one.index]
            }
            background: Rectangle {
                radius: 8
                color: !one.on ? Look.colors.card
                               : [Look.colors.drape, Look.colors.ink, Look.colors.notApplicable][one.index]
                border.color: one.visualFocus ? Look.colors.ink : Look.colors.edge
                border.width: one.visualFocus ? 2 : 1
            }
        }
    }
}
