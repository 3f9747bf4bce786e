import QtQuick
import Peelpack.Parts
import Peelpack.Evidence

// Sheets to confirm: draw them, ask the preceptors, keep what they say.
PageFrame {
    id: page
    objectName: "confirmPage"

    required property Confirming confirming
    property int asking: -1 ///< the row whose answer is written down
    signal openSheet(string key)

    title: qsTr("Sheets to confirm")
    backText: qsTr("Back")

    Words {
        text: qsTr("Signed sheets that are not confirmed yet, drawn at random. Ask each preceptor whether they scrubbed on these cases and gave these marks.")
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }
    Flow {
        spacing: 8
        PickList {
            objectName: "howMany"
            width: Math.min(implicitWidth, parent.width)
            label: qsTr("How many")
            choices: page.confirming.counts
            current: page.confirming.count
            onPicked: index => page.confirming.count = index
        }
        PickList {
            width: Math.min(implicitWidth, parent.width)
            visible: page.confirming.classes.length > 2
            label: qsTr("Class")
            choices: page.confirming.classes
            current: page.confirming.ofClass
            onPicked: index => page.confirming.ofClass = index
        }
    }
    EntryField {
        id: number
        objectName: "drawNumber"
        label: qsTr("Number of an earlier drawing")
        hint: qsTr("New ones")
        inputMethodHints: Qt.ImhDigitsOnly
        most: 20
    }
    NoteBox {
        text: page.confirming.error
        grave: true
    }
    Words {
        objectName: "drawn"
        visible: text.length > 0
        text: page.confirming.summary
        font.weight: Font.DemiBold
    }
    Repeater {
        model: page.confirming.rows
        Pile {
            id: asked
            required property int index
            required property confirmRow row
            spacing: 6
            SectionTitle {
                visible: asked.row.preceptor.length > 0
                text: qsTr("Ask %1").arg(asked.row.preceptor)
            }
            CardFrame {
                spacing: 6
                Words {
                    text: asked.row.title
                    font.weight: Font.DemiBold
                }
                Words {
                    text: asked.row.words
                    font.pixelSize: Look.secondarySize
                    color: Look.colors.quietInk
                }
                Words {
                    visible: text.length > 0
                    text: asked.row.state
                    font.pixelSize: Look.secondarySize
                    font.weight: Font.Medium
                }
                Flow {
                    id: answers
                    visible: page.asking !== asked.index
                    spacing: 8
                    ActionButton {
                        objectName: "theirs-" + asked.index
                        visible: asked.row.open
                        width: Math.min(implicitWidth, answers.width)
                        text: qsTr("It is theirs")
                        onClicked: page.asking = asked.index
                    }
                    ActionButton {
                        objectName: "notTheirs-" + asked.index
                        visible: asked.row.open
                        width: Math.min(implicitWidth, answers.width)
                        text: qsTr("Says: not mine")
                        onClicked: page.confirming.deny(asked.index)
                    }
                    ActionButton {
                        visible: asked.row.key.length > 0
                        width: Math.min(implicitWidth, answers.width)
                        text: qsTr("See the sheet")
                        onClicked: page.openSheet(asked.row.key)
                    }
                }
                ReasonForm {
                    visible: page.asking === asked.index
                    prompt: qsTr("How did you confirm it? You may leave this empty.")
                    mayBeEmpty: true
                    doText: qsTr("Confirmed: initial it")
                    onDone: reason => {
                        page.asking = -1
                        page.confirming.confirm(asked.index, reason)
                    }
                    onDropped: page.asking = -1
                }
            }
        }
    }
    SectionTitle {
        visible: denied.count > 0
        text: qsTr("Preceptors say that these are not theirs")
    }
    Repeater {
        id: denied
        model: page.confirming.denied
        ChoiceRow {
            required property confirmRow row
            text: row.preceptor + " · " + row.title
            detail: row.words + " · " + row.state
            opens: true
            onClicked: page.openSheet(row.key)
        }
    }

    actions: [
        ActionButton {
            objectName: "drawButton"
            main: true
            text: qsTr("Draw")
            onClicked: page.confirming.draw(number.text)
        }
    ]
}
