import QtQuick
import Peelpack.Parts
import Peelpack.Instructor

// A sheet as a pack, with whose it is.
PackCard {
    id: card

    required property waitingRow row
    property bool chosen: false
    property bool namesStudent: true

    title: namesStudent ? row.student + " · " + row.title : row.title
    detail: row.detail
    standing: row.looked ? row.standing + " · " + qsTr("looked at") : row.standing
    seal: row.seal
    role: row.role
    roleCounts: row.roleCounts
    specialty: row.specialty
    remark: row.remark
    graveRemark: row.grave
    Accessible.checkable: true
    Accessible.checked: chosen

    // Which one is open, beside the list: a bar at its end, not a color alone.
    Rectangle {
        visible: card.chosen
        anchors.right: parent.right
        anchors.verticalCenter: parent.verticalCenter
        width: 5
        height: parent.height - 16
        radius: 2.5
        color: Look.colors.drape
    }
}
