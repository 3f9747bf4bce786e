import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Student

// A specialty under which a procedure may count, with what is counted there.
CardFrame {
    id: place

    required property placeRow row
    property bool namesProcedure: false ///< several procedures: say which
    property bool canChoose: false
    signal picked

    chosen: row.chosen
    RowLayout {
        Layout.fillWidth: true
        spacing: 8
        Pile {
            Layout.fillWidth: true
            spacing: 2
            Words {
                visible: place.namesProcedure
                text: place.row.procedureName
                font.pixelSize: Look.secondarySize
                color: Look.colors.quietInk
            }
            Words {
                text: place.row.label
                font.weight: Font.DemiBold
            }
            Words {
                text: place.row.words
                font.pixelSize: Look.secondarySize
                color: Look.colors.quietInk
            }
        }
        Chevron {
            tick: true
            visible: place.row.chosen
        }
        ActionButton {
            objectName: "fileUnder-" + place.row.category
            visible: !place.row.chosen && place.canChoose
            text: qsTr("Choose")
            Accessible.name: qsTr("Count under %1").arg(place.row.label)
            onClicked: place.picked()
        }
    }
    TallyStrokes {
        visible: place.row.count > 0
        count: place.row.count
        outlined: place.row.outlined
        color: Look.colors.drape
        dotColor: Look.colors.edge
    }
    Words {
        visible: text.length > 0
        text: place.row.hint
        font.pixelSize: Look.secondarySize
        font.weight: Font.Medium
        color: Look.colors.drape
    }
}
