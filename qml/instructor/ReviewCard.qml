import QtQuick
import Peelpack.Parts
import Peelpack.Instructor

// A student's request that a mark be looked at again, and the answer that accepts it. Initialing or returning the sheet
// with a reason is the other answer.
CardFrame {
    id: card

    required property askedReviewRow row
    property bool canAct: true
    property bool answering: false
    property bool hints: false
    signal wantsToAnswer
    signal accepted(string reason)
    signal dropped

    spacing: 8
    Words {
        text: qsTr("Mark review asked for")
        font.weight: Font.DemiBold
    }
    Words { text: card.row.title }
    Words {
        text: qsTr("The student: \"%1\"").arg(card.row.reason)
    }
    Words {
        text: card.row.effect
        font.pixelSize: Look.secondarySize
        font.weight: Font.Medium
        color: Look.colors.drape
    }
    ActionButton {
        objectName: "acceptReview-" + card.row.skill
        visible: card.canAct && !card.answering
        text: qsTr("Accept the request") + (card.hints ? "  [Y]" : "")
        onClicked: card.wantsToAnswer()
    }
    ReasonForm {
        visible: card.answering
        prompt: qsTr("What do you know about it? The preceptor's mark stays on the record beside your answer.")
        doText: qsTr("Accept it")
        onDone: reason => card.accepted(reason)
        onDropped: card.dropped()
    }
    Words {
        visible: card.canAct
        text: qsTr("To decline it, initial or return the sheet and say why.")
        font.pixelSize: Look.smallSize
        color: Look.colors.quietInk
    }
}
