import QtQuick
import Flowkin

// Where the test belongs in the picture: lines and a word for each part.
Item {
    id: guide

    required property int test
    required property rect area

    x: area.x
    y: area.y
    width: area.width
    height: area.height
    visible: area.width > 0
    Accessible.ignored: true

    component Post: Rectangle {
        id: post
        property string word
        color: "transparent"
        border.color: "#ffffff"
        border.width: Theme.px(2)
        radius: Theme.px(6)
        opacity: 0.7
        Rectangle {
            anchors { left: parent.left; top: parent.top; margins: Theme.px(4) }
            width: label.implicitWidth + Theme.px(12)
            height: label.implicitHeight + Theme.px(4)
            radius: Theme.px(4)
            color: "#a0000000"
            Text {
                id: label
                anchors.centerIn: parent
                text: post.word
                textFormat: Text.PlainText
                color: "white"
                font.pixelSize: Theme.small
            }
        }
    }

    // Stream: stick above, fall, surface below.
    Post { visible: guide.test === 0; x: parent.width * 0.38; width: parent.width * 0.24; y: parent.height * 0.06; height: parent.height * 0.3; word: qsTr("stick") }
    Post { visible: guide.test === 0; x: parent.width * 0.2; width: parent.width * 0.6; y: parent.height * 0.78; height: parent.height * 0.18; word: qsTr("paint") }
    // Ribbon: the paint fills the middle.
    Post { visible: guide.test === 1; x: parent.width * 0.15; width: parent.width * 0.7; y: parent.height * 0.15; height: parent.height * 0.7; radius: height / 2; word: qsTr("paint, with a lamp mirrored in it") }
    // Puddle: room to spread, the ruler along the edge.
    Post { visible: guide.test === 2; x: (parent.width - width) / 2; width: parent.height * 0.62; y: parent.height * 0.16; height: width; radius: width / 2; word: qsTr("puddle") }
    Post { visible: guide.test === 2; x: parent.width * 0.1; width: parent.width * 0.8; y: parent.height * 0.86; height: parent.height * 0.1; word: qsTr("ruler") }
}
