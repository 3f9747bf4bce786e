import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Student

// All sheets. A list of thousands: only what is on screen exists.
FocusScope {
    id: page

    required property SheetList sheets
    readonly property alias list: list
    signal openSheet(string id)
    signal giveAway(var sheets)

    property var picked: [] ///< ids for one sitting
    property bool picking: false

    Rectangle {
        anchors.fill: parent
        color: Look.colors.paper
    }
    ListView {
        id: list
        objectName: "sheetList"
        anchors.top: parent.top
        anchors.bottom: foot.top
        anchors.horizontalCenter: parent.horizontalCenter
        width: Math.min(640, parent.width - 2 * Look.margin)
        model: page.sheets.rows
        spacing: 8
        clip: true
        reuseItems: true
        cacheBuffer: 400
        boundsBehavior: Flickable.StopAtBounds
        activeFocusOnTab: true
        ScrollBar.vertical: ScrollBar {}
        // The header grows while it is laid out and when filters wrap: the list begins with it.
        onHeaderHeightChanged: if (!moving && contentY < originY + headerHeight) Qt.callLater(positionViewAtBeginning)

        readonly property real headerHeight: headerItem ? headerItem.height : 0
        header: Pile {
            width: ListView.view.width
            spacing: 8
            Item { implicitHeight: 12 }
            Words {
                text: page.sheets.summary
                color: Look.colors.quietInk
                font.pixelSize: Look.secondarySize
            }
            Words {
                Layout.fillWidth: true
                text: qsTr("Case sheets")
                font.pixelSize: Look.titleSize
                font.weight: Font.Bold
                Accessible.role: Accessible.Heading
            }
            EntryField {
                objectName: "sheetSearch"
                hint: qsTr("Search")
                field.Accessible.description: qsTr("Procedure, surgeon, site or room")
                text: page.sheets.text
                onEdited: text => page.sheets.text = text
            }
            Flow {
                Layout.fillWidth: true
                spacing: 8
                PickList {
                    label: qsTr("State")
                    choices: page.sheets.states
                    current: page.sheets.state
                    onPicked: index => page.sheets.state = index
                }
                PickList {
                    label: qsTr("Role")
                    choices: page.sheets.roles
                    current: page.sheets.role
                    onPicked: index => page.sheets.role = index
                }
                PickList {
                    label: qsTr("Specialty")
                    choices: page.sheets.specialties
                    current: page.sheets.specialty
                    onPicked: index => page.sheets.specialty = index
                }
            }
            Item { implicitHeight: 1 }
            Words {
                visible: list.count === 0
                text: qsTr("No sheet fits. Clear the search or choose another filter.")
                color: Look.colors.quietInk
            }
        }
        footer: Item {
            width: 1
            height: 16
        }
        delegate: SheetCard {
            readonly property bool canPick: row.seal === PackSeal.Open
            width: ListView.view.width
            role: page.picking && page.picked.indexOf(row.id) >= 0 ? qsTr("In this sitting") : row.role
            roleCounts: row.roleCounts || page.picking
            opacity: page.picking && !canPick ? 0.55 : 1
            onClicked: {
                if (!page.picking)
                    page.openSheet(row.id)
                else if (canPick)
                    page.pick(row.id)
            }
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
            objectName: "pickForSitting"
            Layout.fillWidth: true
            visible: !page.picking
            text: qsTr("Several sheets for one preceptor")
            onClicked: {
                page.picking = true
                page.picked = []
                page.sheets.state = 1
            }
        }
        RowLayout {
            visible: page.picking
            Layout.fillWidth: true
            spacing: 8
            ActionButton {
                text: qsTr("Cancel")
                onClicked: page.stopPicking()
            }
            ActionButton {
                objectName: "giveSitting"
                Layout.fillWidth: true
                main: true
                enabled: page.picked.length > 0
                text: page.picked.length === 0 ? qsTr("Tap the sheets") : qsTr("Give the phone for %n sheet(s)", "", page.picked.length)
                onClicked: {
                    const sheets = page.picked
                    page.stopPicking()
                    page.giveAway(sheets)
                }
            }
        }
    }

    function pick(id) {
        const at = page.picked.indexOf(id)
        page.picked = at >= 0 ? page.picked.filter(other => other !== id) : page.picked.concat([id])
    }
    function stopPicking() {
        page.picking = false
        page.picked = []
        page.sheets.state = 0
    }
}
