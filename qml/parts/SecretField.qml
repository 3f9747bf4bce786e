import QtQuick
import Peelpack.Parts

// A passphrase or PIN as it is typed: hidden, never suggested, gone when it was used.
EntryField {
    property bool digits: false

    most: 200
    echoMode: TextInput.Password
    inputMethodHints: Qt.ImhSensitiveData | Qt.ImhNoPredictiveText | Qt.ImhNoAutoUppercase
                      | (digits ? Qt.ImhDigitsOnly : 0)

    function take() {
        const typed = text
        text = ""
        return typed
    }
}
