import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Preceptor

// The phone goes back: only the student opens it.
PageFrame {
    id: page

    required property HandOver handOver
    required property string error
    required property bool busy
    signal takeBack(string secret)
    signal goOn

    readonly property bool isSigned: handOver.step === HandOver.Signed
    readonly property bool declined: handOver.step === HandOver.Declined

    kicker: isSigned ? qsTr("Signed by %1").arg(handOver.signer) : (declined ? qsTr("The preceptor declined to sign") : qsTr("Nothing is signed"))
    title: qsTr("Give the phone back to %1").arg(handOver.student)
    backText: isSigned || declined ? "" : qsTr("Go on marking")
    onBack: goOn()

    NoteBox {
        visible: page.isSigned && page.handOver.awaitsVouch
        text: qsTr("Nobody vouches for this preceptor's phone yet. The sheet shows as signed once an instructor has vouched for its key and their answer is on this phone.")
    }
    NoteBox {
        visible: page.isSigned
        text: qsTr("The pack is sealed. What you signed cannot be changed without it showing.")
    }
    NoteBox {
        visible: !page.isSigned && !page.declined
        text: qsTr("Marks that are not signed are not kept. The record keeps that the phone was with you, and from when to when.")
    }
    NoteBox {
        text: page.error
        grave: true
    }
    SecretField {
        id: secret
        objectName: "returnSecret"
        label: qsTr("%1, your PIN or passphrase").arg(page.handOver.student)
        onAccepted: page.takeBack(secret.take())
    }

    actions: [
        ActionButton {
            objectName: "takeBackButton"
            Layout.fillWidth: true
            main: true
            enabled: !page.busy && secret.text.length > 0
            text: page.busy ? qsTr("Checking") : qsTr("Open my phone")
            onClicked: page.takeBack(secret.take())
        }
    ]
}
