import QtQuick
import Peelpack.Parts
import Peelpack.Preceptor
import Peelpack.Shell

// A preceptor's own phone: what lies over its one home page.
FocusScope {
    id: home
    objectName: "signerHome"

    required property Phone phone
    required property SigningPhone signing

    property string over ///< "", "scan", "signed", "key", "name", "phone"

    // Before the first signature, the key is what an instructor has to see.
    Component.onCompleted: if (signing.count === 0) over = "key"

    function goHome() {
        over = over === "signed" && signing.place === SigningPhone.AtAnswer ? "signed" : ""
        signing.goHome()
        phone.clearMessages()
    }

    Rectangle {
        anchors.fill: parent
        color: Look.colors.paper
    }
    Loader {
        anchors.fill: parent
        focus: true
        sourceComponent: {
            switch (home.signing.place) {
            case SigningPhone.Naming: return namingPage
            case SigningPhone.AtSheet: return sheetPages
            case SigningPhone.AtAnswer: return answerPage
            }
            switch (home.over) {
            case "scan": return scanPage
            case "signed": return signedPage
            case "key": return keyPage
            case "name": return namePage
            case "phone": return phonePage
            }
            return homePage
        }
    }
    Component {
        id: homePage
        SigningHomePage {
            signing: home.signing
            notice: home.phone.notice
            onScan: home.over = "scan"
            onOpenSigned: home.over = "signed"
            onOpenKey: home.over = "key"
            onOpenName: home.over = "name"
            onOpenPhone: home.over = "phone"
            onLock: home.phone.lock()
        }
    }
    Component {
        id: namingPage
        NamePage {
            signing: home.signing
            first: true
            onDone: home.over = "key"
        }
    }
    Component {
        id: namePage
        NamePage {
            signing: home.signing
            onBack: home.goHome()
            onDone: home.goHome()
        }
    }
    Component {
        id: scanPage
        ScanSheetPage {
            signing: home.signing
            camera: home.phone.camera
            share: home.phone.share
            onBack: home.goHome()
        }
    }
    Component {
        id: sheetPages
        OwnSheetPages {
            signing: home.signing
            sheet: home.signing.sheet
            onLeave: home.goHome()
        }
    }
    Component {
        id: answerPage
        AnswerPage {
            signing: home.signing
            share: home.phone.share
            onBack: home.goHome()
            onDone: home.goHome()
        }
    }
    Component {
        id: signedPage
        SignedListPage {
            signing: home.signing
            onBack: home.goHome()
        }
    }
    Component {
        id: keyPage
        SigningKeyPage {
            signing: home.signing
            share: home.phone.share
            onBack: home.goHome()
        }
    }
    Component {
        id: phonePage
        MyPhonePage {
            phone: home.phone
            withLooks: true
            onBack: home.goHome()
        }
    }
}
