import QtQuick
import Peelpack.Parts

// An arrow to the right or down, or a tick, in the color of what can be done.
DrawnSign {
    property bool tick: false
    property bool down: false

    color: Look.colors.drape
    sign: tick ? DrawnSign.Tick : down ? DrawnSign.Down : DrawnSign.Arrow
}
