import QtQuick
import QtQuick.Layouts
import Flowkin

ScrollPage {
    id: screen

    required property Desk desk
    readonly property list<string> languages: ["", "en", "de", "fr"]
    readonly property list<string> shades: ["", "light", "dark"]
    readonly property list<real> sizes: [1, 1.25, 1.5, 1.75, 2]

    title: qsTr("Settings")

    GridLayout {
        Layout.fillWidth: true
        columns: screen.width > Theme.px(620) ? 2 : 1
        columnSpacing: Theme.edge
        rowSpacing: Theme.gap

        Words { text: qsTr("Language") }
        Choice {
            objectName: "language"
            label: qsTr("Language")
            Layout.fillWidth: true
            model: [qsTr("as the computer"), "English", "Deutsch", "Français"]
            currentIndex: screen.languages.indexOf(screen.desk.preferences.language)
            onActivated: index => screen.desk.preferences.language = screen.languages[index]
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
        Words { text: qsTr("Light or dark") }
        Choice {
            objectName: "shade"
            label: qsTr("Light or dark")
            Layout.fillWidth: true
            model: [qsTr("as the computer"), qsTr("light"), qsTr("dark")]
            currentIndex: screen.shades.indexOf(screen.desk.preferences.shade)
            onActivated: index => screen.desk.preferences.shade = screen.shades[index]
        }
        Words { text: qsTr("Size of everything") }
        Choice {
            objectName: "size"
            label: qsTr("Size of everything")
            Layout.fillWidth: true
            model: ["100 %", "125 %", "150 %", "175 %", "200 %"]
            currentIndex: screen.sizes.indexOf(screen.desk.preferences.size)
            onActivated: index => screen.desk.preferences.size = screen.sizes[index]
        }
        Words { text: qsTr("Camera") }
        Choice {
            objectName: "camera"
            label: qsTr("Camera")
            Layout.fillWidth: true
            model: screen.desk.camera.names
            displayText: screen.desk.camera.name.length > 0 ? screen.desk.camera.name : qsTr("none found")
            currentIndex: screen.desk.camera.names.indexOf(screen.desk.camera.name)
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
            text: qsTr("say results aloud where a voice is installed")
            checked: screen.desk.preferences.speaks
            onToggled: screen.desk.preferences.speaks = checked
        }
    }
}
