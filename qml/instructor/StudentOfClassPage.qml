import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Instructor
import Peelpack.Student

// One student: the tally at each level, how the skills went, the feedback, and every sheet.
PageFrame {
    id: page

    required property StudentOfClass student
    readonly property bool broad: width > 900 * Look.textScale
    property int shown: 12 ///< sheets, more on demand
    signal openSheet(string key)
    signal openCompletion
    signal openPapers

    widest: broad ? 1240 : 640
    kicker: student.ofClass
    title: student.name
    backText: qsTr("Class")

    NoteBox { text: page.student.decision }
    Flow {
        id: levels
        Layout.fillWidth: true
        spacing: 8
        Repeater {
            model: page.student.levels
            ActionButton {
                required property int index
                required property string modelData
                objectName: "level-" + index
                main: page.student.level === index
                text: modelData
                width: Math.min(implicitWidth, levels.width)
                Accessible.checkable: true
                Accessible.checked: main
                onClicked: page.student.level = index
            }
        }
    }
    Repeater {
        model: page.student.otherSets
        NoteBox {
            required property string modelData
            objectName: "otherSet"
            text: modelData
        }
    }
    Row {
        id: beside
        spacing: Look.gap
        Pile {
            width: page.broad ? (beside.width - beside.spacing) / 2 : beside.width
            spacing: Look.gap
            Repeater {
                model: page.student.counts
                Pile {
                    id: line
                    required property countRow row
                    spacing: 4
                    Words {
                        visible: line.row.isTarget
                        text: line.row.label + ": " + line.row.words
                        font.weight: Font.DemiBold
                    }
                    Row {
                        Words {
                            visible: !line.row.isTarget
                            width: line.width * 0.5
                            rightPadding: 8
                            text: line.row.label + ": " + line.row.words
                            font.pixelSize: Look.secondarySize
                        }
                        TallyStrokes {
                            width: line.row.isTarget ? line.width : line.width * 0.5
                            count: line.row.count
                            needed: line.row.needed
                            outlined: line.row.outlined
                            strokeHeight: line.row.isTarget ? 15 : 12
                            color: line.row.isTarget ? Look.colors.drape : Look.colors.quietInk
                            dotColor: Look.colors.edge
                            Accessible.role: Accessible.Graphic
                            Accessible.name: line.row.label + ": " + line.row.words
                        }
                    }
                }
            }
            NoteBox { text: page.student.next }
            Words {
                visible: text.length > 0
                text: page.student.outside
                font.pixelSize: Look.secondarySize
                color: Look.colors.quietInk
            }
            Repeater {
                model: page.student.toAsk
                NoteBox {
                    required property string modelData
                    text: modelData
                    grave: true
                }
            }
        }
        Pile {
            visible: page.broad
            width: (beside.width - beside.spacing) / 2
            spacing: 10
            SectionTitle { text: qsTr("Skills, month by month") }
            Repeater {
                model: page.broad ? page.student.trends : null
                TrendLine {}
            }
        }
    }
    ChoiceRow {
        objectName: "completionRow"
        text: qsTr("Completion")
        detail: qsTr("Whether the requirements are met, and the record of it")
        opens: true
        onClicked: page.openCompletion()
    }
    ChoiceRow {
        objectName: "papersOfStudent"
        text: qsTr("Papers of this student")
        detail: qsTr("Case log, rows for a spreadsheet")
        opens: true
        onClicked: page.openPapers()
    }
    SectionTitle {
        visible: !page.broad && trends.count > 0
        text: qsTr("Skills, month by month")
    }
    Repeater {
        id: trends
        model: page.broad ? null : page.student.trends
        TrendLine {}
    }
    SectionTitle {
        visible: page.student.feedback.length > 0
        text: qsTr("Feedback")
    }
    Repeater {
        model: page.student.feedback.slice(0, page.shown)
        Words {
            required property string modelData
            text: modelData
            font.pixelSize: Look.secondarySize
        }
    }
    SectionTitle { text: qsTr("Case sheets") }
    Repeater {
        model: Math.min(page.shown, sheets.count)
        WaitingCard {
            required property int index
            row: sheets.rowAt(index)
            namesStudent: false
            onClicked: page.openSheet(row.key)
        }
    }
    ActionButton {
        visible: page.shown < sheets.count
        text: qsTr("Show more of %1").arg(sheets.count)
        onClicked: page.shown = page.shown + 24
    }
    Words {
        visible: sheets.count === 0
        text: qsTr("Nothing of this student has come in yet.")
        color: Look.colors.quietInk
    }
    QtObject {
        id: sheets
        property int count: 0
        function rowAt(index) {
            return page.student.sheets.data(page.student.sheets.index(index, 0), Qt.UserRole)
        }
    }
    Component.onCompleted: sheets.count = page.student.sheets.rowCount()
    Connections {
        target: page.student
        function onChanged() {
            sheets.count = 0
            sheets.count = page.student.sheets.rowCount()
        }
    }
}
