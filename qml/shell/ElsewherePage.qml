import QtQuick
import QtQuick.Layouts
import Peelpack.Parts
import Peelpack.Shell

// A vault of a coordinator or contact, for which there are no pages here.
PageFrame {
    id: page

    required property Phone phone

    title: qsTr("This vault belongs to staff")

    Words {
        Layout.fillWidth: true
        text: qsTr("This app has no pages for coordinators and contacts of a site. Use the peelpack command with this vault.")
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
