import QtQuick
import Peelpack.Parts
import Peelpack.Instructor

// What comes in from the students, and what goes back to them.
PageFrame {
    id: page

    required property StaffParcels parcels
    required property Share share
    property bool demoParcels: false ///< the demo has some that nobody took in
    signal takeDemoParcels

    property string sent
    property var leaving: [] ///< whose parcels are being saved
    property bool asCodes: false ///< parcels are shown, not saved
    signal showCodes(string id)
    signal readCodes

    title: qsTr("Take in, send")

    function send(ids) {
        sent = ""
        if (asCodes) {
            if (parcels.packAsCodesFor(ids[0]))
                showCodes(ids[0])
            return
        }
        const names = []
        const files = []
        for (const id of ids) {
            const bytes = parcels.packFor(id)
            if (parcels.error.length > 0)
                return
            names.push(parcels.nameFor(id))
            files.push(bytes)
        }
        leaving = ids
        if (files.length === 1)
            share.save(names[0], files[0])
        else
            share.saveSome(names, files)
    }

    DropArea {
        parent: page
        anchors.fill: parent
        onDropped: drop => {
            if (drop.hasUrls)
                page.share.take("parcels", drop.urls)
        }
    }
    NoteBox {
        text: page.parcels.error
        grave: true
    }
    NoteBox { text: page.sent }
    CardFrame {
        visible: page.parcels.busy
        spacing: 8
        Words {
            text: page.parcels.progress
            font.weight: Font.DemiBold
            Accessible.role: Accessible.ProgressBar
        }
        ActionButton {
            objectName: "cancelTakeIn"
            text: qsTr("Stop after this file")
            onClicked: page.parcels.cancel()
        }
    }
    Words {
        visible: page.parcels.summary.length === 0 && !page.parcels.busy
        text: qsTr("Students send you parcels. Take in the files, or the whole folder in which they are; on a desk you can also drop them here. Taking in the same file twice does no harm.")
        color: Look.colors.quietInk
    }
    Words {
        objectName: "takeInSummary"
        visible: text.length > 0
        text: page.parcels.summary
        font.pixelSize: Look.cardTitleSize
        font.weight: Font.DemiBold
    }
    Repeater {
        model: page.parcels.remarks
        NoteBox {
            required property string modelData
            text: modelData
            grave: true
        }
    }
    Repeater {
        model: page.parcels.splits
        SplitCard {}
    }
    Repeater {
        model: page.parcels.files
        CardFrame {
            id: file
            required property takenFileRow row
            Words {
                text: file.row.name
                font.pixelSize: Look.secondarySize
                font.weight: Font.DemiBold
                wrapMode: Text.WrapAnywhere
            }
            Words {
                text: file.row.words
                font.pixelSize: Look.secondarySize
                color: file.row.grave ? Look.colors.caution : Look.colors.quietInk
            }
        }
    }
    ChoiceRow {
        objectName: "readCodesRow"
        visible: !page.parcels.busy
        text: qsTr("Read codes with the camera")
        detail: qsTr("from a student's screen, without a file or a network")
        opens: true
        onClicked: page.readCodes()
    }
    SectionTitle { text: qsTr("Back to the students") }
    Words {
        text: answers.count > 0 ? qsTr("Receipts and what you decided. A parcel is sealed: only that student's phone can open it.")
                                : qsTr("Everybody has what you decided.")
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }
    ActionButton {
        objectName: "sendAll"
        visible: answers.count > 1 && !page.asCodes
        text: qsTr("Save the parcels of all %1").arg(answers.count)
        onClicked: {
            const ids = []
            for (let i = 0; i < answers.count; ++i)
                ids.push(page.parcels.answers.data(page.parcels.answers.index(i, 0), Qt.UserRole).id)
            page.send(ids)
        }
    }
    Repeater {
        id: answers
        model: page.parcels.answers
        ChoiceRow {
            required property answerRow row
            objectName: "sendTo-" + row.student
            text: qsTr("Parcel for %1").arg(row.student)
            detail: row.words
            opens: true
            onClicked: page.send([row.id])
        }
    }
    OnOffRow {
        objectName: "asCodesRow"
        text: qsTr("Show parcels as codes")
        detail: qsTr("on this screen, for the other device's camera, instead of saving a file")
        on: page.asCodes
        onTurned: on => page.asCodes = on
    }
    ActionButton {
        objectName: "sendStaff"
        text: qsTr("Parcel for the other instructors and the director")
        onClicked: page.send(["staff"])
    }

    Connections {
        target: page.share
        function onSaved(where) {
            page.sent = qsTr("Saved as %1.").arg(where)
            page.parcels.given(page.leaving)
            page.leaving = []
        }
        function onFailed(why) {
            page.sent = why
            page.leaving = []
        }
        function onOpened(what, name, bytes) {
            if (what === "parcels")
                page.parcels.takeIn([name], [bytes])
        }
        function onOpenedSome(what, names, files) {
            if (what === "parcels")
                page.parcels.takeIn(names, files)
        }
    }

    actions: [
        ActionButton {
            objectName: "takeInFiles"
            visible: !page.parcels.busy
            main: true
            text: qsTr("Take in files")
            onClicked: page.share.openSome("parcels", false)
        },
        ActionButton {
            objectName: "takeInFolder"
            visible: !page.parcels.busy
            text: qsTr("Take in a whole folder")
            onClicked: page.share.openSome("parcels", true)
        },
        ActionButton {
            objectName: "takeInDemo"
            visible: page.demoParcels && !page.parcels.busy
            text: qsTr("Take in what the demo's students sent today")
            onClicked: page.takeDemoParcels()
        }
    ]
}
