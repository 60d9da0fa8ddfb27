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
    // Read from two metres: the swatch tells which cup, the bar below how it
    // flows, and takes all the room there is.
    contentItem: ColumnLayout {
        spacing: Theme.px(6)

        RowLayout {
            Layout.fillWidth: true
            spacing: Theme.gap
            Rectangle {
                Layout.preferredWidth: Theme.px(96)
                Layout.preferredHeight: Theme.px(96)
                radius: Theme.px(10)
                color: card.hasSwatch ? card.swatch : "transparent"
                border.width: Theme.px(2)
                border.color: Theme.line
                Accessible.ignored: true
                Rectangle {
                    anchors { left: parent.left; right: parent.right; bottom: parent.bottom; margins: Theme.px(5) }
                    visible: card.isNext
                    height: nextWord.implicitHeight + Theme.px(4)
                    radius: Theme.px(6)
                    color: Theme.ink
                    Words {
                        id: nextWord
                        anchors.centerIn: parent
                        width: parent.width - Theme.px(8)
                        text: qsTr("next", "the cup to treat next")
                        color: Theme.card
                        font.bold: true
                        fontSizeMode: Text.HorizontalFit
                        minimumPixelSize: Theme.px(10)
                        horizontalAlignment: Text.AlignHCenter
                        wrapMode: Text.NoWrap
                        Accessible.ignored: true
                    }
                }
            }
            ColumnLayout {
                Layout.fillWidth: true
                spacing: 0
                Words {
                    Layout.fillWidth: true
                    text: card.name
                    font.pixelSize: Theme.large
                    fontSizeMode: Text.HorizontalFit
                    minimumPixelSize: Theme.body
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
                Words {
                    Layout.fillWidth: true
                    visible: card.verdict !== "base"
                    text: card.verdictWord
                    font.pixelSize: Theme.px(29)
                    fontSizeMode: Text.HorizontalFit
                    minimumPixelSize: Theme.small
                    font.bold: true
                    elide: Text.ElideRight
                    wrapMode: Text.NoWrap
                    Accessible.ignored: true
                }
            }
        }
        FlowBar {
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumHeight: Theme.px(48)
            verdict: card.verdict
            at: card.at
            low: card.low
            high: card.high
            bandLow: card.bandLow
            bandHigh: card.bandHigh
        }
        // The base coat has no ratio; its card tells which end is which.
        RowLayout {
            Layout.fillWidth: true
            visible: card.verdict === "base"
            Words { Layout.fillWidth: true; text: qsTr("thinner"); color: Theme.quiet; Accessible.ignored: true }
            Words { text: qsTr("thicker"); color: Theme.quiet; Accessible.ignored: true }
        }
        Words {
            Layout.fillWidth: true
            visible: card.verdict !== "base"
            text: card.ratio
            font.bold: true
            fontSizeMode: Text.HorizontalFit
            minimumPixelSize: Theme.px(12)
            horizontalAlignment: Text.AlignHCenter
            wrapMode: Text.NoWrap
            Accessible.ignored: true
        }
        Words {
            Layout.fillWidth: true
            text: card.facts
            color: Theme.quiet
            font.pixelSize: Theme.small
            maximumLineCount: card.recheck.length > 0 ? 1 : 2
            elide: Text.ElideRight
            Accessible.ignored: true
        }
        Words {
            Layout.fillWidth: true
            visible: text.length > 0
            text: card.recheck.length > 0 ? "↻ " + card.recheck : ""
            color: Theme.warm
            font.bold: true
            Accessible.ignored: true
        }
    }
}
