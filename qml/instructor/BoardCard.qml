import QtQuick
import QtQuick.Controls.Basic
import Peelpack.Parts
import Peelpack.Instructor

// A student with the targets of the set: below each other on a phone, beside each other in the table of a desk.
AbstractButton {
    id: card

    required property boardRow row
    property bool table: false
    property real nameWidth: 170
    property real numberWidth: 70
    readonly property int targets: row.targets.length
    readonly property string total: row.read ? qsTr("%1 of %2").arg(row.counted).arg(row.required) : qsTr("being counted")
    readonly property string waits: row.waiting === 0 ? qsTr("nothing waits")
                                  : row.toCheck === 0 ? qsTr("%n wait(s)", "", row.waiting)
                                                      : qsTr("%n wait(s)", "", row.waiting) + ", " + qsTr("%n to check", "", row.toCheck)
    readonly property real cellWidth: (width - 28 - nameWidth - 2 * numberWidth - 136 * Look.textScale) / Math.max(1, targets)

    implicitHeight: Math.max(Look.touch, (table ? wide.implicitHeight : narrow.implicitHeight) + 24)
    implicitWidth: 300
    padding: 0
    Accessible.role: Accessible.Button
    Accessible.name: [row.name, total, waits, row.lastSheet, row.state].filter(part => part.length > 0).join(", ")

    background: Rectangle {
        radius: Look.radius
        color: card.down ? Look.colors.wash : Look.colors.card
        border.color: card.visualFocus ? Look.colors.ink : Look.colors.hairline
        border.width: card.visualFocus ? 2 : 1
    }
    contentItem: Item {
        Pile {
            id: narrow
            visible: !card.table
            x: 14
            y: 12
            width: card.width - 28
            spacing: 4
            Words {
                text: card.row.name
                font.pixelSize: Look.cardTitleSize
                font.weight: Font.DemiBold
            }
            Words {
                text: card.total + " · " + card.waits + (card.row.lastSheet.length > 0 ? " · " + qsTr("last sheet %1").arg(card.row.lastSheet) : "")
                font.pixelSize: Look.secondarySize
                color: Look.colors.quietInk
            }
            Words {
                visible: text.length > 0
                text: card.row.state
                font.pixelSize: Look.secondarySize
                font.weight: Font.Medium
                color: Look.colors.caution
            }
            Repeater {
                model: card.row.read && !card.table ? card.targets : 0
                Pile {
                    id: cell
                    required property int index
                    spacing: 2
                    Words {
                        text: card.row.targets[cell.index] + ": " + qsTr("%1 of %2").arg(card.row.placed[cell.index]).arg(card.row.needed[cell.index])
                        font.pixelSize: Look.smallSize
                        color: Look.colors.quietInk
                    }
                    TallyStrokes {
                        count: card.row.placed[cell.index]
                        needed: card.row.needed[cell.index]
                        outlined: card.row.outlined[cell.index]
                        strokeHeight: 12
                        color: Look.colors.drape
                        dotColor: Look.colors.edge
                    }
                }
            }
        }
        Row {
            id: wide
            visible: card.table
            x: 14
            y: 12
            Words {
                width: card.nameWidth
                rightPadding: 10
                text: card.row.name
                font.weight: Font.DemiBold
            }
            Repeater {
                model: card.table ? card.targets : 0
                Pile {
                    id: column
                    required property int index
                    width: card.cellWidth
                    spacing: 2
                    Words {
                        text: card.row.read ? qsTr("%1 of %2").arg(card.row.placed[column.index]).arg(card.row.needed[column.index]) : ""
                        font.pixelSize: Look.smallSize
                        color: Look.colors.quietInk
                    }
                    TallyStrokes {
                        width: parent.width - 16
                        visible: card.row.read
                        count: card.row.read ? card.row.placed[column.index] : 0
                        needed: card.row.needed[column.index]
                        outlined: card.row.outlined[column.index]
                        strokeHeight: 12
                        color: Look.colors.drape
                        dotColor: Look.colors.edge
                    }
                }
            }
            Words {
                width: card.numberWidth
                rightPadding: 8
                text: card.row.read ? card.row.missing : ""
                font.weight: card.row.missing > 0 ? Font.DemiBold : Font.Normal
            }
            Words {
                width: card.numberWidth
                rightPadding: 8
                text: card.row.lastSheet
                font.pixelSize: Look.secondarySize
            }
            Pile {
                width: 136 * Look.textScale
                spacing: 2
                Words {
                    text: card.waits
                    font.pixelSize: Look.secondarySize
                }
                Words {
                    visible: text.length > 0
                    text: card.row.state
                    font.pixelSize: Look.secondarySize
                    font.weight: Font.Medium
                    color: Look.colors.caution
                }
            }
        }
    }
}
