import QtQuick
import QtQuick.Shapes
import Peelpack.Parts

// A drawn sign: an arrow to the right or down, or a tick. Never a character of a font.
Shape {
    id: sign

    property bool tick: false
    property bool down: false
    property color color: Look.colors.drape

    implicitWidth: 18
    implicitHeight: 18
    ShapePath {
        strokeColor: sign.color
        strokeWidth: 2.4
        fillColor: "transparent"
        capStyle: ShapePath.RoundCap
        joinStyle: ShapePath.RoundJoin
        startX: sign.tick || sign.down ? 3 : 6
        startY: sign.tick ? 10 : (sign.down ? 6 : 3)
        PathLine { x: sign.tick ? 7 : (sign.down ? 9 : 12); y: sign.tick ? 14 : (sign.down ? 12 : 9) }
        PathLine { x: sign.tick || sign.down ? 15 : 6; y: sign.tick ? 4 : (sign.down ? 6 : 15) }
    }
}
