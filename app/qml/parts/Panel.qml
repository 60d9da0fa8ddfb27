import QtQuick
import Flowkin

// A sheet that things lie on.
Rectangle {
    color: Theme.card
    radius: Theme.round
    border.width: Theme.px(1)
    border.color: Theme.line
}
