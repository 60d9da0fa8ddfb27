pragma Singleton
import QtQuick

// Colours, type and measures of every screen. Meaning is never carried by
// colour alone: words, place and shape say the same.
QtObject {
    property bool dark: false
    property real size: 1

    readonly property color paper: dark ? "#15181a" : "#f4f1ea"
    readonly property color card: dark ? "#22272a" : "#ffffff"
    readonly property color ink: dark ? "#f3efe6" : "#1b1e20"
    readonly property color quiet: dark ? "#b9b9b2" : "#565a5c"
    readonly property color line: dark ? "#454d51" : "#c9c3b6"
    readonly property color deep: dark ? "#9bd3c6" : "#0d4f49"
    readonly property color deepInk: dark ? "#0d1f1c" : "#ffffff"
    readonly property color wash: dark ? "#1d3a36" : "#dcebe6"
    readonly property color warm: dark ? "#f0b67a" : "#8a3d0c"
    readonly property color warmWash: dark ? "#41301f" : "#f6e4d2"

    readonly property int small: px(15)
    readonly property int body: px(18)
    readonly property int large: px(25)
    readonly property int huge: px(40)
    readonly property int gap: px(12)
    readonly property int edge: px(20)
    readonly property int round: px(14)
    readonly property int touch: px(56)

    function px(points: real): int {
        return Math.round(points * size)
    }
}
