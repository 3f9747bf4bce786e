import QtQuick
import QtQuick.Controls.Basic
import Peelpack.Parts

// A case sheet as a pack: the seal at its left edge shows how far it is, and the words say it.
AbstractButton {
    id: pack

    property string title
    property string detail
    property string standing      ///< in words
    property int seal: PackSeal.Open
    property string role
    property bool roleCounts: true
    property string specialty
    property string remark
    property bool graveRemark: false
    property bool tappable: true
    property real sealClosing: 1

    readonly property color sealColor: seal === PackSeal.Open || seal === PackSeal.Withdrawn || seal === PackSeal.Imported ? Look.colors.unprocessed
                                     : (seal === PackSeal.Initialed || seal === PackSeal.ImportedInitialed ? Look.colors.olive
                                     : (seal === PackSeal.Returned || seal === PackSeal.Void ? Look.colors.caution
                                                                                             : Look.colors.amber))

    implicitHeight: Math.max(80, body.implicitHeight + 24)
    implicitWidth: 240
    enabled: tappable
    Accessible.role: tappable ? Accessible.Button : Accessible.StaticText
    Accessible.name: [title, detail, standing, role, specialty, remark].filter(part => part.length > 0).join(", ")

    background: Rectangle {
        radius: Look.radius
        color: pack.down ? Look.colors.wash : Look.colors.card
        border.color: pack.visualFocus ? Look.colors.ink : Look.colors.hairline
        border.width: pack.visualFocus ? 2 : 1
    }
    contentItem: Item {
        implicitHeight: body.implicitHeight
        PackSeal {
            id: end
            x: 1
            y: 1
            width: 30
            height: pack.height - 2
            state: pack.seal
            closing: pack.sealClosing
            color: pack.sealColor
            pouch: Look.colors.pouch
            line: Look.colors.hairline
        }
        Column {
            id: body
            anchors.left: end.right
            anchors.leftMargin: 12
            anchors.right: parent.right
            anchors.rightMargin: 12
            anchors.verticalCenter: parent.verticalCenter
            spacing: 4
            Words {
                width: parent.width
                text: pack.title
                font.pixelSize: Look.cardTitleSize
                font.weight: Font.DemiBold
                maximumLineCount: 9
                elide: Text.ElideRight
            }
            Words {
                width: parent.width
                visible: text.length > 0
                text: pack.detail
                font.pixelSize: Look.secondarySize
                color: Look.colors.quietInk
                maximumLineCount: 9
                elide: Text.ElideRight
            }
            Words {
                width: parent.width
                visible: text.length > 0
                text: pack.standing
                font.pixelSize: Look.secondarySize
                font.weight: Font.Medium
                maximumLineCount: 9
                elide: Text.ElideRight
            }
            Flow {
                width: parent.width
                spacing: 6
                visible: pack.role.length > 0 || pack.specialty.length > 0
                Tag {
                    width: Math.min(implicitWidth, parent.width)
                    text: pack.role
                    filled: pack.roleCounts
                }
                Tag {
                    width: Math.min(implicitWidth, parent.width)
                    text: pack.specialty
                }
            }
            Words {
                width: parent.width
                visible: text.length > 0
                text: pack.remark
                font.pixelSize: Look.secondarySize
                font.weight: Font.Medium
                color: pack.graveRemark ? Look.colors.caution : Look.colors.drape
                maximumLineCount: 12
                elide: Text.ElideRight
            }
        }
    }
    padding: 0
}
