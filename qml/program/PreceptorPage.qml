import QtQuick
import Peelpack.Parts
import Peelpack.Program

// One preceptor with their cards and phones.
PageFrame {
    id: page
    objectName: "preceptorPage"

    required property Preceptors preceptors
    property int ending: -1 ///< the card or phone that is about to be ended
    signal makeCard

    kicker: preceptors.what
    title: preceptors.name
    backText: qsTr("Back")

    NoteBox {
        text: page.preceptors.error
        grave: true
    }
    Repeater {
        model: page.preceptors.keys
        CardFrame {
            id: key
            required property signingKeyRow row
            spacing: 8
            Words {
                text: key.row.title
                font.weight: Font.DemiBold
            }
            Words {
                text: key.row.detail
                font.pixelSize: Look.secondarySize
                color: Look.colors.quietInk
            }
            ActionButton {
                objectName: "endKey"
                visible: key.row.mayEnd && page.ending !== key.row.index
                grave: true
                text: qsTr("End it")
                onClicked: page.ending = key.row.index
            }
            ReasonForm {
                visible: page.ending === key.row.index
                prompt: qsTr("What you had received before stays good; the rest is not counted until somebody admits it. Why is it ended?")
                doText: qsTr("End it")
                grave: true
                takesFocus: false
                suggestions: [qsTr("The card is lost"), qsTr("Somebody else knows the PIN"), qsTr("Does not work there any more")]
                onDropped: page.ending = -1
                onDone: reason => {
                    page.ending = -1
                    page.preceptors.end(key.row.index, reason)
                }
            }
        }
    }
    SectionTitle { text: qsTr("Standing with the program") }
    Words {
        objectName: "standing"
        text: page.preceptors.standing
    }
    EntryField {
        objectName: "orientedOn"
        visible: page.preceptors.mayStand
        label: qsTr("Oriented on: year-month-day; empty: not yet")
        hint: "2027-01-11"
        most: 10
        inputMethodHints: Qt.ImhPreferNumbers | Qt.ImhNoPredictiveText
        text: page.preceptors.oriented
        onEdited: text => page.preceptors.oriented = text
    }
    OnOffRow {
        objectName: "preceptorActive"
        visible: page.preceptors.mayStand
        text: qsTr("Active")
        detail: qsTr("Off: what was signed stays, and a new signature raises a question.")
        on: page.preceptors.active
        onTurned: on => page.preceptors.active = on
    }
    ActionButton {
        objectName: "signStanding"
        visible: page.preceptors.mayStand && page.preceptors.standsOtherwise
        text: qsTr("Sign: this is how it stands")
        onClicked: page.preceptors.signStanding()
    }

    actions: [
        ActionButton {
            objectName: "cardAgain"
            main: true
            text: qsTr("Make another signing card")
            onClicked: page.makeCard()
        }
    ]
}
