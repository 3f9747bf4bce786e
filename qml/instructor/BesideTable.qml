import QtQuick
import Peelpack.Parts
import Peelpack.Instructor

// What was signed, and beside it what the student logged. What differs says so.
CardFrame {
    id: table

    required property var rows
    readonly property bool narrow: width < 340 * Look.textScale

    spacing: 8
    Row {
        visible: !table.narrow
        height: titles.implicitHeight
        Item {
            width: table.narrow ? 0 : (table.width - 2 * table.padding) * 0.24
            height: 1
        }
        Words {
            id: titles
            width: (table.width - 2 * table.padding) * 0.38
            text: qsTr("Signed sheet")
            font.pixelSize: Look.secondarySize
            font.weight: Font.DemiBold
            rightPadding: 8
        }
        Words {
            width: (table.width - 2 * table.padding) * 0.38
            text: qsTr("Log entry")
            font.pixelSize: Look.secondarySize
            font.weight: Font.DemiBold
        }
    }
    Repeater {
        model: table.rows
        Pile {
            id: line
            required property besideRow row
            spacing: 1
            Accessible.role: Accessible.StaticText
            Accessible.name: row.label + ": " + qsTr("signed: %1; logged: %2").arg(row.wasSigned).arg(row.logged)
            Row {
                visible: !table.narrow
                Words {
                    width: line.width * 0.24
                    rightPadding: 8
                    text: line.row.label
                    font.pixelSize: Look.secondarySize
                    color: Look.colors.quietInk
                }
                Words {
                    width: line.width * 0.38
                    rightPadding: 8
                    text: line.row.wasSigned
                    font.pixelSize: Look.secondarySize
                }
                Words {
                    width: line.width * 0.38
                    text: line.row.differs ? line.row.logged + " " + qsTr("(differs)") : line.row.logged
                    font.pixelSize: Look.secondarySize
                    font.weight: line.row.differs ? Font.Bold : Font.Normal
                    color: line.row.differs ? Look.colors.caution : Look.colors.ink
                }
            }
            Words {
                visible: table.narrow
                text: line.row.label
                font.pixelSize: Look.secondarySize
                color: Look.colors.quietInk
            }
            Words {
                visible: table.narrow
                text: line.row.wasSigned !== line.row.logged ? qsTr("Signed: %1").arg(line.row.wasSigned) : line.row.wasSigned
                font.pixelSize: Look.secondarySize
            }
            Words {
                visible: table.narrow && line.row.wasSigned !== line.row.logged
                text: line.row.differs ? qsTr("Logged: %1 (differs)").arg(line.row.logged) : qsTr("Logged: %1").arg(line.row.logged)
                font.pixelSize: Look.secondarySize
                font.weight: line.row.differs ? Font.Bold : Font.Normal
                color: line.row.differs ? Look.colors.caution : Look.colors.ink
            }
        }
    }
}
