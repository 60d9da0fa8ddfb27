import QtQuick
import QtQuick.Controls.Basic
import QtQuick.Dialogs
import QtQuick.Layouts
import Flowkin

// The days at the bench: found, read, laid side by side, and what they teach.
ScrollPage {
    id: screen

    required property Desk desk
    readonly property JournalReader journal: desk.journal
    property string writing

    function turn(what: string) {
        writing = writing === what ? "" : what
    }

    title: qsTr("Journal")
    Component.onCompleted: journal.visit()

    FileDialog {
        id: photo
        title: qsTr("A photo of it")
        onAccepted: screen.journal.addPhoto(selectedFile, photoKind.currentIndex)
    }

    Field {
        objectName: "journalSearch"
        Layout.fillWidth: true
        label: qsTr("Find a day by its words")
        placeholderText: qsTr("find: name, colour, fault, any word")
        text: screen.journal.words
        onTextEdited: screen.journal.words = text
    }
    Words {
        Layout.fillWidth: true
        visible: screen.journal.days.length === 0
        text: screen.journal.words.length > 0 ? qsTr("Nothing found.") : qsTr("No day yet. The first cup on the bench begins one.")
        font.pixelSize: Theme.large
    }
    ListView {
        id: list
        objectName: "journalDays"
        Layout.fillWidth: true
        Layout.preferredHeight: Math.min(contentHeight, Theme.px(300))
        visible: count > 0
        clip: true
        spacing: Theme.px(6)
        boundsBehavior: Flickable.StopAtBounds
        model: screen.journal.days
        ScrollBar.vertical: ScrollBar {}
        delegate: RowLayout {
            id: line
            required property var modelData
            required property int index
            width: list.width - Theme.gap
            spacing: Theme.gap
            BigButton {
                objectName: "day" + line.index
                Layout.fillWidth: true
                checked: screen.journal.chosen === line.index
                text: line.modelData["day"] + "   " + line.modelData["name"]
                onClicked: screen.journal.choose(line.index)
            }
            BigButton {
                objectName: "beside" + line.index
                visible: screen.journal.chosen !== line.index
                checked: screen.journal.beside === line.index
                text: checked ? qsTr("Take away") : qsTr("Lay beside")
                Accessible.name: text + ": " + line.modelData["name"]
                onClicked: screen.journal.compare(line.index)
            }
        }
    }
    Words {
        objectName: "journalTrouble"
        Layout.fillWidth: true
        visible: text.length > 0
        text: screen.journal.trouble
        color: Theme.warm
        font.bold: true
        Accessible.role: Accessible.AlertMessage
    }

    GridLayout {
        Layout.fillWidth: true
        visible: screen.journal.chosen >= 0 || screen.journal.beside >= 0
        columns: screen.width > Theme.px(900) && screen.journal.beside >= 0 ? 2 : 1
        columnSpacing: Theme.gap
        rowSpacing: Theme.gap
        DayPage { Layout.fillWidth: true; Layout.preferredWidth: 1; Layout.alignment: Qt.AlignTop; day: screen.journal.page }
        DayPage { Layout.fillWidth: true; Layout.preferredWidth: 1; Layout.alignment: Qt.AlignTop; visible: screen.journal.beside >= 0; day: screen.journal.other }
    }

    // Writing to the day that is open.
    Heading { Layout.fillWidth: true; visible: tools.visible; text: qsTr("Write to this day") }
    Flow {
        id: tools
        Layout.fillWidth: true
        visible: screen.journal.chosen >= 0
        spacing: Theme.gap
        BigButton { objectName: "writePour"; text: qsTr("Poured"); checked: screen.writing === "pour"; onClicked: screen.turn("pour") }
        BigButton { objectName: "writePhoto"; text: qsTr("Photo"); checked: screen.writing === "photo"; onClicked: screen.turn("photo") }
        BigButton { objectName: "writeFault"; text: qsTr("Fault"); checked: screen.writing === "fault"; onClicked: screen.turn("fault") }
        BigButton { objectName: "writeVerdict"; text: qsTr("How it turned out"); checked: screen.writing === "verdict"; onClicked: screen.turn("verdict") }
        BigButton { objectName: "writeCells"; text: qsTr("Cell test"); checked: screen.writing === "cells"; onClicked: screen.turn("cells") }
        BigButton { objectName: "writeNote"; text: qsTr("Note"); checked: screen.writing === "note"; onClicked: screen.turn("note") }
        BigButton { objectName: "writeUndo"; text: qsTr("Undo"); onClicked: screen.journal.takeBack() }
    }
    Flow {
        Layout.fillWidth: true
        visible: screen.writing === "pour" && tools.visible
        spacing: Theme.gap
        Beside { visible: byPlan.offered; Tick { id: byPlan; objectName: "pourByPlan"; readonly property bool offered: screen.journal.plannedText.length > 0; checked: true; text: screen.journal.plannedText } }
        Labelled { name: qsTr("Used (%1)").arg(screen.desk.board.volumeUnit); Field { id: used; objectName: "pourUsed"; width: parent.width; label: qsTr("How much was used"); inputMethodHints: Qt.ImhFormattedNumbersOnly } }
        Labelled { name: qsTr("Humidity (%)"); Field { id: humidity; objectName: "pourHumidity"; width: parent.width; label: qsTr("Humidity of the room, per cent"); inputMethodHints: Qt.ImhFormattedNumbersOnly } }
        Labelled { name: qsTr("Mixes rested (min)"); Field { id: rested; objectName: "pourRested"; width: parent.width; label: qsTr("How long the mixes rested, minutes"); inputMethodHints: Qt.ImhFormattedNumbersOnly } }
        Labelled { name: qsTr("Strained"); Choice { id: strained; objectName: "pourStrained"; width: parent.width; label: qsTr("Strained"); model: [qsTr("not said"), qsTr("yes"), qsTr("no")] } }
        Labelled { wide: Theme.px(300); name: qsTr("Anything else"); Field { id: pourText; objectName: "pourText"; width: parent.width; label: qsTr("Anything else") } }
        Beside {
            BigButton {
                objectName: "pourKeep"
                strong: true
                text: qsTr("Write down the pour")
                onClicked: {
                    screen.journal.pour({ "used": used.text, "humidity": humidity.text, "rested": rested.text, "strained": strained.currentIndex, "text": pourText.text }, byPlan.checked && byPlan.offered)
                    if (screen.journal.trouble.length === 0)
                        screen.writing = ""
                }
            }
        }
    }
    Flow {
        Layout.fillWidth: true
        visible: screen.writing === "photo" && tools.visible
        spacing: Theme.gap
        Choice { id: photoKind; objectName: "photoKind"; width: Theme.px(240); label: qsTr("When it was taken"); model: [qsTr("wet"), qsTr("dry"), qsTr("a month later")] }
        BigButton { objectName: "photoChoose"; strong: true; text: qsTr("Choose the photo …"); onClicked: photo.open() }
    }
    Flow {
        Layout.fillWidth: true
        visible: screen.writing === "fault" && tools.visible
        spacing: Theme.gap
        Choice { id: faultKind; objectName: "faultKind"; width: Theme.px(300); label: qsTr("What is seen"); model: screen.journal.faults }
        Field { id: faultText; objectName: "faultText"; width: Theme.px(300); label: qsTr("Where, how much"); placeholderText: qsTr("where, how much") }
        BigButton { objectName: "faultKeep"; strong: true; text: qsTr("Write it down"); onClicked: { screen.journal.addFault(faultKind.currentIndex, faultText.text); faultText.clear(); screen.writing = "" } }
    }
    Flow {
        Layout.fillWidth: true
        visible: screen.writing === "verdict" && tools.visible
        spacing: Theme.gap
        Field { id: verdictText; objectName: "verdictText"; width: Theme.px(300); label: qsTr("Why"); placeholderText: qsTr("why") }
        Repeater {
            model: [qsTr("well"), qsTr("fair"), qsTr("badly")]
            BigButton {
                required property string modelData
                required property int index
                objectName: "verdict" + index
                text: modelData
                onClicked: { screen.journal.judge(index, verdictText.text); verdictText.clear(); screen.writing = "" }
            }
        }
    }
    Flow {
        Layout.fillWidth: true
        visible: screen.writing === "cells" && tools.visible
        spacing: Theme.gap
        Labelled { wide: Theme.px(320); name: qsTr("What the drop does"); Choice { id: cellsSeen; objectName: "cellsSeen"; width: parent.width; label: qsTr("What the drop does"); model: [qsTr("lacing: it works"), qsTr("nothing"), qsTr("sits as a blob: too thick"), qsTr("sinks or foams: too thin")] } }
        Labelled { wide: Theme.px(120); name: qsTr("After (s)"); Field { id: cellsAfter; objectName: "cellsAfter"; width: parent.width; label: qsTr("Seconds from drop to verdict"); inputMethodHints: Qt.ImhFormattedNumbersOnly } }
        Labelled { wide: Theme.px(220); name: qsTr("Additive to 1 paint"); Field { id: cellsParts; objectName: "cellsParts"; width: parent.width; label: qsTr("Parts of additive to one part of paint"); inputMethodHints: Qt.ImhFormattedNumbersOnly } }
        Labelled { wide: Theme.px(320); name: qsTr("Activator cup"); Choice { id: cellsCup; objectName: "cellsCup"; width: parent.width; label: qsTr("Activator cup"); model: screen.journal.cupNames } }
        Labelled { wide: Theme.px(300); name: qsTr("Anything else"); Field { id: cellsText; objectName: "cellsText"; width: parent.width; label: qsTr("Anything else") } }
        Beside { BigButton { objectName: "cellsKeep"; strong: true; text: qsTr("Write it down"); onClicked: { screen.journal.cells(cellsSeen.currentIndex, cellsAfter.text, cellsParts.text, cellsCup.currentIndex, cellsText.text); cellsText.clear(); screen.writing = "" } } }
    }
    Loader {
        Layout.fillWidth: true
        active: screen.writing === "cells" && tools.visible
        visible: active
        sourceComponent: CellTable {
            room: screen.desk.cells
            onKeepAsked: side => { screen.desk.cells.keep(side, cellsSeen.currentIndex, cellsAfter.text, cellsParts.text, cellsCup.currentIndex, cellsText.text); cellsText.clear() }
        }
    }
    Flow {
        Layout.fillWidth: true
        visible: screen.writing === "note" && tools.visible
        spacing: Theme.gap
        Field { id: noteText; objectName: "noteText"; width: Theme.px(420); label: qsTr("The note") ; onAccepted: noteKeep.clicked() }
        BigButton { id: noteKeep; objectName: "noteKeep"; strong: true; text: qsTr("Write it down"); enabled: noteText.text.length > 0; onClicked: { screen.journal.note(noteText.text); noteText.clear(); screen.writing = "" } }
    }

    Heading { Layout.fillWidth: true; visible: screen.journal.reminders.length > 0; text: qsTr("What is due") }
    Repeater {
        model: screen.journal.reminders
        Words { required property var modelData; Layout.fillWidth: true; text: modelData["day"] + "   " + modelData["says"] }
    }
    Repeater {
        model: screen.journal.cautions
        Words { required property string modelData; Layout.fillWidth: true; text: modelData; color: Theme.quiet }
    }
    Heading { Layout.fillWidth: true; visible: screen.journal.learned.length > 0; text: qsTr("What your pours teach") }
    Repeater {
        model: screen.journal.learned
        Words { required property string modelData; Layout.fillWidth: true; text: modelData }
    }
}
