import QtQuick
import Peelpack.Parts
import Peelpack.Program

// The term, the requirement set and the signatures that count, while they are chosen.
Pile {
    id: form

    required property RulesDraft draft

    spacing: Look.gap

    EntryField {
        objectName: "termField"
        label: qsTr("What the term is called, such as Spring 2027")
        most: 80
        text: form.draft.term
        onEdited: text => form.draft.term = text
    }
    EntryField {
        objectName: "firstDayField"
        label: qsTr("First day of the term: year-month-day")
        hint: "2027-01-11"
        most: 10
        inputMethodHints: Qt.ImhPreferNumbers | Qt.ImhNoPredictiveText
        text: form.draft.firstDay
        onEdited: text => form.draft.firstDay = text
    }
    EntryField {
        objectName: "lastDayField"
        label: qsTr("Last day of the term")
        hint: "2027-05-14"
        most: 10
        inputMethodHints: Qt.ImhPreferNumbers | Qt.ImhNoPredictiveText
        text: form.draft.lastDay
        onEdited: text => form.draft.lastDay = text
    }
    SectionTitle { text: qsTr("Requirement set in force: you decide, nothing is chosen beforehand") }
    Repeater {
        model: form.draft.sets
        ChoiceRow {
            required property setRow row
            objectName: "set-" + row.id
            text: row.title
            detail: row.asks.join("\n")
            chosen: row.chosen
            onClicked: form.draft.choose(row.id)
        }
    }
    SectionTitle { text: qsTr("Signatures that count; usually the first two") }
    Repeater {
        model: form.draft.strengths
        OnOffRow {
            required property strengthRow row
            objectName: "strength-" + row.id
            text: row.name
            detail: row.detail
            on: row.on
            onTurned: on => form.draft.turn(row.id, on)
        }
    }
}
