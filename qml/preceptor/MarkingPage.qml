import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Preceptor

// The ten skills, with one thumb. Nothing is chosen beforehand.
PageFrame {
    id: page

    required property Sitting sitting

    kicker: qsTr("You are marking the sheet of %1").arg(sitting.student)
    title: sitting.title
    backText: qsTr("Back")
    onBack: sitting.back()

    property bool withFeedback: sitting.feedback.length > 0

    ActionButton {
        objectName: "allYesButton"
        Layout.fillWidth: true
        text: qsTr("All five first-scrub skills: Yes")
        onClicked: page.sitting.markFirstScrubYes()
    }
    Repeater {
        model: page.sitting.marks
        Pile {
            id: line
            required property markingRow row
            required property int index
            readonly property bool narrow: page.width < 340 * Look.textScale
            Layout.fillWidth: true
            spacing: 4

            SectionTitle {
                visible: line.index === 0 || line.index === 5
                text: line.index === 0 ? qsTr("First-scrub skills") : qsTr("Second-scrub skills")
            }
            GridLayout {
                Layout.fillWidth: true
                columns: line.narrow ? 1 : 2
                columnSpacing: 8
                rowSpacing: 4
                layoutDirection: Look.leftHand && !line.narrow ? Qt.RightToLeft : Qt.LeftToRight
                Pile {
                    Layout.fillWidth: true
                    spacing: 0
                    Words {
                        Layout.fillWidth: true
                        text: line.row.label
                    }
                    Words {
                        Layout.fillWidth: true
                        visible: text.length > 0
                        text: line.row.before.length > 0 ? line.row.before : line.row.help
                        font.pixelSize: Look.smallSize
                        color: Look.colors.quietInk
                    }
                }
                ThreeWay {
                    objectName: "mark-" + line.row.skill
                    skill: line.row.label
                    mark: line.row.mark
                    onChosen: mark => page.sitting.mark(line.row.skill, mark)
                }
            }
            Pile {
                Layout.fillWidth: true
                visible: line.row.mark === 3
                spacing: 6
                EntryField {
                    label: line.row.firstScrub ? qsTr("Why N/A? Not called for on this case, because") : qsTr("Why N/A? You may leave it out")
                    text: line.row.reason
                    most: 200
                    onEdited: text => page.sitting.reason(line.row.skill, text)
                }
                Suggestions {
                    choices: !line.row.asksWhy ? [] : line.row.skill === 2 ? [qsTr("Policy calls for no counts here"), qsTr("No countable items were used")]
                                                    : [qsTr("Not part of this procedure"), qsTr("Done before the student came")]
                    onPicked: words => page.sitting.reason(line.row.skill, words)
                }
            }
        }
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("What you did not see, leave unmarked: somebody who saw it can mark it.")
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }
    LinkButton {
        objectName: "addFeedback"
        visible: !page.withFeedback
        text: qsTr("Add feedback")
        onClicked: page.withFeedback = true
    }
    EntryField {
        objectName: "feedbackField"
        visible: page.withFeedback
        label: qsTr("Feedback for the student: what went well, what to do next time")
        most: 500
        text: page.sitting.feedback
        onEdited: text => page.sitting.feedback = text
    }
    NoteBox {
        text: page.sitting.feedbackWarning
        grave: true
    }

    actions: [
        Words {
            Layout.fillWidth: true
            visible: text.length > 0
            text: page.sitting.missing.length > 0 ? page.sitting.missing
                                                   : (page.sitting.open > 0 ? qsTr("%n skill(s) not marked: they stay open.", "", page.sitting.open) : "")
            font.pixelSize: Look.secondarySize
            color: Look.colors.quietInk
        },
        ActionButton {
            objectName: "readBackButton"
            Layout.fillWidth: true
            main: true
            enabled: page.sitting.missing.length === 0
            text: page.sitting.place + 1 < page.sitting.total ? qsTr("On to the next sheet") : qsTr("Read back what I sign")
            onClicked: page.sitting.next()
        }
    ]
}
