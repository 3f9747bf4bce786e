import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Shell

// The answer to the invitation, and the vault code, which is shown only now.
PageFrame {
    id: page

    required property Joining joining
    required property Share share
    property bool copied: false

    kicker: qsTr("You have joined")
    title: qsTr("Two things before you go on")

    SectionTitle { text: qsTr("1. Write down your vault code") }
    PaperCodeCard {
        code: page.joining.vaultCode
        codeName: "vaultCode"
    }
    SectionTitle { text: qsTr("2. Show this to your instructor") }
    QrCode {
        implicitHeight: Math.min(320, page.width - 2 * Look.margin)
        bytes: page.joining.reply
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("Code of your answer")
    }
    CardFrame {
        Words {
            objectName: "joinDigits"
            Layout.fillWidth: true
            text: qsTr("Both of you must see these digits: %1").arg(page.joining.digits)
            font.weight: Font.DemiBold
        }
        Words {
            Layout.fillWidth: true
            text: qsTr("If your instructor sees others, somebody else has answered: stop, and ask for a new invitation.")
            font.pixelSize: Look.secondarySize
            color: Look.colors.quietInk
        }
    }
    ChoiceRow {
        objectName: "saveReply"
        Layout.fillWidth: true
        text: qsTr("Save the answer as a file")
        detail: saved.where
        opens: true
        onClicked: page.share.save("answer.peelreply", page.joining.reply)
    }
    ChoiceRow {
        objectName: "copyReply"
        Layout.fillWidth: true
        text: qsTr("Copy the answer as text")
        detail: page.copied ? qsTr("Copied: paste it into a message to your instructor") : ""
        onClicked: {
            page.joining.copyReply()
            page.copied = true
        }
    }
    Connections {
        id: saved
        property string where
        target: page.share
        function onSaved(where) {
            saved.where = qsTr("Saved as %1").arg(where)
        }
        function onFailed(why) {
            saved.where = why
        }
    }

    actions: [
        ActionButton {
            objectName: "joinedDone"
            Layout.fillWidth: true
            main: true
            text: qsTr("The code is on paper, go on")
            onClicked: page.joining.finish()
        }
    ]
}
