import QtQuick
import Flowkin

// A button in a row of controls that stand under their names.
Column {
    default property alias content: place.data

    spacing: Theme.px(4)
    Words {
        text: " "
        font.pixelSize: Theme.small
        Accessible.ignored: true
    }
    Item {
        id: place
        implicitWidth: childrenRect.width
        implicitHeight: childrenRect.height
    }
}
