import QtQuick
import QtQuick.Layouts
import Flowkin

// One round on the sample clips.
ScrollPage {
    id: screen

    required property Desk desk
    readonly property Tryout tryout: desk.tryout
    signal finished

    title: tryout.headline

    Words {
        Layout.fillWidth: true
        Layout.maximumWidth: Theme.px(860)
        text: screen.tryout.text
        font.pixelSize: Theme.large
    }
    Repeater {
        model: screen.tryout.step > 0 ? screen.desk.board : null
        RowLayout {
            id: line
            required property string name
            required property string verdict
            required property string verdictWord
            required property string ratio
            required property real at
            required property real low
            required property real high
            required property real bandLow
            required property real bandHigh
            Layout.fillWidth: true
            Layout.maximumWidth: Theme.px(860)
            spacing: Theme.gap
            ColumnLayout {
                // One width for all, so that the gates stand below each other.
                Layout.minimumWidth: Theme.px(330)
                Layout.maximumWidth: Theme.px(330)
                spacing: 0
                Words { Layout.fillWidth: true; text: line.name; font.bold: true; font.pixelSize: Theme.large }
                Words { Layout.fillWidth: true; text: line.verdictWord + "  " + line.ratio; color: Theme.quiet }
            }
            FlowBar {
                Layout.fillWidth: true
                visible: line.verdict !== "base"
                verdict: line.verdict
                at: line.at
                low: line.low
                high: line.high
                bandLow: line.bandLow
                bandHigh: line.bandHigh
            }
        }
    }
    Flow {
        Layout.fillWidth: true
        spacing: Theme.gap
        BigButton {
            objectName: "tryoutOn"
            strong: true
            enabled: screen.tryout.possible && !screen.tryout.busy
            text: screen.tryout.buttonText
            onClicked: {
                if (screen.tryout.step >= screen.tryout.steps)
                    screen.finished()
                screen.tryout.goOn()
            }
        }
        BigButton {
            text: qsTr("Leave it")
            onClicked: {
                screen.tryout.leave()
                screen.finished()
            }
        }
    }
}
