import QtQuick
import Peelpack.Parts
import Peelpack.Preceptor

// The phone in the preceptor's hands: only this, one step after the other, and no way back into the phone.
FocusScope {
    id: pages

    required property HandOver handOver
    required property Camera camera
    required property Share share
    required property bool demo
    required property var demoCards
    required property var demoCard ///< function: index -> bytes of a card
    required property string error
    required property string notice
    required property bool busy
    signal takeBack(string secret)
    signal clearError

    property bool returning: false

    Rectangle {
        anchors.fill: parent
        color: Look.colors.paper
    }
    Loader {
        id: loader
        anchors.fill: parent
        focus: true
        sourceComponent: {
            if (pages.returning)
                return returnPage
            switch (pages.handOver.step) {
            case HandOver.Performed: return performedPage
            case HandOver.Marking: return markingPage
            case HandOver.ReadingBack: return readBackPage
            case HandOver.Signing: return signingPage
            case HandOver.OwnPhone: return ownPhonePage
            case HandOver.Drawing: return drawPage
            case HandOver.Declining: return declinePage
            }
            return returnPage
        }
    }
    Component {
        id: performedPage
        PerformedPage {
            sitting: pages.handOver
            handOver: pages.handOver
            notice: pages.notice
            onGiveBack: pages.returning = true
        }
    }
    Component {
        id: markingPage
        MarkingPage { sitting: pages.handOver }
    }
    Component {
        id: readBackPage
        ReadBackPage { sitting: pages.handOver }
    }
    Component {
        id: signingPage
        SigningPage {
            handOver: pages.handOver
            camera: pages.camera
            share: pages.share
            demo: pages.demo
            demoCards: pages.demoCards
            demoCard: pages.demoCard
        }
    }
    Component {
        id: ownPhonePage
        OwnPhonePage {
            handOver: pages.handOver
            camera: pages.camera
            share: pages.share
        }
    }
    Component {
        id: drawPage
        DrawPage { handOver: pages.handOver }
    }
    Component {
        id: declinePage
        DeclinePage { handOver: pages.handOver }
    }
    Component {
        id: returnPage
        ReturnPage {
            handOver: pages.handOver
            error: pages.error
            busy: pages.busy
            onTakeBack: secret => pages.takeBack(secret)
            onGoOn: {
                pages.clearError()
                pages.returning = false
            }
        }
    }
}
