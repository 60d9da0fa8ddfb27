import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Flowkin

// One cup on the bench.
AbstractButton {
    id: card

    required property int index
    required property string name
    required property string cupRole
    required property string paint
    required property color swatch
    required property bool hasSwatch
    required property string verdict
    required property string verdictWord
    required property string ratio
    required property real at
    required property real low
    required property real high
    required property real bandLow
    required property real bandHigh
    required property string facts
    required property string recheck
    required property bool isNext
    required property string spoken
    property bool chosen: false

    objectName: "cup" + index
    padding: Theme.gap
    focusPolicy: Qt.StrongFocus
    Accessible.role: Accessible.ListItem
    Accessible.name: spoken
    Accessible.selected: chosen
    Keys.onReturnPressed: card.clicked()
    Keys.onEnterPressed: card.clicked()

    background: Rectangle {
        radius: Theme.round
        color: Theme.card
        border.width: Theme.px(card.chosen ? 5 : card.activeFocus ? 4 : 1)
        border.color: card.activeFocus ? Theme.warm : card.chosen ? Theme.deep : Theme.line
    }
    contentItem: ColumnLayout {
        id: body
        spacing: Theme.px(6)

        RowLayout {
            Layout.fillWidth: true
            Layout.margins: Theme.px(4)
            spacing: Theme.gap
            Rectangle {
                Layout.preferredWidth: Theme.px(56)
                Layout.preferredHeight: Theme.px(56)
                radius: Theme.px(10)
                color: card.hasSwatch ? card.swatch : "transparent"
                border.width: Theme.px(2)
                border.color: Theme.line
                Accessible.ignored: true
            }
            ColumnLayout {
                Layout.fillWidth: true
                spacing: 0
                Words {
                    Layout.fillWidth: true
                    text: card.name
                    font.pixelSize: Theme.large
                    font.bold: true
                    elide: Text.ElideRight
                    wrapMode: Text.NoWrap
                    Accessible.ignored: true
                }
                Words {
                    Layout.fillWidth: true
                    text: card.paint.length > 0 ? card.cupRole + " · " + card.paint : card.cupRole
                    color: Theme.quiet
                    font.pixelSize: Theme.small
                    elide: Text.ElideRight
                    wrapMode: Text.NoWrap
                    Accessible.ignored: true
                }
            }
        }
        RowLayout {
            Layout.fillWidth: true
            Layout.leftMargin: Theme.px(4)
            Layout.rightMargin: Theme.px(4)
            Words {
                Layout.fillWidth: true
                text: card.verdictWord
                font.pixelSize: Theme.large
                font.bold: true
                Accessible.ignored: true
            }
            Words {
                text: card.ratio
                font.pixelSize: Theme.body
                Accessible.ignored: true
            }
        }
        FlowBar {
            Layout.fillWidth: true
            visible: card.verdict !== "base"
            verdict: card.verdict
            at: card.at
            low: card.low
            high: card.high
            bandLow: card.bandLow
            bandHigh: card.bandHigh
        }
        RowLayout {
            Layout.fillWidth: true
            Layout.leftMargin: Theme.px(4)
            Layout.rightMargin: Theme.px(4)
            visible: card.verdict !== "base"
            Words { Layout.fillWidth: true; text: qsTr("thinner"); color: Theme.quiet; font.pixelSize: Theme.small; Accessible.ignored: true }
            Words { text: qsTr("thicker"); color: Theme.quiet; font.pixelSize: Theme.small; Accessible.ignored: true }
        }
        Words {
            Layout.fillWidth: true
            Layout.leftMargin: Theme.px(4)
            text: card.facts
            color: Theme.quiet
            font.pixelSize: Theme.small
            Accessible.ignored: true
        }
        Words {
            Layout.leftMargin: Theme.px(4)
            visible: text.length > 0
            text: card.recheck.length > 0 ? "↻ " + card.recheck : ""
            color: Theme.warm
            font.bold: true
            Accessible.ignored: true
        }
        Item { Layout.fillHeight: true }
    }
}
