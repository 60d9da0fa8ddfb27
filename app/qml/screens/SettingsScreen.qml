import QtQuick
import QtQuick.Layouts
import Flowkin

ScrollPage {
    id: screen

    required property Desk desk

    title: qsTr("Settings")

    GridLayout {
        Layout.fillWidth: true
        columns: width > Theme.px(580) ? 2 : 1
        columnSpacing: Theme.edge
        rowSpacing: Theme.gap

        Words { text: qsTr("Language") }
        Choice {
            objectName: "language"
            label: qsTr("Language")
            Layout.fillWidth: true
            model: [qsTr("as the computer"), "English", "Deutsch", "Français"]
            currentIndex: screen.desk.preferences.languageIndex
            onActivated: index => screen.desk.preferences.languageIndex = index
        }
        Words { text: qsTr("Amounts") }
        Choice {
            objectName: "units"
            label: qsTr("Amounts")
            Layout.fillWidth: true
            model: [qsTr("millilitres, degrees Celsius"), qsTr("US teaspoons and ounces, degrees Fahrenheit")]
            currentIndex: screen.desk.preferences.usUnits ? 1 : 0
            onActivated: index => screen.desk.preferences.usUnits = index === 1
        }
        Words { text: qsTr("Test on this bench") }
        Choice {
            objectName: "test"
            label: qsTr("Test on this bench")
            Layout.fillWidth: true
            model: [qsTr("stream off the stick"), qsTr("ribbon that levels"), qsTr("puddle that spreads")]
            currentIndex: screen.desk.board.test
            onActivated: index => screen.desk.board.test = index
        }
        Words { text: qsTr("Water is measured in") }
        Choice {
            objectName: "doseUnit"
            label: qsTr("Water is measured in")
            Layout.fillWidth: true
            model: [qsTr("millilitres, by pipette or syringe"), qsTr("drops of 0.05 mL"), qsTr("pump strokes of 0.13 mL")]
            currentIndex: screen.desk.board.doseUnit
            onActivated: index => screen.desk.board.doseUnit = index
        }
        Words { text: qsTr("Room (%1)").arg(screen.desk.board.roomUnit) }
        Field {
            objectName: "room"
            label: qsTr("Room temperature")
            Layout.fillWidth: true
            text: screen.desk.board.room
            inputMethodHints: Qt.ImhFormattedNumbersOnly
            onEditingFinished: screen.desk.board.setRoom(text)
        }
        Words { text: qsTr("Session") }
        Choice {
            objectName: "session"
            label: qsTr("Session")
            Layout.fillWidth: true
            model: screen.desk.board.sessions
            displayText: screen.desk.board.sessionName.length > 0 ? screen.desk.board.sessionName : qsTr("none yet")
            currentIndex: screen.desk.board.sessionRow
            onActivated: index => screen.desk.board.openSession(index)
        }
        Words { text: qsTr("New session") }
        Flow {
            Layout.fillWidth: true
            spacing: Theme.gap
            Field {
                id: newName
                objectName: "newSession"
                label: qsTr("Name of the new session")
                placeholderText: qsTr("name")
                onAccepted: begin.clicked()
            }
            BigButton {
                id: begin
                objectName: "beginSession"
                text: qsTr("Begin")
                onClicked: {
                    screen.desk.board.newSession(newName.text)
                    newName.clear()
                }
            }
        }
        Words { text: qsTr("Light or dark") }
        Choice {
            objectName: "shade"
            label: qsTr("Light or dark")
            Layout.fillWidth: true
            model: [qsTr("as the computer"), qsTr("light"), qsTr("dark")]
            currentIndex: screen.desk.preferences.shadeIndex
            onActivated: index => screen.desk.preferences.shadeIndex = index
        }
        Words { text: qsTr("Size of everything") }
        Choice {
            objectName: "size"
            label: qsTr("Size of everything")
            Layout.fillWidth: true
            model: screen.desk.preferences.sizes
            currentIndex: screen.desk.preferences.sizeIndex
            onActivated: index => screen.desk.preferences.sizeIndex = index
        }
        Words { text: qsTr("Camera") }
        Choice {
            objectName: "camera"
            label: qsTr("Camera")
            Layout.fillWidth: true
            model: screen.desk.camera.names
            displayText: screen.desk.camera.name.length > 0 ? screen.desk.camera.name : qsTr("none found")
            currentIndex: screen.desk.camera.nameIndex
            onActivated: screen.desk.camera.choose(currentText)
        }
        Words { text: qsTr("Picture size") }
        Choice {
            objectName: "format"
            label: qsTr("Picture size")
            Layout.fillWidth: true
            model: screen.desk.camera.formats
            currentIndex: screen.desk.camera.formatIndex
            onActivated: index => screen.desk.camera.chooseFormat(index)
        }
        Words { text: qsTr("Voice") }
        Tick {
            objectName: "voice"
            Layout.fillWidth: true
            text: qsTr("say results aloud where a voice is installed")
            checked: screen.desk.preferences.speaks
            onToggled: screen.desk.preferences.speaks = checked
        }
    }
}
