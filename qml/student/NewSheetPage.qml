import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Student

// A case sheet while it is written: the procedure first, the rest is remembered.
PageFrame {
    id: page
    objectName: "newSheetPage"

    required property NewSheet sheet
    signal saved(string id, bool giveNow)

    kicker: qsTr("New case sheet")
    title: sheet.procedures.length === 0 ? qsTr("Which procedure?") : qsTr("Your case")
    backText: qsTr("Back")

    property bool adding: sheet.procedures.length === 0
    property bool more: false ///< day, site, room and times are shown

    Repeater {
        model: page.sheet.procedures
        CardFrame {
            id: chosen
            required property int index
            required property string modelData
            RowLayout {
                Layout.fillWidth: true
                Words {
                    Layout.fillWidth: true
                    text: chosen.modelData
                    font.pixelSize: Look.cardTitleSize
                    font.weight: Font.DemiBold
                    maximumLineCount: 9
                    elide: Text.ElideRight
                }
                LinkButton {
                    text: qsTr("Remove")
                    Accessible.name: qsTr("Remove %1").arg(chosen.modelData)
                    onClicked: page.sheet.remove(chosen.index)
                }
            }
        }
    }
    EntryField {
        id: query
        objectName: "procedureSearch"
        visible: page.adding || page.sheet.procedures.length === 0
        label: qsTr("Procedure, or how you say it")
        hint: qsTr("lap chole")
        text: page.sheet.query
        inputMethodHints: Qt.ImhNoPredictiveText
        field.Accessible.name: qsTr("Search for a procedure")
        onEdited: text => page.sheet.query = text
        onAccepted: {
            if (hits.count > 0)
                page.take(hits.itemAt(0).row.name)
        }
        Component.onCompleted: if (visible) field.forceActiveFocus()
    }
    Connections {
        target: page.sheet
        function onChanged() {
            if (query.text !== page.sheet.query)
                query.text = page.sheet.query
        }
    }
    SectionTitle {
        visible: query.visible && !page.sheet.searching && hits.count > 0
        text: qsTr("Favorites, then your latest and most frequent")
    }
    Repeater {
        id: hits
        model: query.visible ? page.sheet.hits : null
        ProcedureHit {
            Layout.fillWidth: true
            onTaken: page.take(row.name)
            onFavored: on => page.sheet.favor(row.id, on)
        }
    }
    ChoiceRow {
        objectName: "takeTyped"
        Layout.fillWidth: true
        visible: query.visible && page.sheet.searching
        text: qsTr("Write it as \"%1\"").arg(page.sheet.query)
        detail: qsTr("Not in the list: you choose its specialty afterwards.")
        onClicked: {
            page.sheet.takeTyped()
            page.adding = false
        }
    }
    ActionButton {
        Layout.fillWidth: true
        visible: !query.visible && page.sheet.procedures.length < 4
        text: qsTr("Add a procedure of the same operation")
        onClicked: {
            page.adding = true
            query.field.forceActiveFocus()
        }
    }
    OnOffRow {
        Layout.fillWidth: true
        visible: page.sheet.procedures.length > 1
        text: qsTr("One pathology")
        detail: qsTr("Biopsy then excision of the same tumor, or scope turned open: both are one case.")
        on: page.sheet.onePathology
        onTurned: on => page.sheet.onePathology = on
    }
    NoteBox {
        text: page.sheet.duplicate
    }
    NoteBox {
        text: page.sheet.identifiers
        grave: true
    }
    Pile {
        Layout.fillWidth: true
        visible: page.sheet.procedures.length > 0
        spacing: Look.gap

        EntryField {
            objectName: "surgeonField"
            label: qsTr("Surgeon")
            text: page.sheet.surgeon
            onEdited: text => page.sheet.surgeon = text
        }
        Suggestions {
            choices: page.sheet.surgeons.filter(name => name !== page.sheet.surgeon)
            onPicked: words => page.sheet.surgeon = words
        }
        ChoiceRow {
            objectName: "whenAndWhere"
            Layout.fillWidth: true
            text: page.sheet.whenAndWhere
            detail: page.more ? qsTr("Fewer fields") : qsTr("Change day, site, room or times")
            opens: !page.more
            onClicked: page.more = !page.more
        }
        Pile {
            Layout.fillWidth: true
            visible: page.more
            spacing: Look.gap
            SectionTitle { text: page.sheet.day }
            RowLayout {
                Layout.fillWidth: true
                spacing: 8
                ActionButton {
                    objectName: "dayBefore"
                    Layout.fillWidth: true
                    Layout.preferredWidth: 100
                    text: qsTr("Day before")
                    onClicked: page.sheet.daysAgo = page.sheet.daysAgo + 1
                }
                ActionButton {
                    objectName: "dayAfter"
                    Layout.fillWidth: true
                    Layout.preferredWidth: 100
                    enabled: page.sheet.daysAgo > 0
                    text: qsTr("Day after")
                    onClicked: page.sheet.daysAgo = page.sheet.daysAgo - 1
                }
            }
            EntryField {
                label: qsTr("Site")
                text: page.sheet.site
                onEdited: text => page.sheet.site = text
            }
            Suggestions {
                choices: page.sheet.sites.filter(name => name !== page.sheet.site)
                onPicked: words => page.sheet.site = words
            }
            EntryField {
                label: qsTr("Room")
                text: page.sheet.room
                onEdited: text => page.sheet.room = text
            }
            RowLayout {
                Layout.fillWidth: true
                spacing: Look.gap
                EntryField {
                    Layout.preferredWidth: 100
                    label: qsTr("Start, 24-hour time")
                    hint: "07:30"
                    most: 5
                    inputMethodHints: Qt.ImhTime
                    text: page.sheet.start
                    onEdited: text => page.sheet.start = text
                }
                EntryField {
                    Layout.preferredWidth: 100
                    label: qsTr("End")
                    hint: "09:10"
                    most: 5
                    inputMethodHints: Qt.ImhTime
                    text: page.sheet.end
                    onEdited: text => page.sheet.end = text
                }
            }
            OnOffRow {
                Layout.fillWidth: true
                text: qsTr("Canceled before incision")
                detail: qsTr("It is recorded and has no role.")
                on: page.sheet.canceled
                onTurned: on => page.sheet.canceled = on
            }
        }
        Words {
            Layout.fillWidth: true
            font.pixelSize: Look.secondarySize
            color: Look.colors.quietInk
            text: qsTr("No patient names, numbers, ages or birth dates on a sheet. The date, the site and a rare procedure can still point at one patient: treat your log as confidential.")
        }
    }
    NoteBox {
        text: page.sheet.error
        grave: true
    }

    function take(name) {
        page.sheet.take(name)
        page.adding = false
    }

    actions: [
        ActionButton {
            objectName: "saveAndGive"
            Layout.fillWidth: true
            main: true
            enabled: page.sheet.ready
            text: qsTr("Save and give the phone")
            onClicked: {
                const id = page.sheet.save()
                if (id.length > 0)
                    page.saved(id, true)
            }
        },
        ActionButton {
            objectName: "saveForLater"
            Layout.fillWidth: true
            visible: page.sheet.ready
            text: qsTr("Save for later")
            onClicked: {
                const id = page.sheet.save()
                if (id.length > 0)
                    page.saved(id, false)
            }
        }
    ]
}
