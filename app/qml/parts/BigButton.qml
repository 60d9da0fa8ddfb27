import QtQuick
import QtQuick.Controls.Basic
import Flowkin

// A button that a wet knuckle can hit.
AbstractButton {
    id: button

    property bool strong: false
    property int letters: Theme.body

    implicitHeight: Math.max(Theme.touch, label.implicitHeight + Theme.gap)
    implicitWidth: label.implicitWidth + Theme.px(40)
    hoverEnabled: true
    focusPolicy: Qt.StrongFocus
    opacity: enabled ? 1 : 0.45
    Accessible.role: Accessible.Button
    Accessible.name: text
    Keys.onReturnPressed: button.clicked()
    Keys.onEnterPressed: button.clicked()

    contentItem: Text {
        id: label
        text: button.text
        textFormat: Text.PlainText
        color: button.strong ? Theme.deepInk : Theme.ink
        font.pixelSize: button.letters
        font.bold: button.strong
        horizontalAlignment: Text.AlignHCenter
        verticalAlignment: Text.AlignVCenter
        wrapMode: Text.WordWrap
    }
    background: Rectangle {
        radius: Theme.round
        color: button.strong ? Theme.deep : button.down || button.checked ? Theme.wash : Theme.card
        border.width: button.activeFocus ? Theme.px(4) : button.strong ? 0 : Theme.px(2)
        border.color: button.activeFocus ? Theme.warm : button.checked ? Theme.deep : Theme.line
    }
}
