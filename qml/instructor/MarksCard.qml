import QtQuick
import Peelpack.Parts
import Peelpack.Instructor

// The ten marks as they stand; where that is not what the preceptor gave, that as well.
CardFrame {
    id: card

    required property var rows
    required property string role
    required property string why

    spacing: 8
    Words {
        text: card.role
        font.pixelSize: Look.cardTitleSize
        font.weight: Font.DemiBold
    }
    Words {
        text: card.why
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }
    Repeater {
        model: card.rows
        Pile {
            id: line
            required property int index
            required property checkedMarkRow row
            spacing: 1
            Words {
                visible: line.index === 0 || line.index === 5
                topPadding: 4
                text: line.row.firstScrub ? qsTr("First-scrub skills") : qsTr("Second-scrub skills")
                font.pixelSize: Look.smallSize
                font.weight: Font.Medium
                color: Look.colors.quietInk
            }
            Item {
                implicitHeight: Math.max(skill.implicitHeight, mark.implicitHeight)
                Words {
                    id: skill
                    anchors.left: parent.left
                    anchors.right: mark.left
                    anchors.rightMargin: 8
                    text: line.row.label
                    font.pixelSize: Look.secondarySize
                }
                Words {
                    id: mark
                    anchors.right: parent.right
                    text: line.row.mark
                    font.pixelSize: Look.secondarySize
                    font.weight: line.row.counts ? Font.Normal : Font.Bold
                }
            }
            Words {
                visible: text.length > 0
                text: line.row.given
                font.pixelSize: Look.smallSize
                font.weight: Font.Medium
                color: Look.colors.caution
            }
            Words {
                visible: text.length > 0
                text: line.row.note
                font.pixelSize: Look.smallSize
                color: Look.colors.quietInk
            }
        }
    }
}
