import QtQuick
import Peelpack.Parts
import Peelpack.Program

// Whose a new signing card is, and its PIN, which the preceptor chooses.
PageFrame {
    id: page
    objectName: "cardPage"

    required property CardMaking making
    property bool pinHere: true

    kicker: making.known ? making.holder : ""
    title: making.known ? qsTr("Another signing card") : qsTr("A new signing card")
    backText: making.busy ? "" : qsTr("Back")

    NoteBox {
        text: page.making.error
        grave: true
    }
    Pile {
        visible: !page.making.known
        spacing: Look.gap
        EntryField {
            id: name
            objectName: "cardName"
            label: qsTr("Name of the preceptor")
            most: 80
        }
        EntryField {
            id: credential
            objectName: "cardCredential"
            label: qsTr("Credential, such as CST or RN")
            most: 40
        }
        EntryField {
            id: site
            objectName: "cardSite"
            visible: page.pinHere
            label: qsTr("Site where they work")
            most: 80
        }
    }
    OnOffRow {
        objectName: "pinHere"
        text: qsTr("The preceptor is here and chooses the PIN now")
        detail: page.pinHere ? qsTr("The card counts at once.")
                             : qsTr("The PIN is chosen at the first signature; what the card signs counts once you vouch for it then.")
        on: page.pinHere
        onTurned: on => page.pinHere = on
    }
    Pile {
        visible: page.pinHere
        spacing: Look.gap
        Words {
            text: qsTr("Give the device to the preceptor for the PIN: only they may know it.")
            font.pixelSize: Look.secondarySize
            color: Look.colors.quietInk
        }
        SecretField {
            id: pin
            objectName: "cardPinField"
            digits: true
            label: qsTr("PIN, 6 to 12 digits")
        }
        SecretField {
            id: again
            objectName: "cardPinAgain"
            digits: true
            label: qsTr("The same again")
        }
    }

    actions: [
        ActionButton {
            objectName: "makeCardNow"
            main: true
            enabled: !page.making.busy && (page.making.known || name.text.trim().length > 0)
                     && (!page.pinHere || (pin.text.length > 0 && again.text.length > 0))
            text: page.making.busy ? qsTr("Making the card") : qsTr("Make the card")
            onClicked: {
                if (page.pinHere)
                    page.making.make(name.text, credential.text, site.text, pin.take(), again.take())
                else
                    page.making.makeWithoutPin(name.text, credential.text)
            }
        }
    ]
}
