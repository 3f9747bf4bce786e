import QtQuick
import Peelpack.Parts
import Peelpack.Evidence

// The pages of evidence, one at a time.
FocusScope {
    id: place

    required property EvidencePages evidence
    required property Share share
    required property string page ///< "papers", "confirm", "aside", "completion"
    signal back
    signal openSheet(string key)

    Loader {
        anchors.fill: parent
        focus: true
        sourceComponent: {
            switch (place.page) {
            case "papers": return papers
            case "confirm": return confirm
            case "aside": return aside
            case "completion": return completion
            }
            return null
        }
    }
    Component {
        id: papers
        PapersPage {
            papers: place.evidence.papers
            share: place.share
            onBack: place.back()
        }
    }
    Component {
        id: confirm
        ConfirmPage {
            confirming: place.evidence.confirming
            onBack: place.back()
            onOpenSheet: key => place.openSheet(key)
        }
    }
    Component {
        id: aside
        AsidePage {
            aside: place.evidence.aside
            onBack: place.back()
        }
    }
    Component {
        id: completion
        CompletionPage {
            completion: place.evidence.completion
            share: place.share
            onBack: place.back()
        }
    }
}
