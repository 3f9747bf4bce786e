import QtQuick
import Peelpack.Parts
import Peelpack.Program

// The sites with their rule about phones, and one of them while it is changed.
PageFrame {
    id: page
    objectName: "sitesPage"

    required property SiteList sites

    title: !sites.editing ? qsTr("Sites") : sites.isNew ? qsTr("Another site") : qsTr("Change a site")
    backText: qsTr("Back")
    Component.onCompleted: sites.read()
    Component.onDestruction: sites.leave()

    NoteBox {
        text: page.sites.error
        grave: true
    }
    Pile {
        visible: !page.sites.editing
        spacing: Look.gap
        Words {
            text: qsTr("Where at a site phones may be used is the site's own rule. Students see it on their clinical days.")
            font.pixelSize: Look.secondarySize
            color: Look.colors.quietInk
        }
        Repeater {
            id: listed
            model: page.sites.rows
            ChoiceRow {
                required property namedRow row
                objectName: "site-" + row.name
                text: row.name
                detail: row.detail
                opens: page.sites.mayChange
                enabled: page.sites.mayChange
                onClicked: page.sites.change(row.index)
            }
        }
        Words {
            visible: listed.count === 0
            text: qsTr("No site is listed yet.")
            color: Look.colors.quietInk
        }
        Words {
            visible: !page.sites.mayChange
            text: qsTr("The director, instructors and coordinators change this list.")
            font.pixelSize: Look.secondarySize
            color: Look.colors.quietInk
        }
    }
    Pile {
        visible: page.sites.editing
        spacing: Look.gap
        EntryField {
            objectName: "siteName"
            label: qsTr("Name, as it stands on case sheets")
            most: 80
            text: page.sites.name
            onEdited: text => page.sites.name = text
        }
        SectionTitle { text: qsTr("Phones") }
        Repeater {
            model: page.sites.phoneRules
            ChoiceRow {
                required property int index
                required property string modelData
                objectName: "phones-" + index
                text: modelData
                chosen: page.sites.phones === index
                onClicked: page.sites.phones = index
            }
        }
        EntryField {
            objectName: "siteNote"
            label: qsTr("What else students should know; may stay empty")
            most: 200
            text: page.sites.note
            onEdited: text => page.sites.note = text
        }
    }

    actions: [
        ActionButton {
            objectName: "addSite"
            visible: page.sites.mayChange && !page.sites.editing
            main: true
            text: qsTr("Add a site")
            onClicked: page.sites.begin()
        },
        ActionButton {
            objectName: "signSite"
            visible: page.sites.editing
            main: true
            text: page.sites.isNew ? qsTr("Sign: add it") : qsTr("Sign: change it")
            onClicked: page.sites.sign()
        },
        ActionButton {
            objectName: "removeSite"
            visible: page.sites.editing && !page.sites.isNew
            grave: true
            text: qsTr("Sign: take it off the list")
            onClicked: page.sites.remove()
        },
        ActionButton {
            visible: page.sites.editing
            text: qsTr("Leave it as it is")
            onClicked: page.sites.leave()
        }
    ]
}
