import QtQuick
import QtQuick.Controls.Basic
import Flowkin

// Yes or no.
CheckBox {
    id: tick

    implicitHeight: Math.max(Theme.touch, contentItem.implicitHeight)
    font.pixelSize: Theme.body
    spacing: Theme.gap
    Accessible.name: text

    indicator: Rectangle {
        y: (tick.height - height) / 2
        width: Theme.px(34)
        height: width
        radius: Theme.px(8)
        color: Theme.card
        border.width: tick.activeFocus ? Theme.px(4) : Theme.px(2)
        border.color: tick.activeFocus ? Theme.warm : Theme.line
        Text {
            anchors.centerIn: parent
            visible: tick.checked
            text: "✓"
            color: Theme.ink
            font.pixelSize: Theme.large
        }
    }
    contentItem: Text {
        leftPadding: tick.indicator.width + tick.spacing
        text: tick.text
        textFormat: Text.PlainText
        color: Theme.ink
        font: tick.font
        wrapMode: Text.WordWrap
        verticalAlignment: Text.AlignVCenter
    }
}
