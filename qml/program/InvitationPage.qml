import QtQuick
import Peelpack.Parts
import Peelpack.Program

// An invitation as code, text, file and paper. Whoever has it can join in that name.
PageFrame {
    id: page

    required property Inviting inviting
    required property PaperToCut paperToCut
    required property Share share
    property bool textShown: false
    property bool copied: false
    property string saved
    property bool withdrawing: false ///< about to be taken back
    signal answered
    signal withdrawn

    kicker: inviting.what
    title: qsTr("Invitation for %1").arg(inviting.name)
    backText: qsTr("Back")
    Component.onDestruction: inviting.forget()

    QrCode {
        implicitHeight: Math.min(320, page.width - 2 * Look.margin)
        bytes: page.inviting.code
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("Code of the invitation")
    }
    Words {
        text: qsTr("On their own phone: Join a program, then scan this. It serves one person once. Hand it over yourself: whoever has it can join in their name.")
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }
    NoteBox {
        text: page.inviting.error.length > 0 ? page.inviting.error : page.paperToCut.error
        grave: true
    }
    NoteBox { text: page.saved }
    ChoiceRow {
        objectName: "saveInvitation"
        text: qsTr("Save it as a file")
        opens: true
        onClicked: page.share.save(page.inviting.fileName, page.inviting.code)
    }
    ChoiceRow {
        objectName: "printInvitation"
        text: qsTr("Print it: save it as PDF")
        opens: true
        onClicked: {
            const pdf = page.paperToCut.invitationPdf(page.inviting.name, page.inviting.code)
            if (pdf.byteLength > 0)
                page.share.save(page.inviting.fileName + ".pdf", pdf)
        }
    }
    ChoiceRow {
        objectName: "showInvitationText"
        visible: !page.textShown
        text: qsTr("Show it as text")
        detail: qsTr("Where there is no camera")
        onClicked: page.textShown = true
    }
    CardFrame {
        visible: page.textShown
        spacing: 8
        Words {
            objectName: "invitationText"
            text: page.inviting.text
            wrapMode: Text.WrapAnywhere
        }
        ActionButton {
            text: page.copied ? qsTr("Copied") : qsTr("Copy the text")
            onClicked: {
                page.inviting.copyText()
                page.copied = true
            }
        }
    }
    Connections {
        target: page.share
        function onSaved(where) {
            page.saved = qsTr("Saved as %1.").arg(where)
        }
        function onFailed(why) {
            page.saved = why
        }
    }

    actions: [
        ActionButton {
            objectName: "toGrant"
            main: true
            text: qsTr("They have joined: take the answer")
            onClicked: page.answered()
        },
        NoteBox {
            visible: page.withdrawing
            text: qsTr("Take it back? Whoever has it cannot join with it any more.")
            grave: true
        },
        ActionButton {
            objectName: "withdrawInvitation"
            grave: true
            text: qsTr("Take the invitation back")
            onClicked: {
                if (!page.withdrawing)
                    page.withdrawing = true
                else if (page.inviting.withdraw())
                    page.withdrawn()
            }
        },
        ActionButton {
            visible: page.withdrawing
            text: qsTr("Leave it open")
            onClicked: page.withdrawing = false
        }
    ]
}
