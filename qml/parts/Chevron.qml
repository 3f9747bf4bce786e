import QtQuick
import Peelpack.Parts

// A drawn sign in the color of what can be done.
DrawnSign {
    color: Look.colors.drape
}
