import QtQuick
import QtQuick.Controls.Basic
import Flowkin

// A line to write in.
TextField {
    id: field

    property string label

    implicitHeight: Theme.touch
    implicitWidth: Theme.px(180)
    leftPadding: Theme.gap
    rightPadding: Theme.gap
    font.pixelSize: Theme.body
    color: Theme.ink
    placeholderTextColor: Theme.quiet
    selectionColor: Theme.deep
    selectedTextColor: Theme.deepInk
    selectByMouse: true
    verticalAlignment: TextInput.AlignVCenter
    Accessible.name: label

    background: Rectangle {
        radius: Theme.round
        color: Theme.card
        border.width: field.activeFocus ? Theme.px(4) : Theme.px(2)
        border.color: field.activeFocus ? Theme.warm : Theme.line
    }
}
