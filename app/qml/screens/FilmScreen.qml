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
    readonly property bool low: height < Theme.px(560)
    readonly property int headline: low ? Theme.large : Theme.huge
    readonly property int line: low ? Theme.px(20) : Theme.large

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
            Layout.fillWidth: true
            Layout.fillHeight: true
            implicitHeight: body.implicitHeight
            color: Theme.card
            GridLayout {
                id: body
                // In a low window the large button stands beside the picture,
                // or it would be out of sight.
                readonly property bool beside: screen.low && width > Theme.px(420)
                anchors.fill: parent
                columns: beside ? 2 : 1
                columnSpacing: 0
                rowSpacing: 0
                Rectangle {
                    id: stage
                    Layout.fillWidth: true
                    Layout.fillHeight: true
                    // What is chosen below can be scrolled to; state, picture,
                    // button and result are always in sight.
                    Layout.minimumHeight: body.beside ? Math.max(Theme.px(150), screen.height - result.reach - head.implicitHeight - Theme.gap * 2) : Theme.px(150)
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
                        Accessible.role: Accessible.AlertMessage
                    }
                }
                Words {
                    id: result
                    readonly property real reach: visible ? implicitHeight + Theme.gap * 1.5 : 0
                    objectName: "filmResult"
                    Layout.row: 1
                    Layout.column: 0
                    Layout.columnSpan: body.columns
                    Layout.fillWidth: true
                    Layout.leftMargin: Theme.edge
                    Layout.rightMargin: Theme.edge
                    Layout.topMargin: Theme.gap
                    visible: text.length > 0
                    text: screen.film.result
                    font.pixelSize: screen.headline
                    font.bold: true
                }
                BigButton {
                    objectName: "filmPress"
                    Layout.row: body.beside ? 0 : 2
                    Layout.column: body.beside ? 1 : 0
                    Layout.fillWidth: !body.beside
                    Layout.fillHeight: body.beside
                    Layout.preferredWidth: Theme.px(190)
                    Layout.minimumHeight: Theme.px(72)
                    Layout.leftMargin: body.beside ? Theme.gap : Theme.edge
                    Layout.rightMargin: body.beside ? Theme.gap : Theme.edge
                    Layout.topMargin: Theme.gap
                    letters: Theme.px(22)
                    strong: true
                    text: screen.film.buttonText
                    onClicked: screen.film.press()
                }
                Flow {
                    Layout.row: 3
                    Layout.column: 0
                    Layout.columnSpan: body.columns
                    Layout.fillWidth: true
                    Layout.margins: Theme.gap
                    Layout.leftMargin: Theme.edge
                    Layout.rightMargin: Theme.edge
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
                    Words {
                        objectName: "filmRate"
                        height: Theme.touch
                        width: Math.min(implicitWidth, parent.width)
                        verticalAlignment: Text.AlignVCenter
                        text: screen.desk.camera.rate
                        color: Theme.quiet
                        font.pixelSize: Theme.small
                    }
                }
            }
        }
    }
}
