import QtQuick
import Peelpack.Parts
import Peelpack.Program

// The clinical days of a class: in from a file, read back, out as a calendar.
PageFrame {
    id: page
    objectName: "clinicalDaysPage"

    required property ClinicalDayLists days
    required property Share share
    property bool showPast: false
    property bool emptying: false ///< the days are about to be taken away
    property string told

    kicker: days.file
    title: days.file.length > 0 ? qsTr("Are these the days?") : qsTr("Clinical days")
    backText: qsTr("Back")
    Component.onCompleted: days.read()
    Component.onDestruction: days.forget()

    component Lines: CardFrame {
        property alias lines: repeater.model
        readonly property int count: repeater.count
        visible: count > 0
        spacing: 8
        Repeater {
            id: repeater
            Words {
                required property string modelData
                text: modelData
                font.pixelSize: Look.secondarySize
            }
        }
    }

    NoteBox { text: page.emptying ? "" : page.days.done.length > 0 ? page.days.done : page.told }
    NoteBox {
        text: page.days.error
        grave: true
    }
    PickList {
        objectName: "daysClass"
        width: Math.min(implicitWidth, page.width - 2 * Look.margin)
        label: qsTr("Class")
        choices: page.days.classes
        current: page.days.ofClass
        onPicked: index => page.days.ofClass = index
    }

    // A file, before it is signed.
    Pile {
        visible: page.days.file.length > 0
        spacing: Look.gap
        EntryField {
            objectName: "daysSite"
            label: qsTr("Site of days that name none")
            most: 80
            text: page.days.site
            onEdited: text => page.days.site = text
        }
        EntryField {
            objectName: "daysZone"
            label: qsTr("Time zone of the site, only for calendars in UTC")
            hint: "America/Chicago"
            most: 60
            inputMethodHints: Qt.ImhNoPredictiveText
            text: page.days.zone
            onEdited: text => page.days.zone = text
        }
        SectionTitle {
            visible: inFile.count > 0
            text: qsTr("In the file: %n day(s), in place of those that are listed", "", inFile.count)
        }
        Lines {
            id: inFile
            lines: page.days.inFile
        }
    }

    // What is listed.
    Pile {
        visible: page.days.file.length === 0
        spacing: Look.gap
        SectionTitle {
            visible: coming.count > 0
            text: qsTr("From today on: %n day(s)", "", coming.count)
        }
        Lines {
            id: coming
            lines: page.days.coming
        }
        Words {
            visible: coming.count === 0
            text: page.days.mayChange
                  ? qsTr("No clinical day is listed from today on. Take the days in from a calendar (.ics), or from a table (CSV) with the columns date, site, start and end.")
                  : qsTr("No clinical day is listed from today on.")
            color: Look.colors.quietInk
        }
        LinkButton {
            objectName: "pastDays"
            visible: page.days.past.length > 0
            text: page.showPast ? qsTr("Hide the days before") : qsTr("Before: %n day(s)", "", page.days.past.length)
            onClicked: page.showPast = !page.showPast
        }
        Lines {
            lines: page.showPast ? page.days.past : []
        }
        Words {
            visible: !page.days.mayChange
            text: qsTr("The director, instructors and coordinators change these days.")
            font.pixelSize: Look.secondarySize
            color: Look.colors.quietInk
        }
        NoteBox {
            visible: page.emptying
            text: qsTr("Take all days off this list? The students see it with your next parcels.")
            grave: true
        }
    }
    Connections {
        target: page.share
        function onOpened(what, name, bytes) {
            if (what === "clinicalDays")
                page.days.open(name, bytes)
        }
        function onSaved(where) {
            page.told = qsTr("Saved as %1.").arg(where)
        }
        function onFailed(why) {
            page.told = why
        }
    }

    readonly property bool listed: days.file.length === 0 && days.coming.length + days.past.length > 0

    actions: [
        ActionButton {
            objectName: "signDays"
            visible: inFile.count > 0
            main: true
            text: qsTr("Sign: take the days in")
            onClicked: page.days.takeIn()
        },
        ActionButton {
            objectName: "openDays"
            visible: page.days.mayChange && !page.emptying
            main: page.days.file.length === 0
            text: page.days.file.length > 0 ? qsTr("Choose another file") : qsTr("Take days in from a file")
            onClicked: page.share.open("clinicalDays")
        },
        ActionButton {
            objectName: "saveDays"
            visible: page.listed && !page.emptying
            text: qsTr("Save as a calendar")
            onClicked: {
                const calendar = page.days.calendar()
                if (calendar.byteLength > 0)
                    page.share.save("clinical-days.ics", calendar)
            }
        },
        ActionButton {
            objectName: "takeDaysAway"
            visible: page.listed && page.days.mayChange
            grave: true
            text: page.emptying ? qsTr("Sign: take all days away") : qsTr("Take all days away")
            onClicked: {
                if (page.emptying)
                    page.days.takeAway()
                page.emptying = !page.emptying
            }
        },
        ActionButton {
            visible: page.days.file.length > 0 || page.emptying
            text: qsTr("Leave the days as they are")
            onClicked: {
                page.emptying = false
                page.days.forget()
            }
        }
    ]
}
