import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Flowkin

// A photo or clip of cells: chosen or dropped, scaled, counted.
Panel {
    id: card

    required property CellRoom room
    required property PictureFeed feed
    required property int side
    readonly property var found: room.sides[side]
    readonly property bool there: found["name"].length > 0
    signal keepAsked()

    implicitHeight: lines.implicitHeight + Theme.edge * 2
    Accessible.role: Accessible.Pane
    Accessible.name: side === 0 ? qsTr("First picture of cells") : qsTr("Second picture of cells")

    FileDialog {
        id: choose
        title: card.Accessible.name
        nameFilters: [qsTr("Photos and clips (%1)").arg("*.jpg *.jpeg *.png *.tif *.tiff *.bmp *.webp *.ppm *.mp4 *.mov *.m4v *.mkv *.avi *.webm *.3gp"), qsTr("All files (%1)").arg("*")]
        onAccepted: card.room.open(card.side, selectedFile)
    }
    DropArea {
        anchors.fill: parent
        onDropped: event => {
            if (event.hasUrls) {
                card.room.open(card.side, event.urls[0])
                event.acceptProposedAction()
            }
        }
    }
    ColumnLayout {
        id: lines
        x: Theme.edge
        y: Theme.edge
        width: parent.width - Theme.edge * 2
        spacing: Theme.px(6)
        Words { Layout.fillWidth: true; text: card.there ? card.found["name"] : card.Accessible.name; font.bold: true }
        Flow {
            Layout.fillWidth: true
            spacing: Theme.gap
            BigButton { objectName: "cellsChoose" + card.side; strong: !card.there; text: card.there ? qsTr("Another one …") : qsTr("Choose photo or clip …"); onClicked: choose.open() }
            BigButton { objectName: "cellsAway" + card.side; visible: card.there; text: qsTr("Put it away"); onClicked: card.room.putAway(card.side) }
            BigButton { objectName: "cellsMark" + card.side; visible: card.there; text: qsTr("Point at a part"); checked: card.found["marking"]; onClicked: card.room.markPart(card.side) }
        }
        LivePicture {
            id: picture
            objectName: "cellsPicture" + card.side
            Layout.fillWidth: true
            Layout.preferredHeight: width * 0.7
            visible: card.there
            feed: card.feed
            Accessible.role: Accessible.Graphic
            Accessible.name: card.found["says"].join(" ")
            TapHandler {
                onTapped: event => card.room.point(card.side, event.position, picture.pictureRect)
            }
        }
        Flow {
            Layout.fillWidth: true
            visible: card.there
            spacing: Theme.gap
            Labelled { name: qsTr("Pointed length (mm)"); Field { objectName: "cellsLength" + card.side; width: parent.width; label: qsTr("Length between the two ends, millimetres"); inputMethodHints: Qt.ImhFormattedNumbersOnly; onEditingFinished: card.room.setLength(card.side, text) } }
            Labelled { name: qsTr("Or a pixel (mm)"); Field { objectName: "cellsPixel" + card.side; width: parent.width; label: qsTr("Size of a pixel, millimetres"); text: card.found["pixel"]; inputMethodHints: Qt.ImhFormattedNumbersOnly; onEditingFinished: if (text !== card.found["pixel"]) card.room.setPixel(card.side, text) } }
            Labelled { wide: Theme.px(300); name: qsTr("Only x, y, width, height (px)"); Field { objectName: "cellsPart" + card.side; width: parent.width; label: qsTr("Part of the picture that counts: x, y, width, height, pixels"); text: card.found["part"]; onEditingFinished: if (text !== card.found["part"]) card.room.setPart(card.side, text) } }
        }
        Words { Layout.fillWidth: true; visible: card.there; text: card.found["scale"]; color: Theme.quiet }
        Words {
            Layout.fillWidth: true
            objectName: "cellsTrouble" + card.side
            visible: text.length > 0
            text: card.found["trouble"]
            color: Theme.warm
            font.bold: true
            Accessible.role: Accessible.AlertMessage
        }
        Words { Layout.fillWidth: true; objectName: "cellsSays" + card.side; visible: text.length > 0; text: card.found["says"].join("\n") }
        RowLayout {
            Layout.fillWidth: true
            visible: card.found["bars"].length > 0
            spacing: Theme.px(4)
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("How many cells there are of each size")
            Repeater {
                model: card.found["bars"]
                ColumnLayout {
                    id: bar
                    required property var modelData
                    Layout.fillWidth: true
                    Layout.preferredWidth: 1
                    spacing: Theme.px(2)
                    Item {
                        Layout.fillWidth: true
                        Layout.preferredHeight: Theme.px(90)
                        Rectangle {
                            anchors.bottom: parent.bottom
                            width: parent.width
                            height: Math.max(Theme.px(1), parent.height * bar.modelData["share"])
                            color: Theme.deep
                        }
                    }
                    Words { Layout.fillWidth: true; text: bar.modelData["size"]; font.pixelSize: Theme.small; horizontalAlignment: Text.AlignRight; wrapMode: Text.NoWrap }
                }
            }
        }
        Words { Layout.fillWidth: true; visible: card.found["bars"].length > 0; text: qsTr("Cells by diameter, up to so many millimetres"); font.pixelSize: Theme.small; color: Theme.quiet }
        BigButton { objectName: "cellsKeep" + card.side; visible: card.there; strong: true; text: qsTr("Write it down with this picture"); onClicked: card.keepAsked() }
    }
}
