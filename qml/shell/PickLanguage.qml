import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Shell

RowLayout {
    id: pick

    required property Settings settings

    spacing: 8
    Repeater {
        model: [["en", "English"], ["es", "Español"]]
        ChoiceRow {
            required property var modelData
            Layout.fillWidth: true
            Layout.preferredWidth: 100
            text: modelData[1]
            chosen: pick.settings.language === modelData[0]
            onClicked: pick.settings.language = modelData[0]
        }
    }
}
