import QtQuick
import Peelpack.Parts
import Peelpack.Program

// Vouching for a card or an own phone, with the sheets that wait for it.
PageFrame {
    id: page

    required property Vouching vouching
    required property Camera camera
    required property Share share
    signal vouched

    kicker: vouching.what
    title: vouching.chosen ? qsTr("Do you vouch for it?") : qsTr("A preceptor's own phone")
    backText: qsTr("Back")

    NoteBox {
        text: page.vouching.error
        grave: true
    }
    Words {
        visible: !page.vouching.chosen
        text: qsTr("In person: on the preceptor's phone, under Your signing key, there is a code. It is no secret.")
        color: Look.colors.quietInk
    }
    CodeReader {
        visible: !page.vouching.chosen
        camera: page.camera
        share: page.share
        what: "signingKey"
        fileText: qsTr("Open its file, or a picture of the code")
        textLabel: qsTr("Or the 64 digits")
        onFound: bytes => page.vouching.readKey(bytes)
        onPasted: text => page.vouching.readKeyText(text)
    }
    Pile {
        visible: page.vouching.chosen
        spacing: Look.gap
        Words {
            text: qsTr("Vouch only for somebody whom you know, and who says to you that it is theirs. What it signed and signs counts then.")
            color: Look.colors.quietInk
        }
        CardFrame {
            visible: page.vouching.keyText.length > 0
            Words {
                text: qsTr("Their phone shows the same digits:")
                font.pixelSize: Look.secondarySize
                color: Look.colors.quietInk
            }
            Words { text: page.vouching.keyText }
        }
        SectionTitle {
            visible: sheets.count > 0
            text: qsTr("Signed with it and waiting")
        }
        CardFrame {
            visible: sheets.count > 0
            spacing: 8
            Repeater {
                id: sheets
                model: page.vouching.sheets
                Words {
                    required property string modelData
                    text: modelData
                    font.pixelSize: Look.secondarySize
                }
            }
        }
        EntryField {
            id: name
            objectName: "vouchName"
            label: qsTr("Name of the preceptor")
            text: page.vouching.claimedName
            most: 80
        }
        NoteBox {
            visible: page.vouching.known.indexOf(name.text.trim()) >= 0
            text: qsTr("A preceptor of this name is known: it is added to their cards and phones.")
        }
        EntryField {
            id: credential
            objectName: "vouchCredential"
            label: qsTr("Credential, such as CST or RN")
            text: page.vouching.claimedCredential
            most: 40
        }
        EntryField {
            id: site
            objectName: "vouchSite"
            label: qsTr("Site where they work")
            most: 80
        }
    }

    actions: [
        ActionButton {
            objectName: "vouchNow"
            visible: page.vouching.chosen
            main: true
            enabled: name.text.trim().length > 0
            text: qsTr("I vouch for it")
            onClicked: {
                if (page.vouching.vouch(name.text, credential.text, site.text))
                    page.vouched()
            }
        }
    ]
}
