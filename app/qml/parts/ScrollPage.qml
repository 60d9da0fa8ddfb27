import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Flowkin

// A screen that scrolls when the window is small or the type is large.
Flickable {
    id: screen

    property string title
    default property alias content: column.data

    contentWidth: width
    contentHeight: column.implicitHeight + Theme.edge * 2
    clip: true
    boundsBehavior: Flickable.StopAtBounds
    ScrollBar.vertical: ScrollBar {}
    Accessible.role: Accessible.Pane
    Accessible.name: title

    ColumnLayout {
        id: column
        x: Theme.edge
        y: Theme.edge
        width: screen.width - Theme.edge * 2
        spacing: Theme.gap
        Words {
            Layout.fillWidth: true
            visible: screen.title.length > 0
            text: screen.title
            font.pixelSize: Theme.huge
            font.bold: true
        }
    }
}
