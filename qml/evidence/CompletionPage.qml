import QtQuick
import Peelpack.Parts
import Peelpack.Evidence

// Whether a student has met the requirements: how they stand, what was decided, the decision with its read-back, and
// the record.
PageFrame {
    id: page
    objectName: "completionPage"

    required property Completion completion
    required property Share share
    property string doing ///< "", "reason", "readBack"
    property string reason
    property string told ///< what became of a saving

    title: completion.student
    kicker: qsTr("Completion")
    backText: qsTr("Back")

    NoteBox {
        objectName: "completionBar"
        text: page.completion.bar
    }
    NoteBox {
        text: page.completion.error
        grave: true
    }
    NoteBox { text: page.told }
    Repeater {
        model: page.completion.decisions
        NoteBox {
            required property int index
            required property string modelData
            text: modelData
        }
    }
    Words {
        objectName: "standing"
        text: page.completion.standing
        font.weight: Font.DemiBold
    }
    Repeater {
        model: page.completion.targets
        Words {
            required property string modelData
            text: modelData
            font.pixelSize: Look.secondarySize
        }
    }
    Words {
        visible: page.completion.canDecide && !page.completion.complete && !page.completion.decided
        text: qsTr("Cases are short. Only an exception with a reason can make it complete, and it is shown as one everywhere.")
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }
    ReasonForm {
        visible: page.doing === "reason"
        prompt: qsTr("Why is it complete although cases are short? Journal, record and papers show this reason.")
        doText: qsTr("Read it back")
        onDone: reason => {
            page.reason = reason
            page.doing = "readBack"
        }
        onDropped: page.doing = ""
    }
    CardFrame {
        id: readBack
        objectName: "completionReadBack"
        visible: page.doing === "readBack"
        spacing: 8
        Words {
            text: qsTr("This is what you sign")
            font.weight: Font.DemiBold
            Accessible.role: Accessible.Heading
        }
        Repeater {
            model: readBack.visible ? page.completion.readBack(page.reason) : []
            Words {
                required property string modelData
                text: modelData
                font.pixelSize: Look.secondarySize
            }
        }
        ActionButton {
            objectName: "signCompletion"
            main: true
            text: qsTr("Sign this")
            onClicked: {
                page.doing = ""
                page.completion.decide(page.reason)
            }
        }
        ActionButton {
            text: qsTr("Cancel")
            onClicked: page.doing = ""
        }
    }
    RecordCard {
        visible: page.completion.canDecide && page.completion.decided && page.doing === ""
        completion: page.completion
        onSave: {
            page.told = ""
            page.share.saveSome(page.completion.fileNames(), page.completion.files())
        }
    }
    ProofCard {
        visible: page.doing === ""
        completion: page.completion
        onOpenFile: page.share.open("proofs")
        onProve: index => {
            page.told = ""
            const bytes = page.completion.proveSheet(index)
            if (page.completion.error.length === 0)
                page.share.save(page.completion.proofName(index), bytes)
        }
    }
    Words {
        text: qsTr("Peelpack counts; the program's director decides who has met the requirements.")
        font.pixelSize: Look.smallSize
        color: Look.colors.quietInk
    }

    actions: [
        ActionButton {
            objectName: "decideComplete"
            visible: page.completion.canDecide && page.completion.complete && !page.completion.decided && page.doing === ""
            main: true
            text: qsTr("Mark complete")
            onClicked: {
                page.reason = ""
                page.doing = "readBack"
            }
        },
        ActionButton {
            objectName: "decideException"
            visible: page.completion.canDecide && !page.completion.complete && !page.completion.decided && page.doing === ""
            text: qsTr("Complete by exception")
            onClicked: page.doing = "reason"
        }
    ]
    Connections {
        target: page.share
        function onSaved(where) {
            page.told = qsTr("Saved as %1.").arg(where)
        }
        function onFailed(why) {
            page.told = why
        }
        function onOpened(what, name, bytes) {
            if (what === "proofs")
                page.completion.openProofs(bytes)
        }
    }
}
