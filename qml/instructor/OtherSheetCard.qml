import QtQuick
import Peelpack.Parts
import Peelpack.Instructor

// Another student's sheet of what seems to be the same operation.
CardFrame {
    id: card

    required property otherSheetRow row
    signal opened

    Words {
        text: card.row.student + " · " + card.row.role
        font.weight: Font.DemiBold
    }
    Words {
        visible: card.row.clashes
        text: qsTr("Both are first scrub: initialing needs a reason.")
        font.pixelSize: Look.secondarySize
        font.weight: Font.Medium
        color: Look.colors.caution
    }
    Words {
        text: card.row.detail
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }
    Words {
        text: card.row.marks
        font.pixelSize: Look.secondarySize
    }
    Words {
        text: card.row.standing
        font.pixelSize: Look.secondarySize
    }
    LinkButton {
        text: qsTr("Look at it")
        Accessible.name: qsTr("Look at the sheet of %1").arg(card.row.student)
        onClicked: card.opened()
    }
}
