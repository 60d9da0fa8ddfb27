import QtQuick
import QtQuick.Layouts
import Flowkin

// Photos or clips of one or two activators' cells, counted and held against each other.
ColumnLayout {
    id: table

    required property CellRoom room
    signal keepAsked(side: int)

    spacing: Theme.gap

    Words { Layout.fillWidth: true; text: qsTr("A photo or short clip of the run-down, from straight above: its cells are counted. A second one lets two activators be compared."); color: Theme.quiet }
    GridLayout {
        Layout.fillWidth: true
        columns: table.width > Theme.px(800) ? 2 : 1
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap
        CellPhoto { Layout.fillWidth: true; Layout.preferredWidth: 1; Layout.alignment: Qt.AlignTop; room: table.room; feed: table.room.first; side: 0; onKeepAsked: table.keepAsked(0) }
        CellPhoto { Layout.fillWidth: true; Layout.preferredWidth: 1; Layout.alignment: Qt.AlignTop; room: table.room; feed: table.room.second; side: 1; onKeepAsked: table.keepAsked(1) }
    }
    Words { Layout.fillWidth: true; objectName: "cellsCompared"; visible: text.length > 0; text: table.room.comparison; font.pixelSize: Theme.large; font.bold: true }
}
