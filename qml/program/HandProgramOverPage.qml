import QtQuick
import Peelpack.Parts
import Peelpack.Program

// What the director before does so that somebody else takes the program over.
PageFrame {
    id: page

    required property ProgramPages program
    required property Share share
    property string saved

    title: qsTr("Hand the program over")
    backText: qsTr("Back")

    component Step: CardFrame {
        property alias text: words.text
        Words { id: words }
    }

    NoteBox {
        text: page.program.error
        grave: true
    }
    NoteBox { text: page.saved }
    Step { text: qsTr("1. Give the paper with the program code to the new director. Whoever has the code can name the director.") }
    Step {
        objectName: "handOverNumber"
        text: qsTr("2. On their own device: Set up a program, The program exists already. They type the code, and are director number %1.").arg(page.program.nextDirector)
    }
    Step { text: qsTr("3. They compare the program's id:\n%1").arg(page.program.programId) }
    Step { text: qsTr("4. Give them the whole record as a file; they take it in, and send a parcel to the instructors and to you.") }
    Words {
        text: qsTr("The file is not sealed and holds the education records of all students: hand it over yourself, and delete it afterwards. This device keeps its rights until it is ended.")
        font.pixelSize: Look.secondarySize
        color: Look.colors.quietInk
    }
    Connections {
        target: page.share
        function onSaved(where) {
            page.saved = qsTr("Saved as %1.").arg(where)
        }
        function onFailed(why) {
            page.saved = why
        }
    }

    actions: [
        ActionButton {
            objectName: "saveRecord"
            main: true
            text: qsTr("Save the whole record as a file")
            onClicked: {
                const files = page.program.wholeRecord()
                if (files.length === 1) {
                    page.share.save("program.peelexport", files[0])
                } else if (files.length > 1) {
                    const names = []
                    for (let i = 0; i < files.length; ++i)
                        names.push("program-" + (i + 1) + ".peelexport")
                    page.share.saveSome(names, files)
                }
            }
        }
    ]
}
