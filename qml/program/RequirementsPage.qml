import QtQuick
import Peelpack.Parts
import Peelpack.Program

// Changes of requirements, coming and so far; for the director another one, read back before it is signed.
PageFrame {
    id: page
    objectName: "requirementsPage"

    required property RequirementChanges changes
    required property Share share
    property bool changing: false

    title: !changing ? qsTr("Changes of requirements")
                     : changes.readingBack ? qsTr("Is this the change?") : qsTr("Another requirement set")
    backText: qsTr("Back")
    Component.onCompleted: changes.read()

    component Lines: CardFrame {
        property alias lines: repeater.model
        readonly property int count: repeater.count
        visible: count > 0
        spacing: 10
        Repeater {
            id: repeater
            Words {
                required property string modelData
                text: modelData
                font.pixelSize: Look.secondarySize
            }
        }
    }

    NoteBox {
        text: page.changes.done
        visible: !page.changing && text.length > 0
    }
    Pile {
        visible: !page.changing
        spacing: Look.gap
        Words {
            visible: coming.count + soFar.count === 0
            text: qsTr("Nothing was changed: the set of the program's rules is in force for every class.")
            color: Look.colors.quietInk
        }
        SectionTitle {
            visible: coming.count > 0
            text: qsTr("Coming")
        }
        Lines {
            id: coming
            lines: page.changes.coming
        }
        SectionTitle {
            visible: soFar.count > 0
            text: qsTr("So far, the latest first")
        }
        Lines {
            id: soFar
            lines: page.changes.soFar
        }
        Words {
            visible: !page.changes.mayChange
            text: qsTr("Only the director changes requirements.")
            font.pixelSize: Look.secondarySize
            color: Look.colors.quietInk
        }
    }
    Pile {
        visible: page.changing && !page.changes.readingBack
        spacing: Look.gap
        SectionTitle { text: qsTr("For whom") }
        Repeater {
            model: page.changes.classes
            ChoiceRow {
                required property int index
                required property string modelData
                objectName: "changeFor-" + index
                text: modelData
                chosen: page.changes.ofClass === index
                onClicked: page.changes.ofClass = index
            }
        }
        EntryField {
            objectName: "changeFrom"
            label: qsTr("First day on which it is in force: year-month-day")
            hint: "2027-01-11"
            most: 10
            inputMethodHints: Qt.ImhPreferNumbers | Qt.ImhNoPredictiveText
            text: page.changes.from
            onEdited: text => page.changes.from = text
        }
        SectionTitle { text: qsTr("Requirement set: you decide, nothing is chosen beforehand") }
        SetChoice {
            sets: page.changes.sets
            share: page.share
            called: "changeTo"
            onChoose: id => page.changes.choose(id)
            onOpenSet: file => page.changes.openSet(file)
        }
        EntryField {
            objectName: "changeReason"
            label: qsTr("Why; everybody in the program sees it")
            most: 400
            text: page.changes.reason
            onEdited: text => page.changes.reason = text
        }
    }
    Pile {
        visible: page.changing && page.changes.readingBack
        spacing: Look.gap
        Words {
            objectName: "changeLine"
            text: page.changes.line
            font.weight: Font.DemiBold
        }
        SectionTitle { text: qsTr("What the set requires") }
        Lines { lines: page.changes.targets }
        Words {
            text: qsTr("Students and instructors see both tallies: under this set and under the other one. You decide as director which set is in force; this app sets no rule.")
            font.pixelSize: Look.secondarySize
            color: Look.colors.quietInk
        }
    }

    actions: [
        NoteBox {
            text: page.changes.error
            visible: page.changing && text.length > 0
            grave: true
        },
        ActionButton {
            objectName: "beginChange"
            visible: page.changes.mayChange && !page.changing
            main: true
            text: qsTr("Put another set in force")
            onClicked: {
                page.changes.beginDraft()
                page.changing = true
            }
        },
        ActionButton {
            objectName: "readChangeBack"
            visible: page.changing && !page.changes.readingBack
            main: true
            text: qsTr("Read the change back")
            onClicked: page.changes.readBack()
        },
        ActionButton {
            objectName: "signChange"
            visible: page.changing && page.changes.readingBack
            main: true
            text: qsTr("Sign: put it in force")
            onClicked: {
                if (page.changes.sign())
                    page.changing = false
            }
        },
        ActionButton {
            visible: page.changing
            text: page.changes.readingBack ? qsTr("Change something") : qsTr("Leave the requirements as they are")
            onClicked: {
                if (page.changes.readingBack)
                    page.changes.backToDraft()
                else
                    page.changing = false
            }
        }
    ]
}
