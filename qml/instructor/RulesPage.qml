import QtQuick
import Peelpack.Parts
import Peelpack.Instructor

// What is required and who may sign: to be read.
PageFrame {
    id: page

    required property RulesInForce rules
    signal openProgram(string page)

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
    ChoiceRow {
        objectName: "requirementsRow"
        text: qsTr("Changes of requirements")
        detail: page.rules.changes
        opens: true
        onClicked: page.openProgram("requirements")
    }
    ChoiceRow {
        objectName: "daysRow"
        text: qsTr("Clinical days")
        detail: qsTr("By class, in and out as a calendar")
        opens: true
        onClicked: page.openProgram("days")
    }
    ChoiceRow {
        objectName: "sitesRow"
        text: qsTr("Sites")
        detail: qsTr("With their rule about phones")
        opens: true
        onClicked: page.openProgram("sites")
    }
    ChoiceRow {
        objectName: "signersRow"
        text: qsTr("Who may sign")
        detail: qsTr("Which credential signs which role")
        opens: true
        onClicked: page.openProgram("signers")
    }
    ChoiceRow {
        objectName: "proceduresRow"
        text: qsTr("Own procedures")
        detail: qsTr("Over the shipped catalogue")
        opens: true
        onClicked: page.openProgram("procedures")
    }
    ChoiceRow {
        objectName: "otherRules"
        text: qsTr("Older and other rules")
        detail: qsTr("What was in force before; the director puts other rules in force")
        opens: true
        onClicked: page.openProgram("rules")
    }
    SectionTitle { text: qsTr("Instructors and others") }
    Lines { lines: page.rules.staff }
    SectionTitle { text: qsTr("Preceptors whose card or phone is known") }
    Lines { lines: page.rules.preceptors }
}
