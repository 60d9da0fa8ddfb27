import QtQuick
import QtQuick.Layouts
import Flowkin

Item {
    id: screen

    required property Desk desk
    readonly property bool narrow: width < Theme.px(760)

    Accessible.role: Accessible.Pane
    Accessible.name: qsTr("Film")

    onVisibleChanged: {
        if (visible)
            desk.camera.start()
        else
            desk.camera.stop()
    }
    Component.onCompleted: if (visible) desk.camera.start()

    Rectangle {
        id: stage
        anchors.fill: parent
        color: "black"

        LivePicture {
            id: picture
            objectName: "livePicture"
            anchors.fill: parent
            feed: screen.desk.camera.feed
            Accessible.role: Accessible.Graphic
            Accessible.name: qsTr("What the camera sees")
        }
        Words {
            anchors.centerIn: parent
            width: parent.width * 0.8
            visible: text.length > 0
            objectName: "cameraTrouble"
            text: screen.desk.camera.trouble
            color: "white"
            font.pixelSize: Theme.huge
            horizontalAlignment: Text.AlignHCenter
        }
        Words {
            anchors { left: parent.left; bottom: parent.bottom; margins: Theme.gap }
            text: screen.desk.camera.rate
            color: "white"
            font.pixelSize: Theme.small
        }
    }
}
