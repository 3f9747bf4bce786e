import QtQuick
import Peelpack.Parts
import Peelpack.Instructor

// One sheet beside its log entry, with what to check on top and what can be decided below.
PageFrame {
    id: page
    objectName: "checkedSheet"

    required property StaffPages staff
    property bool hints: false
    property bool swipes: false
    property string doing ///< "", "initial", "return", "refile", "amend", "void" or "review-" and a skill
    property bool more: false

    readonly property CheckedSheet sheet: staff.sheet
    readonly property bool broad: width > 780 * Look.textScale
    readonly property string shown: sheet.key
    signal printSheet
    signal settled ///< a form closed: keys are for the sheets again

    onShownChanged: {
        doing = ""
        more = false
        flickable.contentY = 0
        settled()
    }
    function ask(what) {
        if (what === "more") {
            more = true
        } else if (what === "initial" && !sheet.asksToConfirm && sheet.needsReason.length === 0) {
            sheet.initial("", false)
            settled()
        } else {
            if (what === "amend")
                staff.amending.begin()
            doing = what
            Qt.callLater(() => page.showForm())
        }
    }
    function showForm() {
        flickable.contentY = 0
    }
    function answerFirst() {
        doing = "review-" + sheet.reviews.data(sheet.reviews.index(0, 0), Qt.UserRole).skill
        showForm()
    }
    function scroll(by) {
        flickable.contentY = Math.max(0, Math.min(flickable.contentHeight - flickable.height, flickable.contentY + by * flickable.height * 0.8))
    }
    function close() {
        doing = ""
        staff.amending.drop()
        settled()
    }
    function finish(done) {
        if (done)
            close()
    }

    widest: broad ? 1240 : 720
    kicker: staff.list.place
    title: sheet.row.student

    DragHandler {
        target: null
        enabled: page.swipes && page.doing === ""
        yAxis.enabled: false
        onActiveChanged: {
            if (!active && Math.abs(activeTranslation.x) > 90)
                page.staff.list.step(activeTranslation.x < 0 ? 1 : -1)
        }
    }
    Flow {
        visible: page.backText.length > 0
        spacing: 8
        ActionButton {
            objectName: "previousSheet"
            enabled: page.staff.list.at > 0
            text: qsTr("Before")
            Accessible.name: qsTr("The sheet before")
            onClicked: page.staff.list.step(-1)
        }
        ActionButton {
            objectName: "nextSheet"
            enabled: page.staff.list.at >= 0 && page.staff.list.at + 1 < page.staff.list.rows.rowCount()
            text: qsTr("Next")
            Accessible.name: qsTr("The next sheet")
            onClicked: page.staff.list.step(1)
        }
    }
    NoteBox {
        objectName: "sheetError"
        text: page.sheet.error
        grave: true
    }
    NoteBox {
        text: page.sheet.bar
        grave: true
    }
    Repeater {
        model: page.sheet.questions
        NoteBox {
            required property string modelData
            text: modelData
            grave: true
        }
    }
    Repeater {
        model: page.sheet.differences
        NoteBox {
            required property string modelData
            text: modelData
        }
    }
    NoteBox { text: page.sheet.imported }
    NoteBox {
        text: page.doing === "initial" ? "" : page.sheet.needsReason
    }
    InitialForm {
        visible: page.doing === "initial"
        sheet: page.sheet
        onDone: (reason, confirmed) => page.finish(page.sheet.initial(reason, confirmed))
        onDropped: page.close()
    }
    CardFrame {
        visible: page.doing === "return" || page.doing === "void"
        ReasonForm {
            objectName: "reasonForm"
            visible: page.doing === "return" || page.doing === "void"
            prompt: page.doing === "void" ? qsTr("Why is it void? Nothing more can be done with it afterwards; it stays visible.")
                                          : qsTr("What do you ask the student? The sheet waits until they answer.")
            doText: page.doing === "void" ? qsTr("Void it") : qsTr("Return it")
            grave: page.doing === "void"
            onDone: reason => page.finish(page.doing === "void" ? page.sheet.voidSheet(reason) : page.sheet.giveBack(reason))
            onDropped: page.close()
        }
    }
    RefileForm {
        visible: page.doing === "refile"
        sheet: page.sheet
        onDone: (procedure, category, reason) => page.finish(page.sheet.refile(procedure, category, reason))
        onDropped: page.close()
    }
    AmendForm {
        visible: page.doing === "amend"
        amending: page.staff.amending
        onDone: reason => page.finish(page.staff.amending.done(reason))
        onDropped: page.close()
    }
    Repeater {
        model: page.sheet.reviews
        ReviewCard {
            canAct: page.sheet.canAct
            hints: page.hints
            answering: page.doing === "review-" + row.skill
            onWantsToAnswer: page.doing = "review-" + row.skill
            onAccepted: reason => page.finish(page.sheet.acceptReview(row.skill, reason))
            onDropped: page.close()
        }
    }
    PackCard {
        tappable: false
        title: page.sheet.row.title
        detail: page.sheet.row.detail
        standing: page.sheet.row.standing
        seal: page.sheet.row.seal
        role: page.sheet.row.role
        roleCounts: page.sheet.row.roleCounts
        specialty: page.sheet.row.specialty
    }
    Row {
        id: beside
        spacing: Look.gap
        Pile {
            width: page.broad ? (beside.width - beside.spacing) / 2 : beside.width
            spacing: Look.gap
            BesideTable { rows: page.sheet.beside }
            MarksCard {
                visible: !page.broad
                rows: page.sheet.marks
                role: page.sheet.row.role
                why: page.sheet.why
            }
            SectionTitle {
                visible: others.count > 0
                text: qsTr("Also on this operation, it seems")
            }
            Repeater {
                id: others
                model: page.sheet.others
                OtherSheetCard {
                    onOpened: page.staff.list.show(row.key)
                }
            }
            SectionTitle {
                visible: page.sheet.signers.length > 0
                text: qsTr("Signed by")
            }
            CardFrame {
                visible: page.sheet.signers.length > 0
                spacing: 8
                Repeater {
                    model: page.sheet.signers
                    Words {
                        required property string modelData
                        text: modelData
                        font.pixelSize: Look.secondarySize
                    }
                }
                Repeater {
                    model: page.sheet.feedback
                    Words {
                        required property string modelData
                        text: modelData
                    }
                }
            }
            NoteBox { text: page.sheet.original }
        }
        Pile {
            visible: page.broad
            width: (beside.width - beside.spacing) / 2
            spacing: Look.gap
            MarksCard {
                rows: page.sheet.marks
                role: page.sheet.row.role
                why: page.sheet.why
            }
        }
    }
    SheetHistory {
        lines: page.sheet.history
        onPaperWanted: page.printSheet()
    }

    actions: [
        ActBar {
            visible: page.doing === "" && page.sheet.canAct
            sheet: page.sheet
            hints: page.hints
            all: page.hints || page.more
            onAsked: what => page.ask(what)
        }
    ]
}
