import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Preceptor
import Peelpack.Shell

// The one window: what is on it follows from whose hands the phone is in.
ApplicationWindow {
    id: window

    required property Phone phone

    width: 390
    height: 844
    minimumWidth: 320
    minimumHeight: 360
    visible: true
    title: "Peelpack"
    color: Look.colors.paper
    font.family: "Inter"

    Binding {
        target: Look
        property: "handedOver"
        value: window.phone.stage === Phone.HandedOver
    }
    Loader {
        id: dialogs
        Connections {
            target: window.phone.share
            function onAskingChanged() {
                if (window.phone.share.asking.length > 0)
                    dialogs.setSource("ShareDialogs.qml", { share: window.phone.share })
                else
                    dialogs.source = ""
            }
        }
    }
    ColumnLayout {
        anchors.fill: parent
        spacing: 0
        DemoBanner {
            Layout.fillWidth: true
            visible: window.phone.demo
            handedOver: window.phone.stage === Phone.HandedOver
            onLeave: window.phone.leaveDemo()
        }
        Loader {
            id: stage
            objectName: "stage"
            Layout.fillWidth: true
            Layout.fillHeight: true
            focus: true
            sourceComponent: {
                switch (window.phone.stage) {
                case Phone.Locked: return lockPage
                case Phone.Open: return home
                case Phone.HandedOver: return handOver
                case Phone.Elsewhere: return elsewhere
                case Phone.Signing: return signing
                case Phone.Staff: return staff
                }
                return first
            }
        }
    }
    Component {
        id: first
        FirstPages { phone: window.phone }
    }
    Component {
        id: lockPage
        LockPage { phone: window.phone }
    }
    Component {
        id: elsewhere
        ElsewherePage { phone: window.phone }
    }
    Component {
        id: signing
        SignerHome {
            phone: window.phone
            signing: window.phone.signing
        }
    }
    Component {
        id: home
        StudentHome {
            phone: window.phone
            student: window.phone.student
        }
    }
    Component {
        id: staff
        StaffHome {
            phone: window.phone
            staff: window.phone.staff
            program: window.phone.program
        }
    }
    Component {
        id: handOver
        HandOverPages {
            handOver: window.phone.handOver
            camera: window.phone.camera
            share: window.phone.share
            demo: window.phone.demo
            demoCards: window.phone.demoCards
            demoCard: index => window.phone.demoCard(index)
            error: window.phone.error
            notice: window.phone.notice
            busy: window.phone.busy
            onTakeBack: secret => window.phone.takeBack(secret)
            onClearError: window.phone.clearMessages()
        }
    }
}
