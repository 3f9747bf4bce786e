import QtQuick
import Peelpack.Parts

// A few words to choose from instead of typing them.
Flow {
    id: suggestions

    property var choices: []
    signal picked(string words)

    visible: choices.length > 0
    spacing: 8
    Repeater {
        model: suggestions.choices
        ActionButton {
            required property string modelData
            width: Math.min(implicitWidth, suggestions.width)
            text: modelData
            onClicked: suggestions.picked(modelData)
        }
    }
}
