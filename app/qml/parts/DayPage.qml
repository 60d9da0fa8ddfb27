import QtQuick
import QtQuick.Layouts
import Flowkin

// One day of the journal.
Panel {
    id: card

    required property var day

    implicitHeight: lines.implicitHeight + Theme.edge * 2
    Accessible.role: Accessible.Pane
    Accessible.name: card.day["name"] || ""

    ColumnLayout {
        id: lines
        x: Theme.edge
        y: Theme.edge
        width: parent.width - Theme.edge * 2
        spacing: Theme.px(6)
        Words {
            Layout.fillWidth: true
            text: card.day["name"] || ""
            font.pixelSize: Theme.large
            font.bold: true
        }
        Repeater {
            model: card.day["facts"] || []
            Words { required property string modelData; Layout.fillWidth: true; text: modelData }
        }
        GridLayout {
            Layout.fillWidth: true
            columns: 2
            columnSpacing: Theme.edge
            rowSpacing: Theme.px(4)
            Repeater {
                model: card.day["cups"] || []
                Words {
                    required property var modelData
                    required property int index
                    Layout.row: index
                    Layout.column: 0
                    Layout.alignment: Qt.AlignTop
                    Layout.preferredWidth: Theme.px(130)
                    text: modelData["name"]
                    font.bold: true
                }
            }
            Repeater {
                model: card.day["cups"] || []
                Words {
                    required property var modelData
                    required property int index
                    Layout.row: index
                    Layout.column: 1
                    Layout.fillWidth: true
                    text: modelData["text"]
                }
            }
        }
        Flow {
            Layout.fillWidth: true
            spacing: Theme.gap
            Repeater {
                model: card.day["photos"] || []
                Column {
                    id: print
                    required property var modelData
                    width: Theme.px(200)
                    spacing: Theme.px(4)
                    Image {
                        width: parent.width
                        height: visible ? Theme.px(150) : 0
                        visible: print.modelData["found"]
                        source: print.modelData["url"]
                        sourceSize.width: 400
                        asynchronous: true
                        fillMode: Image.PreserveAspectFit
                        autoTransform: true
                        Accessible.role: Accessible.Graphic
                        Accessible.name: print.modelData["text"]
                    }
                    Words { width: parent.width; text: print.modelData["text"]; font.pixelSize: Theme.small; color: Theme.quiet }
                }
            }
        }
        Repeater {
            model: card.day["faults"] || []
            ColumnLayout {
                id: fault
                required property var modelData
                Layout.fillWidth: true
                spacing: Theme.px(2)
                Words { Layout.fillWidth: true; text: fault.modelData["name"]; font.bold: true; color: Theme.warm }
                Words {
                    Layout.fillWidth: true
                    visible: fault.modelData["causes"].length > 0
                    text: qsTr("Causes commonly named, held against that day; none is proven by it.")
                    font.pixelSize: Theme.small
                    color: Theme.quiet
                }
                Repeater {
                    model: fault.modelData["causes"]
                    Words {
                        required property var modelData
                        Layout.fillWidth: true
                        text: (modelData["fits"] ? "● " : "○ ") + modelData["says"] + " (" + modelData["mark"] + (modelData["evidence"].length > 0 ? ", " + modelData["evidence"] : "") + ")"
                        font.bold: modelData["fits"]
                    }
                }
            }
        }
        Repeater {
            model: card.day["notes"] || []
            Words { required property string modelData; Layout.fillWidth: true; text: modelData; color: Theme.quiet }
        }
    }
}
