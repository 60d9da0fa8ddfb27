import QtQuick
import Flowkin

// A control under its name.
Column {
    id: labelled

    property string name
    property real wide: Theme.px(180)
    default property alias content: place.data

    width: wide
    spacing: Theme.px(4)
    Words {
        width: parent.width
        text: labelled.name
        font.pixelSize: Theme.small
        color: Theme.quiet
        Accessible.ignored: true
    }
    Item {
        id: place
        width: parent.width
        implicitHeight: childrenRect.height
    }
}
