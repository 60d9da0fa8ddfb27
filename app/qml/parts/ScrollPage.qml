import QtQuick
import QtQuick.Layouts
import Flowkin

// A screen that is read and filled in from top to bottom.
Scroller {
    id: screen

    property string title

    margin: Theme.edge
    spacing: Theme.gap
    Accessible.role: Accessible.Pane
    Accessible.name: title

    Words {
        Layout.fillWidth: true
        visible: screen.title.length > 0
        text: screen.title
        font.pixelSize: Theme.huge
        font.bold: true
    }
}
