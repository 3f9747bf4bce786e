import QtQuick
import Peelpack.Parts
import Peelpack.Instructor

// What is required and who may sign: to be read.
PageFrame {
    id: page

    required property RulesInForce rules
    signal openOthers

    kicker: rules.term
    title: qsTr("Rules in force")
    backText: qsTr("Back")
    Component.onCompleted: rules.read()

    component Lines: CardFrame {
        property alias lines: repeater.model
        visible: repeater.count > 0
        spacing: 8
        Repeater {
            id: repeater
            Words {
                required property string modelData
                text: modelData
                font.pixelSize: Look.secondarySize
            }
        }
    }

    NoteBox {
        text: page.rules.error
        grave: true
    }
    SectionTitle { text: qsTr("Requirements: %1").arg(page.rules.title) }
    Lines { lines: page.rules.targets }
    SectionTitle { text: qsTr("How signatures count") }
    Lines { lines: page.rules.signatures }
    SectionTitle { text: qsTr("Instructors and others") }
    Lines { lines: page.rules.staff }
    SectionTitle { text: qsTr("Preceptors whose card or phone is known") }
    Lines { lines: page.rules.preceptors }
    ChoiceRow {
        objectName: "otherRules"
        text: qsTr("Older and other rules")
        detail: qsTr("What was in force before; the director puts other rules in force")
        opens: true
        onClicked: page.openOthers()
    }
}
