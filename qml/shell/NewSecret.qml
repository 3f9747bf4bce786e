import QtQuick
import QtQuick.Layouts
import Peelpack.Parts

// What will open this device: a passphrase or, by choice, a PIN, twice.
Pile {
    id: fields

    required property string what ///< "join": the fields are joinSecret and joinAgain
    property bool pin: false
    readonly property bool complete: secret.text.length > 0 && again.text.length > 0

    function take() {
        return { secret: secret.take(), again: again.take() }
    }

    spacing: Look.gap

    OnOffRow {
        Layout.fillWidth: true
        text: qsTr("Open with a PIN")
        detail: qsTr("Quicker and weaker than a passphrase: whoever copies this phone's storage can try PINs.")
        on: fields.pin
        onTurned: on => fields.pin = on
    }
    SecretField {
        id: secret
        objectName: fields.what + "Secret"
        digits: fields.pin
        label: fields.pin ? qsTr("PIN, 6 to 12 digits") : qsTr("Passphrase, at least 8 characters; four odd words are good")
    }
    SecretField {
        id: again
        objectName: fields.what + "Again"
        digits: fields.pin
        label: qsTr("The same again")
    }
}
