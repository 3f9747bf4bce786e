import QtQuick
import Peelpack.Parts
import Peelpack.Program

// Rules in force and before; for the director others, read back before they are signed.
PageFrame {
    id: page
    objectName: "programRulesPage"

    required property ProgramRules rules
    required property Share share
    property bool changing: false

    title: !changing ? qsTr("Rules so far") : rules.readingBack ? qsTr("Are these the rules?") : qsTr("Other rules")
    backText: qsTr("Back")
    Component.onCompleted: rules.read()

    NoteBox {
        text: page.rules.done
        visible: !page.changing && text.length > 0
    }
    Pile {
        visible: !page.changing
        spacing: Look.gap
        SectionTitle { text: qsTr("In force") }
        NoteBox {
            visible: inForce.count === 0
            text: qsTr("No rules have come in yet: take in a parcel first.")
        }
        Repeater {
            id: inForce
            model: page.rules.inForce
            CardFrame {
                id: current
                required property string modelData
                Words {
                    objectName: "rulesInForce"
                    text: current.modelData
                }
            }
        }
        SectionTitle {
            visible: older.count > 0
            text: qsTr("Before, the newest first")
        }
        Repeater {
            id: older
            model: page.rules.older
            CardFrame {
                id: old
                required property string modelData
                Words {
                    text: old.modelData
                    font.pixelSize: Look.secondarySize
                    color: Look.colors.quietInk
                }
            }
        }
    }
    RulesForm {
        visible: page.changing && !page.rules.readingBack
        draft: page.rules.draft
        share: page.share
    }
    RulesReadBack {
        visible: page.changing && page.rules.readingBack
        draft: page.rules.draft
    }

    actions: [
        NoteBox {
            text: page.rules.error
            visible: page.changing && text.length > 0
            grave: true
        },
        ActionButton {
            objectName: "changeRules"
            visible: page.rules.mayChange && !page.changing
            main: true
            text: qsTr("Put other rules in force")
            onClicked: {
                page.rules.beginDraft()
                page.changing = true
            }
        },
        ActionButton {
            objectName: "readRulesBack"
            visible: page.changing && !page.rules.readingBack
            main: true
            text: qsTr("Read the rules back")
            onClicked: page.rules.readBack()
        },
        ActionButton {
            objectName: "signRules"
            visible: page.changing && page.rules.readingBack
            main: true
            text: qsTr("Sign: put them in force")
            onClicked: {
                if (page.rules.sign())
                    page.changing = false
            }
        },
        ActionButton {
            objectName: "changeAgain"
            visible: page.changing
            text: page.rules.readingBack ? qsTr("Change something") : qsTr("Leave the rules as they are")
            onClicked: {
                if (page.rules.readingBack)
                    page.rules.backToDraft()
                else
                    page.changing = false
            }
        }
    ]
}
