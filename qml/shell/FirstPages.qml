import QtQuick
import Peelpack.Parts
import Peelpack.Shell

// The first start: welcome, joining, and what to do with the answer.
FocusScope {
    id: pages
    objectName: "firstPages"

    required property Phone phone
    property bool joiningNow: false

    Loader {
        anchors.fill: parent
        focus: true
        active: pages.phone.joining !== null
        sourceComponent: pages.phone.joining.joined ? joined : (pages.joiningNow ? join : welcome)
    }
    Component {
        id: welcome
        WelcomePage {
            phone: pages.phone
            onJoin: pages.joiningNow = true
        }
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
