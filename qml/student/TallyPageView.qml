import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Student

// The tally: what counts, what is short, what to ask for, why a case does not count.
PageFrame {
    id: page

    required property TallyOfStudent tally
    required property string name
    required property MissingSets missingSets
    required property Share share
    signal openSheet(string id)

    property bool showLeft: false

    kicker: page.name + (tally.summary.length > 0 ? " · " + tally.summary : "")
    title: qsTr("Tally")

    MissingSetCard {
        sets: page.missingSets
        share: page.share
    }
    NoteBox {
        text: page.missingSets.missing.length > 0 ? "" : page.tally.error
        grave: true
    }
    CardFrame {
        objectName: "completionCard"
        visible: page.tally.completion.length > 0
        spacing: 6
        Words {
            objectName: "completionTitle"
            text: page.tally.completion
            font.weight: Font.DemiBold
        }
        Repeater {
            model: page.tally.completionLines
            Words {
                required property string modelData
                text: modelData
                font.pixelSize: Look.secondarySize
            }
        }
    }
    CardFrame {
        visible: page.tally.next.length > 0
        color: Look.colors.wash
        border.width: 0
        Words {
            Layout.fillWidth: true
            text: qsTr("Ask for next")
            font.weight: Font.DemiBold
            color: Look.colors.onWash
        }
        Words {
            Layout.fillWidth: true
            text: page.tally.next
            font.pixelSize: Look.secondarySize
            color: Look.colors.onWash
        }
    }
    Repeater {
        model: page.tally.otherSets
        NoteBox {
            required property string modelData
            objectName: "otherSet"
            text: modelData
        }
    }
    Repeater {
        model: page.tally.counts
        Pile {
            id: line
            required property countRow row
            spacing: 4
            Rectangle {
                Layout.fillWidth: true
                visible: line.row.isTarget
                implicitHeight: 1
                color: Look.colors.hairline
            }
            RowLayout {
                Layout.fillWidth: true
                spacing: 8
                Words {
                    Layout.fillWidth: true
                    text: line.row.label
                    font.pixelSize: line.row.isTarget ? Look.cardTitleSize : Look.secondarySize
                    font.weight: line.row.isTarget ? Font.DemiBold : Font.Normal
                }
                Words {
                    text: line.row.words
                    font.pixelSize: line.row.isTarget ? Look.bodySize : Look.secondarySize
                    color: Look.colors.quietInk
                }
            }
            TallyStrokes {
                Layout.fillWidth: true
                count: line.row.count
                needed: line.row.needed
                outlined: line.row.outlined
                strokeHeight: line.row.isTarget ? 17 : 13
                color: line.row.isTarget ? Look.colors.drape : Look.colors.quietInk
                dotColor: Look.colors.edge
                Accessible.role: Accessible.Graphic
                Accessible.name: line.row.label + ": " + line.row.words
            }
        }
    }
    Words {
        Layout.fillWidth: true
        visible: text.length > 0
        text: page.tally.left
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }
    ActionButton {
        objectName: "whyNotButton"
        Layout.fillWidth: true
        visible: notCounted.count > 0 || page.tally.notCounted.rowCount() > 0
        text: page.showLeft ? qsTr("Hide what does not count") : qsTr("Why cases do not count")
        onClicked: page.showLeft = !page.showLeft
    }
    Repeater {
        id: notCounted
        model: page.showLeft ? page.tally.notCounted : null
        ChoiceRow {
            required property notCountedRow row
            Layout.fillWidth: true
            text: row.title
            detail: row.why
            opens: true
            onClicked: page.openSheet(row.sheet)
        }
    }
    Words {
        Layout.fillWidth: true
        visible: page.tally.setTitle.length > 0
        text: qsTr("%1. The program's director decides which requirements are in force and who has met them.").arg(page.tally.setTitle)
        font.pixelSize: Look.smallSize
        color: Look.colors.quietInk
    }
}
