import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Peelpack.Parts

// A page: a small line and a title, what scrolls, and its actions at the thumb's end.
FocusScope {
    id: page

    property string kicker
    property string title
    property string backText ///< empty: nowhere to go back to
    default property alias content: body.data
    property alias actions: foot.data
    property real widest: 640
    /// Too little room for actions that stay: they scroll with the page.
    readonly property bool low: height < 480 || foot.implicitHeight > height * 0.28
    readonly property alias flickable: flick
    signal back

    Rectangle {
        anchors.fill: parent
        color: Look.colors.paper
    }
    Flickable {
        id: flick
        anchors.top: parent.top
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: page.low ? parent.bottom : pinned.top
        contentWidth: width
        contentHeight: column.height
        boundsBehavior: Flickable.StopAtBounds
        clip: true
        ScrollBar.vertical: ScrollBar {
            policy: flick.contentHeight > flick.height ? ScrollBar.AsNeeded : ScrollBar.AlwaysOff
        }

        Pile {
            id: column
            width: Math.min(page.widest, flick.width - 2 * Look.margin)
            x: (flick.width - width) / 2
            spacing: Look.gap
            fromRight: Look.leftHand

            LinkButton {
                text: page.backText
                visible: text.length > 0
                onClicked: page.back()
            }
            Item {
                visible: page.backText.length === 0
                implicitHeight: 8
            }
            Pile {
                spacing: 2
                Words {
                    text: page.kicker
                    visible: text.length > 0
                    Layout.fillWidth: true
                    color: Look.colors.quietInk
                    font.pixelSize: Look.secondarySize
                }
                Words {
                    text: page.title
                    Layout.fillWidth: true
                    font.pixelSize: Look.titleSize
                    font.weight: Font.Bold
                    maximumLineCount: 9
                    elide: Text.ElideRight
                    Accessible.role: Accessible.Heading
                }
            }
            Pile {
                id: body
                spacing: Look.gap
                fromRight: Look.leftHand
            }
            Item {
                id: below
                Layout.fillWidth: true
                implicitHeight: page.low ? foot.implicitHeight + 2 * Look.gap : Look.gap
            }
        }
    }
    Rectangle {
        id: pinned
        visible: !page.low
        anchors.left: parent.left
        anchors.right: parent.right
        anchors.bottom: parent.bottom
        height: foot.implicitHeight > 0 ? foot.implicitHeight + 20 : 0
        color: Look.colors.paper
    }
    Pile {
        id: foot
        parent: page.low ? below : pinned
        anchors.horizontalCenter: parent.horizontalCenter
        y: page.low ? Look.gap : 8
        width: column.width
        spacing: 8
    }
}
