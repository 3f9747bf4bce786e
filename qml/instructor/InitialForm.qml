import QtQuick
import Peelpack.Parts
import Peelpack.Instructor

// Initials that need a word: why, or that the signature was confirmed with the preceptor.
CardFrame {
    id: form

    required property CheckedSheet sheet
    property bool confirmed: false
    signal done(string reason, bool confirmed)
    signal dropped

    spacing: 8
    onVisibleChanged: confirmed = false
    OnOffRow {
        objectName: "confirmedRow"
        visible: form.sheet.asksToConfirm
        text: qsTr("I confirmed the signature with the preceptor")
        detail: qsTr("Without it your initials are kept, and the case does not count yet.")
        on: form.confirmed
        onTurned: on => form.confirmed = on
    }
    ReasonForm {
        visible: form.visible
        prompt: form.sheet.needsReason.length > 0 ? form.sheet.needsReason : qsTr("How did you confirm it? You may leave this empty.")
        doText: qsTr("Initial it")
        mayBeEmpty: form.sheet.needsReason.length === 0
        onDone: reason => form.done(reason, form.confirmed)
        onDropped: form.dropped()
    }
}
