import QtQuick
import QtQuick.Controls.Basic
import Peelpack.Parts
import Peelpack.Instructor
import Peelpack.Student

// The class at a glance: a table where there is room, cards on a phone.
FocusScope {
    id: page

    required property ClassBoard board
    required property MissingSets missingSets
    required property Share share
    readonly property bool table: width >= 860 * (0.3 + 0.7 * Look.textScale) && board.targets.length > 0 && board.targets.length < 7
    readonly property real nameWidth: 150 * Look.textScale
    readonly property real numberWidth: 68 * Look.textScale
    signal openStudent(string id)

    Rectangle {
        anchors.fill: parent
        color: Look.colors.paper
    }
    ListView {
        id: list
        objectName: "boardList"
        anchors.top: parent.top
        anchors.bottom: parent.bottom
        anchors.horizontalCenter: parent.horizontalCenter
        width: Math.min(page.table ? 1680 : 640, parent.width - 2 * Look.margin)
        model: page.board.rows
        spacing: 8
        clip: true
        cacheBuffer: 400
        boundsBehavior: Flickable.StopAtBounds
        ScrollBar.vertical: ScrollBar {}
        onHeaderHeightChanged: if (!moving && contentY < originY + headerHeight) Qt.callLater(positionViewAtBeginning)

        readonly property real headerHeight: headerItem ? headerItem.height : 0
        header: Pile {
            id: head
            width: ListView.view.width
            spacing: 8
            Item { implicitHeight: 12 }
            Words {
                text: page.board.summary
                color: Look.colors.quietInk
                font.pixelSize: Look.secondarySize
            }
            Words {
                text: qsTr("Class")
                font.pixelSize: Look.titleSize
                font.weight: Font.Bold
                Accessible.role: Accessible.Heading
            }
            MissingSetCard {
                sets: page.missingSets
                share: page.share
            }
            NoteBox {
                text: page.missingSets.missing.length > 0 ? "" : page.board.error
                grave: true
            }
            EntryField {
                objectName: "boardSearch"
                hint: qsTr("Student")
                text: page.board.text
                onEdited: text => page.board.text = text
            }
            Flow {
                spacing: 8
                PickList {
                    width: Math.min(implicitWidth, parent.width)
                    label: qsTr("Order")
                    choices: page.board.orders
                    current: page.board.order
                    onPicked: index => page.board.order = index
                }
                PickList {
                    width: Math.min(implicitWidth, parent.width)
                    visible: page.board.classes.length > 2
                    label: qsTr("Class")
                    choices: page.board.classes
                    current: page.board.ofClass
                    onPicked: index => page.board.ofClass = index
                }
            }
            Row {
                id: titles
                visible: page.table
                readonly property real cellWidth: (head.width - 28 - page.nameWidth - 2 * page.numberWidth - 136 * Look.textScale) / Math.max(1, page.board.targets.length)
                leftPadding: 14
                component Title: Words {
                    font.pixelSize: Look.smallSize
                    font.weight: Font.Medium
                    color: Look.colors.quietInk
                    rightPadding: 8
                }
                Title {
                    width: page.nameWidth
                    text: qsTr("Student")
                }
                Repeater {
                    model: page.table ? page.board.targets : []
                    Title {
                        required property string modelData
                        width: titles.cellWidth
                        text: modelData
                    }
                }
                Title {
                    width: page.numberWidth
                    text: qsTr("Missing")
                }
                Title {
                    width: page.numberWidth
                    text: qsTr("Last sheet")
                }
                Title {
                    width: 136 * Look.textScale
                    text: qsTr("To do")
                }
            }
            Item { implicitHeight: 1 }
            Words {
                visible: list.count === 0
                text: qsTr("Nobody fits. Clear the search or choose another class.")
                color: Look.colors.quietInk
            }
        }
        footer: Words {
            width: ListView.view.width
            topPadding: 12
            bottomPadding: 16
            font.pixelSize: Look.smallSize
            color: Look.colors.quietInk
            text: qsTr("Counted as recorded, placed as best. The program's director decides which requirements are in force and who has met them.")
        }
        delegate: BoardCard {
            width: ListView.view.width
            table: page.table
            nameWidth: page.nameWidth
            numberWidth: page.numberWidth
            onClicked: page.openStudent(row.id)
        }
    }
}
