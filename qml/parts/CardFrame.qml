import QtQuick
import QtQuick.Layouts
import Peelpack.Parts

// Something that lies on the paper. Its children stand below each other.
Rectangle {
    id: frame

    default property alias content: column.data
    property real padding: 14
    property alias spacing: column.spacing
    property bool chosen: false

    Layout.fillWidth: true
    implicitHeight: column.implicitHeight + 2 * padding
    implicitWidth: 200
    radius: Look.radius
    color: Look.colors.card
    border.color: chosen ? Look.colors.drape : Look.colors.hairline
    border.width: chosen ? 2 : 1

    Pile {
        id: column
        x: frame.padding
        y: frame.padding
        width: frame.width - 2 * frame.padding
        spacing: 4
    }
}
