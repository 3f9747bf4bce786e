import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Preceptor

// Everything that this phone signed, to be looked through. Only what is on screen exists.
FocusScope {
    id: page

    required property SigningPhone signing
    signal back

    Rectangle {
        anchors.fill: parent
        color: Look.colors.paper
    }
    ListView {
        id: list
        objectName: "signedList"
        anchors.fill: parent
        anchors.leftMargin: Math.max(Look.margin, (parent.width - 640) / 2)
        anchors.rightMargin: anchors.leftMargin
        model: page.signing.signedHere
        spacing: 8
        clip: true
        boundsBehavior: Flickable.StopAtBounds
        activeFocusOnTab: true
        ScrollBar.vertical: ScrollBar {}
        onHeaderHeightChanged: if (!moving && contentY < originY + headerHeight) Qt.callLater(positionViewAtBeginning)

        readonly property real headerHeight: headerItem ? headerItem.height : 0
        header: Pile {
            width: ListView.view.width
            spacing: 8
            LinkButton {
                text: qsTr("Back")
                onClicked: page.back()
            }
            Words {
                Layout.fillWidth: true
                text: qsTr("Signed on this phone")
                font.pixelSize: Look.titleSize
                font.weight: Font.Bold
                Accessible.role: Accessible.Heading
            }
            Words {
                Layout.fillWidth: true
                text: list.count === 0 ? qsTr("Nothing yet. What you sign is listed here.")
                                       : qsTr("Your instructor can show you the same list. Tell them when it has a sheet that is not here. Tap a sheet to show its code again.")
                font.pixelSize: Look.secondarySize
                color: Look.colors.quietInk
            }
            Item { implicitHeight: 1 }
        }
        footer: Item {
            width: 1
            height: 16
        }
        delegate: PackCard {
            required property signedRow row
            required property int index
            objectName: "signed-" + index
            width: ListView.view.width
            title: row.title
            detail: row.detail
            standing: row.standing
            seal: PackSeal.Signed
            onClicked: page.signing.show(index)
        }
    }
}
