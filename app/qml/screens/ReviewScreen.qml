import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Layouts
import Flowkin

// A film looked at again: frame by frame, events dragged, a repeat set aside.
Item {
    id: screen

    required property Desk desk
    readonly property ClipReview review: desk.review

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Look again")
    Component.onCompleted: if (review.film < 0 && review.films.length > 0) review.open(review.films.length - 1)

    Keys.onLeftPressed: review.frame -= 1
    Keys.onRightPressed: review.frame += 1
    focus: true

    Scroller {
        objectName: "reviewScroller"
        anchors.fill: parent
        fills: true
        margin: Theme.edge
        spacing: Theme.px(8)

        Flow {
            Layout.fillWidth: true
            spacing: Theme.gap
            Choice {
                objectName: "reviewCup"
                label: qsTr("Which cup")
                width: Theme.px(220)
                model: screen.desk.board.cupNames
                currentIndex: screen.desk.board.chosen
                onActivated: index => {
                    screen.desk.board.chosen = index
                    screen.review.open(screen.review.films.length - 1)
                }
            }
            Choice {
                objectName: "reviewFilm"
                label: qsTr("Which film")
                width: Theme.px(280)
                model: screen.review.films
                displayText: count > 0 ? currentText : qsTr("no films yet")
                currentIndex: screen.review.film
                onActivated: index => screen.review.open(index)
            }
            BigButton {
                objectName: "aside"
                visible: screen.review.film >= 0
                text: screen.review.setAside ? qsTr("Count it again") : qsTr("Set this film aside")
                onClicked: screen.review.toggleAside()
            }
        }
        Words {
            Layout.fillWidth: true
            objectName: "reviewResult"
            visible: text.length > 0
            text: screen.review.trouble.length > 0 ? screen.review.trouble : screen.review.result
            font.pixelSize: Theme.large
            font.bold: true
        }
        Rectangle {
            Layout.fillWidth: true
            Layout.fillHeight: true
            Layout.minimumHeight: Theme.px(200)
            color: "black"
            radius: Theme.px(6)
            LivePicture {
                objectName: "reviewPicture"
                anchors.fill: parent
                feed: screen.review.feed
                Accessible.role: Accessible.Graphic
                Accessible.name: qsTr("The film, with what was found")
            }
            Words {
                anchors.centerIn: parent
                visible: screen.review.loading
                text: qsTr("Getting the film …")
                color: "white"
                font.pixelSize: Theme.large
            }
            Words {
                anchors { left: parent.left; bottom: parent.bottom; margins: Theme.gap }
                text: screen.review.time
                color: "white"
                font.pixelSize: Theme.large
                style: Text.Outline
                styleColor: "black"
            }
        }
        // The film as a line, with its events as flags that can be dragged.
        Item {
            id: strip

            // Shows the frame at a place on the strip; returns the place.
            function drag(at: real): real {
                const inside = Math.max(0, Math.min(width, at))
                screen.review.frame = Math.round(inside / width * (screen.review.frames - 1))
                return inside
            }
            function drop(key: int) {
                screen.review.correct(key, screen.review.frame)
            }

            Layout.fillWidth: true
            implicitHeight: Theme.px(96)
            visible: screen.review.frames > 1
            Slider {
                id: scrub
                objectName: "scrub"
                anchors { left: parent.left; right: parent.right; bottom: parent.bottom }
                height: Theme.px(44)
                padding: 0
                from: 0
                to: Math.max(1, screen.review.frames - 1)
                stepSize: 1
                value: screen.review.frame
                onMoved: screen.review.frame = value
                Accessible.name: qsTr("Frame of the film")
                handle: Rectangle {
                    x: scrub.visualPosition * (scrub.width - width)
                    y: (scrub.height - height) / 2
                    width: Theme.px(30)
                    height: Theme.px(44)
                    radius: Theme.px(6)
                    color: Theme.deep
                    border.width: scrub.activeFocus ? Theme.px(4) : 0
                    border.color: Theme.warm
                }
                background: Rectangle {
                    y: (scrub.height - height) / 2
                    height: Theme.px(10)
                    width: scrub.width
                    radius: height / 2
                    color: Theme.line
                }
            }
            Repeater {
                model: screen.review.events
                Item {
                    id: flag
                    required property var modelData
                    readonly property real home: modelData.at * (strip.width - Theme.px(30)) + Theme.px(15)
                    objectName: "flag" + modelData.key
                    visible: modelData.found
                    x: drag.active ? drag.at - width / 2 : home - width / 2
                    width: tab.width
                    height: Theme.px(52)
                    Rectangle {
                        anchors.horizontalCenter: parent.horizontalCenter
                        width: Theme.px(4)
                        height: parent.height + Theme.px(10)
                        color: Theme.ink
                    }
                    Rectangle {
                        id: tab
                        width: word.implicitWidth + Theme.px(20)
                        height: Theme.px(36)
                        radius: Theme.px(6)
                        color: drag.active ? Theme.warmWash : Theme.card
                        border.width: Theme.px(2)
                        border.color: Theme.ink
                        Words {
                            id: word
                            anchors.centerIn: parent
                            wrapMode: Text.NoWrap
                            font.pixelSize: Theme.small
                            text: (flag.modelData.byHand ? "✎ " : "") + flag.modelData.word
                        }
                    }
                    DragHandler {
                        id: drag
                        property real at: flag.home
                        target: null
                        yAxis.enabled: false
                        onTranslationChanged: if (active) at = strip.drag(flag.home + translation.x)
                        onActiveChanged: if (!active) strip.drop(flag.modelData.key)
                    }
                }
            }
        }
        Flow {
            Layout.fillWidth: true
            spacing: Theme.gap
            visible: screen.review.frames > 1
            BigButton { objectName: "frameBack"; text: qsTr("◂ one frame"); autoRepeat: true; onClicked: screen.review.frame -= 1 }
            BigButton { objectName: "frameOn"; text: qsTr("one frame ▸"); autoRepeat: true; onClicked: screen.review.frame += 1 }
            Repeater {
                model: screen.review.events
                BigButton {
                    required property var modelData
                    objectName: "here" + modelData.key
                    enabled: !screen.review.loading
                    text: qsTr("%1: here").arg(modelData.word)
                    onClicked: screen.review.correct(modelData.key, screen.review.frame)
                }
            }
        }
    }
}
