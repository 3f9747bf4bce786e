import QtQuick
import QtQuick.Layouts
import Peelpack.Light
import Peelpack.Parts
import Peelpack.Shell
import Peelpack.Student

// The student's four places and the pages that lie over them.
FocusScope {
    id: home
    objectName: "home"

    required property Phone phone
    required property StudentPages student

    property int place: 0
    property string over ///< "", "new", "sheet", "parcels", "showCodes", "readCodes", "phone"
    property string before ///< what lay over before the sheet
    property bool justSealed: false
    readonly property bool wide: width > height && width >= 700

    function openSheet(id) {
        student.sheet.show(id)
        before = over === "parcels" || over === "phone" ? over : ""
        justSealed = false
        over = "sheet"
    }
    function goBack() {
        over = over === "sheet" ? before : ""
        before = ""
        phone.clearMessages()
    }

    Connections {
        target: home.phone
        function onCameBack(sheet, isSigned) {
            home.openSheet(sheet)
            home.justSealed = isSigned
        }
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
            visible: home.wide && home.over.length === 0
            upright: true
            current: home.place
            onGo: place => home.place = place
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
                    case "new": return newSheet
                    case "sheet": return sheet
                    case "parcels": return parcels
                    case "showCodes": return showCodes
                    case "readCodes": return readCodes
                    case "phone": return myPhone
                    }
                    return [today, sheets, tally, me][home.place]
                }
            }
            TabBarOfPages {
                Layout.fillWidth: true
                visible: !home.wide && home.over.length === 0
                current: home.place
                onGo: place => home.place = place
            }
        }
    }
    Component {
        id: today
        TodayPage {
            student: home.student
            onNewSheet: home.over = "new"
            onOpenSheet: id => home.openSheet(id)
            onSend: home.over = "parcels"
            onAllSheets: home.place = 1
        }
    }
    Component {
        id: newSheet
        NewSheetPage {
            sheet: home.student.newSheet
            onBack: home.goBack()
            onSaved: (id, giveNow) => {
                home.openSheet(id)
                if (giveNow)
                    home.phone.giveAway([id])
            }
        }
    }
    Component {
        id: sheets
        SheetListPage {
            sheets: home.student.sheets
            onOpenSheet: id => home.openSheet(id)
            onGiveAway: sheets => home.phone.giveAway(sheets)
        }
    }
    Component {
        id: sheet
        SheetPageView {
            sheet: home.student.sheet
            justSealed: home.justSealed
            onBack: home.goBack()
            onGiveAway: id => home.phone.giveAway([id])
        }
    }
    Component {
        id: tally
        TallyPageView {
            tally: home.student.tally
            missingSets: home.student.missingSets
            share: home.phone.share
            name: home.student.name
            onOpenSheet: id => home.openSheet(id)
        }
    }
    Component {
        id: parcels
        ParcelsPage {
            parcels: home.student.parcels
            share: home.phone.share
            onShowCodes: home.over = "showCodes"
            onReadCodes: home.over = "readCodes"
            onBack: home.goBack()
        }
    }
    Component {
        id: showCodes
        ShowCodesPage {
            codes: home.student.parcels.codes
            whom: qsTr("For your instructor's camera")
            onBack: home.over = "parcels"
            onDone: home.over = "parcels"
        }
    }
    Component {
        id: readCodes
        ReadCodesPage {
            reading: home.student.parcels.reading
            camera: home.phone.camera
            onBack: home.over = "parcels"
            onWhole: home.over = "parcels"
            onTakeFile: {
                home.over = "parcels"
                home.phone.share.open("parcel")
            }
        }
    }
    Component {
        id: me
        MePage {
            phone: home.phone
            student: home.student
            onOpenParcels: home.over = "parcels"
            onOpenPhone: home.over = "phone"
        }
    }
    Component {
        id: myPhone
        MyPhonePage {
            phone: home.phone
            onBack: home.goBack()
        }
    }
}
