import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Flowkin

// Scrolls what a small window or large type leaves no room for, by finger,
// wheel, page keys and by where the keyboard is.
Flickable {
    id: scroller

    property int margin: 0
    // Room for the bar where there is no margin, so that no words run under it.
    property int gutter: 0
    property alias spacing: column.spacing
    // What lies in it is stretched where there is room.
    property bool fills: false
    default property alias content: column.data

    // What gets the focus by the keyboard comes into view; of what is taller
    // than the view, its top.
    function reveal(item: Item) {
        let above = item
        while (above && above !== column)
            above = above.parent
        if (!above || item === column)
            return
        const top = item.mapToItem(column, 0, 0).y + column.y
        if (top < contentY || item.height > height)
            contentY = Math.max(0, Math.min(contentHeight - height, top - Theme.edge))
        else if (top + item.height > contentY + height)
            contentY = Math.max(0, Math.min(contentHeight - height, top + item.height - height + Theme.edge))
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
    implicitWidth: column.implicitWidth + margin * 2 + gutter
    implicitHeight: column.implicitHeight + margin * 2
    contentWidth: width
    contentHeight: column.height + margin * 2
    clip: true
    boundsBehavior: Flickable.StopAtBounds
    ScrollBar.vertical: ScrollBar {
        policy: scroller.contentHeight > scroller.height ? ScrollBar.AlwaysOn : ScrollBar.AlwaysOff
    }

    ColumnLayout {
        id: column
        x: scroller.margin
        y: scroller.margin
        width: scroller.width - scroller.margin * 2 - scroller.gutter
        height: scroller.fills ? Math.max(implicitHeight, scroller.height - scroller.margin * 2) : implicitHeight
    }
}
