import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Flowkin

// A screen that scrolls when the window is small or the type is large.
Flickable {
    id: screen

    property string title
    default property alias content: column.data

    // What gets the focus by the keyboard comes into view.
    function reveal(item: Item) {
        let above = item
        while (above && above !== column)
            above = above.parent
        if (!above)
            return
        const top = item.mapToItem(column, 0, 0).y + column.y
        if (top < contentY)
            contentY = Math.max(0, top - Theme.edge)
        else if (top + item.height > contentY + height)
            contentY = Math.min(contentHeight - height, top + item.height - height + Theme.edge)
    }
    function leaf(pages: real) {
        contentY = Math.max(0, Math.min(contentHeight - height, contentY + pages * height))
    }

    Window.onActiveFocusItemChanged: {
        if (Window.activeFocusItem)
            reveal(Window.activeFocusItem)
    }
    Keys.onPressed: event => {
        if (event.key === Qt.Key_PageDown || event.key === Qt.Key_PageUp) {
            leaf(event.key === Qt.Key_PageDown ? 0.8 : -0.8)
            event.accepted = true
        }
    }
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
