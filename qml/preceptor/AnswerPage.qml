import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Preceptor

// A sheet that was signed here: the code that goes back to the student's phone, and what was signed.
PageFrame {
    id: page

    required property SigningPhone signing
    required property Share share
    signal done

    property string saved ///< where to, or why not

    kicker: qsTr("Signed by %1").arg(signing.who)
    title: code.fits ? qsTr("Show this to the student's phone") : qsTr("Send this to the student's phone")
    backText: qsTr("Back")

    QrCode {
        id: code
        visible: fits
        implicitHeight: Math.min(420, page.width - 2 * Look.margin)
        bytes: page.signing.answer
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("Code of your signature")
    }
    NoteBox {
        visible: !code.fits
        grave: true
        text: qsTr("What you signed has too much text for one code. Send it as a file: it works the same.")
    }
    Words {
        Layout.fillWidth: true
        text: qsTr("On the student's phone: I signed on my phone. The sheet is signed once that phone has taken this in.")
        color: Look.colors.quietInk
    }
    ChoiceRow {
        objectName: "saveAnswer"
        Layout.fillWidth: true
        text: code.fits ? qsTr("Send it as a file instead") : qsTr("Send it as a file")
        detail: page.saved
        opens: true
        onClicked: page.share.save("answer.peelsign", page.signing.answer)
    }
    SectionTitle { text: qsTr("What you signed") }
    CardFrame {
        spacing: 8
        Repeater {
            model: page.signing.shownLines
            Words {
                required property string modelData
                Layout.fillWidth: true
                text: modelData
            }
        }
    }
    Connections {
        target: page.share
        function onSaved(where) {
            page.saved = qsTr("Saved as %1").arg(where)
        }
        function onFailed(why) {
            page.saved = why
        }
    }

    actions: [
        ActionButton {
            objectName: "answerDone"
            Layout.fillWidth: true
            main: true
            text: qsTr("Done")
            onClicked: page.done()
        }
    ]
}
