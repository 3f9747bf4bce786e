import QtQuick
import Peelpack.Shell

// The first start: welcome, and the ways in which a phone becomes somebody's.
FocusScope {
    id: pages
    objectName: "firstPages"

    required property Phone phone
    property string way ///< "", "join", "sign", "setUp", "takeOver"
    readonly property FirstStarts first: phone.first

    Loader {
        anchors.fill: parent
        focus: true
        active: pages.first !== null
        sourceComponent: {
            switch (pages.way) {
            case "join": return pages.first.joining.joined ? joined : join
            case "sign": return pages.first.signing.made ? started : start
            case "takeOver": return pages.first.takingOver.made ? takenOver : takeOver
            case "setUp":
                switch (pages.first.settingUp.step) {
                case SettingUp.CodeShown:
                case SettingUp.TypingBack: return programCode
                case SettingUp.Director: return director
                case SettingUp.Made: return setUp
                }
                return rules
            }
            return welcome
        }
    }
    Component {
        id: welcome
        WelcomePage {
            phone: pages.phone
            onJoin: pages.way = "join"
            onStartToSign: pages.way = "sign"
            onSetUp: pages.way = "setUp"
        }
    }
    Component {
        id: start
        SigningStartPage {
            starting: pages.first.signing
            onBack: pages.way = ""
        }
    }
    Component {
        id: started
        SigningStartedPage { starting: pages.first.signing }
    }
    Component {
        id: join
        JoinPage {
            joining: pages.first.joining
            camera: pages.phone.camera
            share: pages.phone.share
            onBack: {
                if (pages.first.joining.invited)
                    pages.first.joining.drop()
                else
                    pages.way = ""
            }
        }
    }
    Component {
        id: joined
        JoinedPage {
            joining: pages.first.joining
            share: pages.phone.share
        }
    }
    Component {
        id: rules
        SetUpRulesPage {
            settingUp: pages.first.settingUp
            share: pages.phone.share
            onTakeOver: pages.way = "takeOver"
        }
    }
    Component {
        id: programCode
        ProgramCodePage { settingUp: pages.first.settingUp }
    }
    Component {
        id: director
        SetUpDirectorPage { settingUp: pages.first.settingUp }
    }
    Component {
        id: setUp
        VaultMadePage {
            start: pages.first.settingUp
            program: pages.first.settingUp.program
            kicker: qsTr("The program is set up")
            next: qsTr("Next you see your own pages. Under Me you invite people and make signing cards.")
        }
    }
    Component {
        id: takeOver
        TakeOverPage {
            takingOver: pages.first.takingOver
            onBack: pages.way = "setUp"
        }
    }
    Component {
        id: takenOver
        VaultMadePage {
            start: pages.first.takingOver
            program: pages.first.takingOver.program
            kicker: qsTr("You are the program's director now")
            next: qsTr("Compare the id with the one that the others see. Next: take in the record, then send a parcel to the other instructors.")
        }
    }
    Connections {
        target: pages.first ? pages.first.settingUp : null
        function onLeft() {
            pages.way = ""
        }
    }
}
