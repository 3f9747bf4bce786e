import QtQuick
import Peelpack.Shell

// The first start: welcome, joining, and what to do with the answer.
FocusScope {
    id: pages
    objectName: "firstPages"

    required property Phone phone
    property bool joiningNow: false
    property bool startingNow: false ///< to sign, on a preceptor's own phone

    Loader {
        anchors.fill: parent
        focus: true
        active: pages.phone.joining !== null
        sourceComponent: {
            if (pages.startingNow)
                return pages.phone.startingToSign.made ? started : start
            return pages.phone.joining.joined ? joined : (pages.joiningNow ? join : welcome)
        }
    }
    Component {
        id: welcome
        WelcomePage {
            phone: pages.phone
            onJoin: pages.joiningNow = true
            onStartToSign: pages.startingNow = true
        }
    }
    Component {
        id: start
        SigningStartPage {
            starting: pages.phone.startingToSign
            onBack: pages.startingNow = false
        }
    }
    Component {
        id: started
        SigningStartedPage { starting: pages.phone.startingToSign }
    }
    Component {
        id: join
        JoinPage {
            joining: pages.phone.joining
            camera: pages.phone.camera
            share: pages.phone.share
            onBack: {
                if (pages.phone.joining.invited)
                    pages.phone.joining.drop()
                else
                    pages.joiningNow = false
            }
        }
    }
    Component {
        id: joined
        JoinedPage {
            joining: pages.phone.joining
            share: pages.phone.share
        }
    }
}
