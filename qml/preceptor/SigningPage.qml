import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Preceptor

// With a signing card and its PIN: scanned, from a picture, or typed; or a card that is made now.
PageFrame {
    id: page
    objectName: "signingPage"

    required property HandOver handOver
    required property Camera camera
    required property Share share
    required property bool demo
    required property var demoCards
    required property var demoCard

    property string way ///< "scan", "type" or "make"

    kicker: handOver.total > 1 ? qsTr("One signature for %n sheet(s)", "", handOver.total) : handOver.title
    title: handOver.cardHeld ? qsTr("Your PIN") : qsTr("Sign")
    backText: qsTr("Back")
    onBack: {
        if (handOver.cardHeld)
            handOver.dropCard()
        else if (way.length > 0)
            way = ""
        else
            handOver.back()
    }
    Component.onCompleted: if (camera.available) way = "scan"

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

    // No card yet.
    Pile {
        Layout.fillWidth: true
        visible: !page.handOver.cardHeld
        spacing: Look.gap

        QrScanner {
            id: scanner
            Layout.fillWidth: true
            visible: page.way === "scan"
            camera: page.camera
            scanning: page.way === "scan" && !page.handOver.cardHeld
            onFound: bytes => page.handOver.takeCard(bytes)
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("What the camera sees")
        }
        NoteBox {
            text: scanner.problem
            grave: true
        }
        ActionButton {
            objectName: "scanAgain"
            Layout.fillWidth: true
            visible: page.way === "scan" && !scanner.scanning
            text: qsTr("Scan again")
            onClicked: scanner.scanning = Qt.binding(() => page.way === "scan" && !page.handOver.cardHeld)
        }
        ChoiceRow {
            objectName: "scanCard"
            Layout.fillWidth: true
            visible: page.camera.available && page.way !== "scan"
            text: qsTr("Scan my signing card")
            onClicked: page.way = "scan"
        }
        ChoiceRow {
            objectName: "pictureOfCard"
            Layout.fillWidth: true
            text: qsTr("A picture of my signing card")
            opens: true
            onClicked: page.share.open("card")
        }
        ChoiceRow {
            objectName: "typeCard"
            Layout.fillWidth: true
            text: qsTr("Type the code of my signing card")
            chosen: page.way === "type"
            onClicked: page.way = page.way === "type" ? "" : "type"
        }
        Pile {
            Layout.fillWidth: true
            visible: page.way === "type"
            spacing: 8
            Repeater {
                id: people
                property int chosen: -1
                model: page.handOver.people
                ChoiceRow {
                    required property int index
                    required property string modelData
                    Layout.fillWidth: true
                    text: modelData
                    chosen: people.chosen === index
                    onClicked: people.chosen = index
                }
            }
            EntryField {
                id: code
                objectName: "cardCode"
                label: qsTr("The code printed on the card, 7 groups of 5")
                most: 60
                inputMethodHints: Qt.ImhNoPredictiveText | Qt.ImhSensitiveData
            }
            ActionButton {
                Layout.fillWidth: true
                enabled: people.chosen >= 0 && code.text.trim().length > 0
                text: qsTr("Use this card")
                onClicked: {
                    page.handOver.typeCard(people.chosen, code.text)
                    code.text = ""
                }
            }
        }
        ChoiceRow {
            objectName: "makeCard"
            Layout.fillWidth: true
            text: qsTr("I have no signing card: make one now")
            detail: page.handOver.newCardWord
            chosen: page.way === "make"
            onClicked: page.way = page.way === "make" ? "" : "make"
        }
        Pile {
            Layout.fillWidth: true
            visible: page.way === "make"
            spacing: 8
            EntryField {
                id: name
                objectName: "signerName"
                label: qsTr("Your name")
                most: 80
            }
            EntryField {
                id: credential
                objectName: "signerCredential"
                label: qsTr("Your credential, such as CST or RN")
                most: 40
            }
            NoteBox { text: page.handOver.listedAs(credential.text) }
            ActionButton {
                objectName: "makeCardNow"
                Layout.fillWidth: true
                enabled: name.text.trim().length > 0
                text: qsTr("Make my card")
                onClicked: page.handOver.makeCard(name.text, credential.text)
            }
        }
        ChoiceRow {
            objectName: "drawButton"
            Layout.fillWidth: true
            text: qsTr("Draw my signature")
            detail: page.handOver.drawnWord
            opens: true
            onClicked: page.handOver.go(HandOver.Drawing)
        }
        SectionTitle {
            visible: page.demo
            text: qsTr("Demo: hold one of these cards before the camera")
        }
        Repeater {
            model: page.demo ? page.demoCards : null
            ChoiceRow {
                required property int index
                required property string modelData
                objectName: "demoCard-" + index
                Layout.fillWidth: true
                text: modelData
                onClicked: page.handOver.takeCard(page.demoCard(index))
            }
        }
    }
    Connections {
        target: page.share
        function onOpened(what, name, bytes) {
            if (what === "card")
                scanner.readPicture(bytes)
        }
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
