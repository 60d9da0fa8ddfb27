import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import QtQuick.Templates as T
import Flowkin

// The last look at all cups before the pour: what holds it back, what is
// risked, and what each of that rests on.
Popup {
    id: sheet

    required property LastCheck check
    signal pouredAsked

    function show() {
        check.look()
        open()
        done.forceActiveFocus()
    }

    parent: T.Overlay.overlay
    anchors.centerIn: parent
    width: parent ? Math.min(parent.width - Theme.edge * 2, Theme.px(900)) : 0
    height: parent ? Math.min(parent.height - Theme.edge * 2, list.implicitHeight + Theme.edge * 2 + done.height + Theme.gap) : 0
    padding: Theme.edge
    modal: true
    focus: true
    closePolicy: Popup.CloseOnEscape
    background: Panel {}

    contentItem: Item {
        Scroller {
            id: list
            anchors { left: parent.left; right: parent.right; top: parent.top; bottom: done.top; bottomMargin: Theme.gap }
            spacing: Theme.gap
            gutter: Theme.px(14)
            Words {
                objectName: "checkHeadline"
                Layout.fillWidth: true
                text: sheet.check.headline
                font.pixelSize: Theme.huge
                font.bold: true
            }
            Repeater {
                model: sheet.check.risks
                ColumnLayout {
                    id: risk
                    required property var modelData
                    Layout.fillWidth: true
                    spacing: 0
                    Words {
                        Layout.fillWidth: true
                        text: (risk.modelData["stops"] ? "■ " : "○ ") + risk.modelData["line"]
                        font.pixelSize: Theme.large
                        font.bold: risk.modelData["stops"]
                        color: risk.modelData["stops"] ? Theme.warm : Theme.ink
                        Accessible.name: (risk.modelData["stops"] ? qsTr("Holds back.") : qsTr("Mind.")) + " " + risk.modelData["line"]
                    }
                    Words {
                        Layout.fillWidth: true
                        text: risk.modelData["evidence"]
                        color: Theme.quiet
                    }
                }
            }
            Words {
                Layout.fillWidth: true
                visible: text.length > 0
                text: sheet.check.notKnown
                color: Theme.quiet
            }
            Repeater {
                model: sheet.check.cautions
                Words {
                    required property string modelData
                    Layout.fillWidth: true
                    text: modelData
                    color: Theme.quiet
                    font.pixelSize: Theme.small
                }
            }
        }
        BigButton {
            id: done
            objectName: "checkDone"
            anchors { left: parent.left; bottom: parent.bottom }
            strong: true
            text: qsTr("Back to the bench")
            Keys.onDownPressed: list.leaf(0.8)
            Keys.onUpPressed: list.leaf(-0.8)
            onClicked: sheet.close()
        }
        BigButton {
            objectName: "checkPoured"
            anchors { right: parent.right; bottom: parent.bottom }
            text: qsTr("Poured: write it down")
            onClicked: { sheet.close(); sheet.pouredAsked() }
        }
    }
}
