import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Flowkin

// All cups at a glance, and the next step of one.
Item {
    id: screen

    required property Desk desk
    readonly property BenchBoard board: desk.board
    // In a low window everything scrolls as one; else the cups alone do.
    readonly property bool low: height < Theme.px(560)
    signal filmAsked
    signal firstRunAsked
    signal pouredAsked

    function look() { lastLook.show() }
    function leave() { lastLook.close() }
    function act() {
        switch (board.action) {
        case "film": filmAsked(); break
        case "base": board.chosen = 0; filmAsked(); break
        case "add": board.addedAsSaid(); break
        case "putBack": board.putBackAsSaid(); break
        case "volume":
        case "change": form.edit(board.chosen); break
        case "learn": board.learn(); break
        }
    }

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Bench")

    CupForm {
        id: form
        board: screen.board
    }

    LastLook {
        id: lastLook
        check: screen.desk.lastCheck
        onPouredAsked: screen.pouredAsked()
    }

    Scroller {
        objectName: "boardScroller"
        anchors.fill: parent
        fills: true
        spacing: 0

        // The one glance.
        Rectangle {
            Layout.fillWidth: true
            implicitHeight: top.implicitHeight + Theme.gap * 2
            color: screen.board.mayPour ? Theme.deep : "transparent"
            GridLayout {
                id: top
                x: Theme.edge
                y: Theme.gap
                width: parent.width - Theme.edge * 2
                columns: width < Theme.px(640) ? 1 : 2
                columnSpacing: Theme.gap
                rowSpacing: Theme.px(8)
                ColumnLayout {
                    Layout.fillWidth: true
                    spacing: 0
                    Words {
                        objectName: "glance"
                        Layout.fillWidth: true
                        text: screen.board.glance
                        color: screen.board.mayPour ? Theme.deepInk : Theme.ink
                        font.pixelSize: screen.low ? Theme.px(30) : Theme.huge
                        font.bold: true
                    }
                    Words {
                        Layout.fillWidth: true
                        visible: text.length > 0
                        text: screen.board.glanceDetail
                        color: screen.board.mayPour ? Theme.deepInk : Theme.quiet
                    }
                }
                Row {
                    spacing: Theme.gap
                    BigButton {
                        objectName: "lastCheck"
                        visible: !screen.board.empty
                        text: qsTr("Last check")
                        onClicked: lastLook.show()
                    }
                    BigButton {
                        objectName: "addCup"
                        text: screen.board.hasBaseCoat ? qsTr("New cup") : qsTr("Base coat")
                        onClicked: form.edit(-1)
                    }
                }
            }
        }

        Words {
            objectName: "trouble"
            Layout.fillWidth: true
            Layout.leftMargin: Theme.edge
            Layout.rightMargin: Theme.edge
            visible: text.length > 0
            text: screen.board.trouble
            color: Theme.warm
            font.bold: true
            Accessible.role: Accessible.AlertMessage
        }

        // An empty bench.
        ColumnLayout {
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.margins: Theme.edge
            visible: screen.board.empty
            spacing: Theme.edge
            Words {
                Layout.fillWidth: true
                Layout.maximumWidth: Theme.px(760)
                text: qsTr("Start with the base coat: everything else is compared with it. Stir it, then film how it runs off a stick.")
                font.pixelSize: Theme.large
            }
            BigButton {
                objectName: "firstRun"
                strong: true
                text: qsTr("Try it first without paint")
                onClicked: screen.firstRunAsked()
            }
            Item { Layout.fillHeight: true }
        }

        // What to do next with the chosen cup.
        Rectangle {
            Layout.fillWidth: true
            visible: !screen.board.empty
            implicitHeight: next.implicitHeight + Theme.gap * 2
            color: Theme.wash
            GridLayout {
                id: next
                readonly property bool wide: width > Theme.px(1000)
                x: Theme.edge
                y: Theme.gap
                width: parent.width - Theme.edge * 2
                columns: wide ? 2 : 1
                columnSpacing: Theme.edge
                rowSpacing: Theme.px(8)
                ColumnLayout {
                    Layout.fillWidth: true
                    spacing: Theme.px(2)
                    Words {
                        objectName: "step"
                        Layout.fillWidth: true
                        text: screen.board.chosenName + ": " + screen.board.step
                        font.pixelSize: screen.low ? Theme.large : Theme.px(30)
                        font.bold: true
                    }
                    Words {
                        Layout.fillWidth: true
                        visible: text.length > 0
                        text: screen.board.why
                        color: Theme.quiet
                        maximumLineCount: 3
                        elide: Text.ElideRight
                    }
                }
                Flow {
                    Layout.fillWidth: !next.wide
                    Layout.preferredWidth: Theme.px(430)
                    spacing: Theme.gap
                    BigButton {
                        objectName: "act"
                        visible: screen.board.action.length > 0
                        strong: true
                        text: screen.board.actionText
                        onClicked: screen.act()
                    }
                    BigButton {
                        objectName: "stirred"
                        text: qsTr("Stirred")
                        onClicked: screen.board.stirred()
                    }
                    BigButton {
                        objectName: "nextCup"
                        visible: screen.board.next >= 0 && screen.board.next !== screen.board.chosen
                        text: qsTr("Next cup")
                        onClicked: screen.board.chooseNext()
                    }
                    BigButton {
                        objectName: "changeCup"
                        text: qsTr("Change")
                        onClicked: form.edit(screen.board.chosen)
                    }
                    BigButton {
                        objectName: "undo"
                        enabled: screen.board.canUndo
                        text: qsTr("Undo")
                        onClicked: screen.board.undo()
                    }
                }
            }
        }

        GridView {
            id: grid
            objectName: "cups"
            readonly property int columns: Math.max(1, Math.floor(width / Theme.px(280)))
            readonly property int rows: Math.max(1, Math.ceil(count / columns))
            readonly property int leastHeight: Theme.px(236)
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.leftMargin: Theme.edge
            Layout.rightMargin: Theme.px(8)
            visible: !screen.board.empty
            Layout.topMargin: Theme.gap
            Layout.minimumHeight: screen.low ? rows * cellHeight : cellHeight
            clip: true
            interactive: !screen.low
            boundsBehavior: Flickable.StopAtBounds
            cellWidth: width / columns
            cellHeight: screen.low ? leastHeight : Math.max(leastHeight, Math.min(Theme.px(340), Math.floor(height / rows)))
            model: screen.board
            currentIndex: screen.board.chosen
            keyNavigationEnabled: false
            ScrollBar.vertical: ScrollBar {}
            delegate: Item {
                id: cell
                required property int index
                required property string name
                required property string cupRole
                required property string paint
                required property color swatch
                required property bool hasSwatch
                required property string verdict
                required property string verdictWord
                required property string ratio
                required property real at
                required property real low
                required property real high
                required property real bandLow
                required property real bandHigh
                required property string recheck
                required property string facts
                required property bool isNext
                required property string spoken
                width: grid.cellWidth
                height: grid.cellHeight
                CupCard {
                    anchors { fill: parent; rightMargin: Theme.gap; bottomMargin: Theme.gap }
                    index: cell.index
                    name: cell.name
                    cupRole: cell.cupRole
                    paint: cell.paint
                    swatch: cell.swatch
                    hasSwatch: cell.hasSwatch
                    verdict: cell.verdict
                    verdictWord: cell.verdictWord
                    ratio: cell.ratio
                    at: cell.at
                    low: cell.low
                    high: cell.high
                    bandLow: cell.bandLow
                    bandHigh: cell.bandHigh
                    recheck: cell.recheck
                    facts: cell.facts
                    isNext: cell.isNext
                    spoken: cell.spoken
                    chosen: screen.board.chosen === cell.index
                    onActiveFocusChanged: if (activeFocus && !screen.low) grid.positionViewAtIndex(cell.index, GridView.Contain)
                    onClicked: screen.board.chosen = cell.index
                    onDoubleClicked: form.edit(cell.index)
                }
            }
        }
    }
}
