import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Student

// One case sheet: what was signed, the role and why, where it counts best, and what can still be done.
PageFrame {
    id: page
    objectName: "sheetPage"

    required property SheetOfStudent sheet
    property bool justSealed: false
    signal giveAway(string id)

    kicker: sheet.row.standing
    title: qsTr("Case sheet")
    backText: qsTr("Back")

    property int asking: -1 ///< the skill for which a review is asked
    property string doing   ///< "withdraw" or "wait"

    PackCard {
        id: pack
        Layout.fillWidth: true
        tappable: false
        title: page.sheet.row.title
        detail: page.sheet.row.detail
        standing: page.sheet.row.standing
        seal: page.sheet.row.seal
        role: page.sheet.row.role
        roleCounts: page.sheet.row.roleCounts
        specialty: page.sheet.row.specialty
        remark: page.sheet.row.remark
        graveRemark: page.sheet.row.grave
        NumberAnimation on sealClosing {
            running: page.justSealed
            from: 0
            to: 1
            duration: Look.sealing
            easing.type: Easing.OutCubic
        }
    }
    NoteBox {
        text: page.sheet.error
        grave: true
    }
    NoteBox {
        objectName: "importNote"
        text: page.sheet.imported
    }
    CardFrame {
        visible: page.sheet.marked
        Words {
            Layout.fillWidth: true
            text: page.sheet.role
            font.pixelSize: Look.cardTitleSize
            font.weight: Font.DemiBold
        }
        Words {
            Layout.fillWidth: true
            text: page.sheet.why
            font.pixelSize: Look.secondarySize
            color: Look.colors.quietInk
        }
        Words {
            Layout.fillWidth: true
            visible: text.length > 0
            text: page.sheet.counts
            font.pixelSize: Look.secondarySize
            font.weight: Font.Medium
            color: Look.colors.drape
        }
    }
    SectionTitle {
        text: qsTr("Counts under")
        visible: page.sheet.marked && placesList.count > 0
    }
    Repeater {
        id: placesList
        model: page.sheet.marked ? page.sheet.places : null
        PlaceCard {
            namesProcedure: row.procedureName !== page.sheet.row.title
            canChoose: page.sheet.canFile
            onPicked: page.sheet.file(row.procedure, row.category)
        }
    }
    SectionTitle {
        text: qsTr("Marks")
        visible: page.sheet.marked && page.sheet.imported.length === 0
    }
    CardFrame {
        visible: page.sheet.marked && page.sheet.imported.length === 0
        spacing: 8
        Repeater {
            model: page.sheet.marks
            MarkLine {
                asking: page.asking === row.skill
                onWantsToAsk: page.asking = row.skill
                onAsked: reason => {
                    if (page.sheet.askReview(row.skill, reason))
                        page.asking = -1
                }
                onDropped: page.asking = -1
            }
        }
    }
    SectionTitle {
        text: qsTr("Signed by")
        visible: page.sheet.signers.length > 0
    }
    CardFrame {
        visible: page.sheet.signers.length > 0 || page.sheet.feedback.length > 0
        Repeater {
            model: page.sheet.signers
            Words {
                required property string modelData
                Layout.fillWidth: true
                text: modelData
                font.pixelSize: Look.secondarySize
            }
        }
        Repeater {
            model: page.sheet.feedback
            Words {
                required property string modelData
                Layout.fillWidth: true
                text: modelData
            }
        }
    }
    NoteBox {
        text: page.sheet.original
    }
    Pile {
        Layout.fillWidth: true
        visible: page.sheet.open
        spacing: 8
        ActionButton {
            objectName: "waitForButton"
            Layout.fillWidth: true
            visible: page.doing !== "wait"
            text: page.sheet.waitingFor.length > 0 ? qsTr("Waiting for %1: change").arg(page.sheet.waitingFor)
                                                   : qsTr("The preceptor has left: note who")
            onClicked: page.doing = "wait"
        }
        ReasonForm {
            visible: page.doing === "wait"
            prompt: qsTr("Who scrubbed with you and will sign it? Only you see this note.")
            doText: qsTr("Keep this note")
            suggestions: page.sheet.preceptors
            mayBeEmpty: page.sheet.waitingFor.length > 0
            onDone: name => {
                if (page.sheet.waitFor(name))
                    page.doing = ""
            }
            onDropped: page.doing = ""
        }
        ActionButton {
            Layout.fillWidth: true
            text: page.sheet.row.role.length > 0 && !page.sheet.row.roleCounts ? qsTr("It was not canceled") : qsTr("Canceled before incision")
            onClicked: page.sheet.cancelBeforeIncision()
        }
    }
    ActionButton {
        objectName: "withdrawButton"
        Layout.fillWidth: true
        visible: page.sheet.canWithdraw && page.doing !== "withdraw"
        grave: true
        text: qsTr("Withdraw this sheet")
        onClicked: page.doing = "withdraw"
    }
    ReasonForm {
        visible: page.doing === "withdraw"
        prompt: qsTr("Why? The sheet stays visible with your reason and does not count. Once it is initialed, your instructor decides.")
        doText: qsTr("Withdraw it")
        grave: true
        onDone: reason => {
            if (page.sheet.withdraw(reason))
                page.doing = ""
        }
        onDropped: page.doing = ""
    }
    SectionTitle {
        text: qsTr("What happened")
        visible: page.sheet.history.length > 0
    }
    Repeater {
        model: page.sheet.history
        Words {
            required property string modelData
            Layout.fillWidth: true
            text: modelData
            font.pixelSize: Look.secondarySize
            color: Look.colors.quietInk
        }
    }

    actions: [
        ActionButton {
            objectName: "giveButton"
            Layout.fillWidth: true
            visible: page.sheet.canSign
            main: true
            text: page.sheet.open ? qsTr("Give the phone to your preceptor") : qsTr("Give the phone to a second preceptor")
            onClicked: page.giveAway(page.sheet.id)
        }
    ]
}
