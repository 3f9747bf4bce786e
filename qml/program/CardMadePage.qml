import QtQuick
import Peelpack.Parts
import Peelpack.Program

// A new signing card, shown once: printed, or photographed by its preceptor.
PageFrame {
    id: page

    required property CardMaking making
    required property PaperToCut paperToCut
    required property Share share
    property string saved
    signal done

    kicker: making.holder
    title: qsTr("The signing card, shown only now")
    Component.onDestruction: making.forget()

    NoteBox {
        text: page.paperToCut.error
        grave: true
    }
    NoteBox { text: page.saved }
    QrCode {
        implicitHeight: Math.min(300, page.width - 2 * Look.margin)
        bytes: page.making.code
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("Code of the new signing card")
    }
    CardFrame {
        spacing: 8
        Words {
            objectName: "cardTyped"
            text: page.making.typed
            font.weight: Font.DemiBold
            wrapMode: Text.WrapAnywhere
        }
        Words {
            text: qsTr("To be typed where there is no camera.")
            font.pixelSize: Look.secondarySize
            color: Look.colors.quietInk
        }
    }
    Words {
        text: page.making.vouched ? qsTr("It is vouched for. Let the preceptor photograph it, or print it. Never write the PIN on it.")
                                  : qsTr("Nobody vouches for it yet. The preceptor chooses the PIN when they first sign with it; then it waits here for you to vouch.")
    }
    ChoiceRow {
        objectName: "printCard"
        text: qsTr("Print it: save it as PDF")
        opens: true
        onClicked: {
            const pdf = page.paperToCut.cardPdf(page.making.holder, page.making.code, page.making.typed)
            if (pdf.byteLength > 0)
                page.share.save("signing-card.pdf", pdf)
        }
    }
    Connections {
        target: page.share
        function onSaved(where) {
            page.saved = qsTr("Saved as %1. Print it and delete the file.").arg(where)
        }
        function onFailed(why) {
            page.saved = why
        }
    }

    actions: [
        ActionButton {
            objectName: "cardDone"
            main: true
            text: qsTr("The preceptor has it")
            onClicked: page.done()
        }
    ]
}
