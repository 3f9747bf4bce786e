import QtQuick
import QtQuick.Dialogs
import Peelpack.Parts

// Asks where a file goes or which one comes in, once, when it is loaded.
Item {
    id: dialogs

    required property Share share

    FileDialog {
        id: dialog
        currentFolder: dialogs.share.folder
        acceptLabel: dialogs.share.asking === "where" ? qsTr("Save here") : qsTr("Open this")
        onAccepted: {
            if (dialogs.share.asking === "some")
                dialogs.share.answerSome(selectedFiles)
            else
                dialogs.share.answer(selectedFile)
        }
        onRejected: dialogs.share.answer("")
    }
    FolderDialog {
        id: folderDialog
        currentFolder: dialogs.share.folder
        onAccepted: dialogs.share.answer(selectedFolder)
        onRejected: dialogs.share.answer("")
    }
    Component.onCompleted: {
        if (share.asking === "folder") {
            folderDialog.open()
            return
        }
        if (share.asking === "some")
            dialog.fileMode = FileDialog.OpenFiles
        if (share.asking === "where") {
            dialog.fileMode = FileDialog.SaveFile
            dialog.selectedFile = share.folder + "/" + share.suggestedName
        }
        dialog.open()
    }
}
