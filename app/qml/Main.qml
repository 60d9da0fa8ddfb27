import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Flowkin

ApplicationWindow {
    id: window

    required property Desk desk
    readonly property int current: pages.currentIndex

    function showLastCheck(open: bool) {
        if (open)
            bench.look()
        else
            bench.leave()
    }
    function show(index: int) {
        if (index < pages.count)
            pages.currentIndex = index
    }

    // Smaller than a small laptop's screen at twice the size.
    width: Math.min(1280, Screen.desktopAvailableWidth)
    height: Math.min(800, Screen.desktopAvailableHeight)
    minimumWidth: 560
    minimumHeight: 320
    visible: true
    title: qsTr("flowkin bench")
    color: Theme.paper
    font.pixelSize: Theme.body
    palette {
        window: Theme.paper
        windowText: Theme.ink
        base: Theme.card
        text: Theme.ink
        button: Theme.card
        buttonText: Theme.ink
        highlight: Theme.deep
        highlightedText: Theme.deepInk
        mid: Theme.line
        dark: Theme.quiet
    }

    Binding { target: Theme; property: "dark"; value: window.desk.preferences.dark }
    Binding { target: Theme; property: "size"; value: window.desk.preferences.size }

    Shortcut { sequences: [StandardKey.Undo]; onActivated: window.desk.board.undo() }
    Shortcut { sequences: [StandardKey.Redo]; onActivated: window.desk.board.redo() }
    Repeater {
        model: 10
        Item {
            id: turn
            required property int index
            Shortcut { sequence: "Ctrl+" + (turn.index + 1) % 10; onActivated: window.show(turn.index) }
        }
    }

    RowLayout {
        anchors.fill: parent
        spacing: 0

        Scroller {
            objectName: "rail"
            Layout.fillHeight: true
            margin: Theme.gap
            spacing: Theme.px(8)
            Repeater {
                model: [qsTr("Bench"), qsTr("Film"), qsTr("Clips"), qsTr("Look again"), qsTr("Curves"), qsTr("Plan"), qsTr("Journal"), qsTr("Print"), qsTr("First try"), qsTr("Settings")]
                BigButton {
                    required property int index
                    required property string modelData
                    objectName: "page" + index
                    Layout.fillWidth: true
                    Layout.minimumWidth: Theme.px(120)
                    text: modelData
                    checked: pages.currentIndex === index
                    onClicked: window.show(index)
                }
            }
        }
        Rectangle {
            Layout.fillHeight: true
            implicitWidth: Theme.px(1)
            color: Theme.line
        }
        StackLayout {
            id: pages
            Layout.fillWidth: true
            Layout.fillHeight: true
            BoardScreen {
                id: bench
                desk: window.desk
                onFilmAsked: window.show(1)
                onFirstRunAsked: window.show(8)
                onPouredAsked: {
                    window.desk.journal.openToday()
                    window.show(6)
                    journalPage.item.writing = "pour"
                }
            }
            Loader {
                active: StackLayout.isCurrentItem
                focus: active
                sourceComponent: FilmScreen {
                    desk: window.desk
                    onBenchAsked: window.show(0)
                }
            }
            Loader {
                active: StackLayout.isCurrentItem
                sourceComponent: ClipsScreen { desk: window.desk }
            }
            Loader {
                active: StackLayout.isCurrentItem
                focus: active
                sourceComponent: ReviewScreen { desk: window.desk }
            }
            Loader {
                active: StackLayout.isCurrentItem
                sourceComponent: CurvesScreen { desk: window.desk }
            }
            Loader {
                active: StackLayout.isCurrentItem
                focus: active
                sourceComponent: PlanScreen {
                    desk: window.desk
                    onBenchAsked: window.show(0)
                }
            }
            Loader {
                id: journalPage
                active: StackLayout.isCurrentItem
                focus: active
                sourceComponent: JournalScreen { desk: window.desk }
            }
            Loader {
                active: StackLayout.isCurrentItem
                focus: active
                sourceComponent: PrintScreen { desk: window.desk }
            }
            Loader {
                active: StackLayout.isCurrentItem
                sourceComponent: TryoutScreen {
                    desk: window.desk
                    onFinished: window.show(0)
                }
            }
            Loader {
                active: StackLayout.isCurrentItem
                sourceComponent: SettingsScreen { desk: window.desk }
            }
        }
    }
}
