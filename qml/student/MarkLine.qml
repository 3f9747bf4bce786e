import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Student

// One mark as it stands, and the request to have it looked at again.
Pile {
    id: line

    required property studentMarkRow row
    property bool asking: false
    signal wantsToAsk
    signal asked(string reason)
    signal dropped

    spacing: 2
    RowLayout {
        spacing: 8
        Words {
            Layout.fillWidth: true
            text: line.row.label
            font.pixelSize: Look.secondarySize
        }
        Words {
            text: line.row.mark
            font.pixelSize: Look.secondarySize
            font.weight: Font.DemiBold
        }
    }
    Words {
        visible: text.length > 0
        text: line.row.note
        font.pixelSize: Look.smallSize
        color: Look.colors.quietInk
    }
    LinkButton {
        objectName: "askReview-" + line.row.skill
        visible: line.row.canAsk && !line.asking
        text: qsTr("Ask for a mark review")
        Accessible.name: qsTr("Ask for a mark review: %1").arg(line.row.label)
        onClicked: line.wantsToAsk()
    }
    ReasonForm {
        visible: line.asking
        prompt: qsTr("You did this: say when and how. Your instructor reads it; the preceptor's mark stays beside it.")
        doText: qsTr("Ask for the review")
        onDone: reason => line.asked(reason)
        onDropped: line.dropped()
    }
}
