import QtQuick
import Peelpack.Parts

// The name of a group on a page.
Words {
    color: Look.colors.quietInk
    font.pixelSize: Look.secondarySize
    font.weight: Font.Medium
    topPadding: 6
    Accessible.role: Accessible.Heading
}
