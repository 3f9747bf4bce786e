import QtQuick
import Peelpack.Parts
import Peelpack.Instructor
import Peelpack.Evidence

// What is there and does not count: why, and one by one what lets it count.
PageFrame {
    id: page
    objectName: "asidePage"

    required property Aside aside
    property int admitting: -1 ///< the row that is asked about

    title: qsTr("What does not count yet")
    backText: qsTr("Back")
    Component.onCompleted: aside.read()

    NoteBox {
        text: page.aside.error
        grave: true
    }
    NoteBox { text: page.aside.done }
    Words {
        text: entries.count > 0 ? qsTr("All of this is kept and seen by everybody. Look into it with the student, and admit what is right, each with a reason.")
                                : qsTr("Everything that came in counts, or was refused. There is nothing to admit.")
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }
    Repeater {
        model: page.aside.splits
        SplitCard {}
    }
    Repeater {
        id: entries
        model: page.aside.rows
        CardFrame {
            id: entry
            required property int index
            required property asideRow row
            spacing: 6
            Words {
                text: entry.row.title
                font.weight: Font.DemiBold
            }
            Words {
                text: entry.row.words + " · " + entry.row.why
                font.pixelSize: Look.secondarySize
            }
            Words {
                visible: !entry.row.admissible
                text: qsTr("It cannot be admitted: whoever may, makes it again.")
                font.pixelSize: Look.secondarySize
                color: Look.colors.quietInk
            }
            ActionButton {
                objectName: "admit-" + entry.index
                visible: entry.row.admissible && page.admitting !== entry.index
                text: qsTr("Let it count")
                onClicked: page.admitting = entry.index
            }
            ReasonForm {
                visible: page.admitting === entry.index
                prompt: qsTr("Why does it count? The reason stays in the record for good.")
                doText: qsTr("Let it count")
                onDone: reason => {
                    page.admitting = -1
                    page.aside.admit(entry.index, reason)
                }
                onDropped: page.admitting = -1
            }
        }
    }
    Words {
        visible: page.aside.more > 0
        text: qsTr("%n more", "", page.aside.more)
        color: Look.colors.quietInk
    }
}
