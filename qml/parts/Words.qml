import QtQuick
import Peelpack.Parts

// Text as a person reads it: plain, wrapped, in the ink of the theme.
Text {
    color: Look.colors.ink
    font.pixelSize: Look.bodySize
    wrapMode: Text.Wrap
    textFormat: Text.PlainText
    lineHeight: 1.12
    Accessible.role: Accessible.StaticText
    Accessible.name: text
}
