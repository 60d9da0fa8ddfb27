import QtQuick
import Flowkin

// Where a cup stands: thin end left, thick end right, the gate in the middle is
// the match. Above, the bead is the best guess; below it, the bar between two
// ends is what the films allow. The bead's own shape says the verdict again:
// upright slab thicker, flat slab thinner, disc in the gate match, ring not
// sure, ring struck out no longer true.
Item {
    id: bar

    required property string verdict
    required property real at
    required property real low
    required property real high
    required property real bandLow
    required property real bandHigh
    readonly property bool known: at >= 0
    readonly property bool old: verdict === "none"
    // One unit of the drawing: it grows with the bar, so that it is read from
    // afar where there is room.
    readonly property real unit: Math.min(height, Theme.px(130)) / 84
    readonly property real inset: 24 * unit
    readonly property real beadLine: height / 2 - 13 * unit
    readonly property real spanLine: height / 2 + 30 * unit
    readonly property real span: width - inset * 2

    function place(share: real): real {
        return inset + share * span
    }

    implicitHeight: Theme.px(84)
    Accessible.ignored: true

    // The trough.
    Rectangle {
        x: 0
        y: bar.beadLine - height / 2
        width: parent.width
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
            // The bar below is seen against it, in it or past it.
            height: bar.height / 2 + 16 * bar.unit
            color: Theme.ink
        }
    }
    // What the films allow.
    Rectangle {
        id: allowed
        visible: bar.known
        x: bar.place(bar.low)
        y: bar.spanLine - height / 2
        width: Math.max(8 * bar.unit, bar.place(bar.high) - x)
        height: 10 * bar.unit
        color: bar.old ? "transparent" : Theme.ink
        border.width: Math.max(1, 2 * bar.unit)
        border.color: Theme.ink
        Repeater {
            model: 2
            Rectangle {
                required property int index
                x: index * (allowed.width - width)
                anchors.verticalCenter: parent.verticalCenter
                width: 4 * bar.unit
                height: 24 * bar.unit
                color: Theme.ink
            }
        }
    }
    Rectangle {
        id: bead
        visible: bar.known
        width: bar.unit * (bar.verdict === "thicker" ? 18 : bar.verdict === "thinner" ? 46 : 38)
        height: bar.unit * (bar.verdict === "thicker" ? 54 : bar.verdict === "thinner" ? 18 : 38)
        radius: bar.verdict === "thicker" || bar.verdict === "thinner" ? 3 * bar.unit : height / 2
        x: bar.place(bar.at) - width / 2
        y: bar.beadLine - height / 2
        color: bar.verdict === "undecided" || bar.old ? Theme.card
            : bar.verdict === "match" ? Theme.deep : Theme.warm
        border.width: 4 * bar.unit
        border.color: bar.verdict === "match" ? Theme.deep
            : bar.verdict === "thicker" || bar.verdict === "thinner" ? Theme.warm : Theme.ink
        Rectangle {
            anchors.centerIn: parent
            visible: bar.old
            width: 54 * bar.unit
            height: 4 * bar.unit
            rotation: -45
            color: Theme.ink
        }
    }
}
