import QtQuick
import Peelpack.Parts
import Peelpack.Instructor

// Where a procedure is filed instead, and why. The student's choice stays on the record.
CardFrame {
    id: form

    required property CheckedSheet sheet
    property int procedure: -1
    property string category
    signal done(int procedure, string category, string reason)
    signal dropped

    spacing: 8
    onVisibleChanged: {
        procedure = -1
        category = ""
    }
    Words {
        text: qsTr("File it under")
        font.weight: Font.DemiBold
    }
    Flow {
        spacing: 8
        Repeater {
            model: form.sheet.filings
            ActionButton {
                id: choice
                required property filingRow row
                objectName: "refile-" + row.procedure + "-" + row.category
                width: Math.min(Math.ceil(natural.advanceWidth) + 40, form.width - 2 * form.padding)
                main: form.procedure === row.procedure && form.category === row.category
                enabled: !row.filed
                text: (form.sheet.filings.rowCount() > 30 ? row.procedureName + ": " : "") + row.label + (row.filed ? " · " + qsTr("now") : "")
                Accessible.checkable: true
                Accessible.checked: main
                onClicked: {
                    form.procedure = row.procedure
                    form.category = row.category
                }
                // The width on one line: the button's own wish changes while it wraps.
                TextMetrics {
                    id: natural
                    font: choice.font
                    text: choice.text
                }
            }
        }
    }
    ReasonForm {
        visible: form.visible && form.category.length > 0
        prompt: qsTr("Why? The student's choice stays beside it.")
        doText: qsTr("Re-file it")
        onDone: reason => form.done(form.procedure, form.category, reason)
        onDropped: form.dropped()
    }
    LinkButton {
        visible: form.category.length === 0
        text: qsTr("Cancel")
        onClicked: form.dropped()
    }
}
