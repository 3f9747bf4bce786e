import QtQuick
import Peelpack.Parts
import Peelpack.Program

// The program's pages: people, preceptors and cards, rules, what is printed and cut, and the hand-over to a new director.
FocusScope {
    id: place
    objectName: "programPlace"

    required property ProgramPages program
    required property Camera camera
    required property Share share
    property string page: "people"
    property string invitedFrom: "people" ///< where an invitation that is shown leads back to
    signal leave
    signal openParcels

    function goBack() {
        const before = { person: "people", invite: "people", classList: "people", grant: "people",
                         invitation: invitedFrom, preceptor: "preceptors", card: "preceptors",
                         vouch: "preceptors" }[page]
        if (before === undefined)
            leave()
        else
            page = before
    }
    function showInvitation(from) {
        invitedFrom = from
        page = "invitation"
    }

    Loader {
        anchors.fill: parent
        focus: true
        sourceComponent: {
            switch (place.page) {
            case "person": return person
            case "invite": return invite
            case "invitation": return invitation
            case "classList": return classList
            case "grant": return grant
            case "preceptors": return preceptors
            case "preceptor": return preceptor
            case "card": return place.program.cardMaking.made ? cardMade : card
            case "vouch": return vouch
            case "paperToCut": return paperToCut
            case "rules": return rules
            case "requirements": return requirements
            case "days": return days
            case "sites": return sites
            case "signers": return signers
            case "procedures": return procedures
            case "handOver": return handOver
            }
            return people
        }
    }
    Component {
        id: people
        PeoplePage {
            people: place.program.people
            inviting: place.program.inviting
            onBack: place.goBack()
            onOpenPerson: id => {
                place.program.people.show(id)
                place.page = "person"
            }
            onOpenInvitation: index => {
                place.program.inviting.show(index)
                place.showInvitation("people")
            }
            onGo: page => place.page = page
        }
    }
    Component {
        id: person
        PersonPage {
            people: place.program.people
            inviting: place.program.inviting
            onBack: place.goBack()
            onInvited: place.showInvitation("person")
        }
    }
    Component {
        id: invite
        InvitePage {
            inviting: place.program.inviting
            onBack: place.goBack()
            onInvited: place.showInvitation("people")
        }
    }
    Component {
        id: invitation
        InvitationPage {
            inviting: place.program.inviting
            paperToCut: place.program.paperToCut
            share: place.share
            onBack: place.goBack()
            onAnswered: place.page = "grant"
            onWithdrawn: place.page = "people"
        }
    }
    Component {
        id: classList
        ClassListPage {
            inviting: place.program.classInviting
            paperToCut: place.program.paperToCut
            share: place.share
            onBack: place.goBack()
        }
    }
    Component {
        id: grant
        GrantPage {
            granting: place.program.granting
            camera: place.camera
            share: place.share
            onBack: place.goBack()
            onOpenParcels: place.openParcels()
        }
    }
    Component {
        id: preceptors
        PreceptorsPage {
            preceptors: place.program.preceptors
            vouching: place.program.vouching
            onBack: place.goBack()
            onOpenPreceptor: id => {
                place.program.preceptors.show(id)
                place.page = "preceptor"
            }
            onOpenWaiting: index => {
                place.program.vouching.choose(index)
                place.page = "vouch"
            }
            onOpenPhone: {
                place.program.vouching.drop()
                place.page = "vouch"
            }
            onMakeCard: {
                place.program.cardMaking.begin()
                place.page = "card"
            }
        }
    }
    Component {
        id: preceptor
        PreceptorPage {
            preceptors: place.program.preceptors
            onBack: place.goBack()
            onMakeCard: {
                place.program.cardMaking.beginFor(place.program.preceptors.preceptor)
                place.page = "card"
            }
        }
    }
    Component {
        id: card
        CardPage {
            making: place.program.cardMaking
            onBack: place.goBack()
        }
    }
    Component {
        id: cardMade
        CardMadePage {
            making: place.program.cardMaking
            paperToCut: place.program.paperToCut
            share: place.share
            onDone: {
                place.page = "preceptors"
                place.program.cardMaking.forget()
            }
        }
    }
    Component {
        id: vouch
        VouchPage {
            vouching: place.program.vouching
            camera: place.camera
            share: place.share
            onBack: place.goBack()
            onVouched: place.page = "preceptors"
        }
    }
    Component {
        id: paperToCut
        PaperToCutPage {
            paperToCut: place.program.paperToCut
            share: place.share
            onBack: place.goBack()
        }
    }
    Component {
        id: rules
        ProgramRulesPage {
            rules: place.program.rules
            onBack: place.goBack()
        }
    }
    Component {
        id: requirements
        RequirementsPage {
            changes: place.program.requirements
            onBack: place.goBack()
        }
    }
    Component {
        id: days
        ClinicalDaysPage {
            days: place.program.days
            share: place.share
            onBack: place.goBack()
        }
    }
    Component {
        id: sites
        SitesPage {
            sites: place.program.sites
            onBack: place.goBack()
        }
    }
    Component {
        id: signers
        SignersPage {
            signers: place.program.signers
            onBack: place.goBack()
        }
    }
    Component {
        id: procedures
        OwnProceduresPage {
            procedures: place.program.procedures
            share: place.share
            onBack: place.goBack()
        }
    }
    Component {
        id: handOver
        HandProgramOverPage {
            program: place.program
            share: place.share
            onBack: place.goBack()
        }
    }
}
