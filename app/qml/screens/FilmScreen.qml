import QtQuick
import QtQuick.Layouts
import Flowkin

// The camera's picture with everything to be read from two metres. Any key does
// what the large button does, so that a pedal works.
Item {
    id: screen

    required property Desk desk
    readonly property FilmStand film: desk.film
    // A low window holds less of the large type.
    readonly property int headline: height < Theme.px(560) ? Theme.large : Theme.huge
    readonly property int line: height < Theme.px(560) ? Theme.px(20) : Theme.large

    signal benchAsked()

    function passes(event): bool {
        const own = [Qt.Key_Tab, Qt.Key_Backtab, Qt.Key_Shift, Qt.Key_Control, Qt.Key_Alt, Qt.Key_AltGr, Qt.Key_Meta, Qt.Key_CapsLock, Qt.Key_NumLock]
        return own.includes(event.key) || (event.modifiers & (Qt.ControlModifier | Qt.AltModifier | Qt.MetaModifier)) !== 0
    }

    focus: true
    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Film")
    Keys.onPressed: event => {
        if (screen.passes(event))
            return
        event.accepted = true
        if (event.isAutoRepeat)
            return
        if (event.key === Qt.Key_Escape)
            screen.film.throwAway()
        else
            screen.film.press()
    }

    Component.onCompleted: film.enter()
    Component.onDestruction: film.leave()

    Connections {
        target: screen.film
        function onBenchAsked() { screen.benchAsked() }
    }

    Scroller {
        objectName: "filmScroller"
        anchors.fill: parent
        fills: true
        spacing: 0

        Rectangle {
            Layout.fillWidth: true
            implicitHeight: head.implicitHeight + Theme.gap * 2
            color: screen.film.warns ? Theme.warmWash : Theme.wash
            ColumnLayout {
                id: head
                x: Theme.edge
                y: Theme.gap
                width: parent.width - Theme.edge * 2
                spacing: Theme.px(4)
                Flow {
                    Layout.fillWidth: true
                    spacing: Theme.edge
                    Words {
                        objectName: "filmWord"
                        width: Math.min(implicitWidth, head.width)
                        text: screen.film.word
                        font.pixelSize: screen.headline
                        font.bold: true
                        Accessible.role: Accessible.StaticText
                    }
                    Words {
                        objectName: "filmCount"
                        width: Math.min(implicitWidth, head.width)
                        text: screen.film.count
                        font.pixelSize: screen.headline
                    }
                }
                Words {
                    objectName: "filmAdvice"
                    Layout.fillWidth: true
                    text: screen.film.advice
                    font.pixelSize: screen.line
                    color: screen.film.warns ? Theme.warm : Theme.ink
                    Accessible.role: Accessible.AlertMessage
                }
            }
        }
        Rectangle {
            id: stage
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumHeight: Theme.px(150)
            color: "black"

            LivePicture {
                id: picture
                objectName: "livePicture"
                anchors.fill: parent
                feed: screen.desk.camera.feed
                Accessible.role: Accessible.Graphic
                Accessible.name: qsTr("What the camera sees")
            }
            FrameGuide {
                visible: area.width > 0 && !screen.film.filming
                test: screen.film.test
                area: picture.pictureRect
            }
            Words {
                anchors.centerIn: parent
                width: parent.width * 0.8
                visible: text.length > 0
                objectName: "cameraTrouble"
                text: screen.desk.camera.trouble
                color: "white"
                font.pixelSize: Theme.large
                horizontalAlignment: Text.AlignHCenter
            }
            Words {
                anchors { left: parent.left; bottom: parent.bottom; margins: Theme.gap }
                text: screen.desk.camera.rate
                color: "white"
                font.pixelSize: Theme.small
            }
        }
        Rectangle {
            Layout.fillWidth: true
            implicitHeight: foot.implicitHeight + Theme.gap * 2
            color: Theme.card
            ColumnLayout {
                id: foot
                x: Theme.edge
                y: Theme.gap
                width: parent.width - Theme.edge * 2
                spacing: Theme.px(8)
                Words {
                    objectName: "filmResult"
                    Layout.fillWidth: true
                    visible: text.length > 0
                    text: screen.film.result
                    font.pixelSize: screen.headline
                    font.bold: true
                }
                BigButton {
                    objectName: "filmPress"
                    Layout.fillWidth: true
                    implicitHeight: Theme.px(72)
                    strong: true
                    text: screen.film.buttonText
                    onClicked: screen.film.press()
                }
                Flow {
                    Layout.fillWidth: true
                    spacing: Theme.gap
                    Choice {
                        objectName: "filmCup"
                        label: qsTr("Which cup")
                        width: Theme.px(220)
                        model: screen.desk.board.cupNames
                        displayText: count > 0 ? currentText : qsTr("no cup yet")
                        currentIndex: screen.desk.board.chosen
                        onActivated: index => screen.desk.board.chosen = index
                    }
                    Choice {
                        objectName: "filmCamera"
                        label: qsTr("Which camera")
                        visible: count > 1
                        width: Theme.px(260)
                        model: screen.desk.camera.names
                        currentIndex: screen.desk.camera.nameIndex
                        onActivated: index => screen.desk.camera.choose(textAt(index))
                    }
                    Choice {
                        objectName: "filmFormat"
                        label: qsTr("Size of the picture")
                        visible: count > 2
                        width: Theme.px(300)
                        model: screen.desk.camera.formats
                        currentIndex: screen.desk.camera.formatIndex
                        onActivated: index => screen.desk.camera.chooseFormat(index)
                    }
                    BigButton {
                        objectName: "filmLock"
                        visible: screen.desk.camera.canLock
                        checked: screen.desk.camera.locked
                        text: screen.desk.camera.locked ? qsTr("Light and focus held") : qsTr("Hold light and focus")
                        onClicked: screen.desk.camera.locked = !screen.desk.camera.locked
                    }
                    BigButton {
                        objectName: "filmThrowAway"
                        enabled: screen.film.filming
                        text: qsTr("Throw this film away")
                        onClicked: screen.film.throwAway()
                    }
                }
            }
        }
    }
}
