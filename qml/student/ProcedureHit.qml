import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Student

// A procedure that can be taken into the sheet, and whether it is a favorite.
RowLayout {
    id: hit

    required property procedureRow row
    signal taken
    signal favored(bool on)

    spacing: 4
    layoutDirection: Look.leftHand ? Qt.RightToLeft : Qt.LeftToRight
    ChoiceRow {
        Layout.fillWidth: true
        text: hit.row.name
        detail: (hit.row.matched.length > 0 ? hit.row.matched + " · " : "") + hit.row.specialty
        onClicked: hit.taken()
    }
    StarButton {
        objectName: "star-" + hit.row.id
        on: hit.row.favorite
        text: qsTr("Favorite: %1").arg(hit.row.name)
        onTurned: on => hit.favored(on)
    }
}
