import QtQuick
import QtQuick.Layouts
import Flowkin

// A page as it will be printed, before it is written.
Panel {
    id: sight

    required property PrintRoom room
    property bool large

    implicitHeight: lines.implicitHeight + Theme.edge * 2

    ColumnLayout {
        id: lines
        x: Theme.edge
        y: Theme.edge
        width: parent.width - Theme.edge * 2
        spacing: Theme.gap
        Words {
            Layout.fillWidth: true
            visible: text.length > 0
            text: sight.room.remark
            color: Theme.warm
        }
        Flow {
            Layout.fillWidth: true
            spacing: Theme.gap
            BigButton { objectName: "sightSave"; strong: true; text: qsTr("Save as %1").arg(sight.room.paperName); onClicked: sight.room.save() }
            BigButton { objectName: "sightPrint"; text: qsTr("Print on paper …"); onClicked: sight.room.print() }
            BigButton { objectName: "sightEarlier"; visible: sight.room.pages > 1; enabled: sight.room.page > 0; text: qsTr("Page before"); onClicked: sight.room.page -= 1 }
            BigButton { objectName: "sightLater"; visible: sight.room.pages > 1; enabled: sight.room.page + 1 < sight.room.pages; text: qsTr("Next page"); onClicked: sight.room.page += 1 }
            BigButton { objectName: "sightLarge"; checked: sight.large; text: sight.large ? qsTr("Whole page") : qsTr("Larger"); onClicked: sight.large = !sight.large }
            BigButton { objectName: "sightDrop"; text: qsTr("Put it away"); onClicked: sight.room.drop() }
        }
        Words {
            Layout.fillWidth: true
            objectName: "sightPage"
            text: qsTr("Page %1 of %2").arg(sight.room.page + 1).arg(sight.room.pages)
            color: Theme.quiet
        }
        Rectangle {
            Layout.alignment: Qt.AlignHCenter
            // A4 upright.
            Layout.preferredHeight: sight.large ? lines.width * 297 / 210 : Math.min(lines.width * 297 / 210, Theme.px(640))
            Layout.preferredWidth: Layout.preferredHeight * 210 / 297
            color: "white"
            border { width: Theme.px(1); color: Theme.line }
            LivePicture {
                anchors { fill: parent; margins: Theme.px(1) }
                feed: sight.room.sight
                Accessible.role: Accessible.Graphic
                Accessible.name: qsTr("The page as it will be printed")
            }
        }
    }
}
