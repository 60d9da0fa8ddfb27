import QtQuick
import QtQuick.Dialogs
import QtQuick.Layouts
import Flowkin

// Pages for the shelf, the table and the class, and the journal as files. A page
// is looked at before it is written.
ScrollPage {
    id: screen

    required property Desk desk
    readonly property PrintRoom room: desk.printRoom
    readonly property var day: desk.journal.page

    title: qsTr("Print")
    Component.onCompleted: { desk.journal.visit(); desk.planner.visit() }

    FolderDialog {
        id: where
        title: qsTr("Where the files go")
        onAccepted: screen.room.setFolder(selectedFolder)
    }

    Rectangle {
        Layout.fillWidth: true
        visible: screen.room.written.length > 0 || screen.room.sent.length > 0 || screen.room.trouble.length > 0
        implicitHeight: told.implicitHeight + Theme.edge * 2
        radius: Theme.round
        color: screen.room.trouble.length > 0 ? Theme.warmWash : Theme.wash
        ColumnLayout {
            id: told
            x: Theme.edge
            y: Theme.edge
            width: parent.width - Theme.edge * 2
            Words {
                objectName: "printTold"
                Layout.fillWidth: true
                text: screen.room.trouble.length > 0 ? screen.room.trouble : screen.room.sent.length > 0 ? qsTr("Sent to be printed: %1").arg(screen.room.sent) : qsTr("Written: %1").arg(screen.room.written)
                font.pixelSize: Theme.large
                font.bold: true
                wrapMode: Text.WrapAnywhere
                Accessible.role: Accessible.AlertMessage
            }
            Words { Layout.fillWidth: true; visible: text.length > 0; text: screen.room.remark; color: Theme.warm }
            BigButton { objectName: "printOpen"; visible: screen.room.written.length > 0; strong: true; text: qsTr("Open it"); onClicked: screen.room.open() }
        }
    }

    PageSight { objectName: "printSight"; Layout.fillWidth: true; visible: screen.room.pages > 0; room: screen.room; onVisibleChanged: if (visible) screen.contentY = 0 }

    Heading { Layout.fillWidth: true; text: screen.day["name"] ? qsTr("Of the day %1").arg(screen.day["name"]) : qsTr("Of a day") }
    Words { Layout.fillWidth: true; text: qsTr("The journal's open day; choose another one there."); color: Theme.quiet }
    Flow {
        Layout.fillWidth: true
        spacing: Theme.gap
        BigButton { objectName: "printLabels"; enabled: screen.desk.journal.chosen >= 0; text: qsTr("Labels for the jars"); onClicked: screen.room.labels() }
        BigButton { objectName: "printReport"; enabled: screen.desk.journal.chosen >= 0; text: qsTr("Report with photos"); onClicked: screen.room.report() }
    }
    Heading { Layout.fillWidth: true; text: qsTr("Of the plan") }
    Words { Layout.fillWidth: true; text: screen.desk.planner.planned ? screen.desk.planner.summary : screen.desk.planner.trouble; color: Theme.quiet }
    Flow {
        Layout.fillWidth: true
        spacing: Theme.gap
        Beside { BigButton { objectName: "printSheet"; enabled: screen.desk.planner.planned; text: qsTr("Sheet for the bench"); onClicked: screen.room.sheet() } }
        Labelled { wide: Theme.px(140); name: qsTr("Places in the class"); Field { id: places; objectName: "printPlaces"; width: parent.width; label: qsTr("Places in the class"); text: "8"; inputMethodHints: Qt.ImhDigitsOnly } }
        Labelled { wide: Theme.px(300); name: qsTr("What stands on top"); Field { id: classTitle; objectName: "printTitle"; width: parent.width; label: qsTr("What stands on top") } }
        Beside { BigButton { objectName: "printHandout"; enabled: screen.desk.planner.planned; text: qsTr("Handout for the class"); onClicked: screen.room.handout(places.text, classTitle.text) } }
    }
    Heading { Layout.fillWidth: true; text: qsTr("Of all days") }
    Flow {
        Layout.fillWidth: true
        spacing: Theme.gap
        BigButton { objectName: "printTable"; text: qsTr("Table (CSV)"); onClicked: screen.room.table() }
        BigButton { objectName: "printDocument"; text: qsTr("Document (JSON)"); onClicked: screen.room.document() }
    }
    Heading { Layout.fillWidth: true; text: qsTr("Where the files go") }
    Words { Layout.fillWidth: true; text: screen.room.folder; wrapMode: Text.WrapAnywhere }
    Words { Layout.fillWidth: true; text: qsTr("A file of the same name is replaced."); color: Theme.quiet }
    BigButton { objectName: "printWhere"; text: qsTr("Choose another folder …"); onClicked: where.open() }
}
