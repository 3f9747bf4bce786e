import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Shell

// A vault of staff, for which there are no pages here yet.
PageFrame {
    id: page

    required property Phone phone

    title: qsTr("This vault belongs to staff")

    Words {
        Layout.fillWidth: true
        text: qsTr("This app shows the student's and the preceptor's part. Instructors and directors use the peelpack command with this vault.")
    }

    actions: [
        ActionButton {
            Layout.fillWidth: true
            main: true
            text: qsTr("Lock")
            onClicked: page.phone.lock()
        }
    ]
}
