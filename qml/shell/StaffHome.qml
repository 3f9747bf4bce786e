import QtQuick
import QtQuick.Layouts
import Peelpack.Evidence
import Peelpack.Instructor
import Peelpack.Light
import Peelpack.Parts
import Peelpack.Program
import Peelpack.Shell

// The instructor's four places and the pages that lie over them.
FocusScope {
    id: home
    objectName: "staffHome"

    required property Phone phone
    required property StaffPages staff
    required property ProgramPages program

    property int place: 0
    property string over ///< "", "student", "rules", "phone", "program", "papers", "confirm", "aside", "completion", "showCodes", "readCodes"
    property string under ///< what `over` goes back to
    property string shownFor ///< for whom codes are shown: 32 digits, or "staff"
    property string programPage: "people" ///< with which the program's pages begin
    readonly property bool wide: width > height && width >= 700

    function openProgram(page) {
        programPage = page
        over = "program"
    }
    function goBack() {
        over = under
        under = ""
        phone.clearMessages()
    }

    function lay(page) {
        under = over
        over = page
    }
    function lookAt(key) {
        over = under = ""
        place = 0
        staff.list.show(key)
    }

    Rectangle {
        anchors.fill: parent
        color: Look.colors.paper
    }
    GridLayout {
        anchors.fill: parent
        columns: 2
        rowSpacing: 0
        columnSpacing: 0
        layoutDirection: Look.leftHand ? Qt.RightToLeft : Qt.LeftToRight

        TabBarOfPages {
            Layout.fillHeight: true
            visible: home.wide
            upright: true
            names: tabs.names
            signs: tabs.signs
            current: home.place
            onGo: place => {
                home.over = home.under = ""
                home.place = place
            }
        }
        ColumnLayout {
            Layout.fillWidth: true
            Layout.fillHeight: true
            spacing: 0
            NoteBox {
                Layout.margins: 8
                visible: text.length > 0
                text: home.phone.error.length > 0 && home.over !== "phone" ? home.phone.error : home.phone.notice
                grave: home.phone.error.length > 0
            }
            Loader {
                id: loader
                Layout.fillWidth: true
                Layout.fillHeight: true
                focus: true
                sourceComponent: {
                    switch (home.over) {
                    case "student": return student
                    case "showCodes": return showCodes
                    case "readCodes": return readCodes
                    case "rules": return rules
                    case "phone": return myPhone
                    case "papers":
                    case "confirm":
                    case "aside":
                    case "completion": return evidence
                    case "program": return programPlace
                    }
                    return [check, board, parcels, me][home.place]
                }
            }
            UndoBar {
                Layout.fillWidth: true
                pending: home.staff.pending
                hints: home.wide && home.place === 0
            }
            TabBarOfPages {
                id: tabs
                Layout.fillWidth: true
                visible: !home.wide && home.over.length === 0
                names: [qsTr("Check"), qsTr("Class"), qsTr("Take in"), qsTr("Me")]
                signs: [1, 2, 4, 3]
                current: home.place
                onGo: place => home.place = place
            }
        }
    }
    Component {
        id: check
        CheckPlace {
            staff: home.staff
            onPrintSheet: key => {
                home.over = "papers"
                home.phone.evidence.papers.choose("")
                home.phone.evidence.papers.makeSheet(key)
            }
        }
    }
    Component {
        id: board
        ClassPage {
            board: home.staff.board
            missingSets: home.staff.missingSets
            share: home.phone.share
            onOpenStudent: id => {
                home.staff.student.show(id)
                home.over = "student"
            }
        }
    }
    Component {
        id: student
        StudentOfClassPage {
            student: home.staff.student
            onBack: home.goBack()
            onOpenSheet: key => home.lookAt(key)
            onOpenCompletion: {
                home.phone.evidence.completion.show(home.staff.student.id)
                home.lay("completion")
            }
            onOpenPapers: {
                home.phone.evidence.papers.choose(home.staff.student.id)
                home.lay("papers")
            }
        }
    }
    Component {
        id: parcels
        StaffParcelsPage {
            parcels: home.staff.parcels
            share: home.phone.share
            demoParcels: home.phone.demo
            onTakeDemoParcels: home.phone.takeInDemoParcels()
            onShowCodes: id => {
                home.shownFor = id
                home.over = "showCodes"
            }
            onReadCodes: home.over = "readCodes"
        }
    }
    Component {
        id: showCodes
        ShowCodesPage {
            codes: home.staff.parcels.codes
            whom: home.staff.parcels.whoIs(home.shownFor)
            doneText: qsTr("They have it")
            onBack: home.goBack()
            onDone: {
                home.staff.parcels.given([home.shownFor])
                home.goBack()
            }
        }
    }
    Component {
        id: readCodes
        ReadCodesPage {
            reading: home.staff.parcels.reading
            camera: home.phone.camera
            onBack: home.goBack()
            onWhole: home.goBack()
            onTakeFile: {
                home.goBack()
                home.phone.share.openSome("parcels", false)
            }
        }
    }
    Component {
        id: me
        StaffMePage {
            phone: home.phone
            staff: home.staff
            director: home.program.director
            onOpenProgram: page => home.openProgram(page)
            onOpenRules: home.over = "rules"
            onOpenPhone: home.over = "phone"
            onOpenEvidence: page => {
                home.phone.evidence.papers.choose("")
                home.over = page
            }
        }
    }
    Component {
        id: evidence
        EvidencePlace {
            evidence: home.phone.evidence
            share: home.phone.share
            page: home.over
            onBack: home.goBack()
            onOpenSheet: key => home.lookAt(key)
        }
    }
    Component {
        id: rules
        RulesPage {
            rules: home.staff.rules
            missingSets: home.staff.missingSets
            share: home.phone.share
            onOpenProgram: page => {
                home.programPage = page
                home.lay("program")
            }
            onBack: home.goBack()
        }
    }
    Component {
        id: myPhone
        MyPhonePage {
            phone: home.phone
            onBack: home.goBack()
        }
    }
    Component {
        id: programPlace
        ProgramPlace {
            program: home.program
            camera: home.phone.camera
            share: home.phone.share
            page: home.programPage
            onLeave: home.goBack()
            onOpenParcels: {
                home.over = ""
                home.place = 2
            }
        }
    }
}
