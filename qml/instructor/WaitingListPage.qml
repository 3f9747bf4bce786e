import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Instructor

// The sheets that wait. A list of thousands: only what is on screen exists.
FocusScope {
    id: page

    required property StaffPages staff
    property bool hints: false
    readonly property CheckList waiting: staff.list
    readonly property alias list: list

    Rectangle {
        anchors.fill: parent
        color: Look.colors.paper
    }
    ListView {
        id: list
        objectName: "waitingList"
        anchors.top: parent.top
        anchors.bottom: foot.top
        anchors.horizontalCenter: parent.horizontalCenter
        width: Math.min(640, parent.width - 2 * Look.margin)
        model: page.waiting.rows
        spacing: 8
        clip: true
        cacheBuffer: 400
        boundsBehavior: Flickable.StopAtBounds
        ScrollBar.vertical: ScrollBar {}
        onHeaderHeightChanged: if (!moving && contentY < originY + headerHeight) Qt.callLater(positionViewAtBeginning)

        readonly property real headerHeight: headerItem ? headerItem.height : 0
        header: Pile {
            width: ListView.view.width
            spacing: 8
            Item { implicitHeight: 12 }
            Words {
                Layout.fillWidth: true
                text: page.waiting.summary
                color: Look.colors.quietInk
                font.pixelSize: Look.secondarySize
            }
            Words {
                Layout.fillWidth: true
                text: qsTr("Check")
                font.pixelSize: Look.titleSize
                font.weight: Font.Bold
                Accessible.role: Accessible.Heading
            }
            NoteBox {
                text: page.staff.bar
                grave: true
            }
            NoteBox {
                text: page.staff.pending.error.length > 0 ? page.staff.pending.error : page.waiting.error
                grave: true
            }
            EntryField {
                objectName: "waitingSearch"
                hint: qsTr("Search")
                field.Accessible.description: qsTr("Student, procedure, surgeon, site, room or preceptor")
                text: page.waiting.text
                onEdited: text => page.waiting.text = text
            }
            Flow {
                Layout.fillWidth: true
                spacing: 8
                PickList {
                    width: Math.min(implicitWidth, parent.width)
                    objectName: "groupPick"
                    label: qsTr("Which ones")
                    choices: page.waiting.groups
                    current: page.waiting.group
                    onPicked: index => page.waiting.group = index
                }
                PickList {
                    width: Math.min(implicitWidth, parent.width)
                    label: qsTr("Order")
                    choices: page.waiting.orders
                    current: page.waiting.order
                    onPicked: index => page.waiting.order = index
                }
                PickList {
                    width: Math.min(implicitWidth, parent.width)
                    visible: page.waiting.classes.length > 2
                    label: qsTr("Class")
                    choices: page.waiting.classes
                    current: page.waiting.ofClass
                    onPicked: index => page.waiting.ofClass = index
                }
            }
            LinkButton {
                objectName: "aboutPreceptors"
                text: qsTr("Look over the preceptors' signatures")
                visible: page.waiting.aboutPreceptors.length === 0
                onClicked: page.waiting.askAboutPreceptors()
            }
            Repeater {
                model: page.waiting.aboutPreceptors
                NoteBox {
                    required property string modelData
                    text: modelData
                }
            }
            Item { implicitHeight: 1 }
            Words {
                Layout.fillWidth: true
                visible: list.count === 0
                text: qsTr("Nothing to look at here. New parcels come in under \"Take in, send\".")
                color: Look.colors.quietInk
            }
        }
        footer: Item {
            width: 1
            height: 16
        }
        delegate: WaitingCard {
            width: ListView.view.width
            chosen: row.key === page.waiting.current
            onClicked: page.waiting.show(row.key)
        }
    }
    Pile {
        id: foot
        anchors.bottom: parent.bottom
        anchors.bottomMargin: 8
        anchors.horizontalCenter: parent.horizontalCenter
        width: list.width
        spacing: 8
        ActionButton {
            objectName: "initialLooked"
            visible: page.waiting.looked > 0
            text: qsTr("Initial the %n plain sheet(s) that you looked at", "", page.waiting.looked) + (page.hints ? "  [L]" : "")
            onClicked: page.waiting.initialLooked()
        }
    }
    Connections {
        target: page.waiting
        function onChanged() {
            if (page.waiting.at >= 0)
                list.positionViewAtIndex(page.waiting.at, ListView.Contain)
        }
    }
}
