import QtQuick
import QtQuick.Shapes

// The drawn sign of a place: a clock, a pack, tally strokes, a person, two arrows.
Item {
    id: sign

    property int which: 0
    property color color

    implicitWidth: 24
    implicitHeight: 20

    Shape {
        anchors.fill: parent
        visible: sign.which === 0
        ShapePath {
            strokeColor: sign.color
            strokeWidth: 2
            fillColor: "transparent"
            capStyle: ShapePath.RoundCap
            PathAngleArc { centerX: 12; centerY: 10; radiusX: 8; radiusY: 8; startAngle: 0; sweepAngle: 360 }
            PathMove { x: 12; y: 5 }
            PathLine { x: 12; y: 10 }
            PathLine { x: 15; y: 12 }
        }
    }
    Shape {
        anchors.fill: parent
        visible: sign.which === 1
        ShapePath {
            strokeColor: sign.color
            strokeWidth: 2
            fillColor: "transparent"
            joinStyle: ShapePath.RoundJoin
            startX: 4; startY: 3
            PathLine { x: 20; y: 3 }
            PathLine { x: 20; y: 17 }
            PathLine { x: 4; y: 17 }
            PathLine { x: 4; y: 3 }
            PathMove { x: 7; y: 11 }
            PathLine { x: 12; y: 7 }
            PathLine { x: 17; y: 11 }
        }
    }
    Shape {
        anchors.fill: parent
        visible: sign.which === 2
        ShapePath {
            strokeColor: sign.color
            strokeWidth: 2
            fillColor: "transparent"
            capStyle: ShapePath.RoundCap
            startX: 5; startY: 3
            PathLine { x: 5; y: 17 }
            PathMove { x: 10; y: 3 }
            PathLine { x: 10; y: 17 }
            PathMove { x: 15; y: 3 }
            PathLine { x: 15; y: 17 }
            PathMove { x: 20; y: 3 }
            PathLine { x: 20; y: 17 }
            PathMove { x: 2; y: 14 }
            PathLine { x: 22; y: 6 }
        }
    }
    Shape {
        anchors.fill: parent
        visible: sign.which === 3
        ShapePath {
            strokeColor: sign.color
            strokeWidth: 2
            fillColor: "transparent"
            capStyle: ShapePath.RoundCap
            PathAngleArc { centerX: 12; centerY: 6; radiusX: 4; radiusY: 4; startAngle: 0; sweepAngle: 360 }
            PathMove { x: 4; y: 18 }
            PathQuad { x: 20; y: 18; controlX: 12; controlY: 8 }
        }
    }
    Shape {
        anchors.fill: parent
        visible: sign.which === 4
        ShapePath {
            strokeColor: sign.color
            strokeWidth: 2
            fillColor: "transparent"
            capStyle: ShapePath.RoundCap
            joinStyle: ShapePath.RoundJoin
            startX: 8; startY: 17
            PathLine { x: 8; y: 3 }
            PathMove { x: 4; y: 7 }
            PathLine { x: 8; y: 3 }
            PathLine { x: 12; y: 7 }
            PathMove { x: 16; y: 3 }
            PathLine { x: 16; y: 17 }
            PathMove { x: 12; y: 13 }
            PathLine { x: 16; y: 17 }
            PathLine { x: 20; y: 13 }
        }
    }
}
