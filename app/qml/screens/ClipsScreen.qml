import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Dialogs
import QtQuick.Layouts
import Flowkin

// Clips from a phone, onto the bench.
Item {
    id: screen

    required property Desk desk

    function take(urls: var) {
        desk.clips.add(urls, cupChoice.currentIndex - 1, testChoice.currentIndex)
    }

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Clips")

    FileDialog {
        id: files
        title: qsTr("Clips of one cup")
        fileMode: FileDialog.OpenFiles
        nameFilters: [qsTr("Clips (*.mp4 *.mov *.m4v *.mkv *.avi *.webm *.3gp)"), qsTr("All files (*)")]
        onAccepted: screen.take(selectedFiles)
    }
    FolderDialog {
        id: folder
        title: qsTr("Folder that the phone's clips arrive in")
        onAccepted: screen.desk.watch(selectedFolder)
    }
    DropArea {
        id: drop
        anchors.fill: parent
        onDropped: event => {
            if (event.hasUrls) {
                screen.take(event.urls)
                event.acceptProposedAction()
            }
        }
    }
    Rectangle {
        anchors.fill: parent
        color: drop.containsDrag ? Theme.wash : "transparent"
    }
    Scroller {
        objectName: "clipsScroller"
        anchors.fill: parent
        fills: true
        margin: Theme.edge
        spacing: Theme.gap

        Words {
            Layout.fillWidth: true
            text: qsTr("Drop clips here")
            font.pixelSize: Theme.huge
            font.bold: true
        }
        Words {
            Layout.fillWidth: true
            text: qsTr("One test per clip, the file as the camera made it.")
            color: Theme.quiet
        }
        Flow {
            Layout.fillWidth: true
            spacing: Theme.gap
            Choice {
                id: cupChoice
                objectName: "clipCup"
                label: qsTr("Which cup")
                width: Theme.px(240)
                model: screen.desk.board.cupChoices
                currentIndex: screen.desk.board.chosen + 1
            }
            Choice {
                id: testChoice
                objectName: "clipTest"
                label: qsTr("Which test")
                width: Theme.px(240)
                model: [qsTr("stream off the stick"), qsTr("ribbon that levels"), qsTr("puddle that spreads")]
                currentIndex: screen.desk.board.test
            }
            BigButton {
                objectName: "chooseClips"
                strong: true
                text: qsTr("Choose clips …")
                onClicked: files.open()
            }
            BigButton {
                text: screen.desk.preferences.watchedFolder.length > 0 ? qsTr("Stop watching the folder") : qsTr("Watch a folder …")
                onClicked: {
                    if (screen.desk.preferences.watchedFolder.length > 0)
                        screen.desk.preferences.watchedFolder = ""
                    else
                        folder.open()
                }
            }
            BigButton {
                visible: screen.desk.clips.busy
                text: qsTr("Stop all")
                onClicked: screen.desk.clips.cancelAll()
            }
            BigButton {
                visible: screen.desk.clips.count > 0 && !screen.desk.clips.busy
                text: qsTr("Clear the list")
                onClicked: screen.desk.clips.tidy()
            }
        }
        Words {
            Layout.fillWidth: true
            visible: screen.desk.preferences.watchedFolder.length > 0
            text: qsTr("Watching %1: new clips appear below.").arg(screen.desk.preferences.watchedFolder)
        }
        ListView {
            id: list
            objectName: "clips"
            Layout.fillWidth: true
            Layout.fillHeight: true
            // In a low window the page scrolls, and the list with it.
            readonly property bool low: screen.height < Theme.px(560)
            Layout.minimumHeight: low ? contentHeight : 0
            interactive: !low
            clip: true
            spacing: Theme.px(8)
            boundsBehavior: Flickable.StopAtBounds
            model: screen.desk.clips
            ScrollBar.vertical: ScrollBar {}
            delegate: Panel {
                id: row
                required property int index
                required property string file
                required property int cupRow
                required property string clipState
                required property string stateWord
                required property real progress
                required property string result
                required property bool open
                readonly property bool running: clipState === "waiting" || clipState === "measuring"
                width: list.width - Theme.gap
                height: line.implicitHeight + Theme.gap * 2
                GridLayout {
                    id: line
                    x: Theme.gap
                    y: Theme.gap
                    width: parent.width - Theme.gap * 2
                    columns: row.width > Theme.px(640) ? 3 : 1
                    columnSpacing: Theme.gap
                    ColumnLayout {
                        Layout.fillWidth: true
                        Words { Layout.fillWidth: true; text: row.file; font.bold: true; elide: Text.ElideMiddle; wrapMode: Text.NoWrap }
                        Words { Layout.fillWidth: true; text: row.result.length > 0 ? row.stateWord + ": " + row.result : row.stateWord }
                        Rectangle {
                            Layout.fillWidth: true
                            visible: row.running
                            implicitHeight: Theme.px(8)
                            radius: height / 2
                            color: Theme.line
                            Accessible.role: Accessible.ProgressBar
                            Accessible.name: row.file
                            Rectangle { width: parent.width * row.progress; height: parent.height; radius: height / 2; color: Theme.deep }
                        }
                    }
                    Choice {
                        objectName: "clipCupOf" + row.index
                        label: qsTr("Which cup")
                        enabled: row.open
                        implicitWidth: Theme.px(200)
                        model: screen.desk.board.cupChoices
                        currentIndex: row.cupRow + 1
                        onActivated: index => screen.desk.clips.assign(row.index, index - 1)
                    }
                    BigButton {
                        objectName: "clipStop" + row.index
                        visible: row.running
                        text: qsTr("Stop")
                        onClicked: screen.desk.clips.cancel(row.index)
                    }
                }
            }
        }
    }
}
