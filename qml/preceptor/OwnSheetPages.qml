import QtQuick
import Peelpack.Preceptor

// A student's sheet on the preceptor's own phone, one step after the other: the same pages as in a hand-over.
FocusScope {
    id: pages

    required property SigningPhone signing
    required property OwnSheet sheet
    signal leave

    Loader {
        anchors.fill: parent
        focus: true
        sourceComponent: {
            switch (pages.sheet.step) {
            case Sitting.Marking: return markingPage
            case Sitting.ReadingBack: return readBackPage
            case Sitting.Signing: return signingPage
            }
            return performedPage
        }
    }
    Component {
        id: performedPage
        PerformedPage {
            sitting: pages.sheet
            onLeave: pages.leave()
        }
    }
    Component {
        id: markingPage
        MarkingPage { sitting: pages.sheet }
    }
    Component {
        id: readBackPage
        ReadBackPage { sitting: pages.sheet }
    }
    Component {
        id: signingPage
        OwnSigningPage {
            signing: pages.signing
            sheet: pages.sheet
        }
    }
}
