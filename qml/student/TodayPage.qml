import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Student

// What the student needs to see first.
PageFrame {
    id: page

    required property StudentPages student
    signal newSheet
    signal openSheet(string id)
    signal send
    signal allSheets

    readonly property Today today: student.today

    kicker: today.day
    title: qsTr("Today")

    NoteBox {
        text: page.student.bar
        grave: true
    }
    NoteBox {
        objectName: "clinicalDay"
        text: page.today.clinicalDay
    }
    CardFrame {
        visible: page.today.standing.length > 0
        Words {
            Layout.fillWidth: true
            text: page.today.standing
            font.pixelSize: Look.cardTitleSize
            font.weight: Font.DemiBold
        }
        Words {
            Layout.fillWidth: true
            visible: text.length > 0
            text: page.today.next
            font.pixelSize: Look.secondarySize
            color: Look.colors.drape
        }
    }
    SectionTitle {
        text: qsTr("Waiting")
        visible: waitingList.count > 0
    }
    Repeater {
        id: waitingList
        model: page.today.waiting
        SheetCard {
            onClicked: page.openSheet(row.id)
        }
    }
    ChoiceRow {
        objectName: "moreRow"
        Layout.fillWidth: true
        visible: text.length > 0
        text: page.today.more
        detail: qsTr("All of them are among your sheets.")
        opens: true
        onClicked: page.allSheets()
    }
    Words {
        Layout.fillWidth: true
        visible: waitingList.count === 0
        text: qsTr("Nothing is waiting for a signature or an answer. After your next case, tap New case sheet.")
        color: Look.colors.quietInk
    }
    SectionTitle {
        text: qsTr("Latest")
        visible: latestList.count > 0
    }
    Repeater {
        id: latestList
        model: page.today.latest
        SheetCard {
            onClicked: page.openSheet(row.id)
        }
    }
    ChoiceRow {
        objectName: "sendRow"
        Layout.fillWidth: true
        visible: page.today.onlyHere.length > 0
        text: qsTr("Send to my instructor")
        detail: page.today.onlyHere
        opens: true
        onClicked: page.send()
    }

    actions: [
        ActionButton {
            objectName: "newSheetButton"
            Layout.fillWidth: true
            main: true
            text: page.student.newSheet.begun ? qsTr("Go on with your case sheet") : qsTr("New case sheet")
            onClicked: page.newSheet()
        }
    ]
}
