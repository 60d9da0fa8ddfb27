import QtQuick
import Flowkin

// Where a cup stands: thin end left, thick end right, the gate in the middle is
// the match. The whole span of what the films allow is the long bar; the bead
// on it is the best guess. The bead's own shape says the verdict again: upright
// slab thicker, flat slab thinner, disc in the gate match, ring not sure.
Item {
    id: bar

    required property string verdict
    required property real at
    required property real low
    required property real high
    required property real bandLow
    required property real bandHigh
    readonly property bool known: at >= 0
    // One unit of the drawing: it grows with the bar, so that it is read from
    // afar where there is room.
    readonly property real unit: Math.min(height, Theme.px(120)) / 64
    readonly property real inset: 24 * unit
    readonly property real span: width - inset * 2

    function place(share: real): real {
        return inset + share * span
    }

    implicitHeight: Theme.px(64)
    Accessible.ignored: true

    // The trough.
    Rectangle {
        x: 0
        width: parent.width
        anchors.verticalCenter: parent.verticalCenter
        height: 6 * bar.unit
        radius: height / 2
        color: Theme.line
    }
    // The gate: two posts and a floor between them.
    Rectangle {
        x: bar.place(bar.bandLow)
        width: bar.place(bar.bandHigh) - x
        height: parent.height
        color: Theme.wash
    }
    Repeater {
        model: [bar.bandLow, bar.bandHigh]
        Rectangle {
            required property real modelData
            x: bar.place(modelData) - width / 2
            width: 5 * bar.unit
            height: bar.height
            color: Theme.ink
        }
    }
    // What the films allow.
    Rectangle {
        visible: bar.known
        x: bar.place(bar.low)
        width: Math.max(8 * bar.unit, bar.place(bar.high) - x)
        anchors.verticalCenter: parent.verticalCenter
        height: 20 * bar.unit
        radius: height / 2
        color: bar.verdict === "none" ? "transparent" : Theme.quiet
        border.width: Theme.px(2)
        border.color: Theme.quiet
    }
    Rectangle {
        visible: bar.known
        width: bar.unit * (bar.verdict === "thicker" ? 18 : bar.verdict === "thinner" ? 46 : 38)
        height: bar.unit * (bar.verdict === "thicker" ? 54 : bar.verdict === "thinner" ? 18 : 38)
        radius: bar.verdict === "thicker" || bar.verdict === "thinner" ? 3 * bar.unit : height / 2
        x: bar.place(bar.at) - width / 2
        anchors.verticalCenter: parent.verticalCenter
        color: bar.verdict === "undecided" || bar.verdict === "none" ? Theme.card
            : bar.verdict === "match" ? Theme.deep : Theme.warm
        border.width: 4 * bar.unit
        border.color: bar.verdict === "match" ? Theme.deep
            : bar.verdict === "thicker" || bar.verdict === "thinner" ? Theme.warm : Theme.ink
    }
}
