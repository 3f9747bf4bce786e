import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Preceptor

// With a signing card and its PIN: scanned, from a picture, or typed; or a card that is made now.
PageFrame {
    id: page

    required property HandOver handOver
    required property Camera camera
    required property Share share
    required property bool demo
    required property var demoCards
    required property var demoCard

    kicker: handOver.total > 1 ? qsTr("One signature for %n sheet(s)", "", handOver.total) : handOver.title
    title: handOver.cardHeld ? qsTr("Your PIN") : qsTr("Sign")
    backText: qsTr("Back")
    onBack: {
        if (handOver.cardHeld)
            handOver.dropCard()
        else if (ways.way.length > 0)
            ways.way = ""
        else
            handOver.back()
    }

    NoteBox {
        text: page.handOver.error
        grave: true
    }

    // The card is here: only the PIN is missing.
    CardFrame {
        visible: page.handOver.cardHeld
        Words {
            Layout.fillWidth: true
            text: page.handOver.stranger ? qsTr("A card that this phone's list does not have") : page.handOver.signer
            font.pixelSize: Look.cardTitleSize
            font.weight: Font.DemiBold
        }
        Words {
            Layout.fillWidth: true
            visible: page.handOver.hasNewCard
            text: qsTr("This is your new signing card. Photograph it with your own phone now: it is shown only here. Whoever has the picture and your PIN can sign as you.")
            font.pixelSize: Look.secondarySize
            color: Look.colors.quietInk
        }
    }
    EntryField {
        id: strangerName
        objectName: "strangerName"
        visible: page.handOver.cardHeld && page.handOver.stranger
        label: qsTr("Your name")
        most: 80
    }
    EntryField {
        id: strangerCredential
        objectName: "strangerCredential"
        visible: strangerName.visible
        label: qsTr("Your credential, such as CST or RN")
        most: 40
    }
    NoteBox {
        objectName: "listedSigner"
        visible: page.handOver.cardHeld && text.length > 0
        text: page.handOver.stranger ? page.handOver.listedAs(strangerCredential.text) : page.handOver.listed
    }
    QrCode {
        implicitHeight: Math.min(280, page.width - 2 * Look.margin)
        visible: page.handOver.hasNewCard
        bytes: page.handOver.newCard
        Accessible.role: Accessible.Graphic
        Accessible.name: qsTr("Code of the new signing card")
    }
    SecretField {
        id: pin
        objectName: "cardPin"
        visible: page.handOver.cardHeld
        digits: true
        label: page.handOver.hasNewCard ? qsTr("Choose a PIN, 6 to 12 digits") : qsTr("PIN of the card")
        onVisibleChanged: if (visible && !page.handOver.stranger) field.forceActiveFocus()
        onAccepted: if (!page.handOver.hasNewCard) page.sign()
    }
    SecretField {
        id: pinAgain
        objectName: "cardPinAgain"
        visible: page.handOver.cardHeld && page.handOver.hasNewCard
        digits: true
        label: qsTr("The PIN again")
    }
    NoteBox {
        visible: pinAgain.visible && pinAgain.text.length > 0 && pinAgain.text !== pin.text
        text: qsTr("The two PINs differ.")
        grave: true
    }

    CardWays {
        id: ways
        Layout.fillWidth: true
        visible: !page.handOver.cardHeld
        handOver: page.handOver
        camera: page.camera
        share: page.share
        demoCards: page.demo ? page.demoCards : null
        demoCard: page.demoCard
    }
    Connections {
        target: page.handOver
        function onChanged() {
            if (!page.handOver.cardHeld) {
                pin.text = ""
                pinAgain.text = ""
            }
        }
    }

    function sign() {
        if (!signButton.enabled)
            return
        if (page.handOver.stranger)
            page.handOver.introduce(strangerName.text, strangerCredential.text)
        page.handOver.sign(pin.take())
    }

    actions: [
        ActionButton {
            id: signButton
            objectName: "signButton"
            Layout.fillWidth: true
            visible: page.handOver.cardHeld
            main: true
            enabled: !page.handOver.busy && pin.text.length > 0 && (!page.handOver.stranger || strangerName.text.trim().length > 0) && (!page.handOver.hasNewCard || pinAgain.text === pin.text)
            text: page.handOver.busy ? qsTr("Signing") : (page.handOver.total > 1 ? qsTr("Sign %n sheet(s)", "", page.handOver.total) : qsTr("Sign"))
            onClicked: page.sign()
        }
    ]
}
