import QtQuick
import QtQuick.Controls.Basic
import Flowkin

// One of several, from a list that opens.
ComboBox {
    id: choice

    property string label

    implicitHeight: Theme.touch
    font.pixelSize: Theme.body
    Accessible.name: label
    Accessible.description: displayText

    contentItem: Text {
        leftPadding: Theme.gap
        rightPadding: choice.indicator.width
        text: choice.displayText
        textFormat: Text.PlainText
        color: Theme.ink
        font: choice.font
        elide: Text.ElideRight
        verticalAlignment: Text.AlignVCenter
    }
    background: Rectangle {
        implicitWidth: Theme.px(200)
        radius: Theme.round
        color: Theme.card
        border.width: choice.activeFocus ? Theme.px(4) : Theme.px(2)
        border.color: choice.activeFocus ? Theme.warm : Theme.line
    }
    indicator: Text {
        x: choice.width - width - Theme.gap
        anchors.verticalCenter: parent.verticalCenter
        text: "▾"
        color: Theme.quiet
        font.pixelSize: Theme.body
    }
    delegate: ItemDelegate {
        id: line
        required property int index
        required property var modelData
        width: ListView.view ? ListView.view.width : choice.width
        height: Theme.touch
        highlighted: choice.highlightedIndex === index
        contentItem: Text {
            text: line.modelData
            textFormat: Text.PlainText
            color: Theme.ink
            font: choice.font
            elide: Text.ElideRight
            verticalAlignment: Text.AlignVCenter
        }
        background: Rectangle {
            color: line.highlighted ? Theme.wash : Theme.card
        }
    }
    popup.background: Rectangle {
        color: Theme.card
        border.color: Theme.line
        border.width: Theme.px(2)
    }
}
