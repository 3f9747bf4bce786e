import QtQuick
import Peelpack.Parts

// An arrow to the right, or a tick.
DrawnSign {
    property bool tick: false

    color: Look.colors.drape
    sign: tick ? DrawnSign.Tick : DrawnSign.Arrow
}
