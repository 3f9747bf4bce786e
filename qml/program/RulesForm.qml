import QtQuick
import Peelpack.Parts
import Peelpack.Program

// The term, the requirement set and the signatures that count, while they are chosen.
Pile {
    id: form

    required property RulesDraft draft
    required property Share share

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
    SetChoice {
        sets: form.draft.sets
        share: form.share
        called: "set"
        onChoose: id => form.draft.choose(id)
        onOpenSet: file => form.draft.openSet(file)
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
